using System.Collections.Immutable;
using CsCheck;
using Hoopwright.Diagnostics;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Tests.Layout;

public sealed class MeasuredBowTests
{
    private const double SixteenthFt = 1 / 192.0;

    private static readonly Length Tube = Length.FromInches(1.66);

    // The equation of the circle is the outside reference here.
    [Theory]
    [InlineData(6)]
    [InlineData(7.5)]
    [InlineData(13)]
    [InlineData(15)]
    [InlineData(17.25)]
    public void A_half_circle_measured_at_one_foot_stations_comes_back_within_a_sixteenth(double radiusFt)
    {
        BowShape bow = Shape(2 * radiusFt, Circle(radiusFt, radiusFt, 0, _ => 0));
        AssertOnCircle(bow, radiusFt, radiusFt, 0, SixteenthFt);
        Assert.Equal(Math.PI * radiusFt, bow.FilmLine.Length.Feet, 1e-6);
    }

    [Theory]
    [InlineData(10, 14, 3)]
    [InlineData(13, 13.5, 4)]
    public void A_flatter_arc_on_legs_comes_back_within_a_sixteenth_and_its_legs_stay_straight(double halfSpanFt, double radiusFt, double legFt)
    {
        double centreFt = legFt - Math.Sqrt((radiusFt * radiusFt) - (halfSpanFt * halfSpanFt));
        BowShape bow = Shape(2 * halfSpanFt, Circle(halfSpanFt, radiusFt, centreFt, _ => 0));
        AssertOnCircle(bow, halfSpanFt, radiusFt, centreFt, SixteenthFt, overFt: legFt);
        Assert.Equal(legFt, bow.SideHeight.Feet, 1e-9);
        Assert.Equal(0, bow.FilmLine.PointAt(Length.FromFeet(legFt / 2)).Across.Metres, 1e-9);
    }

    [Fact]
    public void Heights_read_to_a_sixteenth_come_back_within_an_eighth_and_can_be_bent() =>
        Gen.Select(Gen.Double[6, 18], Gen.Double[-0.5, 0.5].Array[64]).Sample((radiusFt, noise) =>
        {
            // Whole feet of radius, so that the stations end at the ground line.
            radiusFt = Math.Round(radiusFt);
            BowShape bow = Shape(2 * radiusFt, Circle(radiusFt, radiusFt, 0, i => noise[i] * SixteenthFt));
            AssertOnCircle(bow, radiusFt, radiusFt, 0, 2 * SixteenthFt);
        });

    [Fact]
    public void Heights_to_the_middle_stand_for_both_sides()
    {
        ImmutableArray<PlanePoint> whole = Circle(10, 10, 0, _ => 0);
        BowShape full = Shape(20, whole), half = Shape(20, whole[..11]);
        Assert.True(full.FilmLine.Matches(half.FilmLine, Length.FromMetres(1e-9)));
        Assert.True(half.FilmLine.Matches(half.FilmLine.Mirrored(Length.FromFeet(10)), Length.FromMetres(1e-9)));
    }

    [Fact]
    public void A_leg_may_be_given_by_two_heights_at_the_ground_line()
    {
        ImmutableArray<PlanePoint> arc = Circle(10, 10, 3, _ => 0);
        BowShape without = Shape(20, arc), with = Shape(20, [At(0, 0), .. arc, At(20, 0)]);
        Assert.True(without.FilmLine.Matches(with.FilmLine, Length.FromMetres(1e-9)));
        Assert.Equal((Math.PI * 10) + 6, with.FilmLine.Length.Feet, 1e-6);
    }

    [Theory]
    [InlineData(26, 4, 12)]
    [InlineData(20, 3, 11)]
    [InlineData(30, 5, 13)]
    public void A_gothic_bow_measured_at_one_foot_stations_keeps_its_ridge(double spanFt, double sideFt, double peakFt)
    {
        BowShape gothic = BowShape.Of(
            new BowRequest
            {
                Kind = BowKind.Gothic,
                Span = Length.FromFeet(spanFt),
                SideHeight = Length.FromFeet(sideFt),
                PeakHeight = Length.FromFeet(peakFt),
                ShoulderRadius = Length.FromFeet(2.5),
                ArchRadius = Length.FromFeet(spanFt),
                TubeOutside = Tube,
            },
            UnitSystem.UsCustomary).Shape!;
        BowShape fitted = Shape(spanFt, [.. Enumerable.Range(0, (int)spanFt + 1).Select(foot => new PlanePoint(Length.FromFeet(foot), gothic.FilmLine.HeightAt(Length.FromFeet(foot))!.Value))]);
        Assert.Equal(gothic.FilmLine.SlopeAt(Length.FromFeet(spanFt / 2))!.Value.Degrees, fitted.FilmLine.SlopeAt(Length.FromFeet(spanFt / 2))!.Value.Degrees, 1e-6);
        for (double acrossFt = 0.5; acrossFt < spanFt; acrossFt++)
            // Past the shoulder bend, of which a foot's stations see but two heights.
            if (Math.Min(acrossFt, spanFt - acrossFt) > 4)
                Assert.Equal(gothic.FilmLine.HeightAt(Length.FromFeet(acrossFt))!.Value.Feet, fitted.FilmLine.HeightAt(Length.FromFeet(acrossFt))!.Value.Feet, SixteenthFt);
    }

