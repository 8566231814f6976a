using Hoopwright.Sources;

namespace Hoopwright.Strength.Fasteners;

/// <summary>What the pull of the film along a channel or a batten puts on each of its screws.</summary>
internal static class ChannelScrews
{
    internal static readonly Formula Pull = new("P", "T·e·sin θ", "N", Citation.Geometry);

    internal static readonly Formula Slide = new("V", "T·e·cos θ", "N", Citation.Geometry);

    /// <summary>Pull along a screw, away from the face under the channel.</summary>
    /// <param name="linePullNPerM">T, pull of the film for each length of channel; 0 or more.</param>
    /// <param name="spacingM">e, from screw to screw.</param>
    /// <param name="fromFaceRad">θ, between film and face: 0 in the face, π/2 straight off it.</param>
    internal static double PullN(double linePullNPerM, double spacingM, double fromFaceRad) => linePullNPerM * spacingM * Math.Sin(fromFaceRad);

    /// <summary>Load across a screw, in the face under the channel.</summary>
    /// <param name="linePullNPerM">T.</param>
    /// <param name="spacingM">e.</param>
    /// <param name="fromFaceRad">θ.</param>
    internal static double SlideN(double linePullNPerM, double spacingM, double fromFaceRad) => linePullNPerM * spacingM * Math.Cos(fromFaceRad);

    /// <summary>The greatest spacing at which every screw keeps its limit; the loads grow with the spacing.</summary>
    /// <param name="spacingM">A spacing that was checked; above 0.</param>
    /// <param name="utilisation">What it uses of a screw; above 0.</param>
    internal static double MostSpacingM(double spacingM, double utilisation) => spacingM / utilisation;
}
