using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using Hoopwright.BuildSteps;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sweeps;
using Hoopwright.Takeoff;
using Hoopwright.Testing;
using Hoopwright.Testing.Generators;

namespace Hoopwright.Tests.Packets;

/// <summary>What a plan in metres leaves out is taken in sizes that a metric shop sells and a metric tape has a mark for.</summary>
public sealed partial class MetricPlanTests
{
    /// <summary>Outside diameters of ISO 4200, preferred series 1, 21,3 to 114,3 mm; from memory.</summary>
    private static readonly double[] Iso4200Mm = [21.3, 26.9, 33.7, 42.4, 48.3, 60.3, 76.1, 88.9, 114.3];

    /// <summary>Walls of round hollow sections in EN 10219-2, thinner ones; from memory.</summary>
    private static readonly double[] En10219Mm = [2, 2.5, 3, 4, 5];

    private static readonly UnitSystem[] Both = [UnitSystem.UsCustomary, UnitSystem.Metric];

    private static readonly Lazy<PlannedTunnel>[] Bare =
    [
        .. new[]
        {
            "\"span\": \"5.5 m\", \"length\": \"12 m\", \"bow\": { \"shape\": \"round\", \"sideHeight\": \"1.2 m\", \"peakHeight\": \"2.8 m\" }",
            "\"span\": \"8 m\", \"length\": \"20 m\", \"bow\": { \"shape\": \"gothic\", \"sideHeight\": \"1.5 m\", \"peakHeight\": \"3.9 m\" }, \"tie\": {}",
        }.Select((frame, index) => new Lazy<PlannedTunnel>(() => TunnelWorks.Plan(
            SamplePlans.FromJson($"\"units\": \"metric\", \"frame\": {{ {frame} }}, \"sides\": {{ \"left\": {{ \"kind\": \"{(index == 0 ? "fixed" : "rollUp")}\" }} }}, \"ends\": {{ \"front\": {{ \"doors\": [ {{ \"kind\": \"{(index == 0 ? "side" : "double")}\" }} ] }} }}")))),
    ];

    public static TheoryData<int> Plans { get; } = [0, 1];

    [Theory]
    [InlineData(5.5, 42.4)]
    [InlineData(7.85, 42.4)]
    [InlineData(7.9, 48.3)]
    [InlineData(9.6, 48.3)]
    public void Bows_are_of_the_first_standard_tube_that_is_not_lighter_than_the_published_one(double spanM, double outsideMm)
    {
        Usual<Length> outside = LayoutDefaults.BowTube(Length.FromMetres(spanM), UnitSystem.Metric), wall = LayoutDefaults.BowWall(UnitSystem.Metric);
        Assert.Equal(outsideMm, outside.Value.Millimetres, 1e-9);
        Assert.Equal(2.5, wall.Value.Millimetres, 1e-9);
        // Engineering High Tunnels for Better Performance, University of Connecticut: 1.90 in x 14 ga from 26 ft on, 1.66 in x 14 ga below.
        double publishedIn = spanM >= 26 * 0.3048 - 0.05 ? 1.90 : 1.66;
        Assert.Equal(Iso4200Mm.First(size => size >= publishedIn * 25.4), outside.Value.Millimetres, 1e-9);
        Assert.Equal(En10219Mm.First(size => size >= 0.083 * 25.4), wall.Value.Millimetres, 1e-9);
    }

    [Fact]
    public void No_usual_tube_or_board_is_weaker_in_millimetres_than_in_inches()
    {
        foreach (double spanFt in (double[])[14, 20, 25.9, 26, 34])
        {
            Length span = Length.FromFeet(spanFt);
            AssertNotWeaker(units => (LayoutDefaults.BowTube(span, units), LayoutDefaults.BowWall(units)));
            AssertNotWeaker(units => (LayoutDefaults.PostTube(LayoutDefaults.BowTube(span, units).Value, units), LayoutDefaults.BowWall(units)));
        }
        AssertNotWeaker(units => (LayoutDefaults.LightTube(units), LayoutDefaults.LightWall(units)));
        foreach (string nominal in (string[])["1x4", "2x4", "2x6", "2x8", "2x10", "4x4", "4x6", "6x6"])
        {
            LumberSize one = LumberSizes.Find(nominal)!, other = LumberSizes.Find(LumberSizes.MetricFor(nominal))!;
            Assert.False(other.IsNominal);
            Assert.True(other.Thickness >= one.Thickness, nominal);
            // Bent over its width.
            Assert.True(other.Thickness.Metres * other.Width.Metres * other.Width.Metres >= one.Thickness.Metres * one.Width.Metres * one.Width.Metres, nominal);
        }
    }

