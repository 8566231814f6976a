using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using Hoopwright.Diagnostics;

namespace Hoopwright.Plans;

/// <summary>
/// Reads the bytes of a document into <see cref="PlanNode"/>s. Whatever the bytes are, it comes back with the nodes up to
/// where the file makes sense and a diagnostic for what does not.
/// </summary>
internal static class PlanDocument
{
    /// <summary>The largest file read, in bytes. A hundred thousand entries of a site book take about two thirds of it.</summary>
    public const int LargestBytes = 32 * 1024 * 1024;

    /// <summary>How deep groups and lists may stand in each other. The format itself needs seven.</summary>
    public const int Deepest = 32;

    private static readonly JsonReaderOptions Options = new()
    {
        AllowTrailingCommas = true,
        CommentHandling = JsonCommentHandling.Skip,
        MaxDepth = 2 * Deepest,
    };

    /// <summary>Reads a document.</summary>
    /// <param name="file">The bytes of the file.</param>
    /// <param name="problems">Where to say what is wrong; told when the file broke off.</param>
    /// <returns>The whole document, as far as it goes; null when there is no value at all.</returns>
    public static PlanNode? Read(ReadOnlySpan<byte> file, PlanProblems problems)
    {
        if (file.Length > LargestBytes)
        {
            problems.BrokeOff = true;
            problems.Error(
                PlanCodes.TooLarge, 0, "", "The file is too large to be a plan.",
                FormattableString.Invariant($"{file.Length / 1_000_000.0:0.0} MB"), "a plan of at most 32 MB");
            return null;
        }

        var utf8 = AsUtf8(file, problems);
        var reader = new Utf8JsonReader(utf8, Options);
        var cursor = new PlaceCursor(utf8);
        var state = new Growing(problems);
        try
        {
            while (reader.Read())
            {
                if (!state.Take(ref reader, ref cursor))
                    break;
            }
        }
        catch (JsonException broken)
        {
            BreakOff(broken, utf8, state, problems);
        }

        return state.Root;
    }

