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
        Length half = request.TubeOutside / 2;
        return filmLine.Inwards(half) is { } centreLine && filmLine.Inwards(request.TubeOutside) is { } underside
            ? new BowShape(request, filmLine, centreLine, underside)
            : null;
    }
}
