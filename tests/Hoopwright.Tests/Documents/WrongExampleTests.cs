using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Documents;

public sealed class WrongExampleTests
{
    [Fact]
    public void The_wrong_example_shows_every_kind_of_slip_that_one_readable_file_can()
    {
        string[] unreadable =
        [
            PlanCodes.BadCharacter, PlanCodes.BadVersion, PlanCodes.Empty, PlanCodes.NotJson, PlanCodes.TooDeep, PlanCodes.TooLarge, PlanCodes.TooNew,
        ];
        IEnumerable<string> shown = PlanReader.Read(SamplePlans.ExampleBytes("wrong")).Diagnostics.Select(found => found.Code).Distinct();
        Assert.Equal(PlanCodes.All.Except(unreadable).Order(StringComparer.Ordinal), shown.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_wrong_shape_reads_cleanly_and_shows_what_does_not_fit_together()
    {
        PlanReading reading = PlanReader.Read(SamplePlans.ExampleBytes("wrong-shape"));
        Assert.Empty(reading.Diagnostics);
        LayoutOutcome outcome = TunnelPlanner.LayOut(reading.Plan, new Answers(UnitSystem.UsCustomary));
        Assert.Null(outcome.Tunnel);
        string[] shown = [.. outcome.Diagnostics.Select(found => found.Code).Distinct().Order(StringComparer.Ordinal)];
        string[] expected = ["ends.door.does-not-fit", "ends.girt.off-the-wall", "frame.purlins.none", "frame.tie.off-the-bow", "sides.hip.out-of-range", "site.too-steep"];
        Assert.True(expected.All(shown.Contains), string.Join(' ', shown));
    }
}
