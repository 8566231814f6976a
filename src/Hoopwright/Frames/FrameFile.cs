using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Hoopwright.Frames;

/// <summary>
/// Reads frame models: JSON with comments and trailing commas, UTF-8 with or without a mark, as docs/frame-file.md says.
/// Whatever the bytes are, the answer is a model or a list of diagnostics, never an exception.
/// </summary>
public static class FrameFile
{
    /// <summary>The largest file read, in bytes; a row of two hundred bows takes about a twentieth of it.</summary>
    private const int LargestBytes = 64 * 1024 * 1024;

    private static readonly JsonDocumentOptions Options = new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip, MaxDepth = 32 };

    /// <summary>Reads a model.</summary>
    /// <param name="utf8">The bytes of the file.</param>
    /// <returns>The model, or all that is wrong with it in one pass.</returns>
    public static FrameReading Read(ReadOnlyMemory<byte> utf8)
    {
        var problems = new ModelProblems();
        if (utf8.Span.StartsWith(Encoding.UTF8.Preamble))
            utf8 = utf8[Encoding.UTF8.Preamble.Length..];
        if (!IsText(utf8.Span, problems))
            return new(null, problems.All());
        try
        {
            using var document = JsonDocument.Parse(utf8, Options);
            return Read(document.RootElement, problems);
        }
        catch (JsonException broken)
        {
            string place = string.Create(CultureInfo.InvariantCulture, $"line {broken.LineNumber + 1}, column {broken.BytePositionInLine + 1}");
            problems.Error("model.not-json", "", $"The file stops following the rules of JSON ({place}).", null, "\"name\": value, with names and texts in double quotes, plain numbers, and commas between fields");
            return new(null, problems.All());
        }
    }

    /// <summary>Reads a model and solves it.</summary>
    /// <param name="utf8">The bytes of the file.</param>
    /// <returns>The answer, with what was told on reading before what was told on solving.</returns>
    public static FrameAnswer Solve(ReadOnlyMemory<byte> utf8)
    {
        var reading = Read(utf8);
        if (reading.Model is not { } model)
            return new() { Diagnostics = reading.Diagnostics };
        var answer = FrameSolver.Solve(model);
        return answer with { Diagnostics = [.. reading.Diagnostics, .. answer.Diagnostics] };
    }

    private static FrameReading Read(JsonElement root, ModelProblems problems)
    {
        if (ModelGroup.Of(root, "", problems) is not { } file)
            return new(null, problems.All());
        var model = new FrameFileReader(problems).Read(file);
        if (!problems.HasErrors)
            return new(model, problems.All());
        // What was read is checked as well, so that all is told in one pass; what is left out of it cannot be judged.
        foreach (var found in FrameCheck.Problems(model))
        {
            if (found.Code is not ("model.part.not-held" or "model.empty" or "model.no-combination" or "model.too-large"))
                problems.Say(found);
        }
        return new(null, problems.All());
    }

    private static bool IsText(ReadOnlySpan<byte> file, ModelProblems problems)
    {
        if (file.Length > LargestBytes)
            problems.Error("model.too-large", "", "The file is larger than any model.", string.Create(CultureInfo.InvariantCulture, $"{file.Length / 1e6:0} MB"), "up to 64 MB");
        else if (file.StartsWith(Encoding.Unicode.Preamble) || file.StartsWith(Encoding.BigEndianUnicode.Preamble))
            problems.Error("model.bad-character", "", "The file is saved as UTF-16; a model is saved as UTF-8.", "UTF-16", "the same file saved as UTF-8");
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
