using CsCheck;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Layout;

public sealed class BowShapeTests
{
    private static readonly Length Tube = Length.FromInches(1.66);

    [Fact]
    public void A_semicircle_on_legs_is_half_a_circle_and_two_legs()
    {
        BowShape bow = Shape(Round(20, 4, 14));
        Assert.Equal((Math.PI * 10) + 8, bow.FilmLine.Length.Feet, 1e-9);
        Assert.Equal((Math.PI * (10 - (0.83 / 12))) + 8, bow.CentreLine.Length.Feet, 1e-9);
    }

    [Fact]
    public void A_flat_round_bow_is_the_handbooks_segment()
    {
        // Machinery's Handbook, circular segments: r = (c² + 4h²)/8h, l = r·α, α = 2 arctan... (formulas from memory).
        Gen.Select(Gen.Double[10, 36], Gen.Double[0.25, 0.98]).Sample((spanFt, part) =>
        {
            double riseFt = spanFt / 2 * part;
            double radiusFt = ((spanFt * spanFt) + (4 * riseFt * riseFt)) / (8 * riseFt);
            double alpha = 2 * Math.Asin(Math.Min(1, spanFt / (2 * radiusFt)));
            BowShape bow = Shape(Round(spanFt, 3, 3 + riseFt));
            Published.Check("Machinery's Handbook, circular segments, from memory", "arc length", radiusFt * alpha, bow.FilmLine.Length.Feet - 6, 1e-9, "double arithmetic");
            Assert.Equal(3 + riseFt, bow.PeakHeight.Feet, 1e-9);
        });
    }

    [Fact]
    public void Every_shape_mirrors_onto_itself() =>
        Shapes.Sample(request =>
        {
            if (BowShape.Of(request, UnitSystem.UsCustomary).Shape is not { } bow) return;
            Assert.True(bow.FilmLine.Matches(bow.FilmLine.Mirrored(request.Span / 2), Length.FromMillimetres(0.001)));
        });

    [Fact]
    public void The_film_line_runs_from_ground_to_ground_through_the_peak() =>
        Shapes.Sample(request =>
        {
            if (BowShape.Of(request, UnitSystem.UsCustomary).Shape is not { } bow) return;
            Assert.Equal(0, bow.FilmLine.Start.Across.Metres, 1e-9);
            Assert.Equal(request.Span.Metres, bow.FilmLine.End.Across.Metres, 1e-9);
            Assert.Equal(0, bow.FilmLine.End.Up.Metres, 1e-9);
            Assert.Equal(request.PeakHeight!.Value.Metres, bow.FilmLine.HeightAt(request.Span / 2)!.Value.Metres, 1e-9);
            // Joints are smooth everywhere but at the ridge, and at the legs of a round bow without shoulder.
            if (request.Kind == BowKind.Round && request.ShoulderRadius is null) return;
            for (int index = 1; index < bow.FilmLine.Segments.Length; index++)
            {
                double turn = Math.IEEERemainder(Direction(bow.FilmLine.Segments[index], atStart: true) - Direction(bow.FilmLine.Segments[index - 1], atStart: false), Math.Tau);
                bool atRidge = Math.Abs(bow.FilmLine.Segments[index].Start.Across.Metres - (request.Span.Metres / 2)) < 1e-9;
                Assert.True(atRidge || Math.Abs(turn) < 1e-7, $"{request.Kind} turns {turn} at a joint");
            }
        });

    // The figure is built from 3-4-5 triangles, so that every radius and angle is known beforehand.
    [Fact]
    public void A_round_bow_with_shoulders_is_the_figure_it_was_built_from()
    {
        // r = 1, R = 6, centres 5 apart: 4 across and 3 up.
        double turn = Math.Atan2(3, 4);
        BowShape bow = Shape(Round(10, 2, 5) with { ShoulderRadius = Length.FromFeet(1) });
        Assert.Equal(2 * (2 + turn + (6 * ((Math.PI / 2) - turn))), bow.FilmLine.Length.Feet, 1e-9);
        Assert.Equal([1, 6, 1], bow.FilmLine.Bends().Select(bend => Math.Round(bend.Radius.Feet, 9)));
    }

