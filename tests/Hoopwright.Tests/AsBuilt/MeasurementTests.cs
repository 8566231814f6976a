using Hoopwright.AsBuilt;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using static Hoopwright.Tests.AsBuilt.SiteBookSamples;

namespace Hoopwright.Tests.AsBuilt;

public sealed class MeasurementTests
{
    private static readonly Plan Plan = SamplePlans.Example("gothic-26ft");

    [Fact]
    public void Names_are_unique_and_every_one_has_a_plan_a_tolerance_and_says_how()
    {
        Tunnel tunnel = SamplePlans.LayOut(Plan);
        var all = Measurables.Of(tunnel, AsBuiltTolerances.Of(Plan, tunnel.Length, new Answers(UnitSystem.UsCustomary)));
        Assert.Equal(all.Length, all.Select(each => each.Name).Distinct().Count());
        Assert.All(all, each => Assert.True(each.Planned > Length.Zero && each.Tolerance > Length.Zero && each.How.EndsWith('.')));
        Assert.Equal(19, all.Count(each => each.Kind == MeasurableKind.BowLength));
    }

    [Fact]
    public void The_latest_reading_is_used_and_the_spread_is_told()
    {
        PlannedTunnel planned = Laid(With(Plan, ("bow-03-span", "26' 0-1/2\""), ("bow-03-span", "26 ft 1/8 in"), ("bow-03-span", "7.937 m")));
        Measurement span = planned.AsBuilt!.Measurements.Of("bow-03-span")!;
        Assert.Equal(7.937, span.Value!.Value.Metres);
        Assert.Equal([ReadingStanding.Earlier, ReadingStanding.Earlier, ReadingStanding.Used], span.Readings.Select(each => each.Standing));
        Assert.Equal(312.5 - 312.125, span.Spread.Inches, 1e-9);
        Diagnostic found = Assert.Single(planned.Diagnostics, each => each.Code == "site-book.measurement.spread");
        Assert.Equal(("siteBook[2].value", "3/8\" between them", "within 1/4\""), (found.Path, found.Seen, found.Accepted));
    }

    [Theory]
    [InlineData("site-book.measurement.unreadable", "bow-03-span", "26", "siteBook[0].value", "26 ft")]
    [InlineData("site-book.measurement.unreadable", "bow-03-span", "about right", "siteBook[0].value", null)]
    [InlineData("site-book.measurement.unreadable", "bow-03-span", "-3 in", "siteBook[0].value", "over 0")]
    [InlineData("site-book.measurement.unreadable", "bow-03-span", "0 ft", "siteBook[0].value", "over 0")]
    [InlineData("site-book.measurement.unknown-name", "bow-3-span", "26 ft", "siteBook[0].of", "bow-03-span")]
    [InlineData("site-book.measurement.unknown-name", "bow-99-span", "26 ft", "siteBook[0].of", null)]
    [InlineData("site-book.measurement.no-name", null, "26 ft", "siteBook[0].of", null)]
    [InlineData("site-book.measurement.implausible", "bow-03-span", "2' 6\"", "siteBook[0].value", "26' 0\"")]
    [InlineData("site-book.measurement.implausible", "bow-03-span", "260 ft", "siteBook[0].value", "26' 0\"")]
    public void What_cannot_be_is_told_with_its_place_and_changes_nothing(string code, string? of, string value, string path, string? accepted)
    {
        PlannedTunnel planned = Laid(Plan with { SiteBook = [new SiteBookEntry { Id = IdOf(0), Kind = SiteBookKind.Measurement, Of = of, Value = value }] });
        Diagnostic found = Assert.Single(planned.Diagnostics, each => each.Code.StartsWith("site-book.", StringComparison.Ordinal));
        Assert.Equal((code, Severity.Warning, path), (found.Code, found.Severity, found.Path));
        if (accepted is not null) Assert.Contains(accepted, found.Accepted, StringComparison.Ordinal);
        Assert.Equal(312, planned.Tunnel!.Span.Inches, 1e-9);
    }