    [Fact]
    public void The_leg_slides_into_its_post_in_either_system()
    {
        foreach (UnitSystem units in Both)
        {
            foreach (Length leg in UsualTubes.Outsides(units))
            {
                Length inside = LayoutDefaults.PostTube(leg, units).Value - (LayoutDefaults.BowWall(units).Value * 2);
                Assert.True(inside > leg, $"{leg.Millimetres} mm in {inside.Millimetres} mm");
            }
        }
    }

    [Theory]
    [InlineData(1219.2, 1200, 1200, 1250)]
    [InlineData(762, 750, 750, 800)]
    [InlineData(100, 100, 100, 100)]
    [InlineData(101.6, 100, 100, 150)]
    [InlineData(99.9, 100, 95, 100)]
    [InlineData(50.8, 50, 50, 55)]
    [InlineData(12.7, 13, 12, 13)]
    [InlineData(1.9, 1.9, 1.9, 1.9)]
    [InlineData(0, 0, 0, 0)]
    public void A_length_goes_to_the_mark_on_the_side_that_is_asked(double exactMm, double nearestMm, double downMm, double upMm)
    {
        Length exact = Length.FromMillimetres(exactMm);
        Assert.Equal(nearestMm, MetricMarks.Of(exact, MetricWay.Nearest).Millimetres, 1e-9);
        Assert.Equal(downMm, MetricMarks.Of(exact, MetricWay.Down).Millimetres, 1e-9);
        Assert.Equal(upMm, MetricMarks.Of(exact, MetricWay.Up).Millimetres, 1e-9);
        Assert.Equal(exact, MetricMarks.Of(exact, MetricWay.AsItIs));
    }

    [Fact]
    public void A_mark_stays_where_it_is() => Gen.Double[0, 10_000].Sample(mm =>
    {
        foreach (MetricWay way in (MetricWay[])[MetricWay.Nearest, MetricWay.Down, MetricWay.Up])
        {
            Length mark = MetricMarks.Of(Length.FromMillimetres(mm), way);
            Assert.Equal(mark.Millimetres, MetricMarks.Of(mark, way).Millimetres, 1e-9);
            if (way == MetricWay.Down) Assert.True(mark.Millimetres <= mm + 1e-6);
            if (way == MetricWay.Up) Assert.True(mark.Millimetres >= mm - 1e-6);
        }
    });

    [Fact]
    public void What_is_safe_in_inches_is_no_less_safe_in_millimetres()
    {
        foreach (Usual<Length> most in (Usual<Length>[])[LayoutDefaults.BowSpacing, LayoutDefaults.EndPostSpacing, FilmFasteners.ChannelScrewSpacing, FilmFasteners.BattenSpacing, TakeoffDefaults.JambScrewSpacing])
            Assert.True(most.ValueIn(UnitSystem.Metric) <= most.Value, most.Says);
        foreach (Usual<Length> least in (Usual<Length>[])[LayoutDefaults.PostEmbedment, LayoutDefaults.EndEmbedment, LayoutDefaults.PostProjection, LayoutDefaults.HeadRoom])
            Assert.True(least.ValueIn(UnitSystem.Metric) >= least.Value, least.Says);
    }

