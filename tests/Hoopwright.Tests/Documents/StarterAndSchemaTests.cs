using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using Json.Schema;

namespace Hoopwright.Tests.Documents;

public sealed class StarterAndSchemaTests
{
    private static readonly JsonDocumentOptions Comments = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };
    private static readonly JsonSchema Schema = JsonSchema.FromText(Encoding.UTF8.GetString(PlanSchema.Write()));

    public static TheoryData<BowKind, UnitSystem> Starts { get; } = new(
        from shape in Enum.GetValues<BowKind>()
        from units in Enum.GetValues<UnitSystem>()
        select (shape, units));

    [Theory]
    [MemberData(nameof(Starts))]
    public void The_plan_to_begin_with_reads_lays_out_and_meets_the_schema(BowKind shape, UnitSystem units)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(StarterPlan.Write(shape, units));
        PlanReading reading = PlanReader.Read(bytes);
        Assert.Empty(reading.Diagnostics);
        Assert.NotEmpty(SamplePlans.LayOut(reading.Plan).Members);
        Assert.True(IsValid(bytes));
    }

    [Fact]
    public void Good_examples_meet_the_schema() =>
        Assert.All(SamplePlans.GoodExamples, name => Assert.True(IsValid(SamplePlans.ExampleBytes(name)), name));

    [Theory]
    [InlineData("\"crew\": { \"people\": \"four\" }")]
    [InlineData("\"crew\": { \"persons\": 4 }")]
    [InlineData("\"site\": { \"frostDepth\": 30 }")]
    [InlineData("\"site\": { \"frostDepth\": \"30\" }")]
    [InlineData("\"ground\": { \"anchor\": \"stones\" }")]
    [InlineData("\"units\": \"imperial\"")]
    public void A_faulty_field_does_not_meet_the_schema(string field)
    {
        const string frame = "\"hoopwright\": \"1.0\", \"frame\": { \"span\": \"20 ft\", \"length\": \"48 ft\", \"bow\": { \"shape\": \"round\", \"peakHeight\": \"11 ft\" } }";
        Assert.True(IsValid(Encoding.UTF8.GetBytes("{ " + frame + " }")));
        Assert.False(IsValid(Encoding.UTF8.GetBytes("{ " + frame + ", " + field + " }")));
    }

    [Fact]
    public void Every_property_of_the_schema_says_what_it_is()
    {
        List<string> silent = [];
        Look(JsonNode.Parse(PlanSchema.Write())!, "");
        Assert.Empty(silent);

        void Look(JsonNode node, string path)
        {
            if (node is JsonArray list)
            {
                foreach (JsonNode? item in list) if (item is not null) Look(item, path);
            }
            if (node is not JsonObject group) return;
            foreach ((string name, JsonNode? value) in group)
            {
                // A condition names fields that are described where they stand.
                if (name == "if") continue;
                if (name == "properties")
                {
                    foreach ((string field, JsonNode? property) in value!.AsObject())
                        if (property?["description"] is null) silent.Add(path + "." + field);
                }
                if (value is not null) Look(value, path + "." + name);
            }
        }
    }

    private static bool IsValid(byte[] bytes)
    {
        using JsonDocument document = JsonDocument.Parse(bytes, Comments);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
