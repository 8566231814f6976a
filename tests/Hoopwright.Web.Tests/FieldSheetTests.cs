using System.Text;
using System.Text.Json.Nodes;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing;
using Hoopwright.Web.Fields;
using Hoopwright.Web.State;

namespace Hoopwright.Web.Tests;

public sealed class FieldSheetTests
{
    private static readonly FieldSheet Sheet = FieldSheet.Read();

    [Theory]
    [MemberData(nameof(Examples))]
    public void Whatever_is_found_or_assumed_leads_to_its_field_or_the_nearest_group(string example)
    {
        byte[] file = SamplePlans.ExampleBytes(example);
        JsonNode plan = PlanText.Tree(PlanText.Plain(Encoding.UTF8.GetString(file))!);
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(file), effort: CutEffort.Least);
        Assert.NotEmpty(planned.Diagnostics);
        foreach (Diagnostic found in planned.Diagnostics)
        {
            string place = Sheet.PlaceOf(found.Path, plan);
            Assert.True(place.Length > 0, $"{found.Path} leads nowhere.");
            Assert.Contains(Stage.Of(place).Sections, section => place == section || place.StartsWith(section + ".", StringComparison.Ordinal) || place.StartsWith(section + "[", StringComparison.Ordinal));
            // A path that the plan may give is its own place; others have one that is near.
            if (IsField(found.Path)) Assert.Equal(found.Path, place);
        }
    }

    [Fact]
    public void Every_field_of_a_plan_is_asked_for_in_some_stage() =>
        Assert.Empty(Sheet.Fields.Select(field => field.Name).Except(Stage.All.SelectMany(stage => stage.Sections)).Except(["hoopwright", "edits"]));

    public static TheoryData<string> Examples() => [.. SamplePlans.GoodExamples, "wrong", "wrong-shape"];

    private static bool IsField(string path) => path.Length > 0 && !path.EndsWith(']') && Fields(Sheet.Fields).Any(field => field.Path == PlanPath.Pattern(path));

    private static IEnumerable<Field> Fields(IEnumerable<Field> fields) => fields.SelectMany(field => Fields(field.Fields).Prepend(field));
}
