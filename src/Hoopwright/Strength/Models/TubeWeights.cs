using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;

namespace Hoopwright.Strength.Models;

/// <summary>Areas, second moments and weights of the tubes of a frame.</summary>
internal static class TubeWeights
{
    /// <summary>Area of a tube, m²; 0 for a board.</summary>
    internal static double AreaM2(MemberSection section) => section.Match(
        tube => tube.Form switch
        {
            TubeForm.Round => new RoundTube(tube.Outside, tube.Wall).Area.SquareMetres,
            TubeForm.Square => new SquareTube(tube.Outside, tube.Wall).Area.SquareMetres,
        },
        _ => 0);

    /// <summary>Second moment of a tube about any axis across it, m⁴.</summary>
    internal static double SecondM4(TubeSection tube) => tube.Form switch
    {
        TubeForm.Round => new RoundTube(tube.Outside, tube.Wall).SecondMoment.Metres4,
        TubeForm.Square => new SquareTube(tube.Outside, tube.Wall).SecondMoment.Metres4,
    };

    /// <summary>Weight of a steel tube, N/m; 0 for a board.</summary>
    internal static double NPerM(MemberSection section) => AreaM2(section) * RoundTube.SteelKgM3 * Frames.FrameWeights.GravityMps2;
}
