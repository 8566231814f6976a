using CsCheck;
using Hoopwright.Geometry;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Geometry;

public sealed class PlanePathTests
{
    private const string Handbook = "Bronstein and Semendjajew, Taschenbuch der Mathematik, circle segment and sector; formulas from memory";

    [Fact]
    public void An_arc_has_length_chord_and_area_of_the_handbook()
    {
        Gen.Select(Gen.Double[0.5, 30], Gen.Double[0.05, 3.1]).Sample((radiusM, sweepRad) =>
        {
            // Symmetric about the upright, walked from left to right over the top.
            var arc = new ArcSegment(new PlanePoint(Length.Zero, Length.Zero), Length.FromMetres(radiusM),
                Angle.FromRadians((Math.PI / 2) + (sweepRad / 2)), Angle.FromRadians(-sweepRad));
            PlanePath path = PlanePath.Of(arc);
            Published.Check(Handbook, "arc length rα", radiusM * sweepRad, path.Length.Metres, 1e-9, "double arithmetic");
            Published.Check(Handbook, "chord 2r sin(α/2)", 2 * radiusM * Math.Sin(sweepRad / 2), arc.Chord.Metres, 1e-9, "double arithmetic");
            double segmentM2 = radiusM * radiusM / 2 * (sweepRad - Math.Sin(sweepRad));
            Published.Check(Handbook, "segment area r²(α − sin α)/2", segmentM2, path.AreaAbove(arc.Start.Up).SquareMetres, 1e-9 * radiusM * radiusM, "double arithmetic");
        });
    }

    [Fact]
    public void A_path_moved_in_loses_the_turned_angle_times_the_distance()
    {
        // Steiner's formula for parallel curves of convex figures.
        Gen.Select(Gen.Double[2, 9], Gen.Double[0.01, 0.5]).Sample((radiusM, inM) =>
        {
            PlanePath path = PlanePath.Of(
                new LineSegment(At(0, 0), At(0, 1)),
                new ArcSegment(At(radiusM, 1), Length.FromMetres(radiusM), Angle.FromDegrees(180), Angle.FromDegrees(-180)),
                new LineSegment(At(2 * radiusM, 1), At(2 * radiusM, 0)));
            PlanePath? moved = path.Offset(Length.FromMetres(inM), PathSide.Right);
            Assert.NotNull(moved);
            Assert.Equal(path.Length.Metres - (Math.PI * inM), moved.Length.Metres, 1e-9);
        });
    }

    [Fact]
    public void A_part_and_its_rest_make_the_whole()
    {
        PlanePath path = PlanePath.Of(new LineSegment(At(0, 0), At(0, 2)), new ArcSegment(At(3, 2), Length.FromMetres(3), Angle.FromDegrees(180), Angle.FromDegrees(-90)));
        Gen.Double[0.01, 0.99].Sample(part =>
        {
            Length at = path.Length * part;
            Assert.Equal(path.Length.Metres, path.Between(Length.Zero, at)!.Length.Metres + path.Between(at, path.Length)!.Length.Metres, 1e-9);
        });
    }

    [Fact]
    public void A_chain_with_a_gap_is_our_own_mistake() =>
        Assert.Throws<ArgumentException>(() => PlanePath.Of(new LineSegment(At(0, 0), At(0, 1)), new LineSegment(At(0.1, 1), At(1, 1))));

