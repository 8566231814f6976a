using Hoopwright.Cutting;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sweeps;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Figures;

public sealed class BeforeAfterFigureTests
{
    public static TheoryData<string> Examples { get; } = [.. SamplePlans.GoodExamples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_change_of_an_example_draws_without_collisions_with_both_limits(string name)
    {
        ChangeStudy study = ChangeStudy.Read(SamplePlans.ExampleBytes(name)).Study!;
        foreach (int number in Enumerable.Range(0, study.Changes.Length).Where(number => number % 3 == 0))
        {
            PlannedTunnel after = study.Planned(number);
            Drawing drawing = Draw(study.Before, after, study.Changes[number].Words);
            Assert.Empty(Collisions.In(drawing));
            string[] texts = [.. drawing.Marks.OfType<TextMark>().Select(mark => mark.Text)];
            Assert.Equal(2, texts.Count(text => text.StartsWith("storm: ground snow", StringComparison.Ordinal)));
            Assert.Equal(2, texts.Count(text => text is "gust limit" or "10-minute mean wind limit"));
        }
    }

    [Fact]
    public void Bows_of_different_spans_stand_on_one_scale_and_a_plan_with_errors_is_refused()
    {
        PlannedTunnel small = TunnelWorks.Plan(SamplePlans.Example("round-14ft")), wide = TunnelWorks.Plan(SamplePlans.Example("gothic-26ft"));
        Assert.Empty(Collisions.In(Draw(small, wide, "another tunnel")));
        Assert.Throws<ArgumentException>(() => Draw(small, TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes("wrong")), effort: CutEffort.Least), "none"));
    }

    private static Drawing Draw(PlannedTunnel before, PlannedTunnel after, string change)
    {
        (double widthMm, double heightMm) = (before.Units == UnitSystem.Metric ? Paper.A4 : Paper.Letter).DrawingSize(landscape: true);
        return BeforeAfterFigure.Draw(before, after, change, new FigureSheet(widthMm, heightMm, "Test", "2026-03-01", before.Units), "1 of 1");
    }
}
