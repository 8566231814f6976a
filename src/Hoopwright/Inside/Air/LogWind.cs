using Hoopwright.Plans;
using Hoopwright.Sources;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Inside.Air;

/// <summary>Mean wind at the height of sides and doors over that at a mast in open country.</summary>
internal static class LogWind
{
    internal static readonly Formula Rule = new(
        "u/u10", "ln(z/z0)/ln(10/z0), from a mast in open country by the same height of the wind over both", "",
        new Citation("logarithmic wind profile, any handbook of meteorology; roughness of EN 1991-1-4, table 4.1, and of ASCE 7, C26.7, from memory", "", Standing.FromMemory));

    /// <summary>Open country with low obstacles, as at a weather station, m.</summary>
    internal const double OpenRoughnessM = 0.03;

    // Wind is alike over all ground at this height; below it each ground has its profile. A hundred metres: from memory.
    private const double BlendM = 100;

    /// <summary>Part of the wind at 10 m that is left at a height, over one ground.</summary>
    /// <param name="heightM">z, m; not counted below twice the roughness.</param>
    /// <param name="roughnessM">z0, m.</param>
    internal static double Profile(double heightM, double roughnessM) => Math.Log(Math.Max(heightM, 2 * roughnessM) / roughnessM) / Math.Log(10 / roughnessM);

    /// <summary>Wind at a height at the site over wind at the mast.</summary>
    internal static double Factor(double heightM, double roughnessM, double mastM)
    {
        double mast = Math.Log(mastM / OpenRoughnessM) / Math.Log(BlendM / OpenRoughnessM);
        return Math.Log(Math.Max(heightM, 2 * roughnessM) / roughnessM) / Math.Log(BlendM / roughnessM) / mast;
    }

    internal static double RoughnessM(Exposure exposure) => exposure switch { Exposure.B => 0.3, Exposure.C => OpenRoughnessM, Exposure.D => 0.005 };

    internal static double RoughnessM(TerrainCategory terrain) => EnWind.Terrain(terrain).RoughnessM;
}
