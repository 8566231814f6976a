using Hoopwright.Sources;

namespace Hoopwright.Strength.Soil;

/// <summary>Bending of a post below the ground, where the soil turns its load back.</summary>
internal static class BuriedMoment
{
    /// <summary>The greatest moment stands where the soil has taken up the whole push; soil pressure grows with depth from the top of what counts.</summary>
    internal static readonly Formula Greatest = new("M", "Mg + P·(z0 + 2·f/3); f = √(2·P/(S·b)), at most the depth; z0 what does not count at the top", "N·m",
        new Citation("Broms, Lateral resistance of piles in cohesionless soils, J. Soil Mech. Found. Div. ASCE 90 (SM3), 1964", "maximum moment of a free pile, with the lateral pressure of the building code in place of 3·γ·Kp", Standing.FromMemory));

    /// <summary>Depth below which the soil has taken up the push.</summary>
    /// <param name="forceN">P, at the ground.</param>
    /// <param name="lateralPaPerM">S, soil pressure for each metre of depth; 0 where nothing is presumed.</param>
    /// <param name="widthM">b of the post or its concrete; above 0.</param>
    internal static double TurnsAtM(double forceN, double lateralPaPerM, double widthM) =>
        lateralPaPerM <= 0 ? double.PositiveInfinity : Math.Sqrt(2 * forceN / (lateralPaPerM * widthM));

    /// <summary>The greatest moment.</summary>
    /// <param name="forceN">P, at the ground, either way.</param>
    /// <param name="momentNm">Mg, at the ground on the side of the force; 0 or more.</param>
    /// <param name="lateralPaPerM">S.</param>
    /// <param name="post">How it stands in the ground; soil over the frost line does not count.</param>
    internal static double GreatestNm(double forceN, double momentNm, double lateralPaPerM, PostInGround post)
    {
        double pushN = Math.Abs(forceN), topM = Math.Min(post.FrostDepthM, post.EmbedmentM);
        return momentNm + (pushN * (topM + (2.0 / 3 * Math.Min(TurnsAtM(pushN, lateralPaPerM, post.WidthM), post.EmbedmentM - topM))));
    }
}
