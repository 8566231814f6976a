using Hoopwright.Sources;

namespace Hoopwright.Cover.Pull;

/// <summary>Pull in film, N for a metre across the pull.</summary>
internal static class FilmTension
{
    internal static readonly Formula Hoop = new("T", "p·R", "N/m", FilmMaterial.Membrane);

    internal static readonly Formula Sagging = new("T", "p·s²/(8·f)", "N/m", FilmMaterial.Membrane);

    internal static readonly Formula Elastic = new("T", "(E·t·p²·s²/24)^(1/3), film laid slack between bows s apart", "N/m", FilmMaterial.Membrane);

    /// <summary>Film bent over an arch of radius R by a pressure: T = p·R.</summary>
    internal static double HoopNPerM(double pressurePa, double radiusM) => pressurePa * radiusM;

    /// <summary>Film bulging by f between two bows s apart: T = p·s²/(8·f).</summary>
    internal static double SaggingNPerM(double pressurePa, double baySpanM, double sagM) => pressurePa * baySpanM * baySpanM / (8 * sagM);

    /// <summary>How much longer than the bay the bulging film is, as a part of the bay: 8·f²/(3·s²).</summary>
    internal static double SaggingStrain(double baySpanM, double sagM) => 8 * sagM * sagM / (3 * baySpanM * baySpanM);

    /// <summary>Film laid without pull between two bows, stretched by a pressure.</summary>
    /// <param name="stiffnessNPerM">E·t of all layers, N/m.</param>
    /// <param name="pressurePa">p, Pa, either way.</param>
    /// <param name="baySpanM">s, m.</param>
    internal static double ElasticNPerM(double stiffnessNPerM, double pressurePa, double baySpanM) =>
        Math.Cbrt(stiffnessNPerM * pressurePa * pressurePa * baySpanM * baySpanM / 24);

    /// <summary>The same with a pull T0 already in it: T³ - T0·T² = E·t·p²·s²/24, by Newton's method.</summary>
    internal static double ElasticNPerM(double stiffnessNPerM, double pressurePa, double baySpanM, double beforeNPerM)
    {
        double right = stiffnessNPerM * pressurePa * pressurePa * baySpanM * baySpanM / 24;
        double t = beforeNPerM + Math.Cbrt(right);
        for (int step = 0; step < 60 && t > 0; step++)
        {
            double change = ((t * t * (t - beforeNPerM)) - right) / (t * ((3 * t) - (2 * beforeNPerM)));
            t -= change;
            if (Math.Abs(change) <= 1e-12 * t) break;
        }
        return t;
    }
}
