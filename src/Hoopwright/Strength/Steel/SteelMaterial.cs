using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Steel;

/// <summary>What the checks need to know of a steel.</summary>
/// <param name="YieldPa">Fy, yield stress; above 0.</param>
/// <param name="UltimatePa">Fu, tensile strength; at least the yield stress.</param>
/// <param name="YoungPa">E; 29,000 ksi in AISC 360, 29,500 ksi in AISI S100.</param>
internal readonly record struct SteelMaterial(double YieldPa, double UltimatePa, double YoungPa)
{
    /// <summary>E of AISC 360, 29,000 ksi.</summary>
    internal const double AiscYoungPa = 29_000 * KsiPa;

    /// <summary>E of AISI S100, 29,500 ksi.</summary>
    internal const double AisiYoungPa = 29_500 * KsiPa;

    /// <summary>E over Fy, which every limit of a wall is a multiple of.</summary>
    internal double YoungOverYield => YoungPa / YieldPa;
}