    private static ReadOnlySpan<byte> AsUtf8(ReadOnlySpan<byte> file, PlanProblems problems)
    {
        if (file.StartsWith(Encoding.Unicode.Preamble) || file.StartsWith(Encoding.BigEndianUnicode.Preamble))
        {
            problems.Error(
                PlanCodes.BadCharacter, 0, "", "The file is saved as UTF-16; a plan is saved as UTF-8.",
                "UTF-16", "the same file saved as UTF-8");
            var encoding = file[0] == 0xFF ? Encoding.Unicode : Encoding.BigEndianUnicode;
            return Encoding.UTF8.GetBytes(encoding.GetString(file[2..]));
        }

        if (file.StartsWith(Encoding.UTF8.Preamble))
            file = file[Encoding.UTF8.Preamble.Length..];
        if (Utf8.IsValid(file))
            return file;

        var bad = FirstBadByte(file);
        var cursor = new PlaceCursor(file);
        problems.Error(
            PlanCodes.BadCharacter, bad, "", $"The file is not UTF-8 text: {cursor.At(bad)} holds a byte that is no character.",
            FormattableString.Invariant($"byte {file[bad]:X2}"), "the same file saved as UTF-8");
        return Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(file));
    }

    private static int FirstBadByte(ReadOnlySpan<byte> file)
    {
        var at = 0;
        while (Rune.DecodeFromUtf8(file[at..], out _, out var used) == System.Buffers.OperationStatus.Done)
            at += used;
        return at;
    }

    private static void BreakOff(JsonException broken, ReadOnlySpan<byte> utf8, Growing state, PlanProblems problems)
    {
        problems.BrokeOff = true;
        var offset = OffsetOf(utf8, broken.LineNumber ?? 0, broken.BytePositionInLine ?? 0);
        var place = new PlaceCursor(utf8).At(offset);
        if (offset >= utf8.Length)
        {
            if (state.Root is null && !state.HasBegun)
            {
                problems.Error(
                    PlanCodes.Empty, 0, "", "There is no plan in the file.", "nothing", "a plan in { }; the verb new writes one to start from");
                return;
            }

            var open = state.Open;
            problems.Error(
                PlanCodes.NotJson, offset, open?.Path ?? "",
                open is null
                    ? $"The file ends at {place} in the middle of a value."
                    : $"The file ends at {place} before the {(open.Kind == PlanNodeKind.List ? "list" : "group")} opened at {open.Place} is closed.",
                "the end of the file", open?.Kind == PlanNodeKind.List ? "]" : "}");
            return;
        }

        var (reason, accepted) = Reason(utf8, offset, state);
        problems.Error(PlanCodes.NotJson, offset, state.LastPath, $"{reason} ({place}).", Rest(utf8, offset), accepted);
    }

    // In the words of someone who typed it, for the mistakes that are usual; the last one is for all others.
    private static (string Reason, string Accepted) Reason(ReadOnlySpan<byte> utf8, int offset, Growing state)
    {
        byte seen = utf8[offset];
        var rest = utf8[offset..];
        bool afterText = state.LastTextEnd > 0 && offset - state.LastTextEnd is >= 0 and <= 1;
        if (seen is (byte)'\n' or (byte)'\r')
            return ("A text does not end on the line it begins on", "a \" at the end of the text, on the same line");
        if (seen == (byte)'\t')
            return ("A text holds a tab", "spaces, or \\t for the tab itself");
        if (seen < 0x20)
            return ("A control character stands where none may", "a plan saved as plain text");
        if (seen == (byte)',')
            return ("A comma stands where a field or a value belongs", "one comma between fields, and none before the first");
        if (afterText && seen != (byte)':')
            return ("Something follows a text that is no comma and no end of its group", "a comma; inside a text an inch mark is written \\\" or in");
        if (rest.StartsWith("/*"u8))
            return ("A comment that begins with /* is never closed", "*/ at the end of the comment, or // before each line of it");
        if (seen == (byte)'\'')
            return ("Names and texts stand in double quotes", "double quotes");
        if (rest.StartsWith("“"u8) || rest.StartsWith("”"u8) || rest.StartsWith("„"u8))
            return ("Names and texts stand in straight double quotes, not in typographic ones", "\"");
        if (seen is (byte)'"' or (byte)'{' or (byte)'[')
            return ("A comma or a colon is missing", "a comma between fields, a colon between a name and its value");
        if (seen == (byte)'\\' || (offset > 0 && utf8[offset - 1] == (byte)'\\'))
            return ("A \\ in a text means a special character, and this one is none", "\\\\ for a \\ itself");
        if (char.IsAsciiLetter((char)seen) && (offset == 0 || !char.IsAsciiDigit((char)utf8[offset - 1])))
            return ("A word stands without quotes", "a name or a text in double quotes; only true, false and numbers stand without");
        return ("The file stops following the rules of JSON", "\"name\": value, with texts in double quotes and commas between fields");
    }

    private static int OffsetOf(ReadOnlySpan<byte> utf8, long line, long column)
    {
        var start = 0;
        for (var skipped = 0L; skipped < line; skipped++)
        {
            var end = utf8[start..].IndexOf((byte)'\n');
            if (end < 0)
                break;
            start += end + 1;
        }

        return (int)Math.Min(utf8.Length, start + column);
    }

    private static string Rest(ReadOnlySpan<byte> utf8, int offset)
    {
        var rest = utf8[offset..Math.Min(utf8.Length, offset + 80)];
        var end = rest.IndexOfAny((byte)'\n', (byte)'\r');
        if (end >= 0)
            rest = rest[..end];
        var text = Encoding.UTF8.GetString(rest).TrimEnd('\uFFFD').TrimEnd();
        return text.Length == 0 ? "the end of the line" : SeenText.Shorten(text);
    }

    /// <summary>The part of the document read so far.</summary>
    private sealed class Growing(PlanProblems problems)
    {
        private readonly Stack<PlanNode> _open = new();
        private string? _name;
        private int _nameOffset;
        private TextPlace _namePlace;

        public PlanNode? Root { get; private set; }

        public bool HasBegun { get; private set; }

        public int LastTextEnd { get; private set; }

        public PlanNode? Open => _open.TryPeek(out var open) ? open : null;

        public string LastPath =>
            Open is not { } open ? ""
            : _name is not null ? open.PathOf(_name)
            : open.Children is [.., var last] ? last.Path
            : open.Path;

        /// <summary>The path of the value about to be read.</summary>
        private string PathOfNext =>
            Open is not { } open ? ""
            : _name is not null ? open.PathOf(_name)
            : FormattableString.Invariant($"{open.Path}[{open.Children.Count}]");

        /// <summary>Takes one token; false when reading must stop.</summary>
        public bool Take(ref Utf8JsonReader reader, ref PlaceCursor cursor)
        {
            HasBegun = true;
            var offset = (int)reader.TokenStartIndex;
            LastTextEnd = reader.TokenType is JsonTokenType.String ? (int)reader.BytesConsumed : 0;
            switch (reader.TokenType)
            {
                case JsonTokenType.PropertyName:
                    _nameOffset = offset;
                    _namePlace = cursor.At(offset);
                    _name = TextOf(ref reader, offset, _namePlace, isName: true);
                    return true;
                case JsonTokenType.StartObject:
                    return Begin(PlanNodeKind.Group, offset, ref cursor);
                case JsonTokenType.StartArray:
                    return Begin(PlanNodeKind.List, offset, ref cursor);
                case JsonTokenType.EndObject or JsonTokenType.EndArray:
                    _open.Pop();
                    return true;
                case JsonTokenType.String:
                    Place(PlanNodeKind.Text, TextOf(ref reader, offset, cursor.At(offset), isName: false), offset, ref cursor);
                    return true;
                case JsonTokenType.Number:
                    Place(PlanNodeKind.Number, Encoding.UTF8.GetString(reader.ValueSpan), offset, ref cursor);
                    return true;
                case JsonTokenType.True or JsonTokenType.False:
                    Place(PlanNodeKind.YesNo, reader.TokenType == JsonTokenType.True ? "true" : "false", offset, ref cursor);
                    return true;
                case JsonTokenType.Null:
                    Place(PlanNodeKind.Null, "null", offset, ref cursor);
                    return true;
                default:
                    // None and Comment, which the reader's options keep away.
                    return true;
            }
        }

        private bool Begin(PlanNodeKind kind, int offset, ref PlaceCursor cursor)
        {
            var node = Place(kind, "", offset, ref cursor);
            if (_open.Count == Deepest)
            {
                problems.BrokeOff = true;
                problems.Error(
                    PlanCodes.TooDeep, node, FormattableString.Invariant($"Groups and lists stand more than {Deepest} deep in each other."),
                    "a plan as the verb new writes it");
                return false;
            }

            _open.Push(node);
            return true;
        }

        private PlanNode Place(PlanNodeKind kind, string text, int offset, ref PlaceCursor cursor)
        {
            var parent = Open;
            var node = _name is null
                ? new PlanNode(kind, parent, null, parent?.Children.Count ?? 0, offset, cursor.At(offset), text)
                : new PlanNode(kind, parent, _name, 0, _nameOffset, _namePlace, text);
            _name = null;
            Root ??= node;
            parent?.Add(node);
            return node;
        }

        private string TextOf(ref Utf8JsonReader reader, int offset, TextPlace place, bool isName)
        {
            try
            {
                return reader.GetString() ?? "";
            }
            catch (InvalidOperationException)
            {
                // A lone half of a \u pair: JSON allows to write it, but it is no character.
                problems.Error(
                    PlanCodes.BadCharacter, offset, isName ? Open?.Path ?? "" : PathOfNext, $"A text at {place} holds half of a \\u pair, which is no character.",
                    SeenText.Shorten(Encoding.UTF8.GetString(reader.ValueSpan)), "the character itself");
                return Encoding.UTF8.GetString(reader.ValueSpan);
            }
        }
    }
}
