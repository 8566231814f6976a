using Hoopwright.Sources;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Fasteners;

/// <summary>How hard a fastener presses before wood or steel gives way beside it.</summary>
internal static class DowelBearing
{
    internal static readonly Formula Thin = new("Fe", "16600·G^1.84 psi for D under 1/4 in", "Pa", Register.Nds2018.At("table 12.3.3, footnote 2"));

    internal static readonly Formula Thick = new("Fe", "11200·G along, 6100·G^1.45/√D across the grain, psi, D in inches; Fe,θ = Fe∥·Fe⊥/(Fe∥·sin²θ + Fe⊥·cos²θ)", "Pa",
        Register.Nds2018.At("table 12.3.3 and Eq. 12.3-11"));

    /// <summary>Fe of plates and channels of steel to ASTM A653 grade 33; NDS table 12N footnote, from memory.</summary>
    internal const double LightSteelPa = 61_850 * PsiPa;

    /// <summary>Fe of steel plate to ASTM A36; NDS table 12J footnote, from memory.</summary>
    internal const double PlateSteelPa = 87_000 * PsiPa;

    /// <summary>Fe of wood.</summary>
    /// <param name="specificGravity">G.</param>
    /// <param name="diameterM">D, nominal.</param>
    /// <param name="toGrainRad">θ, between load and grain: 0 along, π/2 across.</param>
    internal static double WoodPa(double specificGravity, double diameterM, double toGrainRad)
    {
        double diameterIn = diameterM / InchM;
        if (diameterIn < 0.25) return 16_600 * Math.Pow(specificGravity, 1.84) * PsiPa;
        double along = 11_200 * specificGravity * PsiPa, across = 6100 * Math.Pow(specificGravity, 1.45) / Math.Sqrt(diameterIn) * PsiPa;
        double sin = Math.Sin(toGrainRad), cos = Math.Cos(toGrainRad);
        return along * across / ((along * sin * sin) + (across * cos * cos));
    }
}