    [Fact]
    public void A_half_circle_is_met_where_its_equation_says() =>
        Gen.Select(Gen.Double[0.5, 30], Gen.Double[-0.999, 0.999]).Sample((radiusM, part) =>
        {
            PlanePath path = HalfCircle(radiusM);
            double acrossM = radiusM * part, upM = radiusM * Math.Sqrt(1 - (part * part));
            Assert.Equal(upM, path.HeightAt(Length.FromMetres(acrossM))!.Value.Metres, 1e-9 * radiusM);
            // The slope of a circle is -x/y.
            Assert.Equal(Math.Atan2(-acrossM, upM), path.SlopeAt(Length.FromMetres(acrossM))!.Value.Radians, 1e-9);
            double halfChordM = radiusM * Math.Sqrt(1 - (part * part));
            Assert.Equal(
                [-halfChordM, halfChordM],
                path.CrossingsAtHeight(Length.FromMetres(Math.Abs(part) * radiusM)).Select(crossing => crossing.Point.Across.Metres),
                (one, other) => Math.Abs(one - other) < 1e-9 * radiusM);
            Assert.Null(path.HeightAt(Length.FromMetres(radiusM * 1.01)));
            Assert.Empty(path.CrossingsAtHeight(Length.FromMetres(radiusM * 1.01)));
        });

    [Fact]
    public void What_is_met_within_a_hair_is_met_once()
    {
        // A tape cannot tell a tenth of a nanometre: neither can a foot, a peak or the end of a rafter be missed by it.
        Length hair = Length.FromMetres(1e-10), radius = Length.FromMetres(3);
        PlanePath half = HalfCircle(3);
        foreach (Length off in (Length[])[-hair, Length.Zero, hair])
        {
            // Where a circle is touched the height changes with the root of what is missed.
            Assert.Equal(0, half.HeightAt(radius + off)!.Value.Metres, 1e-4);
            Assert.Equal(0, half.HeightAt(-radius + off)!.Value.Metres, 1e-4);
            Assert.Equal(0, Assert.Single(half.CrossingsAtHeight(radius + off).Take(1)).Point.Across.Metres, 1e-4);
            PlanePath rafter = PlanePath.Of(new LineSegment(At(0, 1), At(2, 2)));
            Assert.Equal(1, rafter.HeightAt(off)!.Value.Metres, 1e-8);
            Assert.Equal(2, rafter.HeightAt(Length.FromMetres(2) + off)!.Value.Metres, 1e-8);
            Assert.Equal(0, Assert.Single(rafter.CrossingsAtHeight(Length.FromMetres(1) + off)).Point.Across.Metres, 1e-8);
            Assert.Equal(2, Assert.Single(rafter.CrossingsAtHeight(Length.FromMetres(2) + off)).Point.Across.Metres, 1e-8);
        }
        Assert.Null(half.HeightAt(radius + Length.FromMetres(1e-6)));
        Assert.Null(PlanePath.Of(new LineSegment(At(0, 1), At(2, 2))).HeightAt(Length.FromMetres(-1e-6)));
    }

    [Fact]
    public void An_upright_leg_has_a_range_of_heights()
    {
        PlanePath path = LegsAndHalfCircle(3, 2);
        Assert.Equal(new HeightRange(Length.Zero, Length.FromMetres(2)), path.HeightRangeAt(Length.Zero));
        Assert.Equal(5, path.HeightAt(Length.FromMetres(3))!.Value.Metres, 1e-12);
        Assert.Equal(90, path.SlopeAt(Length.Zero)!.Value.Degrees, 1e-6);
    }

    [Fact]
    public void Points_and_directions_agree_with_the_distance_walked() =>
        Gen.Double[0.001, 0.999].Sample(part =>
        {
            PlanePath path = LegsAndHalfCircle(3, 2);
            Length at = path.Length * part, step = Length.FromMetres(1e-6);
            PlanePoint here = path.PointAt(at - step), there = path.PointAt(at + step);
            // The chord of a short step points along the path; a joint of this path is tangent.
            double chordRad = Math.Atan2((there.Up - here.Up).Metres, (there.Across - here.Across).Metres);
            Assert.Equal(0, Math.IEEERemainder(chordRad - path.DirectionAt(at).Radians, Math.Tau), 1e-5);
            Assert.Equal(2e-6, Math.Sqrt(Math.Pow((there.Up - here.Up).Metres, 2) + Math.Pow((there.Across - here.Across).Metres, 2)), 1e-12);
        });