    [Fact]
    public void Straight_runs_that_go_over_into_an_arc_stay_straight()
    {
        // Rafters at 30 degrees tangent to a crown of 8 ft radius about (12, 0), to x = 12 − 8 sin 30.
        double slope = Math.PI / 6, joinFt = 12 - (8 * Math.Sin(slope)), joinUpFt = 8 * Math.Cos(slope);
        double Height(double x)
        {
            double across = x > 12 ? 24 - x : x;
            return across <= joinFt ? joinUpFt - ((joinFt - across) * Math.Tan(slope)) : Math.Sqrt(64 - ((across - 12) * (across - 12)));
        }

        BowShape bow = Shape(24, [.. Enumerable.Range(0, 25).Select(foot => At(foot, Height(foot)))]);
        for (double x = 0.25; x < 24; x += 0.25) Assert.Equal(Height(x), bow.FilmLine.HeightAt(Length.FromFeet(x))!.Value.Feet, SixteenthFt);
        Assert.Equal(joinUpFt - (joinFt * Math.Tan(slope)), bow.SideHeight.Feet, 1e-9);
    }

    [Fact]
    public void Points_that_turn_one_way_give_a_curve_that_turns_one_way() =>
        Gen.Select(Gen.Double[0.05, 1].Array[3, 14], Gen.Double[0.01, 1].Array[15], Gen.Double[1, 80]).Sample((steps, drops, firstDeg) =>
        {
            // Any falling row of chord directions makes a convex table.
            double fall = (firstDeg + 70) / drops.Take(steps.Length).Sum(), direction = firstDeg;
            var at = new PlaneVector(0, 0);
            var points = ImmutableArray.Create(at);
            for (int i = 0; i < steps.Length; i++)
            {
                at += PlaneVector.Polar(steps[i], direction * Math.PI / 180);
                points = points.Add(at);
                direction -= drops[i] * fall;
            }

            PlanePath curve = SmoothCurve.Through(points);
            Assert.All(curve.Segments, segment => Assert.True(segment.Turned.Radians <= 1e-9));
            for (int i = 1; i < curve.Segments.Length; i++)
            {
                double corner = Math.IEEERemainder((curve.Segments[i].DirectionAt(Length.Zero) - curve.Segments[i - 1].DirectionAt(curve.Segments[i - 1].Length)).Radians, Math.Tau);
                Assert.True(corner <= 1e-7, $"turns back {corner}");
            }
            // Every point is a joint of the curve.
            PlaneVector[] joints = [.. curve.Segments.Select(segment => segment.StartM), curve.Segments[^1].EndM];
            Assert.All(points, point => Assert.Contains(joints, joint => (joint - point).SizeM < 1e-9));
        });

    [Theory]
    [InlineData(0.5, 1.66, Severity.Warning, "bow.offsets.turns-back")]
    [InlineData(-0.25, 1.66, Severity.Warning, "bow.offsets.turns-back")]
    [InlineData(2, 3.5, Severity.Error, "bow.bend-too-tight")]
    public void A_slipped_reading_is_named_with_the_height_its_neighbours_give(double slipFt, double tubeIn, Severity severity, string code)
    {
        ImmutableArray<PlanePoint> right = Circle(10, 10, 0, _ => 0);
        foreach (int at in (int[])[5, 7, 10, 16])
        {
            BowRequest slipped = Request(20, right.SetItem(at, right[at] with { Up = right[at].Up + Length.FromFeet(slipFt) })) with { TubeOutside = Length.FromInches(tubeIn) };
            BowOutcome outcome = BowShape.Of(slipped, UnitSystem.UsCustomary);
            Diagnostic found = Assert.Single(outcome.Diagnostics);
            Assert.Equal((code, severity, $"offsets[{at}].height"), (found.Code, found.Severity, found.Path));
            Length named = QuantityText.ReadLength(found.Accepted!.Split(" by")[0]["about ".Length..]).Value;
            Assert.Equal(right[at].Up.Feet, named.Feet, 2 * SixteenthFt);
            Assert.Empty(Outcome(20, right.SetItem(at, right[at] with { Up = named })).Diagnostics);
        }
    }

