using System.Text;
using System.Text.Json;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Api;

/// <summary>Looks at plans and names before they are kept. What is refused is told to a person.</summary>
internal static class TextCheck
{
    /// <summary>How the text of a plan is read: comments and trailing commas are part of it.</summary>
    public static readonly JsonDocumentOptions PlanJson = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true, MaxDepth = SharingLimits.Depth };

    /// <summary>What is wrong with a plan; nothing where it may be kept. Whether the tunnel can be built is for the app to say.</summary>
    public static SharingProblem? Plan(string document)
    {
        if (Encoding.UTF8.GetByteCount(document) > SharingLimits.DocumentBytes) return Problems.TooLarge($"A plan without its site book has at most {SharingLimits.DocumentBytes >> 20} MiB.");
        if (document.Contains('\0')) return Problems.Malformed("The plan holds a character that no text holds.");
        try
        {
            using JsonDocument parsed = JsonDocument.Parse(document, PlanJson);
            if (parsed.RootElement.ValueKind != JsonValueKind.Object) return Problems.Malformed("The plan is not a group of fields in braces.");
            return parsed.RootElement.TryGetProperty("siteBook", out _) ? Problems.Malformed("The plan still has its site book. Send its entries by themselves.") : null;
        }
        catch (JsonException fault)
        {
            return Problems.Malformed($"The plan does not follow the rules of JSON, or is nested deeper than {SharingLimits.Depth} (line {fault.LineNumber + 1}).");
        }
        catch (ArgumentException)
        {
            return Problems.Malformed("The plan holds half a character.");
        }
    }

    /// <summary>What is wrong with a name or label; nothing where it may be kept.</summary>
    public static SharingProblem? Name(string? name) => name is null || (name.Length <= SharingLimits.NameCharacters && name.EnumerateRunes().All(rune => rune != Rune.ReplacementChar && !Rune.IsControl(rune)))
        ? null
        : Problems.Malformed($"A name has at most {SharingLimits.NameCharacters} characters, all in one line.");
}
