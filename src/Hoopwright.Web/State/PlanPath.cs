using System.Globalization;
using System.Text.Json.Nodes;

namespace Hoopwright.Web.State;

/// <summary>Finds values in a plan by their paths.</summary>
public static class PlanPath
{
    /// <summary>The value at a path such as ends.front.doors[0].width; null when it is not there.</summary>
    public static JsonNode? At(JsonNode? root, string path)
    {
        foreach (string step in path.Replace("[", ".[", StringComparison.Ordinal).Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            root = root switch
            {
                JsonObject group => group[step],
                JsonArray list when int.TryParse(step.Trim('[', ']'), NumberStyles.None, CultureInfo.InvariantCulture, out int index) && index < list.Count => list[index],
                _ => null,
            };
        }
        return root;
    }

    /// <summary>The value at a path as it is typed; empty when it is not there or is a group.</summary>
    public static string TextAt(JsonNode? root, string path) => At(root, path) switch
    {
        JsonValue value when value.TryGetValue(out string? text) => text,
        JsonValue value => value.ToJsonString(),
        _ => "",
    };

    /// <summary>The path without the numbers of list items: doors[0].width becomes doors[].width.</summary>
    public static string Pattern(string path)
    {
        System.Text.StringBuilder pattern = new(path.Length);
        bool inside = false;
        foreach (char letter in path)
        {
            if (letter == ']') inside = false;
            if (!inside) pattern.Append(letter);
            if (letter == '[') inside = true;
        }
        return pattern.ToString();
    }
}
