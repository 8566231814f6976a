using Hoopwright.Sources;

namespace Hoopwright.Cover.Pull;

/// <summary>
/// How warm a film is, from the air on both of its sides, the sun and the sky: what it takes in of sun is what it gives to both
/// airs and, by the part of its warmth that it sends out, to the sky above and the ground below.
/// </summary>
internal static class FilmWarmth
{
    /// <summary>Part of the sun that a film of one layer takes up.</summary>
    internal const double TakesUp = 0.10;

    /// <summary>Part of a black body's warmth that a film sends out on each side.</summary>
    internal const double SendsOut = 0.35;

    /// <summary>Sun on a film square to it, W/m².</summary>
    internal const double FullSunWPerM2 = 1000;

    private const double InsideWPerM2K = 4, OutsideCalmWPerM2K = 5.7, OutsidePerMPerS = 3.8, StefanBoltzmann = 5.670374419e-8;

    internal static readonly Formula Balance = new("T_film", "a·G + h_out·(T_air - T) + h_in·(T_in - T) + e·σ·(T_sky⁴ + T_in⁴ - 2·T⁴) = 0, with a 0.10, e 0.35, h_in 4, h_out 5.7 + 3.8·v W/m²K", "K", Citation.FromMemory);

    internal static readonly Formula ClearSky = new("T_sky", "0.0552·T_air^1.5", "K", new Citation("Swinbank, Quarterly Journal of the Royal Meteorological Society 89 (1963) 339", "", Standing.FromMemory));

    /// <summary>Temperature of a clear sky over air of a temperature, K.</summary>
    internal static double ClearSkyK(double airK) => 0.0552 * Math.Pow(airK, 1.5);

    /// <summary>The film's temperature, K.</summary>
    /// <param name="airK">Air outside.</param>
    /// <param name="insideK">Air and ground inside.</param>
    /// <param name="sunWPerM2">Sun on the film.</param>
    /// <param name="skyK">What the film sees above it.</param>
    /// <param name="windMPerS">Wind along it.</param>
    internal static double FilmK(double airK, double insideK, double sunWPerM2, double skyK, double windMPerS)
    {
        double outside = OutsideCalmWPerM2K + (OutsidePerMPerS * windMPerS);
        double filmK = airK;
        for (int step = 0; step < 50; step++)
        {
            double left = (TakesUp * sunWPerM2) + (outside * (airK - filmK)) + (InsideWPerM2K * (insideK - filmK))
                + (SendsOut * StefanBoltzmann * (Fourth(skyK) + Fourth(insideK) - (2 * Fourth(filmK))));
            double slope = -outside - InsideWPerM2K - (8 * SendsOut * StefanBoltzmann * filmK * filmK * filmK);
            double change = left / slope;
            filmK -= change;
            if (Math.Abs(change) < 1e-12 * filmK) break;
        }
        return filmK;
    }

    private static double Fourth(double kelvins) => kelvins * kelvins * kelvins * kelvins;
}
