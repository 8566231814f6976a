using Hoopwright.Plans;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>
/// Wind by EN 1991-1-4. The pressures of vaulted roofs are the headline values of figure 7.11 from memory, joined by straight
/// lines: the chart must be read before anything rests on them.
/// </summary>
internal static class EnWind
{
    /// <summary>Density of air, kg/m³.</summary>
    internal const double AirKgM3 = 1.25;

    internal static readonly Formula PeakPressure = new(
        "qp", "(1 + 7·Iv)·½·1.25·(cr·vb)², Iv = 1/ln(z/z0), cr = kr·ln(z/z0), kr = 0.19·(z0/0.05)^0.07", "Pa", LoadSources.EnWind("4.3 to 4.5"));

    internal static readonly Formula Exposure = PeakPressure with { Symbol = "ce", Text = "qp/qb = (1 + 7·Iv)·cr², Iv and cr as for qp", Unit = "" };

    internal static readonly Formula Vault = new(
        "cpe", "vaulted roof: windward quarter by rise and height, centre half -0.8 to -1.2, leeward quarter -0.4; headline values joined by straight lines",
        "", LoadSources.EnWind("Fig. 7.11"));

    internal static readonly Formula Walls = new("cpe", "walls: D 0.7 to 0.8, E -0.3 to -0.5, sides -1.2, -0.8, -0.5", "", LoadSources.EnWind("Table 7.1"));

    internal static readonly Formula Along = new(
        "cpe", "wind along the vault: -0.7 within one height of the windward end, -0.5 beyond, as the inner zones of a duopitch roof", "", LoadSources.EnWind("Table 7.4b"));

    internal static readonly Formula Inside = new("cpi", "+0.2 and -0.3 where openings are not known", "", LoadSources.EnWind("7.2.9(6)"));

    internal static readonly Formula InsideDominant = new(
        "cpi", "part of cpe at the face that has at least twice the openings of all others, pressing or sucking: 0.75 at twice, 0.9 from three times on, straight between", "",
        LoadSources.EnWind("7.2.9(4), (5)"));

    private static readonly double[] Rises = [0.05, 0.1, 0.5];

    /// <summary>Roughness length z0 and least height, m.</summary>
    internal static (double RoughnessM, double LeastHeightM) Terrain(TerrainCategory terrain) => terrain switch
    {
        TerrainCategory.Zero => (0.003, 1),
        TerrainCategory.I => (0.01, 1),
        TerrainCategory.II => (0.05, 2),
        TerrainCategory.III => (0.3, 5),
        TerrainCategory.IV => (1.0, 10),
    };

    /// <summary>kr, factor of the terrain.</summary>
    internal static double Kr(TerrainCategory terrain) => 0.19 * Math.Pow(Terrain(terrain).RoughnessM / 0.05, 0.07);

    /// <summary>cr, roughness factor at a height.</summary>
    /// <param name="terrain">The terrain.</param>
    /// <param name="heightM">z, m; not under the least height of the terrain.</param>
    internal static double Cr(TerrainCategory terrain, double heightM) => Kr(terrain) * Math.Log(HeightM(terrain, heightM) / Terrain(terrain).RoughnessM);

    /// <summary>Iv, intensity of turbulence at a height.</summary>
    internal static double Iv(TerrainCategory terrain, double heightM) => 1 / Math.Log(HeightM(terrain, heightM) / Terrain(terrain).RoughnessM);

    /// <summary>Basic velocity pressure qb, Pa.</summary>
    /// <param name="windMps">vb, ten-minute mean at 10 m in terrain II, m/s.</param>
    internal static double BasicPressurePa(double windMps) => 0.5 * AirKgM3 * windMps * windMps;

    /// <summary>ce, peak pressure over basic pressure.</summary>
    internal static double Ce(TerrainCategory terrain, double heightM)
    {
        double cr = Cr(terrain, heightM);
        return (1 + (7 * Iv(terrain, heightM))) * cr * cr;
    }

    /// <summary>Peak velocity pressure qp, Pa.</summary>
    internal static double PeakPressurePa(TerrainCategory terrain, double heightM, double windMps) => Ce(terrain, heightM) * BasicPressurePa(windMps);

    /// <summary>cpe of the windward quarter of a vaulted roof.</summary>
    /// <param name="rise">f/d, rise over span; counted from 0.05 to 0.5.</param>
    /// <param name="legs">h/d, height of the legs over span; at 0.5 the second curve holds, between them straight.</param>
    internal static double VaultWindward(double rise, double legs) => AsceWindShapes.Between(
        [0, 0.5], [AsceWindShapes.Between([0.05, 0.5], [0.1, 0.8], rise), AsceWindShapes.Between([0.05, 0.5], [-1.2, 0.8], rise)], legs);

    /// <summary>cpe of the centre half of a vaulted roof.</summary>
    internal static double VaultCentre(double rise) => AsceWindShapes.Between(Rises, [-0.8, -0.8, -1.2], rise);

    /// <summary>cpe of the leeward quarter of a vaulted roof.</summary>
    internal const double VaultLeeward = -0.4;

    /// <summary>cpe of a wall facing the wind (D).</summary>
    /// <param name="heightPerDepth">h/d, height over depth along the wind.</param>
    internal static double WindwardWall(double heightPerDepth) => AsceWindShapes.Between([0.25, 1], [0.7, 0.8], heightPerDepth);

    /// <summary>cpe of a wall in the lee (E).</summary>
    internal static double LeewardWall(double heightPerDepth) => AsceWindShapes.Between([0.25, 1], [-0.3, -0.5], heightPerDepth);

    /// <summary>cpe of a wall along the wind, by distance from the windward edge in parts of e, the smaller of breadth and two heights.</summary>
    internal static double SideWall(double edgesFromCorner) => edgesFromCorner < 0.2 ? -1.2 : edgesFromCorner < 1 ? -0.8 : -0.5;

    /// <summary>What of the cpe outside of a dominant face comes in.</summary>
    /// <param name="timesOthers">Its openings over those of all other faces; 2 or more.</param>
    internal static double DominantPart(double timesOthers) => AsceWindShapes.Between([LeastDominant, 3], [0.75, 0.9], timesOthers);

    /// <summary>A face is dominant from this many times the openings of all others on.</summary>
    internal const double LeastDominant = 2;

    /// <summary>cpe of the roof for wind along it.</summary>
    /// <param name="heightsFromEdge">Distance from the windward end in heights.</param>
    internal static double RoofAlong(double heightsFromEdge) => heightsFromEdge < 1 ? -0.7 : -0.5;

    private static double HeightM(TerrainCategory terrain, double heightM) => Math.Max(heightM, Terrain(terrain).LeastHeightM);
}
