using Hoopwright.Sources;

namespace Hoopwright.Strength.Steel;

/// <summary>Elastic buckling stress, by an effective length or from a buckling analysis.</summary>
internal static class Buckling
{
    internal static readonly Formula ElasticStress = new("Fe", "π²·E/(Lc/r)²", "Pa", Register.Aisc360.At("Eq. E3-4"));

    internal static readonly Formula ElasticStressOfLoad = new("Fe", "λ·P/A", "Pa", Register.Aisc360.At("appendix 7, section 7.2.3"));

    /// <summary>Fe from the effective length Lc and the radius of gyration r.</summary>
    internal static double ElasticStressPa(double youngPa, double effectiveLengthM, double gyrationM)
    {
        double slenderness = effectiveLengthM / gyrationM;
        return Math.PI * Math.PI * youngPa / (slenderness * slenderness);
    }

    /// <summary>Fe from a buckling analysis of the frame.</summary>
    /// <param name="loadFactor">λ, the lowest factor on the loads at which the frame buckles in the member's mode; above 0.</param>
    /// <param name="compressionN">P in the member under the loads taken once; above 0.</param>
    /// <param name="areaM2">A of the member.</param>
    internal static double ElasticStressOfLoadPa(double loadFactor, double compressionN, double areaM2) => loadFactor * compressionN / areaM2;
}