    [Fact]
    public void Bounds_hold_every_point_and_touch_four_of_them() =>
        Gen.Select(Gen.Double[-3.1, 3.1], Gen.Double[-6, 6]).Where((_, sweep) => Math.Abs(sweep) > 0.01).Sample((startRad, sweepRad) =>
        {
            PlanePath path = PlanePath.Of(new ArcSegment(At(1, 2), Length.FromMetres(3), Angle.FromRadians(startRad), Angle.FromRadians(sweepRad)));
            PlaneBounds bounds = path.Bounds();
            PlanePoint[] points = [.. Enumerable.Range(0, 5001).Select(i => path.PointAt(path.Length * i / 5000))];
            Assert.Equal(points.Min(point => point.Across.Metres), bounds.Least.Across.Metres, 1e-5);
            Assert.Equal(points.Max(point => point.Across.Metres), bounds.Most.Across.Metres, 1e-5);
            Assert.Equal(points.Min(point => point.Up.Metres), bounds.Least.Up.Metres, 1e-5);
            Assert.Equal(points.Max(point => point.Up.Metres), bounds.Most.Up.Metres, 1e-5);
            Assert.Equal(points.Max(point => point.Across.Metres) - points.Min(point => point.Across.Metres), bounds.Width.Metres, 2e-5);
            Assert.Equal(points.Max(point => point.Up.Metres) - points.Min(point => point.Up.Metres), bounds.Height.Metres, 2e-5);
        });

    [Fact]
    public void Mirrored_twice_and_reversed_twice_it_is_the_same_path() =>
        Shapes.Sample(path =>
        {
            Length hair = Length.FromMetres(1e-9), about = Length.FromMetres(1.7);
            Assert.True(path.Matches(path.Mirrored(about).Mirrored(about), hair));
            Assert.True(path.Matches(path.Reversed().Reversed(), hair));
            Assert.Equal(path.AreaAbove(Length.Zero).SquareMetres, path.Mirrored(about).AreaAbove(Length.Zero).SquareMetres, 1e-9);
            Assert.Equal(path.AreaAbove(Length.Zero).SquareMetres, -path.Reversed().AreaAbove(Length.Zero).SquareMetres, 1e-9);
        });

    [Fact]
    public void A_path_moved_in_and_out_again_comes_back() =>
        Gen.Select(Shapes, Gen.Double[0.001, 0.2]).Sample((path, byM) =>
        {
            var by = Length.FromMetres(byM);
            PlanePath back = path.Offset(by, PathSide.Right)!.Offset(by, PathSide.Left)!;
            Assert.True(path.Matches(back, Length.FromMetres(1e-8)));
        });

    [Fact]
    public void At_a_square_corner_the_sides_are_cut_back_inside_and_run_on_outside()
    {
        PlanePath corner = PlanePath.Of(new LineSegment(At(0, 0), At(0, 2)), new LineSegment(At(0, 2), At(3, 2)));
        PlanePath inside = corner.Offset(Length.FromMetres(0.5), PathSide.Right)!, outside = corner.Offset(Length.FromMetres(0.5), PathSide.Left)!;
        Assert.Equal(5 - 1, inside.Length.Metres, 1e-12);
        Assert.Equal(5 + 1, outside.Length.Metres, 1e-12);
        Assert.Equal(At(0.5, 1.5), inside.Segments[0].End);
    }

    [Fact]
    public void A_bend_or_a_side_that_is_used_up_has_no_offset()
    {
        Assert.Null(HalfCircle(1).Offset(Length.FromMetres(1), PathSide.Right));
        PlanePath notch = PlanePath.Of(new LineSegment(At(0, 0), At(0, 2)), new LineSegment(At(0, 2), At(0.5, 2)), new LineSegment(At(0.5, 2), At(0.5, 0)));
        Assert.Null(notch.Offset(Length.FromMetres(0.3), PathSide.Right));
    }

