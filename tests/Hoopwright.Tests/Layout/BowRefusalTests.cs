using System.Text.RegularExpressions;
using CsCheck;
using Hoopwright.Diagnostics;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Tests.Layout;

public sealed partial class BowRefusalTests
{
    private static readonly Length Tube = Length.FromInches(1.66);

    [Fact]
    public void A_peak_under_the_legs_is_refused_with_the_least_that_works()
    {
        BowRequest request = Bow(BowKind.Round, 20, 6, 5);
        Diagnostic found = Refused(request, "bow.peak-below-shoulder");
        Assert.Equal("peakHeight", found.Path);
        // A fiftieth of the span over the legs: 6 ft + 4.8 in.
        Assert.Equal("at least 6' 4-13/16\"", found.Accepted);
    }

    [Fact]
    public void A_roof_that_hardly_rises_is_refused() => Refused(Bow(BowKind.Round, 20, 6, 6.1), "bow.peak-too-flat");

    [Fact]
    public void A_round_bow_higher_than_half_its_span_is_refused_with_the_nearest_peak() =>
        Assert.Equal("up to 14' 0\", or legs of at least 5' 0\"", Refused(Bow(BowKind.Round, 20, 4, 15), "bow.round.too-high").Accepted);

    [Fact]
    public void A_bend_tighter_than_the_tube_can_take_names_the_radii_that_work()
    {
        Diagnostic found = Refused(Bow(BowKind.Round, 20, 4, 11) with { ShoulderRadius = Length.FromInches(6) }, "bow.bend-too-tight");
        // Five diameters at the middle line and half a tube: 5.5 × 1.66 in = 9.13 in, up to the next sixteenth.
        Assert.StartsWith("from 9-3/16\" to 6' 11-7/8\"", found.Accepted, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(BowKind.Gothic)]
    [InlineData(BowKind.Peaked)]
    public void A_shoulder_without_a_bend_is_refused_where_the_shape_has_one(BowKind kind) =>
        Assert.Equal("shoulderRadius", Refused(Bow(kind, 20, 4, 11) with { ShoulderRadius = Length.Zero }, "bow.bend-too-tight").Path);

    [Fact]
    public void A_shoulder_wider_than_the_roof_is_refused_with_the_widest_that_works() =>
        Assert.EndsWith("to 6' 11-7/8\"", Refused(Bow(BowKind.Gothic, 20, 4, 11) with { ShoulderRadius = Length.FromFeet(8) }, "bow.shoulder-too-wide").Accepted, StringComparison.Ordinal);

    [Fact]
    public void A_roof_too_low_for_any_shoulder_is_refused_with_the_least_peak() =>
        Assert.Equal("peakHeight", Refused(Bow(BowKind.Peaked, 20, 4, 4.6), "bow.no-room-for-shoulder").Path);

    [Fact]
    public void An_arch_radius_that_does_not_reach_names_the_ones_that_do() =>
        Assert.EndsWith(" or more", Refused(Bow(BowKind.Gothic, 26, 5, 12.5) with { ArchRadius = Length.FromFeet(10) }, "bow.gothic.arch-radius").Accepted, StringComparison.Ordinal);

    [Fact]
    public void A_bow_without_a_peak_legs_below_ground_and_a_tube_without_width_are_refused()
    {
        Refused(Bow(BowKind.Round, 20, 4, 11) with { PeakHeight = null }, "plan.missing");
        Refused(Bow(BowKind.Round, 20, -1, 8), "bow.side-height");
        Refused(Bow(BowKind.Round, 20, 4, 11) with { TubeOutside = Length.Zero }, "bow.tube-too-thin");
        Refused(Bow(BowKind.Round, 1, 4, 5), "bow.span-too-small");
        Assert.Equal("up to 44' 0\"", Refused(Bow(BowKind.Gothic, 20, 4, 60), "bow.peak-too-high").Accepted);
        // 8 ft - 2 ft is not quite twice 3 ft in doubles, and is still the limit that the refusal names.
        Assert.NotNull(BowShape.Of(Bow(BowKind.Gothic, 3, 2, 8), UnitSystem.UsCustomary).Shape);
    }

    [Fact]
    public void Legs_and_peak_that_are_both_wrong_are_both_named()
    {
        BowOutcome outcome = BowShape.Of(Bow(BowKind.Round, 20, -2, -3), UnitSystem.Metric);
        Assert.Equal(["bow.side-height", "bow.peak-below-shoulder"], outcome.Diagnostics.Select(found => found.Code));
    }

    [Fact]
    public void A_round_bow_that_meets_its_legs_at_a_corner_is_warned_of()
    {
        BowOutcome outcome = BowShape.Of(Bow(BowKind.Round, 20, 4, 11), UnitSystem.UsCustomary);
        Diagnostic found = Assert.Single(outcome.Diagnostics, diagnostic => diagnostic.Code == "bow.round.corner-at-legs");
        Assert.Equal(Severity.Warning, found.Severity);
        // R = (10² + 7²) / 14, so the arc leaves the legs atan((R − 7) / 10) off upright.
        Assert.Equal("a corner of 20.0°", found.Seen);
        Assert.NotNull(outcome.Shape);
        Assert.Empty(BowShape.Of(Bow(BowKind.Round, 20, 4, 14), UnitSystem.UsCustomary).Diagnostics);
        Assert.Empty(BowShape.Of(Bow(BowKind.Round, 20, 4, 11) with { ShoulderRadius = Length.FromFeet(2) }, UnitSystem.UsCustomary).Diagnostics);
    }

    [Fact]
    public void Radii_that_were_not_given_are_assumed_aloud_and_work()
    {
        Gen.Select(Gen.Double[14, 36], Gen.Double[0, 6], Gen.Double[0.4, 1.2]).Sample((spanFt, sideFt, rise) =>
        {
            BowOutcome outcome = BowShape.Of(Bow(BowKind.Gothic, spanFt, sideFt, sideFt + (rise * spanFt / 2)), UnitSystem.UsCustomary);
            Assert.NotNull(outcome.Shape);
            Assert.Equal(["assumed.frame.bow.shoulder-radius", "assumed.frame.bow.arch-radius"], outcome.Diagnostics.Select(found => found.Code));
            Assert.All(outcome.Diagnostics, found => Assert.Equal(Severity.Assumption, found.Severity));
        });
    }

    [Fact]
    public void Following_the_nearest_values_that_work_leads_to_a_bow() =>
        Gen.Select(Wild, Gen.Enum<UnitSystem>()).Sample((request, units) =>
        {
            BowOutcome outcome = BowShape.Of(request, units);
            string trail = "";
            for (int round = 0; outcome.Shape is null && round < 8; round++)
            {
                Diagnostic fault = outcome.Diagnostics.First(found => found.Severity == Severity.Error);
                trail += $"\n{fault.Code} {fault.Path}: {fault.Seen} -> {fault.Accepted}";
                request = Follow(request, fault);
                outcome = BowShape.Of(request, units);
            }
            Assert.True(outcome.Shape is not null, trail);
        });

    [Fact]
    public void No_request_throws_and_every_answer_is_a_bow_or_an_error()
    {
        Gen<double> anyM = Gen.OneOf(Gen.Double[-1, 30], Gen.OneOf(0.0, 1e-9, -1e-9, 0.001, 1e4, -1e4));
        Gen<PlanePoint> point = Gen.Select(anyM, anyM).Select((across, up) => new PlanePoint(Length.FromMetres(across), Length.FromMetres(up)));
        Gen<BowRequest> any =
            from kind in Gen.Enum<BowKind>()
            from sizes in Gen.Select(anyM, anyM, anyM, anyM, anyM)
            from left in Gen.Bool.Array[3]
            from points in point.Array[0, 8]
            select new BowRequest
            {
                Kind = kind,
                Span = Length.FromMetres(sizes.Item1),
                SideHeight = Length.FromMetres(sizes.Item2),
                PeakHeight = left[0] ? null : Length.FromMetres(sizes.Item3),
                ShoulderRadius = left[1] ? null : Length.FromMetres(sizes.Item4),
                ArchRadius = left[2] ? null : Length.FromMetres(sizes.Item5),
                Offsets = [.. points.OrderBy(p => p.Across)],
                TubeOutside = Length.FromMetres(sizes.Item4 / 100),
            };
        any.Sample(request =>
        {
            BowOutcome outcome = BowShape.Of(request, UnitSystem.Metric);
            bool refused = outcome.Diagnostics.Any(found => found.Severity == Severity.Error);
            Assert.Equal(refused, outcome.Shape is null);
            if (outcome.Shape is { } bow) Assert.True(double.IsFinite(bow.CentreLine.Length.Metres) && bow.CentreLine.Length > Length.Zero);
        }, iter: 10_000);
    }

    private static Gen<BowRequest> Wild =>
        from kind in Gen.Enum<BowKind>().Where(kind => kind != BowKind.Offsets)
        from spanFt in Gen.Double[0.2, 40]
        from sideFt in Gen.Double[-1, 8]
        from peakFt in Gen.Double[-1, 60]
        from shoulderFt in Gen.Double[-1, 12]
        from archFt in Gen.Double[-1, 40]
        from withShoulder in Gen.Bool
        from withArch in Gen.Bool
        select new BowRequest
        {
            Kind = kind,
            Span = Length.FromFeet(spanFt),
            SideHeight = Length.FromFeet(sideFt),
            PeakHeight = Length.FromFeet(peakFt),
            ShoulderRadius = withShoulder ? Length.FromFeet(shoulderFt) : null,
            ArchRadius = withArch ? Length.FromFeet(archFt) : null,
            TubeOutside = Tube,
        };

    private static BowRequest Follow(BowRequest request, Diagnostic fault)
    {
        // The last length named where a range is given, the only one otherwise.
        string[] named = [.. LengthText().Matches(fault.Accepted!.Split(", or")[0]).Select(match => match.Value)];
        Assert.True(named.Length > 0, fault.ToString());
        Length value = QuantityText.ReadLength(fault.Accepted.StartsWith("from", StringComparison.Ordinal) && fault.Code == "bow.shoulder-too-wide" ? named[^1] : named[0]).Value;
        return fault.Path switch
        {
            "span" => request with { Span = value },
            "sideHeight" => request with { SideHeight = value },
            "peakHeight" => request with { PeakHeight = value },
            "shoulderRadius" => request with { ShoulderRadius = value },
            "archRadius" => request with { ArchRadius = value },
            _ => throw new InvalidOperationException(fault.ToString()),
        };
    }

    [GeneratedRegex("\\d[\\d' -]*(/\\d+)?\"|\\d+ mm|\\d+ in")]
    private static partial Regex LengthText();

    private static BowRequest Bow(BowKind kind, double spanFt, double sideFt, double peakFt) => new()
    {
        Kind = kind,
        Span = Length.FromFeet(spanFt),
        SideHeight = Length.FromFeet(sideFt),
        PeakHeight = Length.FromFeet(peakFt),
        TubeOutside = Tube,
    };

    private static Diagnostic Refused(BowRequest request, string code)
    {
        BowOutcome outcome = BowShape.Of(request, UnitSystem.UsCustomary);
        Assert.Null(outcome.Shape);
        return Assert.Single(outcome.Diagnostics, found => found.Code == code);
    }
}
