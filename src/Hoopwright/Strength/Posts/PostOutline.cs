using Hoopwright.Frames;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;

namespace Hoopwright.Strength.Posts;

/// <summary>What soil sees of a post.</summary>
/// <param name="WidthM">b of the lateral rule: diameter, or diagonal of a square or rectangular post.</param>
/// <param name="RubbingM">Diameter of the circle with the same outline, for friction on its side.</param>
/// <param name="WeightNPerM">Own weight; wood is not counted, it weighs too little to hold anything down.</param>
internal readonly record struct PostOutline(double WidthM, double RubbingM, double WeightNPerM)
{
    /// <summary>The outline of a section.</summary>
    internal static PostOutline Of(MemberSection section) => section.Match(OfTube, OfBoard);

    private static PostOutline OfTube(TubeSection tube)
    {
        double outsideM = tube.Outside.Metres;
        double steelKgM = tube.Material switch
        {
            TubeMaterial.GalvanizedSteel => tube.Form switch
            {
                TubeForm.Round => new RoundTube(tube.Outside, tube.Wall).SteelMass.KilogramsPerMetre,
                TubeForm.Square => new SquareTube(tube.Outside, tube.Wall).SteelMass.KilogramsPerMetre,
            },
            TubeMaterial.Pvc => 0,
        };
        double weightNPerM = steelKgM * FrameWeights.GravityMps2;
        return tube.Form switch
        {
            TubeForm.Round => new PostOutline(outsideM, outsideM, weightNPerM),
            TubeForm.Square => new PostOutline(outsideM * Math.Sqrt(2), 4 * outsideM / Math.PI, weightNPerM),
        };
    }

    private static PostOutline OfBoard(BoardSection board)
    {
        double thicknessM = board.Thickness.Metres, depthM = board.Depth.Metres;
        return new PostOutline(double.Hypot(thicknessM, depthM), 2 * (thicknessM + depthM) / Math.PI, 0);
    }
}
