using System.Text.Json.Nodes;
using Hoopwright.Plans;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Documents;

/// <summary>Holds docs/plan.md to the fields that the reader knows.</summary>
public sealed class PlanPageTests
{
    [Fact]
    public void Every_field_of_the_plan_stands_on_the_page_with_what_it_means()
    {
        HashSet<string> rows = [.. File.ReadLines(Path.Combine(SamplePlans.Root, "docs", "plan.md"))
            .Where(line => line.StartsWith("| `", StringComparison.Ordinal))
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
            .Select(cells => $"{cells[1].Trim('`')}: {cells[3].Replace(" **Must be there.**", "", StringComparison.Ordinal)}")];
        string[] fields = [.. Fields(JsonNode.Parse(PlanSchema.Write())!).Distinct().Order(StringComparer.Ordinal)];
        Assert.True(fields.Length > 100, "The schema has too few fields to mean anything.");
        Assert.Empty(fields.Except(rows));
    }

    private static IEnumerable<string> Fields(JsonNode schema)
    {
        foreach ((string name, JsonNode? field) in schema["properties"] as JsonObject ?? [])
        {
            yield return $"{name}: {field!["description"]}";
            foreach (string inner in Fields(field["items"] ?? field)) yield return inner;
        }
    }
}
