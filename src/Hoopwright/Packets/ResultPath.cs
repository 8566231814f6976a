using System.Globalization;
using System.Text.Json;

namespace Hoopwright.Packets;

/// <summary>Finds values in results by their paths.</summary>
public static class ResultPath
{
    /// <summary>The value at a path; null when it is not there.</summary>
    /// <param name="results">Results, or a part of them.</param>
    /// <param name="path">Dotted names, each with its [index] where it is a list.</param>
    public static JsonElement? Find(JsonElement results, string path)
    {
        JsonElement at = results;
        foreach (string step in path.Replace("[", ".[", StringComparison.Ordinal).Split('.'))
        {
            if (step is ['[', .. var place, ']'])
            {
                if (at.ValueKind != JsonValueKind.Array || !int.TryParse(place, NumberStyles.None, CultureInfo.InvariantCulture, out int index) || index >= at.GetArrayLength()) return null;
                at = at[index];
            }
            else if (at.ValueKind != JsonValueKind.Object || !at.TryGetProperty(step, out at)) return null;
        }
        return at;
    }
}
