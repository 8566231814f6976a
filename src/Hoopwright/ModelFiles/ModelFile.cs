using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Hoopwright.ModelFiles;

/// <summary>
/// Reads model and job files: JSON with comments and trailing commas, UTF-8 with or without a mark. Whatever the bytes are, the
/// outcome is a value or something told, never an exception.
/// </summary>
internal static class ModelFile
{
    /// <summary>The largest file read, in bytes.</summary>
    private const int LargestBytes = 64 * 1024 * 1024;

    private static readonly JsonDocumentOptions Options = new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip, MaxDepth = 32 };

    /// <summary>What is made of a file's group of fields; null, and told, when it holds none.</summary>
    internal static T? Read<T>(ReadOnlyMemory<byte> utf8, ModelProblems problems, Func<ModelGroup, T?> read)
        where T : class
    {
        if (utf8.Span.StartsWith(Encoding.UTF8.Preamble))
            utf8 = utf8[Encoding.UTF8.Preamble.Length..];
        if (!IsText(utf8.Span, problems))
            return null;
        try
        {
            using var document = JsonDocument.Parse(utf8, Options);
            return ModelGroup.Of(document.RootElement, "", problems) is { } file ? read(file) : null;
        }
        catch (JsonException broken)
        {
            string place = string.Create(CultureInfo.InvariantCulture, $"line {broken.LineNumber + 1}, column {broken.BytePositionInLine + 1}");
            problems.Error("model.not-json", "", $"The file stops following the rules of JSON ({place}).", null, "\"name\": value, with names and texts in double quotes, plain numbers, and commas between fields");
            return null;
        }
    }

    private static bool IsText(ReadOnlySpan<byte> file, ModelProblems problems)
    {
        if (file.Length > LargestBytes)
            problems.Error("model.too-large", "", "The file is larger than any model or job.", string.Create(CultureInfo.InvariantCulture, $"{file.Length / 1e6:0} MB"), "up to 64 MB");
        else if (file.StartsWith(Encoding.Unicode.Preamble) || file.StartsWith(Encoding.BigEndianUnicode.Preamble))
            problems.Error("model.bad-character", "", "The file is saved as UTF-16; it must be UTF-8.", "UTF-16", "the same file saved as UTF-8");
        else if (!Utf8.IsValid(file) || HasHalfCharacter(file))
            problems.Error("model.bad-character", "", "The file holds a byte or an escape that is no character.", null, "the same file saved as UTF-8");
        return !problems.HasErrors;
    }

    /// <summary>True when an escape stands for half of a character: such a text cannot be read at all.</summary>
    private static bool HasHalfCharacter(ReadOnlySpan<byte> file)
    {
        bool open = false;
        while (true)
        {
            int next = file.IndexOf((byte)'\\');
            if (open && next != 0)
                return true;
            if (next < 0 || file.Length < next + 2)
                return open;
            file = file[next..];
            int code = file[1] == (byte)'u' && file.Length >= 6 && ushort.TryParse(file[2..6], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out ushort value) ? value : 0;
            if (open != char.IsLowSurrogate((char)code))
                return true;
            open = char.IsHighSurrogate((char)code);
            file = file[(code == 0 ? 2 : 6)..];
        }
    }
}