    [Fact]
    public void A_gothic_bow_is_the_figure_it_was_built_from()
    {
        // r = 2, R = 12, centres 10 apart: 8 across and 6 down; the ridge 60 degrees up the long arc, 6 left of its centre.
        double turn = Math.Atan2(3, 4), ridge = Math.PI / 3, riseFt = (12 * Math.Sin(ridge)) - 6;
        BowShape bow = Shape(new BowRequest
        {
            Kind = BowKind.Gothic,
            Span = Length.FromFeet(8),
            SideHeight = Length.FromFeet(3),
            PeakHeight = Length.FromFeet(3 + riseFt),
            ShoulderRadius = Length.FromFeet(2),
            ArchRadius = Length.FromFeet(12),
            TubeOutside = Tube,
        });
        Assert.Equal(2 * (3 + (2 * turn) + (12 * (ridge - turn))), bow.FilmLine.Length.Feet, 1e-9);
        Assert.Equal(90 - 60, bow.FilmLine.SlopeAt(Length.FromFeet(4))!.Value.Degrees, 1e-9);
    }

    [Fact]
    public void A_gothic_bow_as_high_as_its_arcs_reach_is_the_equilateral_arch()
    {
        // Two sectors of 60 degrees less the triangle they share: area R²(π/3 − √3/4), each arc Rπ/3. Mensuration of plane
        // figures, Bronstein and Semendjajew, Taschenbuch der Mathematik, from memory.
        const double SpanFt = 14;
        BowShape bow = Shape(new BowRequest
        {
            Kind = BowKind.Gothic,
            Span = Length.FromFeet(SpanFt),
            SideHeight = Length.Zero,
            PeakHeight = Length.FromFeet(SpanFt * Math.Sqrt(3) / 2),
            ShoulderRadius = Length.FromFeet(2),
            ArchRadius = Length.FromFeet(SpanFt),
            TubeOutside = Tube,
        });
        Assert.Equal(2 * SpanFt * Math.PI / 3, bow.FilmLine.Length.Feet, 1e-9);
        Assert.Equal(SpanFt * SpanFt * ((Math.PI / 3) - (Math.Sqrt(3) / 4)), bow.FilmLine.AreaAbove(Length.Zero).SquareFeet, 1e-8);
    }

    [Fact]
    public void A_peaked_bow_with_rafters_at_45_degrees_is_the_figure_it_was_built_from()
    {
        // From the end of the shoulder at (r − r/√2, h + r/√2) the rafter rises as much as it runs.
        const double R = 2, W = 10, H = 4;
        double runFt = W - R + (R / Math.Sqrt(2)), peakFt = H + (R / Math.Sqrt(2)) + runFt;
        BowShape bow = Shape(new BowRequest
        {
            Kind = BowKind.Peaked,
            Span = Length.FromFeet(2 * W),
            SideHeight = Length.FromFeet(H),
            PeakHeight = Length.FromFeet(peakFt),
            ShoulderRadius = Length.FromFeet(R),
            TubeOutside = Tube,
        });
        Assert.Equal(2 * (H + (R * Math.PI / 4) + (runFt * Math.Sqrt(2))), bow.FilmLine.Length.Feet, 1e-9);
        // Moved in by d, a convex path loses d for every radian turned, and at the ridge's corner 2d·tan(half of it) instead.
        double halfTubeFt = Tube.Feet / 2;
        Assert.Equal(bow.FilmLine.Length.Feet - (halfTubeFt * Math.PI / 2) - (2 * halfTubeFt * Math.Tan(Math.PI / 4)), bow.CentreLine.Length.Feet, 1e-9);
    }

    [Fact]
    public void A_bow_that_leaves_the_ground_aslant_is_cut_off_level_there()
    {
        // Rise 3 over half span 5: R = 34/6. The middle of the tube runs on the circle half a tube further in, from height 0 to height 0.
        double radiusFt = 34 / 6.0, innerFt = radiusFt - (Tube.Feet / 2);
        BowShape bow = Shape(Round(10, 0, 3));
        Assert.Equal(0, bow.CentreLine.Start.Up.Metres, 1e-9);
        Assert.Equal(0, bow.Underside.End.Up.Metres, 1e-9);
        Assert.Equal(2 * innerFt * Math.Acos((radiusFt - 3) / innerFt), bow.CentreLine.Length.Feet, 1e-9);
    }

    [Fact]
    public void A_rise_of_half_the_span_but_for_the_last_bit_is_a_half_circle()
    {
        // 10.1 ft - 3 ft is not quite half of 14.2 ft in doubles; the arc must not run the long way round.
        foreach ((double spanFt, double sideFt, double peakFt) in ((double, double, double)[])[(14.2, 3, 10.1), (20, 4, 14), (26.6, 0.1, 13.4)])
        {
            BowShape bow = Shape(Round(spanFt, sideFt, peakFt));
            Assert.Equal((Math.PI * spanFt / 2) + (2 * sideFt), bow.FilmLine.Length.Feet, 1e-4);
            Assert.True(bow.FilmLine.AreaAbove(Length.Zero) > Area.Zero);
        }
    }

