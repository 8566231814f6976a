using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Documents;

/// <summary>The sentence beside a value that a plan gives is that of its field in the schema, which says nothing of another value.</summary>
public sealed partial class RuleTextTests
{
    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public void A_given_value_is_described_by_its_field(string example)
    {
        JsonNode schema = JsonNode.Parse(PlanSchema.Write())!;
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(example)), depth: WorkDepth.Layout);
        RuleUsed[] given = [.. planned.Rules.Where(rule => rule.Given)];
        Assert.NotEmpty(given);
        Assert.All(given, rule => Assert.Equal(Sentence(schema, rule.Path), rule.Says));
    }

    private static string? Sentence(JsonNode schema, string path)
    {
        JsonNode at = schema;
        foreach (string step in path.Split('.'))
        {
            if (at["items"] is { } item) at = item;
            at = at["properties"]![Index().Replace(step, "")]!;
        }
        return (string?)at["description"];
    }

    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex Index();
}
