using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>
/// The exact shape of a bow, in the upright plane across the tunnel: left ground line at 0, height over the ground line.
/// </summary>
public sealed record BowShape
{
    private BowShape(BowRequest request, PlanePath filmLine, PlanePath centreLine, PlanePath underside)
    {
        Kind = request.Kind;
        Span = request.Span;
        SideHeight = request.SideHeight;
        TubeOutside = request.TubeOutside;
        PeakHeight = filmLine.Highest();
        FilmLine = filmLine;
        CentreLine = centreLine;
        Underside = underside;
    }

    /// <summary>Which of the four shapes.</summary>
    public BowKind Kind { get; }

    /// <summary>Width at the ground, outside to outside.</summary>
    public Length Span { get; }

    /// <summary>Height of the straight legs.</summary>
    public Length SideHeight { get; }

    /// <summary>Height of the highest point of the film line.</summary>
    public Length PeakHeight { get; }

    /// <summary>Outside diameter of the tube.</summary>
    public Length TubeOutside { get; }

    /// <summary>The outside of the tube, from the left ground line to the right one; the film lies on it.</summary>
    public PlanePath FilmLine { get; }

    /// <summary>The middle of the tube.</summary>
    public PlanePath CentreLine { get; }

    /// <summary>The inside of the tube, against which posts are cut.</summary>
    public PlanePath Underside { get; }

    /// <summary>Height of the underside at a distance from the left ground line; null beyond the inner faces of the legs.</summary>
    public Length? UndersideAt(Length across) => Underside.HeightAt(across);

    /// <summary>Shapes a bow, or says why it cannot be bent so and what would do. Never throws for a request.</summary>
    /// <param name="request">What is asked.</param>
    /// <param name="units">The units in which diagnostics speak.</param>
    public static BowOutcome Of(BowRequest request, UnitSystem units) => new BowShaper(request, units).Shape();

    /// <summary>The bow over a film line; null when the tube is too wide for a bend of it.</summary>
    internal static BowShape? Over(BowRequest request, PlanePath filmLine)
    {
        // Legs are run on into the ground before moving in, since a corner at their top may cut back more than a short leg has.
        PlanePath deep = RunOn(RunOn(filmLine, request.TubeOutside * 2).Reversed(), request.TubeOutside * 2).Reversed();
        return OverGround(deep.Inwards(request.TubeOutside / 2)) is { } centreLine && OverGround(deep.Inwards(request.TubeOutside)) is { } underside
            ? new BowShape(request, filmLine, centreLine, underside)
            : null;
    }

    private static PlanePath RunOn(PlanePath path, Length by)
    {
        PlanePoint below = path.Start with { Up = path.Start.Up - by };
        return path.Segments[0] is LineSegment { Start: var foot, End: var top } && foot.Across == top.Across
            ? PlanePath.Of([new LineSegment(below, top), .. path.Segments.Skip(1)])
            : path;
    }

    /// <summary>What stands over the ground line; a bow that leaves it aslant is cut off level there.</summary>
    private static PlanePath? OverGround(PlanePath? path)
    {
        if (path is null || (path.Start.Up >= Length.Zero && path.End.Up >= Length.Zero)) return path;
        ImmutableArray<PathCrossing> crossings = path.CrossingsAtHeight(Length.Zero);
        if (crossings.Length < 2) return null;
        return path.Between(
            path.Start.Up < Length.Zero ? crossings[0].Distance : Length.Zero,
            path.End.Up < Length.Zero ? crossings[^1].Distance : path.Length);
    }
}
