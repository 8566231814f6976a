using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Hoopwright.Web.State;

/// <summary>Plan files on their way in and out.</summary>
public static class PlanText
{
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
