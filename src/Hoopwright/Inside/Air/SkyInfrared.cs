using Hoopwright.Sources;

namespace Hoopwright.Inside.Air;

/// <summary>Infrared from the sky, for weather that does not have it.</summary>
internal static class SkyInfrared
{
    internal static readonly Formula Rule = new(
        "L", "(0.787 + 0.764·ln(Td/273.15))·(1 + 0.0224·N - 0.0035·N² + 0.00028·N³)·σ·T⁴, N tenths of opaque cover", "W/m²",
        new Citation("Clark and Allen (1978) and Walton, NBSIR 83-2655, as quoted for EnergyPlus weather files", "sky emissivity", Standing.Published));

    /// <summary>σ as the weather files take it, W/m²K⁴.</summary>
    internal const double FileConstant = 5.6697e-8;

    /// <summary>L, W/m².</summary>
    /// <param name="airK">Air, K.</param>
    /// <param name="dewPointK">Dew point, K.</param>
    /// <param name="opaqueCover">Part of the sky that is covered, from 0 to 1.</param>
    internal static double WPerM2(double airK, double dewPointK, double opaqueCover)
    {
        double n = 10 * opaqueCover, clear = 0.787 + (0.764 * Math.Log(dewPointK / 273.15));
        return clear * (1 + (n * (0.0224 + (n * (-0.0035 + (n * 0.00028)))))) * FileConstant * airK * airK * airK * airK;
    }
}
