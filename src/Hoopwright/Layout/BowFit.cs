using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>
/// Bends a planned bow to measured sizes. Span and bends stay as measured or planned; a length is reached by the peak, and where
/// the height is measured too, by the legs: a longer tube between the same feet stands higher, and one held at the same height
/// has longer legs. A measured table of heights is stretched.
/// </summary>
internal sealed class BowFit(BowRequest planned, BowShape shape, UnitSystem units)
{
    // A hundredth of a sixteenth of an inch.
    private const double LengthM = 1e-5;
    private const double StepM = 0.05;
    private const int Steps = 40;

    // The radii that the plan leaves open are those of the planned bow: a changed span does not bend a finished tube anew.
    private readonly BowRequest pinned = planned with
    {
        ShoulderRadius = planned.Kind is BowKind.Gothic or BowKind.Peaked ? RadiusOf(shape, 0) : planned.ShoulderRadius,
        ArchRadius = planned.Kind == BowKind.Gothic ? RadiusOf(shape, 1) : null,
        TakesLeastArch = true,
    };

    /// <summary>The bow of a span with the length or the height, or both; null when no bow of this shape has them.</summary>
    /// <param name="span">Width at the ground line.</param>
    /// <param name="overOutside">Length over the outside; null for whatever comes of it.</param>
    /// <param name="height">Height at the middle; null for whatever comes of it.</param>
    public BowShape? To(Length span, Length? overOutside, Length? height)
    {
        if (planned.Kind == BowKind.Offsets) return Stretched(span, overOutside, height);
        if (overOutside is not { } target) return height is { } high ? Bow(span, planned.SideHeight, high) : Bow(span, planned.SideHeight, shape.PeakHeight);
        return height is { } held
            ? Reach(legs => Bow(span, legs, held), planned.SideHeight, target)
            : Reach(peak => Bow(span, planned.SideHeight, peak), shape.PeakHeight, target);
    }

    private static Length? RadiusOf(BowShape shape, int arc)
    {
        ImmutableArray<ArcSegment> arcs = [.. shape.FilmLine.Segments.OfType<ArcSegment>()];
        return arc < arcs.Length ? arcs[arc].Radius : null;
    }

    private BowShape? Bow(Length span, Length legs, Length peak)
    {
        if (legs < Length.Zero) return null;
        // Over half the span a round bow goes on rising by its legs.
        Length least = planned.Kind == BowKind.Round ? Length.Max(legs, peak - (span / 2)) : legs;
        return BowShape.Of(pinned with { Span = span, SideHeight = least, PeakHeight = peak }, units).Shape;
    }

    private BowShape? Stretched(Length span, Length? overOutside, Length? height)
    {
        double wide = span / planned.Span;
        BowShape? Times(Length peak) => BowShape.Of(pinned with
        {
            Span = span,
            Offsets = [.. planned.Offsets.Select(point => new PlanePoint(point.Across * wide, point.Up * (peak / shape.PeakHeight)))],
        }, units).Shape;
        return overOutside is not { } target ? Times(height ?? shape.PeakHeight)
            : Reach(Times, shape.PeakHeight, target) is { } reached && (height is not { } asked || (reached.PeakHeight - asked).Abs() <= Length.FromInches(0.5)) ? reached : null;
    }

    /// <summary>Finds the measure at which the bow has a length; a longer one never shortens it. Null when it cannot be bent so.</summary>
    private static BowShape? Reach(Func<Length, BowShape?> bow, Length from, Length target)
    {
        if (bow(from) is not { } start) return null;
        double wantM = target.Metres, nearM = from.Metres, nearOffM = start.FilmLine.Length.Metres - wantM;
        if (Math.Abs(nearOffM) <= LengthM / 100) return start;
        double stepM = nearOffM < 0 ? StepM : -StepM;
        for (int step = 0; step < Steps; step++)
        {
            double farM = nearM + stepM;
            if (bow(Length.FromMetres(farM)) is not { } next)
            {
                // The shape ends somewhere in this step.
                if (Math.Abs(stepM) < LengthM) return null;
                stepM /= 4;
                continue;
            }
            double offM = next.FilmLine.Length.Metres - wantM;
            if (offM == 0 || (offM < 0) != (nearOffM < 0)) return Between(bow, nearM, farM, wantM);
            (nearM, nearOffM) = (farM, offM);
        }
        return null;
    }

    private static BowShape? Between(Func<Length, BowShape?> bow, double oneM, double otherM, double wantM)
    {
        (double lowM, double highM) = oneM < otherM ? (oneM, otherM) : (otherM, oneM);
        BowShape? best = null;
        for (int halving = 0; halving < 60 && highM - lowM > 1e-12; halving++)
        {
            double middleM = (lowM + highM) / 2;
            if (bow(Length.FromMetres(middleM)) is not { } shape) return null;
            best = shape;
            if (shape.FilmLine.Length.Metres < wantM) lowM = middleM;
            else highM = middleM;
        }
        return best is { } reached && Math.Abs(reached.FilmLine.Length.Metres - wantM) <= LengthM ? reached : null;
    }
}