    [Fact]
    public void Arcs_on_one_circle_that_turn_on_are_one_bend()
    {
        PlanePath path = LegsAndHalfCircle(3, 2);
        PlanePath halves = path.Between(Length.Zero, path.Length / 3)!.Then(path.Between(path.Length / 3, path.Length)!);
        PathBend bend = Assert.Single(halves.Bends());
        Assert.Equal(-180, bend.Turned.Degrees, 1e-9);
        Assert.Equal(2, bend.From.Metres, 1e-9);
        Assert.Equal(2 + (3 * Math.PI), bend.To.Metres, 1e-9);
    }

    [Fact]
    public void A_drawn_outline_keeps_within_its_tolerance_and_on_the_path() =>
        Gen.Select(Gen.Double[0.5, 20], Gen.Double[0.0001, 0.05]).Sample((radiusM, toleranceM) =>
        {
            var outline = HalfCircle(radiusM).Outline(Length.FromMetres(toleranceM));
            Assert.All(outline, point => Assert.Equal(radiusM, Radius(point), 1e-9));
            for (int i = 1; i < outline.Length; i++)
            {
                var middle = new PlanePoint((outline[i - 1].Across + outline[i].Across) / 2, (outline[i - 1].Up + outline[i].Up) / 2);
                Assert.InRange(radiusM - Radius(middle), 0, toleranceM + 1e-12);
            }
            // One chord fewer would leave the arc by more: the rise of a chord over half the angle α is r(1 − cos α) (as above, the handbook's circle segment).
            if (outline.Length > 2) Assert.True(radiusM * (1 - Math.Cos(Math.PI / 2 / (outline.Length - 2))) > toleranceM, $"{outline.Length - 1} chords of {radiusM} m within {toleranceM} m");
        });

    private static Gen<PlanePath> Shapes { get; } =
        from legM in Gen.Double[0.5, 3]
        from radiusM in Gen.Double[0.5, 4]
        from turnRad in Gen.Double[0.2, 1.4]
        from rafterM in Gen.Double[1, 5]
        select PlanePath.Of(LegBendRafter(legM, radiusM, turnRad, rafterM));

    private static IEnumerable<PathSegment> LegBendRafter(double legM, double radiusM, double turnRad, double rafterM)
    {
        var leg = new LineSegment(At(0, 0), At(0, legM));
        var bend = new ArcSegment(At(radiusM, legM), Length.FromMetres(radiusM), Angle.FromDegrees(180), Angle.FromRadians(-turnRad));
        double slopeRad = (Math.PI / 2) - turnRad;
        PlanePoint from = bend.End, ridge = new(from.Across + Length.FromMetres(rafterM * Math.Cos(slopeRad)), from.Up + Length.FromMetres(rafterM * Math.Sin(slopeRad)));
        // Down the other side at the same slope: a ridge corner.
        PlanePoint eave = new(ridge.Across + Length.FromMetres(rafterM * Math.Cos(slopeRad)), from.Up);
        return [leg, bend, new LineSegment(from, ridge), new LineSegment(ridge, eave)];
    }

    private static PlanePath HalfCircle(double radiusM) =>
        PlanePath.Of(new ArcSegment(At(0, 0), Length.FromMetres(radiusM), Angle.FromDegrees(180), Angle.FromDegrees(-180)));

    private static PlanePath LegsAndHalfCircle(double radiusM, double legM) => PlanePath.Of(
        new LineSegment(At(0, 0), At(0, legM)),
        new ArcSegment(At(radiusM, legM), Length.FromMetres(radiusM), Angle.FromDegrees(180), Angle.FromDegrees(-180)),
        new LineSegment(At(2 * radiusM, legM), At(2 * radiusM, 0)));

    private static double Radius(PlanePoint point) => Math.Sqrt(Math.Pow(point.Across.Metres, 2) + Math.Pow(point.Up.Metres, 2));

    private static PlanePoint At(double acrossM, double upM) => new(Length.FromMetres(acrossM), Length.FromMetres(upM));
}
