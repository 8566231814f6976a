using Hoopwright.BeforeCuts;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using static Hoopwright.Tests.AsBuilt.SiteBookSamples;

namespace Hoopwright.Tests.BeforeCuts;

public sealed class CutChecksTests
{
    private static readonly Plan Plan = SamplePlans.Example("gothic-26ft");
    private static readonly PlannedTunnel Plain = Worked(Plan);
    private static readonly double OverIn = Math.Round(Plain.Tunnel!.Bow.FilmLine.Length.Inches * 16) / 16;

    private static readonly (string, string)[] ForFilm =
    [
        ("square-left", "72 ft"), ("square-right", "72 ft"), ("left-hip-height", "5 ft"), ("right-hip-height", "5 ft"),
        ("bow-01-length", Inches(OverIn)), ("bow-10-length", Inches(OverIn)), ("bow-19-length", Inches(OverIn)),
    ];

    [Fact]
    public void Without_measurements_every_check_says_what_to_measure_first()
    {
        Assert.Equal(Enum.GetValues<CutCheckKind>(), Plain.Checks!.All.Select(check => check.Kind));
        Assert.All(Plain.Checks.All, check => Assert.Equal((CutVerdict.MeasureFirst, Length.Zero), (check.Verdict, check.ShortBy)));
        Assert.StartsWith("Measure this first: left side of the string rectangle, right side", Plain.Checks.Of(CutCheckKind.Film)!.SaysText, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_measured_as_planned_is_a_go() => Assert.Equal(CutVerdict.Go, Film(ForFilm).Verdict);

    [Fact]
    public void One_missing_reading_is_named()
    {
        CutCheck film = Film(ForFilm[..^1]);
        Assert.Equal((CutVerdict.MeasureFirst, "bow-19-length"), (film.Verdict, Assert.Single(film.Missing).Of.Name));
    }

    [Fact]
    public void A_reading_in_doubt_is_to_be_taken_again()
    {
        CutCheck film = Film([.. ForFilm, ("square-left", "7' 2\"")]);
        Assert.Equal((CutVerdict.MeasureFirst, "Measure this first: left side of the string rectangle (again)."), (film.Verdict, film.SaysText));
    }

    [Fact]
    public void Bows_that_differ_are_all_to_be_measured()
    {
        CutCheck film = Film([.. ForFilm[..^1], ("bow-19-length", Inches(OverIn - 2))]);
        Assert.Equal(CutVerdict.MeasureFirst, film.Verdict);
        Assert.Equal(16, film.Missing.Length);
    }

    [Fact]
    public void Film_bought_for_the_plan_that_does_not_reach_is_a_stop_and_says_by_how_much()
    {
        // The roll that the plan alone chooses is 36 ft wide; the roof now needs more.
        Plan wide = Plan with { Cover = Plan.Cover with { RoofSideAllowance = new Written<Length>("24 in", Length.FromInches(24)) } };
        double roofIn = Worked(wide).Cover!.Pieces[0].AcrossRoll.Inches, rollIn = 36 * 12, moreIn = Math.Ceiling(rollIn - roofIn) + 4;
        Assert.True(rollIn - roofIn is > 0 and < 15, $"The example leaves {rollIn - roofIn} in.");
        (string, string)[] book = [.. ForFilm[..4], .. new[] { 1, 10, 19 }.Select(bow => (MeasureNames.BowLength(bow), Inches(OverIn + moreIn)))];
        CutCheck film = Worked(With(wide, book)).Checks!.Of(CutCheckKind.Film)!;
        Assert.Equal(CutVerdict.Stop, film.Verdict);
        Assert.Equal(roofIn + moreIn - rollIn, film.Changed.First(piece => piece.Id == "roof-film" && piece.Place.EndsWith("width", StringComparison.Ordinal)).ShortBy.Inches, 0.1);
        // The peaks rise too, and the ends were to be cut at the next whole foot.
        Assert.Equal(film.Changed.Max(piece => piece.ShortBy.Inches), film.ShortBy.Inches);
        Assert.Contains(TapeText.Of(film.ShortBy, UnitSystem.UsCustomary), film.SaysText, StringComparison.Ordinal);

        Plan decided = With(wide, book);
        decided = decided with { SiteBook = [.. decided.SiteBook, new SiteBookEntry { Id = IdOf(90), Kind = SiteBookKind.Decision, Of = "check-film", Value = "go: wider roll came", By = "Invented lead" }] };
        CutCheck go = Worked(decided).Checks!.Of(CutCheckKind.Film)!;
        Assert.Equal(CutVerdict.Go, go.Verdict);
        Assert.StartsWith("Go, as decided by Invented lead", go.SaysText, StringComparison.Ordinal);

        Plan again = decided with { SiteBook = [.. decided.SiteBook, new SiteBookEntry { Id = IdOf(95), Kind = SiteBookKind.Measurement, Of = "square-left", Value = "72 ft" }] };
        Assert.Equal(CutVerdict.Stop, Worked(again).Checks!.Of(CutCheckKind.Film)!.Verdict);
    }

    [Fact]
    public void A_post_that_would_be_cut_too_short_is_a_stop()
    {
        EndPost post = Plain.Tunnel!.Back.Posts[1];
        CutCheck posts = Worked(With(Plan, (MeasureNames.PostHeight(post.MemberId), Inches((post.TopPoint - post.Ground).Inches + 1.5)))).Checks!.Of(CutCheckKind.Posts)!;
        Assert.Equal(CutVerdict.Stop, posts.Verdict);
        Assert.Equal((post.MemberId, 1.5), (posts.Changed[0].Id, Math.Round(posts.ShortBy.Inches * 4) / 4));
    }

    [Fact]
    public void Concrete_waits_for_holes_deep_enough_and_corners_that_are_square()
    {
        CutCheck shallow = Worked(With(Plan, ("hole-left-post-07-depth", "38 in"))).Checks!.Of(CutCheckKind.Concrete)!;
        Assert.Equal((CutVerdict.Stop, 4.0), (shallow.Verdict, Math.Round(shallow.ShortBy.Inches, 6)));
        Assert.Contains("Dig it deeper", shallow.SaysText, StringComparison.Ordinal);

        (string, string)[] askew = [("square-front", "26 ft"), ("square-back", "26 ft"), ("square-left", "72 ft"), ("square-right", "72 ft"), ("square-diagonal-front-left", "76' 7-1/2\""), ("square-diagonal-front-right", "76' 5-3/4\"")];
        Assert.Contains("does not stand square", Worked(With(Plan, askew)).Checks!.Of(CutCheckKind.Concrete)!.SaysText, StringComparison.Ordinal);
    }

    [Fact]
    public void What_does_not_go_together_stops_everything()
    {
        PlannedTunnel planned = Worked(With(Plan, ("front-door-1-rough", "14 ft"), ("front-door-1-rough", "14 ft")));
        Assert.True(planned.AsBuilt!.DoesNotFit);
        Assert.All(planned.Checks!.All, check => Assert.Equal(CutVerdict.Stop, check.Verdict));
    }

    private static CutCheck Film(params (string, string)[] readings) => Worked(With(Plan, readings)).Checks!.Of(CutCheckKind.Film)!;

    private static PlannedTunnel Worked(Plan plan) => TunnelWorks.Plan(new PlanReading(plan, false, []), depth: WorkDepth.Orders);

    private static string Inches(double inches) => (Math.Round(inches * 16) / 16).ToString("0.####", System.Globalization.CultureInfo.InvariantCulture) + " in";
}
