using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Layout;

/// <summary>Concrete of a round hole about a post.</summary>
public static class ConcreteVolume
{
    /// <summary>The formula, for people.</summary>
    public static Formula Formula { get; } = new("V",
        "π·D²/4·depth − post area·post depth + π·rise/3·(R² + R·r − 2·r²); R = D/2, r = √(post area/π)", "m³", Citation.Geometry);

    /// <summary>
    /// Hole less post, with a collar that rises at the post and slopes straight down to the hole's edge. A tube counts as
    /// solid: concrete does not enter it.
    /// </summary>
    /// <param name="diameter">Diameter of the hole; above the post's.</param>
    /// <param name="depth">Depth of the hole.</param>
    /// <param name="postArea">Area of the post's outline.</param>
    /// <param name="postDepth">How far the post reaches down into the hole; at most <paramref name="depth"/>.</param>
    /// <param name="collarRise">Height of the collar at the post; 0 for a flat top.</param>
    public static Volume Of(Length diameter, Length depth, Area postArea, Length postDepth, Length collarRise)
    {
        double radiusM = diameter.Metres / 2;
        double postRadiusM = Math.Sqrt(postArea.SquareMetres / Math.PI);
        double holeM3 = Math.PI * radiusM * radiusM * depth.Metres;
        double postM3 = postArea.SquareMetres * postDepth.Metres;
        double collarM3 = Math.PI * collarRise.Metres / 3
            * ((radiusM * radiusM) + (radiusM * postRadiusM) - (2 * postRadiusM * postRadiusM));
        return Volume.FromCubicMetres(holeM3 - postM3 + collarM3);
    }
}
