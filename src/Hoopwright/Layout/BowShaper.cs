using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>
/// Shapes a bow from its request. Round, gothic and peaked bows are made as the left half in closed form and mirrored; a
/// measured one is fitted by <see cref="MeasuredBow"/>. Symbols: w half the span, h the legs, f the rise of the peak over
/// them, r the shoulder radius, R the arch radius. The shoulder arc has its centre S at (r, h), the ridge K is at (w, h + f).
/// </summary>
internal sealed partial class BowShaper(BowRequest request, UnitSystem units)
{
    /// <summary>The tightest bend of a tube's middle line as a multiple of its outside diameter. From memory.</summary>
    internal const double TightestBend = 5;

    // A rise under a fiftieth of the span needs arcs of more than six spans; nobody sets out such a roof, and water stands on it.
    private const double LeastRisePerSpan = 1 / 50.0;

    // Thinner is wire, and a slip of the pen.
    private static readonly Length LeastTube = Length.FromMillimetres(10);

    // A roof that rises over twice its span is a slip of the pen, and its arcs would lose their last digits.
    private const double MostRisePerSpan = 2;

    // A shoulder must leave some roof between it and the middle, or the arc over it has no end.
    private const double LeastRoofM = 0.002;

    // A corner at the legs that is flatter than this disappears in the play of the joint. Common practice, no source.
    internal const double JointPlayRad = 2 * Math.PI / 180;

    private readonly List<Diagnostic> diagnostics = [];
    private readonly double wM = request.Span.Metres / 2;
    private readonly double hM = request.SideHeight.Metres;
    private readonly double fM = (request.PeakHeight?.Metres ?? 0) - request.SideHeight.Metres;

    /// <summary>The tightest outside radius that the tube takes.</summary>
    private Length LeastRadius => (request.TubeOutside * TightestBend) + (request.TubeOutside / 2);

    public BowOutcome Shape()
    {
        BowShape? shape = SizesMakeSense() ? Bent() : null;
        bool faulty = diagnostics.Any(found => found.Severity == Severity.Error);
        return new BowOutcome(faulty ? null : shape, [.. diagnostics]);
    }

    private BowShape? Bent()
    {
        if (request.Kind == BowKind.Offsets) return new MeasuredBow(request, units, LeastRadius, diagnostics).Shape();
        if (!HeightsMakeSense()) return null;
        ImmutableArray<PathSegment>? half = request.Kind switch
        {
            BowKind.Round => Round(),
            BowKind.Gothic => Gothic(),
            BowKind.Peaked => Peaked(),
            BowKind.Offsets => null,
        };
        if (half is not { } segments) return null;
        PlanePath left = PlanePath.Of(segments);
        BowShape? shape = BowShape.Over(request, left.Then(left.Mirrored(request.Span / 2)));
        if (shape is null)
            Error("bow.tube-too-wide", "shape", "The tube is too wide for a bend of this bow.", Tape(request.TubeOutside), "a narrower tube or wider bends");
        return shape;
    }

    private bool SizesMakeSense()
    {
        if (request.TubeOutside < LeastTube)
            Error("bow.tube-too-thin", "tubeOutside", "No bow is bent from a tube this thin.", Tape(request.TubeOutside), $"at least {Tape(Up(LeastTube.Metres))}");
        else if (request.Span.Metres < (request.TubeOutside.Metres * 2 * (TightestBend + 1)) - Tolerances.PlaceM)
            Error("bow.span-too-small", "span", "The span is too small for a bow of this tube.", Tape(request.Span), $"at least {Tape(Up(request.TubeOutside.Metres * 2 * (TightestBend + 1)))}");
        return diagnostics.Count == 0;
    }

    private bool HeightsMakeSense()
    {
        if (hM < 0)
            Error("bow.side-height", "sideHeight", "The legs cannot go below the ground line.", Tape(request.SideHeight), "0 in or more");
        if (request.PeakHeight is not { } peak)
        {
            string example = Tape(Up(Math.Max(hM, 0) + (0.6 * wM)));
            Error("plan.missing", "peakHeight", "The height of the bow is not given.", null, example);
        }
        else if (fM < FlatM - Tolerances.PlaceM)
        {
            string accepted = $"at least {Tape(Up(Math.Max(hM, 0) + LeastRiseM))}";
            if (fM <= 0)
                Error("bow.peak-below-shoulder", "peakHeight", "The peak is no higher than the legs.", Tape(peak), accepted);
            else
                Error("bow.peak-too-flat", "peakHeight", "The roof rises so little over the legs that it is nearly flat.", Tape(peak), accepted);
        }
        else if (fM > (MostRisePerSpan * 2 * wM) + Tolerances.PlaceM && request.Kind != BowKind.Round)
        {
            Error("bow.peak-too-high", "peakHeight", "The roof rises more than twice its span over the legs.", Tape(peak), $"up to {Tape(Down(hM + (MostRisePerSpan * 2 * wM)))}");
        }

        return diagnostics.All(found => found.Severity != Severity.Error);
    }

    /// <summary>Legs, shoulder bend and what comes over it.</summary>
    /// <param name="rM">r; 0 for no shoulder.</param>
    /// <param name="turnRad">How far the shoulder turns from upright, from 0 to a quarter turn.</param>
    /// <param name="roof">From the end of the shoulder to the middle.</param>
    private ImmutableArray<PathSegment> Half(double rM, double turnRad, PathSegment roof)
    {
        var half = ImmutableArray.CreateBuilder<PathSegment>(3);
        if (hM > 0) half.Add(new LineSegment(new PlaneVector(0, 0), new PlaneVector(0, hM)));
        if (rM > 0 && turnRad > 0) half.Add(new ArcSegment(new PlaneVector(rM, hM), rM, Math.PI, -turnRad));
        half.Add(roof);
        return half.ToImmutable();
    }

    private Length Up(double metres) => TapeText.RoundUpForLimit(Length.FromMetres(metres), units);

    private Length Down(double metres) => TapeText.RoundDownForLimit(Length.FromMetres(metres), units);

    private string Tape(Length length) => TapeText.Of(length, units);

    private void Error(string code, string path, string message, string? seen, string? accepted) =>
        diagnostics.Add(new Diagnostic(code, Severity.Error, path, message, seen, accepted));
}
