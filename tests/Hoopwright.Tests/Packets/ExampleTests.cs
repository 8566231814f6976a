using System.Globalization;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Strength;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Packets;

public sealed class ExampleTests
{
    public static TheoryData<string> Examples { get; } = [.. SamplePlans.GoodExamples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_is_worked_out_to_its_end(string name)
    {
        PlannedTunnel planned = Work(name);
        Assert.DoesNotContain(planned.Diagnostics, found => found.Severity == Severity.Error);
        Assert.NotNull(planned.Orders);
        Assert.All(planned.Cuts!.Sheets, sheet =>
        {
            // What is not proven says how far at most it is off, against a bound over every way of placing the joints.
            Assert.True(sheet.LowerBound <= sheet.CountsFor);
            Assert.True(sheet.Gap.Percent < 12, $"{sheet.Name}: {sheet.Gap.Percent} %");
            Assert.NotEmpty(sheet.Says);
        });
        Assert.True(planned.Film!.Proven);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_number_of_the_results_can_be_asked_why(string name)
    {
        PlannedTunnel planned = Work(name);
        using var explainer = Explainer.Of(planned);
        foreach (string path in explainer.NumberPaths())
        {
            Explanation? explanation = explainer.Explain(path);
            Assert.True(explanation is not null, $"{path} has no working");
            Assert.NotEmpty(explanation!.Value);
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Results_are_the_same_bytes_twice_and_in_another_culture(string name)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("en-US");
            byte[] american = ResultsJson.Write(Work(name));
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal(american, ResultsJson.Write(Work(name)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_member_is_a_piece_of_exactly_one_line_of_the_takeoff(string name)
    {
        PlannedTunnel planned = Work(name);
        foreach (Member member in planned.Tunnel!.Members)
            Assert.Single(planned.Takeoff!.Lines, line => line.Pieces.Any(piece => piece.MemberId == member.Id));
        foreach (ConcreteHole hole in planned.Tunnel.Holes)
            Assert.Single(planned.Takeoff!.Lines, line => line.TraceIds.Contains(hole.Id));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_assumption_says_what_was_taken(string name) =>
        Assert.All(Work(name).Assumptions, assumption => Assert.False(string.IsNullOrEmpty(assumption.Accepted), assumption.Path));

    [Fact]
    public void A_plan_without_site_loads_says_so()
    {
        PlannedTunnel planned = Work("round-14ft");
        foreach (string code in (string[])["loads.no-snow", "loads.no-wind", "assumed.site.frost-depth", "orders.prices.example", "assumed.strength"])
            Assert.Contains(planned.Diagnostics, found => found.Code == code);
    }

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("metric-9m")]
    public void An_example_with_loads_of_an_invented_site_is_not_past_a_limit_as_taken(string name)
    {
        StrengthReport report = Work(name).Strength!;
        Assert.True(report.Verdict is StrengthVerdict.Stands or StrengthVerdict.Marginal, report.Says);
        Assert.All(report.Combinations, each => Assert.True(each.Utilisation is { Value: <= 1 }, each.Words));
    }

    [Fact]
    public void The_wrong_example_shows_errors_and_no_exception()
    {
        PlannedTunnel planned = Work("wrong");
        Assert.Null(planned.Tunnel);
        Assert.True(planned.Diagnostics.Count(found => found.Severity == Severity.Error) >= 10);
        Assert.All(planned.Diagnostics, found => Assert.False(string.IsNullOrWhiteSpace(found.Message)));
    }

    [Fact]
    public void A_bow_that_cannot_be_bent_is_an_error_with_what_would_do()
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Simple(bow: "\"shape\": \"round\", \"sideHeight\": \"8 ft\", \"peakHeight\": \"7 ft\""));
        Diagnostic found = Assert.Single(planned.Diagnostics, each => each.Severity == Severity.Error);
        Assert.Equal(("bow.peak-below-shoulder", "frame.bow.peakHeight"), (found.Code, found.Path));
    }

    private static PlannedTunnel Work(string name) => TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(name)));
}