    [Fact]
    public void A_far_reading_counts_when_a_second_one_agrees_with_it()
    {
        PlannedTunnel planned = Laid(With(Plan, ("bow-03-span", "24' 6\""), ("bow-03-span", "26' 0-1/4\""), ("bow-03-span", "24' 6-1/4\"")));
        Measurement span = planned.AsBuilt!.Measurements.Of("bow-03-span")!;
        Assert.Equal(294.25, span.Value!.Value.Inches, 1e-9);
        Assert.DoesNotContain(planned.Diagnostics, each => each.Code == "site-book.measurement.implausible");
    }

    [Fact]
    public void A_correction_speaks_for_what_it_corrects_and_is_kept()
    {
        Plan book = With(Plan, ("bow-03-span", "26' 5\""));
        book = book with { SiteBook = [.. book.SiteBook, new SiteBookEntry { Id = IdOf(1), Kind = SiteBookKind.Correction, Corrects = IdOf(0), Value = "26' 1/2\"", By = "Someone else" }] };
        MeasuredReading used = Laid(book).AsBuilt!.Measurements.Of("bow-03-span")!.Used!;
        Assert.Equal((312.5, "Someone else", 1), (Math.Round(used.Value!.Value.Inches, 9), used.By, Assert.Single(used.Corrections) is null ? 0 : 1));

        Plan back = book with { SiteBook = [.. book.SiteBook, new SiteBookEntry { Id = IdOf(2), Kind = SiteBookKind.Correction, Corrects = IdOf(0) }] };
        Measurement taken = Laid(back).AsBuilt!.Measurements.Of("bow-03-span")!;
        Assert.Null(taken.Value);
        Assert.Equal(ReadingStanding.TakenBack, Assert.Single(taken.Readings).Standing);

        Plan wrong = book with { SiteBook = [.. book.SiteBook, new SiteBookEntry { Id = IdOf(2), Kind = SiteBookKind.Correction, Corrects = IdOf(1), Value = "some" }] };
        Assert.Equal("siteBook[2].value", Assert.Single(Laid(wrong).Diagnostics, each => each.Code == "site-book.measurement.unreadable").Path);
    }

    [Fact]
    public void An_entry_years_after_all_others_is_told()
    {
        Plan book = With(Plan, ("bow-03-span", "26' 1/4\""));
        book = book with { SiteBook = [.. book.SiteBook, new SiteBookEntry { Id = "20410418T080000000Z-abcdefgh", Kind = SiteBookKind.Measurement, Of = "bow-04-span", Value = "26 ft" }] };
        Assert.Equal("siteBook[1].id", Assert.Single(Laid(book).Diagnostics, each => each.Code == "site-book.from-the-future").Path);
    }

    [Fact]
    public void A_bow_of_no_shape_is_told_and_the_planned_one_stands_in()
    {
        // Twice each, so that they count: so short a tube does not reach from foot to foot.
        PlannedTunnel planned = Laid(With(Plan, ("bow-01-length", "27 ft"), ("bow-01-length", "27 ft")));
        Assert.Contains(planned.Diagnostics, each => each.Code == "site-book.bow-does-not-fit");
        Assert.Equal(SamplePlans.LayOut(Plan).Bow.PeakHeight, planned.Tunnel!.Bow.PeakHeight);
    }

    [Fact]
    public void Tolerances_are_those_of_the_plan()
    {
        Plan book = With(Plan with { Tolerances = new BuildTolerances { Frame = new Written<Length>("2 in", Length.FromInches(2)) } }, ("bow-03-span", "26' 1\""));
        Assert.False(Laid(book).AsBuilt!.Deviations[0].Measurement.IsOut);
        Deviation strict = Laid(With(Plan, ("bow-03-span", "26' 1\""))).AsBuilt!.Deviations[0];
        Assert.True(strict.Measurement.IsOut);
        Assert.StartsWith("Move the right post 1\" to the left", strict.PutRightText, StringComparison.Ordinal);
    }

    private static PlannedTunnel Laid(Plan plan) => TunnelWorks.Plan(new PlanReading(plan, false, []), depth: WorkDepth.Layout);
}
