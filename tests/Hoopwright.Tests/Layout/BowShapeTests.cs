using System.Collections.Immutable;
using CsCheck;
using Hoopwright.Diagnostics;
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

    [Theory]
    [InlineData(6)]
    [InlineData(13)]
    [InlineData(15)]
    [InlineData(17.5)]
    public void A_circle_measured_at_one_foot_stations_comes_back_within_a_sixteenth(double radiusFt)
    {
        ImmutableArray<PlanePoint> points =
        [
            .. Enumerable.Range(0, (int)(2 * radiusFt)).Append((int)(2 * radiusFt)).Distinct().Select(foot => Math.Min((double)foot, 2 * radiusFt)).Append(2 * radiusFt).Distinct()
                .Select(acrossFt => new PlanePoint(Length.FromFeet(acrossFt), Length.FromFeet(Math.Sqrt(Math.Max(0, (radiusFt * radiusFt) - ((acrossFt - radiusFt) * (acrossFt - radiusFt))))))),
        ];
        BowShape bow = Shape(new BowRequest { Kind = BowKind.Offsets, Span = Length.FromFeet(2 * radiusFt), SideHeight = Length.Zero, Offsets = points, TubeOutside = Tube });
        for (int step = 0; step <= 400; step++)
        {
            PlanePoint at = bow.FilmLine.PointAt(bow.FilmLine.Length * step / 400);
            double offIn = Math.Abs(Math.Sqrt(Math.Pow(at.Across.Inches - (radiusFt * 12), 2) + Math.Pow(at.Up.Inches, 2)) - (radiusFt * 12));
            Assert.True(offIn <= 1 / 16.0, $"{offIn} in off the circle");
        }
    }

    [Fact]
    public void Rounded_measurements_of_a_convex_bow_stay_convex_enough_to_bend()
    {
        // Heights read to 1/8 in; the curve must not dip between them.
        double radiusFt = 10;
        ImmutableArray<PlanePoint> points =
        [
            .. Enumerable.Range(0, 21).Select(foot => new PlanePoint(Length.FromFeet(foot),
                Length.FromInches(Math.Round(12 * Math.Sqrt(Math.Max(0, (radiusFt * radiusFt) - ((foot - radiusFt) * (foot - radiusFt)))) * 8) / 8))),
        ];
        BowShape bow = Shape(new BowRequest { Kind = BowKind.Offsets, Span = Length.FromFeet(20), SideHeight = Length.Zero, Offsets = points, TubeOutside = Tube });
        Assert.Equal(Math.PI * 10, bow.FilmLine.Length.Feet, 0.02);
        for (int index = 1; index < points.Length; index++)
        {
            Length middle = (points[index - 1].Across + points[index].Across) / 2;
            Length height = bow.FilmLine.HeightAt(middle) ?? Length.Zero;
            Assert.True(height >= Length.Min(points[index - 1].Up, points[index].Up));
        }
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

    [Fact]
    public void A_bow_never_shrinks_when_its_peak_alone_grows() =>
        Shapes.Sample(request =>
        {
            BowRequest higher = request with { PeakHeight = request.PeakHeight!.Value + Length.FromInches(3) };
            if (BowShape.Of(request, UnitSystem.UsCustomary).Shape is not { } low || BowShape.Of(higher, UnitSystem.UsCustomary).Shape is not { } high) return;
            Assert.True(high.FilmLine.Length >= low.FilmLine.Length);
        });

    [Fact]
    public void A_bow_never_shrinks_when_its_span_alone_grows() =>
        Shapes.Sample(request =>
        {
            BowRequest wider = request with { Span = request.Span + Length.FromInches(6) };
            if (BowShape.Of(request, UnitSystem.UsCustomary).Shape is not { } narrow || BowShape.Of(wider, UnitSystem.UsCustomary).Shape is not { } wide) return;
            Assert.True(wide.FilmLine.Length >= narrow.FilmLine.Length);
        });

    [Fact]
    public void A_peak_under_the_legs_is_refused_with_what_would_do()
    {
        Diagnostic found = Refused(Round(20, 6, 5), "bow.peak-below-shoulder");
        Assert.Equal("peakHeight", found.Path);
        Assert.Equal("over 6' 0\"", found.Accepted);
    }

    [Fact]
    public void A_round_bow_higher_than_half_its_span_is_refused_with_the_nearest_peak() =>
        Assert.Equal("up to 14' 0\", or legs of at least 5' 0\"", Refused(Round(20, 4, 15), "bow.round.too-high").Accepted);

    [Fact]
    public void A_bend_tighter_than_the_tube_can_take_names_the_radius_that_works()
    {
        Diagnostic found = Refused(Round(20, 4, 11) with { ShoulderRadius = Length.FromInches(6) }, "bow.bend-too-tight");
        // Five diameters at the middle line and half a tube: 5.5 × 1.66 in = 9.13 in, up to the next sixteenth.
        Assert.Contains("9-3/16\"", found.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void An_arch_radius_that_does_not_reach_names_the_ones_that_do()
    {
        BowRequest request = new() { Kind = BowKind.Gothic, Span = Length.FromFeet(26), SideHeight = Length.FromFeet(5), PeakHeight = Length.FromFeet(12.5), ShoulderRadius = Length.FromFeet(2), ArchRadius = Length.FromFeet(10), TubeOutside = Tube };
        Diagnostic found = Refused(request, "bow.gothic.arch-radius");
        string nearest = found.Accepted![..found.Accepted!.IndexOf(" or", StringComparison.Ordinal)];
        Assert.NotNull(BowShape.Of(request with { ArchRadius = QuantityText.ReadLength(nearest).Value }, UnitSystem.UsCustomary).Shape);
    }

    [Fact]
    public void Faulty_tables_of_heights_are_refused()
    {
        BowRequest request = new() { Kind = BowKind.Offsets, Span = Length.FromFeet(10), SideHeight = Length.Zero, TubeOutside = Tube };
        Refused(request, "bow.offsets.too-few");
        Refused(request with { Offsets = [At(0, 0), At(6, 5), At(5, 6), At(10, 0)] }, "bow.offsets.order");
        Refused(request with { Offsets = [At(1, 0), At(5, 5), At(10, 0)] }, "bow.offsets.start");
        Refused(request with { Offsets = [At(0, 0), At(5, 5), At(9, 0)] }, "bow.offsets.width");
        Refused(request with { Offsets = [At(0, 0), At(5, -5), At(10, 0)] }, "bow.offsets.below-ground");
    }

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

    private static double Direction(PathSegment segment, bool atStart) => segment.DirectionAt(atStart ? Length.Zero : segment.Length).Radians;

    private static PlanePoint At(double acrossFt, double upFt) => new(Length.FromFeet(acrossFt), Length.FromFeet(upFt));

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

    private static Diagnostic Refused(BowRequest request, string code)
    {
        BowOutcome outcome = BowShape.Of(request, UnitSystem.UsCustomary);
        Assert.Null(outcome.Shape);
        return Assert.Single(outcome.Diagnostics, found => found.Code == code);
    }
}