    [Fact]
    public void The_middle_and_the_underside_keep_their_distance_from_the_film_line() =>
        Shapes.Sample(request =>
        {
            if (BowShape.Of(request, UnitSystem.UsCustomary).Shape is not { } bow) return;
            for (int step = 1; step < 40; step++)
            {
                PlanePoint at = bow.Underside.PointAt(bow.Underside.Length * step / 40);
                double nearestM = Enumerable.Range(0, 2001).Min(k => Distance(at, bow.FilmLine.PointAt(bow.FilmLine.Length * k / 2000)));
                Assert.InRange(nearestM, Tube.Metres - 1e-9, Tube.Metres + 1e-3);
            }
        }, iter: 20);

    [Fact]
    public void A_bow_never_shrinks_when_its_peak_its_span_or_its_legs_alone_grow() =>
        Gen.Select(Shapes, Gen.Double[0.02, 1]).Sample((request, byFt) =>
        {
            var by = Length.FromFeet(byFt);
            if (BowShape.Of(request, UnitSystem.UsCustomary).Shape is not { } bow) return;
            foreach (BowRequest larger in (BowRequest[])
                [request with { PeakHeight = request.PeakHeight!.Value + by }, request with { Span = request.Span + by }, request with { SideHeight = request.SideHeight + by }])
            {
                if (BowShape.Of(larger, UnitSystem.UsCustomary).Shape is not { } more) continue;
                Assert.True(more.FilmLine.Length.Metres >= bow.FilmLine.Length.Metres - 1e-9, $"film line of {larger}");
                Assert.True(more.CentreLine.Length.Metres >= bow.CentreLine.Length.Metres - 1e-9, $"middle line of {larger}");
            }
        });

    [Fact]
    public void Every_bend_of_the_tube_is_at_least_five_diameters_wide() =>
        Shapes.Sample(request =>
        {
            if (BowShape.Of(request, UnitSystem.UsCustomary).Shape is not { } bow) return;
            Assert.All(bow.CentreLine.Bends(), bend => Assert.True(bend.Radius.Metres >= (5 * Tube.Metres) - 1e-6));
            Assert.All(bow.CentreLine.Bends(), bend => Assert.True(bend.Turned < Angle.Zero));
        });

    private static Gen<BowRequest> Shapes { get; } =
        from kind in Gen.Enum<BowKind>().Where(kind => kind != BowKind.Offsets)
        from spanFt in Gen.Double[10, 36]
        from sideFt in Gen.Double[0, 6]
        from rise in Gen.Double[0.35, 0.95]
        from shoulderFt in Gen.Double[0.9, 2.5]
        from withShoulder in Gen.Bool
        from arch in Gen.Double[0.6, 1.6]
        select new BowRequest
        {
            Kind = kind,
            Span = Length.FromFeet(spanFt),
            SideHeight = Length.FromFeet(sideFt),
            PeakHeight = Length.FromFeet(sideFt + (rise * spanFt / 2)),
            ShoulderRadius = kind != BowKind.Round || withShoulder ? Length.FromFeet(shoulderFt) : null,
            ArchRadius = kind == BowKind.Gothic ? Length.FromFeet(arch * spanFt) : null,
            TubeOutside = Tube,
        };

    private static double Distance(PlanePoint one, PlanePoint other) =>
        Math.Sqrt(Math.Pow((one.Across - other.Across).Metres, 2) + Math.Pow((one.Up - other.Up).Metres, 2));

    private static double Direction(PathSegment segment, bool atStart) => segment.DirectionAt(atStart ? Length.Zero : segment.Length).Radians;

    private static BowRequest Round(double spanFt, double sideFt, double peakFt) => new()
    {
        Kind = BowKind.Round,
        Span = Length.FromFeet(spanFt),
        SideHeight = Length.FromFeet(sideFt),
        PeakHeight = Length.FromFeet(peakFt),
        TubeOutside = Tube,
    };

    private static BowShape Shape(BowRequest request)
    {
        BowOutcome outcome = BowShape.Of(request, UnitSystem.UsCustomary);
        return outcome.Shape ?? throw new InvalidOperationException(string.Join("\n", outcome.Diagnostics));
    }
}