    [Fact]
    public void The_next_post_of_a_metric_plan_is_a_metric_one()
    {
        PlanChange heavier = Assert.Single(ChangeFinder.Of(Bare[0].Value.Tunnel!), change => change.Code == "heavier-end-posts");
        Assert.Equal(["95x145 mm"], heavier.Values.Select(value => value.Text).Distinct());
        Assert.All(ChangeFinder.Of(Bare[1].Value.Tunnel!), change => Assert.DoesNotMatch(Inches(), change.Words));
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void Everything_that_is_ordered_and_cut_is_sold_in_millimetres(int plan)
    {
        PlannedTunnel planned = Bare[plan].Value;
        foreach (MemberSection section in planned.Tunnel!.Members.Select(member => member.Section).Distinct())
        {
            Assert.DoesNotMatch(Inches(), section.Size);
            if (section is not TubeSection tube) continue;
            Assert.Contains(Math.Round(tube.Outside.Millimetres, 6), Iso4200Mm);
            Assert.Contains(Math.Round(tube.Wall.Millimetres, 6), En10219Mm);
        }
        Assert.All(planned.Orders!.Lines, line => Assert.DoesNotMatch(Inches(), line.Size));
        Assert.All(planned.Orders.Lines.Where(line => line.Length is not null), line => AssertMark(line.Length!.Value, 100));
        Assert.All(planned.Cuts!.Sheets.SelectMany(sheet => sheet.Bars), bar => AssertMark(bar.Stock, 100));
        Assert.All(planned.Takeoff!.Lines.SelectMany(line => line.Parts), part => Assert.DoesNotMatch(Inches(), part.Rule));
        Assert.All(planned.Film!.Rolls, roll => AssertMark(roll.Offer.Width, 500));
        Assert.All(planned.Rules.Where(rule => !rule.Given), rule => Assert.DoesNotMatch(Inches(), rule.Text + " " + rule.Says));
        Assert.All(planned.Diagnostics, found => Assert.DoesNotMatch(Inches(), $"{found.Message} {found.Accepted}"));
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void Steps_speak_of_millimetres_alone(int plan)
    {
        foreach (BuildStep step in Bare[plan].Value.Steps!.Steps)
        {
            IEnumerable<Phrase> said = [step.Title, step.Purpose, .. step.Parts.SelectMany(part => part.Does), .. step.Good, .. step.Tasks.Select(task => task.What)];
            Assert.All(said, phrase => Assert.DoesNotMatch(Inches(), phrase.ToString()));
            Assert.All(step.Materials, line => Assert.DoesNotMatch(Inches(), line.Size));
        }
    }

    [Fact]
    public void What_a_random_metric_plan_leaves_out_lies_on_marks() => Generate.ValidPlan.Where(plan => plan.Units == UnitSystem.Metric).Sample(plan =>
    {
        PlannedTunnel planned = TunnelWorks.Plan(new PlanReading(plan, false, []), null, CutEffort.Least, WorkDepth.Orders);
        foreach (RuleUsed rule in planned.Rules.Where(rule => !rule.Given && !rule.Path.EndsWith(".centre", StringComparison.Ordinal))) AssertOnMark(rule.Path, rule.Text);
        foreach (Diagnostic found in planned.Diagnostics.Where(found => found.Severity == Severity.Assumption))
        {
            // A bend between the tightest and the widest that fit lies where it can.
            if (found.Path.EndsWith("Radius", StringComparison.Ordinal)) Assert.Matches(WholeMillimetres(), found.Accepted);
            else AssertOnMark(found.Path, found.Accepted ?? "");
            Assert.DoesNotMatch(Inches(), found.Message);
        }
    }, iter: 60);

    private static void AssertNotWeaker(Func<UnitSystem, (Usual<Length> Outside, Usual<Length> Wall)> tube)
    {
        (RoundTube us, RoundTube metric) = (Of(UnitSystem.UsCustomary), Of(UnitSystem.Metric));
        Assert.True(metric.Area >= us.Area);
        Assert.True(metric.SecondMoment.Metres4 / metric.Outside.Metres >= us.SecondMoment.Metres4 / us.Outside.Metres);

        RoundTube Of(UnitSystem units) => new(tube(units).Outside.Value, tube(units).Wall.Value);
    }

    private static void AssertMark(Length length, double stepMm) =>
        Assert.True(Math.Abs((length.Millimetres / stepMm) - Math.Round(length.Millimetres / stepMm)) < 1e-6, $"{length.Millimetres} mm");

    /// <summary>Lengths in a text are whole marks: of 50 mm from 100 mm on, of 5 mm from 20 mm on, of 1 mm from 2 mm on; tubes, screws and film have sizes of their own.</summary>
    private static void AssertOnMark(string path, string text)
    {
        Assert.DoesNotMatch(Inches(), text);
        foreach (Match match in LengthInMm().Matches(text))
        {
            double mm = double.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture);
            if (path.Contains("ube", StringComparison.Ordinal) && (Iso4200Mm.Contains(mm) || En10219Mm.Contains(mm))) continue;
            if (path.EndsWith("ScrewDiameter", StringComparison.Ordinal) && mm is 4.2 or 5.5) continue;
            double step = mm >= 100 ? 50 : mm >= 20 ? 5 : mm >= 2 ? 1 : 0.05;
            Assert.True(Math.Abs((mm / step) - Math.Round(mm / step)) < 1e-9, $"{path}: {text}");
        }
    }

    [GeneratedRegex(@"\d[""″]|\d ?'|\b(in|ft|mil|lb|ga)\b(?<=\d (in|ft|mil|lb|ga))(?! the)|#\d|\b[124]x\d+\b(?! mm)")]
    private static partial Regex Inches();

    [GeneratedRegex(@"^\d+ mm$")]
    private static partial Regex WholeMillimetres();

    [GeneratedRegex(@"(?<![x\d.]|x )(\d+(?:\.\d+)?) mm\b")]
    private static partial Regex LengthInMm();
}
