using Hoopwright.Plans;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>Wind and snow from one return period to another.</summary>
internal static class ReturnPeriods
{
    // Euler and Mascheroni's constant, and that of the standard for 50 years.
    private const double Gamma = 0.57722, FiftyYears = 2.5923;

    internal static readonly Formula AsceWindSpeed = new(
        "V_T/V_50", "0.36 + 0.1·ln(12·T), away from hurricanes", "",
        new Citation("ASCE/SEI 7-10 commentary after Peterka and Shahid, J. Struct. Eng. 124 (1998)", "C26.5", Standing.FromMemory));

    internal static readonly Formula EnWindSpeed = new(
        "c_prob", "[(1 - K·ln(-ln(1 - p)))/(1 - K·ln(-ln 0.98))]^n, K 0.2, n 0.5, p = 1/T", "", LoadSources.EnWind("4.2(2), note 4"));

    internal static readonly Formula Snow = new(
        "s_T/s_50", "[1 - V·(√6/π)·(ln(-ln(1 - 1/T)) + 0.57722)]/(1 + 2.5923·V)", "", LoadSources.EnSnow("Annex D"));

    internal static readonly Formula Exceedance = new("P", "1 - (1 - 1/T)^N", "", new Citation("probability of independent years", "", Standing.Derived));

    /// <summary>Return period of the wind speed that a standard asks for, years.</summary>
    internal static int WindOf(LoadStandard standard, RiskCategory risk) => standard == LoadStandard.En1991
        ? 50
        : risk switch { RiskCategory.I => 300, RiskCategory.II => 700, RiskCategory.III => 1700, RiskCategory.IV => 3000 };

    internal static Formula WindOfStandard(LoadStandard standard) => new(
        "T", "300, 700, 1700, 3000 years by risk category; 50 years by EN 1991", "years",
        standard == LoadStandard.En1991 ? LoadSources.EnWind("4.2") : LoadSources.Asce7(standard, "26.5.1"));

    /// <summary>V_T over V_50 by ASCE.</summary>
    /// <param name="years">T, years; 2 or more.</param>
    internal static double AsceWindRatio(double years) => 0.36 + (0.1 * Math.Log(12 * years));

    /// <summary>c_prob: v_T over v_50 by EN 1991-1-4.</summary>
    /// <param name="years">T, years; over 1.</param>
    internal static double EnWindRatio(double years)
    {
        const double k = 0.2;
        return Math.Sqrt((1 - (k * Math.Log(-Math.Log(1 - (1 / years))))) / (1 - (k * Math.Log(-Math.Log(0.98)))));
    }

    /// <summary>s_T over s_50 by EN 1991-1-3, Annex D (Gumbel's distribution).</summary>
    /// <param name="years">T, years; over 1.</param>
    /// <param name="variation">V, coefficient of variation of the yearly greatest; over 0.</param>
    internal static double SnowRatio(double years, double variation) =>
        (1 - (variation * Math.Sqrt(6) / Math.PI * (Math.Log(-Math.Log(1 - (1 / years))) + Gamma))) / (1 + (FiftyYears * variation));

    /// <summary>The chance that a value of a return period is passed at least once.</summary>
    /// <param name="years">T, years; over 1.</param>
    /// <param name="life">N, years that it stands.</param>
    internal static double ChanceOfExceedance(double years, double life) => 1 - Math.Pow(1 - (1 / years), life);
}
