using System.Globalization;
using System.Text.Json;
using Hoopwright.Plans;

namespace Hoopwright.Comparisons;

/// <summary>Every value that a plan gives, by path, as written.</summary>
internal static class PlanLeaves
{
    /// <summary>Paths and values in the order of the plan format. A list of plain values is one value; a list of groups is counted by index.</summary>
    public static List<KeyValuePair<string, string>> Of(Plan plan)
    {
        using var document = JsonDocument.Parse(PlanWriter.Write(plan));
        var leaves = new List<KeyValuePair<string, string>>();
        Gather(document.RootElement, "", leaves);
        return leaves;
    }

    private static void Gather(JsonElement value, string path, List<KeyValuePair<string, string>> leaves)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (JsonProperty field in value.EnumerateObject()) Gather(field.Value, path.Length == 0 ? field.Name : $"{path}.{field.Name}", leaves);
                break;
            case JsonValueKind.Array when value.EnumerateArray().Any(item => item.ValueKind is JsonValueKind.Object or JsonValueKind.Array):
                foreach ((int index, JsonElement item) in value.EnumerateArray().Index()) Gather(item, string.Create(CultureInfo.InvariantCulture, $"{path}[{index}]"), leaves);
                break;
            case JsonValueKind.Array:
                leaves.Add(new(path, string.Join(", ", value.EnumerateArray().Select(Text))));
                break;
            case JsonValueKind.Undefined or JsonValueKind.String or JsonValueKind.Number or JsonValueKind.True or JsonValueKind.False or JsonValueKind.Null:
                leaves.Add(new(path, Text(value)));
                break;
        }
    }

    private static string Text(JsonElement value) => value.ValueKind == JsonValueKind.String ? value.GetString() ?? "" : value.GetRawText();
}