    [Fact]
    public void Faulty_tables_are_refused_with_every_fault_named()
    {
        Refused(10, [], "bow.offsets.too-few");
        Refused(10, [.. Enumerable.Range(0, 1001).Select(i => At(i / 100.0, 5))], "bow.offsets.too-many");
        Refused(10, [At(0, 0), At(6, 5), At(5, 6), At(10, 0)], "bow.offsets.order");
        Refused(10, [At(0, 0), At(5, 5), At(5, 5), At(10, 0)], "bow.offsets.order");
        Refused(10, [At(1, 0), At(5, 5), At(10, 0)], "bow.offsets.start");
        Assert.Equal("10' 0\" or 5' 0\"", Refused(10, [At(0, 0), At(5, 5), At(9, 0)], "bow.offsets.width").Accepted);
        Assert.Equal("offsets[1].height", Refused(10, [At(0, 0), At(5, -5), At(10, 0)], "bow.offsets.below-ground").Path);
        BowOutcome outcome = Outcome(10, [At(1, 0), At(6, -5), At(5, 6), At(9, 0)]);
        Assert.Equal(["bow.offsets.start", "bow.offsets.below-ground", "bow.offsets.order", "bow.offsets.width"], outcome.Diagnostics.Select(found => found.Code));
    }

    [Fact]
    public void A_peak_that_the_table_does_not_have_is_warned_of()
    {
        BowOutcome outcome = BowShape.Of(Request(20, Circle(10, 10, 0, _ => 0)) with { PeakHeight = Length.FromFeet(12) }, UnitSystem.UsCustomary);
        Assert.Equal("bow.offsets.peak-differs", Assert.Single(outcome.Diagnostics).Code);
        Assert.Equal(10, outcome.Shape!.PeakHeight.Feet, 1e-6);
    }

    private static ImmutableArray<PlanePoint> Circle(double halfSpanFt, double radiusFt, double centreFt, Func<int, double> errorFt)
    {
        double spanFt = 2 * halfSpanFt;
        IEnumerable<double> stations = Enumerable.Range(0, (int)Math.Floor(spanFt) + 1).Select(foot => (double)foot);
        if (spanFt > Math.Floor(spanFt)) stations = stations.Append(spanFt);
        return [.. stations.Select((x, i) => At(x, Math.Max(0, centreFt + Math.Sqrt(Math.Max(0, (radiusFt * radiusFt) - ((x - halfSpanFt) * (x - halfSpanFt)))) + (x == 0 || x == spanFt ? 0 : errorFt(i)))))];
    }

    private static void AssertOnCircle(BowShape bow, double centreAcrossFt, double radiusFt, double centreUpFt, double withinFt, double overFt = -1)
    {
        for (int step = 0; step <= 1000; step++)
        {
            PlanePoint at = bow.FilmLine.PointAt(bow.FilmLine.Length * step / 1000);
            if (at.Up.Feet <= overFt) continue;
            double distanceFt = Math.Sqrt(Math.Pow(at.Across.Feet - centreAcrossFt, 2) + Math.Pow(at.Up.Feet - centreUpFt, 2));
            Assert.Equal(radiusFt, distanceFt, withinFt);
        }
    }

    private static PlanePoint At(double acrossFt, double upFt) => new(Length.FromFeet(acrossFt), Length.FromFeet(upFt));

    private static BowRequest Request(double spanFt, ImmutableArray<PlanePoint> points) =>
        new() { Kind = BowKind.Offsets, Span = Length.FromFeet(spanFt), SideHeight = Length.Zero, Offsets = points, TubeOutside = Tube };

    private static BowOutcome Outcome(double spanFt, ImmutableArray<PlanePoint> points) => BowShape.Of(Request(spanFt, points), UnitSystem.UsCustomary);

    private static BowShape Shape(double spanFt, ImmutableArray<PlanePoint> points)
    {
        BowOutcome outcome = Outcome(spanFt, points);
        return outcome.Shape ?? throw new InvalidOperationException(string.Join("\n", outcome.Diagnostics));
    }

    private static Diagnostic Refused(double spanFt, ImmutableArray<PlanePoint> points, string code)
    {
        BowOutcome outcome = Outcome(spanFt, points);
        Assert.Null(outcome.Shape);
        return Assert.Single(outcome.Diagnostics, found => found.Code == code);
    }
}
