using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Hoopwright.Sweeps;

/// <summary>Puts values into the text of a plan, so that every field that can be read can be varied.</summary>
internal static class PlanEdit
{
    private static readonly JsonDocumentOptions Reading = new()
    {
        AllowTrailingCommas = true,
        CommentHandling = JsonCommentHandling.Skip,
        AllowDuplicateProperties = false,
    };

    /// <summary>The plan without comments; null when it is no group of fields.</summary>
    public static string? Text(ReadOnlyMemory<byte> plan)
    {
        ReadOnlySpan<byte> utf8 = plan.Span;
        if (utf8.StartsWith(Encoding.UTF8.Preamble)) utf8 = utf8[Encoding.UTF8.Preamble.Length..];
        try
        {
            return JsonNode.Parse(utf8, documentOptions: Reading) is JsonObject group ? group.ToJsonString() : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The plan with values at paths.</summary>
    /// <param name="plan">A text from <see cref="Text"/>.</param>
    /// <param name="values">Paths, and values as JSON text; null leaves the field out.</param>
    /// <returns>The bytes of the changed plan; null when a path leads through something that is no group and no list, or past a list's end.</returns>
    public static byte[]? With(string plan, IEnumerable<(string Path, string Json)> values)
    {
        JsonNode root = JsonNode.Parse(plan)!;
        foreach ((string path, string json) in values)
        {
            if (!Put(root, Steps(path), JsonNode.Parse(json))) return null;
        }
        return Encoding.UTF8.GetBytes(root.ToJsonString());
    }

    /// <summary>The value as JSON when it is a number, true, false, null, a list or a group.</summary>
    public static string? AsJson(string value)
    {
        try
        {
            return JsonNode.Parse(value) is { } node && node.GetValueKind() == JsonValueKind.String ? null : value;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The value as a JSON text.</summary>
    public static string AsText(string value) => JsonValue.Create(value).ToJsonString();

    private static string[] Steps(string path) => path.Replace("[", ".[", StringComparison.Ordinal).Split('.');

    private static bool Put(JsonNode node, ReadOnlySpan<string> steps, JsonNode? value)
    {
        string step = steps[0];
        if (step.Length == 0) return false;
        bool last = steps.Length == 1;
        switch (node)
        {
            case JsonObject group when step[0] != '[':
                if (last)
                {
                    if (value is null) group.Remove(step);
                    else group[step] = value;
                    return true;
                }
                return Put(group[step] ??= new JsonObject(), steps[1..], value);
            case JsonArray list when step is ['[', .. var digits, ']'] && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int index) && index < list.Count:
                if (!last) return list[index] is { } item && Put(item, steps[1..], value);
                if (value is null) list.RemoveAt(index);
                else list[index] = value;
                return true;
            default:
                return false;
        }
    }
}
