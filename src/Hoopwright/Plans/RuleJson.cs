using System.Text.Json;

namespace Hoopwright.Plans;

/// <summary>The values that results rest on, as machines read them.</summary>
internal static class RuleJson
{
    /// <summary>Writes them as the list rules: path, says, value, given, and the source of what the plan does not give.</summary>
    internal static void Write(Utf8JsonWriter json, IEnumerable<RuleUsed> rules)
    {
        json.WriteStartArray("rules");
        foreach (RuleUsed rule in rules)
        {
            json.WriteStartObject();
            json.WriteString("path", rule.Path);
            json.WriteString("says", rule.Says);
            json.WriteString("value", rule.Text);
            json.WriteBoolean("given", rule.Given);
            json.WriteString("source", rule.Given ? null : rule.Source.ToString());
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }
}
