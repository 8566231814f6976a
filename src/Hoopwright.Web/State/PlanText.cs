using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Hoopwright.Web.State;

/// <summary>Plan files on their way in and out.</summary>
public static class PlanText
{
    /// <summary>An identity for a plan that is new on the shelf.</summary>
    public static string NewId() => Guid.NewGuid().ToString("n")[..12];

    /// <summary>The text of a plan file without its comments; null when it is no group of fields at all.</summary>
    /// <param name="text">The file.</param>
    public static string? Plain(string text)
    {
        try
        {
            JsonNode? node = JsonNode.Parse(text.TrimStart('\ufeff'), documentOptions: new JsonDocumentOptions { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip });
            return node is JsonObject plan ? plan.ToJsonString() : null;
        }
        catch (Exception fault) when (fault is JsonException or ArgumentException)
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
