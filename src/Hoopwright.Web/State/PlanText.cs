using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Hoopwright.Web.State;

/// <summary>Plan files on their way in and out.</summary>
public static class PlanText
{
    /// <summary>An identity for a plan that is new on the shelf.</summary>
    public static string NewId() => Guid.NewGuid().ToString("n")[..12];

    /// <summary>
    /// The text of a plan file as the browser reads it: spaces stand for comments and for commas before an end, so that every
    /// place in it is as in the file. Null when it is no group of fields at all.
    /// </summary>
    /// <param name="text">The file.</param>
    public static string? Plain(string text)
    {
        string plain = Blanked(text.TrimStart('\ufeff'));
        try
        {
            using JsonDocument document = JsonDocument.Parse(plain);
            return document.RootElement.ValueKind == JsonValueKind.Object ? plain : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>A plan's text as a tree to look values up in. Where a field stands twice the last one counts, as in the browser.</summary>
    /// <param name="document">The text.</param>
    public static JsonNode Tree(string document)
    {
        using JsonDocument parsed = JsonDocument.Parse(document);
        return Tree(parsed.RootElement) ?? new JsonObject();
    }

    private static JsonNode? Tree(JsonElement element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                JsonObject group = [];
                foreach (JsonProperty field in element.EnumerateObject()) group[field.Name] = Tree(field.Value);
                return group;
            case JsonValueKind.Array:
                return new JsonArray([.. element.EnumerateArray().Select(Tree)]);
            default:
                return element.ValueKind == JsonValueKind.Null ? null : JsonValue.Create(element.Clone());
        }
    }

    // Line ends stay within comments, so that lines are counted alike.
    private static string Blanked(string text)
    {
        char[] plain = text.ToCharArray();
        int comma = -1;
        for (int at = 0; at < plain.Length; at++)
        {
            switch (plain[at])
            {
                case '"':
                    comma = -1;
                    for (at++; at < plain.Length && plain[at] != '"'; at++) if (plain[at] == '\\') at++;
                    break;
                case '/' when at + 1 < plain.Length && plain[at + 1] is '/' or '*':
                    bool isLine = plain[at + 1] == '/';
                    int end = isLine ? text.AsSpan(at).IndexOfAny('\n', '\r') : text.IndexOf("*/", at + 2, StringComparison.Ordinal) - at + 2;
                    // A comment that is never closed stays, and is told as what it is.
                    if (!isLine && end <= 1) return text;
                    end = end < 0 ? plain.Length : at + end;
                    for (; at < end; at++) if (plain[at] is not ('\n' or '\r')) plain[at] = ' ';
                    at--;
                    break;
                case ',':
                    comma = at;
                    break;
                case '}' or ']':
                    if (comma >= 0) plain[comma] = ' ';
                    comma = -1;
                    break;
                case char other when !char.IsWhiteSpace(other):
                    comma = -1;
                    break;
            }
        }
        return new string(plain);
    }

    /// <summary>A file's name from a plan's name.</summary>
    /// <param name="name">What the plan is called; may be empty.</param>
    /// <param name="ending">Without the dot.</param>
    public static string FileName(string name, string ending)
    {
        StringBuilder safe = new();
        foreach (char letter in name.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(letter)) safe.Append(letter);
            else if (safe.Length > 0 && safe[^1] != '-') safe.Append('-');
        }
        string trimmed = safe.ToString().Trim('-');
        return (trimmed.Length == 0 ? "tunnel" : trimmed) + "." + ending;
    }
}
