using Hoopwright.Sources;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Wood;

/// <summary>The adjustment factors of NDS-2018, allowable stress design.</summary>
internal static class WoodFactors
{
    internal static readonly Citation DurationSource = Register.Nds2018.At("table 2.3.2");
    internal static readonly Citation TemperatureSource = Register.Nds2018.At("table 2.3.3");
    internal static readonly Citation IncisingSource = Register.Nds2018.At("table 4.3.8");
    internal static readonly Citation WetSource = Register.NdsSupplement.At("wet service factors of tables 4A, 4B and 4D");
    internal static readonly Citation SizeSource = Register.NdsSupplement.At("size factors of table 4A; section 4.3.6.2 for timbers");
    internal static readonly Citation FlatSource = Register.NdsSupplement.At("flat use factors of tables 4A and 4B");
    internal static readonly Citation RepetitiveSource = Register.Nds2018.At("section 4.3.9");

    /// <summary>CD, load duration. Not on E, Emin and Fc⊥.</summary>
    internal static double Duration(LoadDuration duration) => duration switch
    {
        LoadDuration.Permanent => 0.9,
        LoadDuration.TenYears => 1.0,
        LoadDuration.TwoMonths => 1.15,
        LoadDuration.SevenDays => 1.25,
        LoadDuration.TenMinutes => 1.6,
        LoadDuration.Impact => 2.0,
    };

    /// <summary>Ct on Ft, E and Emin.</summary>
    internal static double TemperatureOfStiffness(WoodTemperature temperature) => temperature switch
    {
        WoodTemperature.UpTo100F => 1.0,
        WoodTemperature.UpTo125F or WoodTemperature.UpTo150F => 0.9,
    };

    /// <summary>Ct on Fb, Fv, Fc and Fc⊥, and on connections.</summary>
    internal static double TemperatureOfStrength(WoodTemperature temperature, bool isWet) => (temperature, isWet) switch
    {
        (WoodTemperature.UpTo100F, _) => 1.0,
        (WoodTemperature.UpTo125F, false) => 0.8,
        (WoodTemperature.UpTo125F, true) => 0.7,
        (WoodTemperature.UpTo150F, false) => 0.7,
        (WoodTemperature.UpTo150F, true) => 0.5,
    };

    /// <summary>CF on bending, tension and compression.</summary>
    internal static (double Bending, double Tension, double Compression) Size(WoodValues values, WoodSection section)
    {
        if (section.IsTimber)
        {
            // (12/d)^(1/9) for timbers deeper than 12 in.
            double deep = Math.Min(1, Math.Pow(12 * InchM / section.WidthM, 1.0 / 9));
            return (deep, 1, 1);
        }
        bool isThick = !WoodSection.AtMost(section.ThicknessM, 3.0);
        if (values.HasSizeFactor)
            return (isThick && !WoodSection.AtMost(section.WidthM, 5.5) ? 1.1 : 1, 1, 1);
        return section.WidthM switch
        {
            double width when WoodSection.AtMost(width, 3.5) => (1.5, 1.5, 1.15),
            double width when WoodSection.AtMost(width, 4.5) => (1.4, 1.4, 1.1),
            double width when WoodSection.AtMost(width, 5.5) => (1.3, 1.3, 1.1),
            double width when WoodSection.AtMost(width, 7.25) => (isThick ? 1.3 : 1.2, 1.2, 1.05),
            double width when WoodSection.AtMost(width, 9.25) => (isThick ? 1.2 : 1.1, 1.1, 1.0),
            double width when WoodSection.AtMost(width, 11.25) => (isThick ? 1.1 : 1.0, 1.0, 1.0),
            _ => (isThick ? 1.0 : 0.9, 0.9, 0.9),
        };
    }

    /// <summary>Cfu on bending about the weak axis.</summary>
    internal static double FlatUse(WoodSection section)
    {
        // A square section has no flat side, and the table gives posts no factor.
        if (section.IsTimber || section.WidthM - section.ThicknessM < 1e-6) return 1;
        bool isThick = !WoodSection.AtMost(section.ThicknessM, 3.0);
        return section.WidthM switch
        {
            double width when WoodSection.AtMost(width, 2.5) => 1.0,
            double width when WoodSection.AtMost(width, 3.5) => isThick ? 1.0 : 1.1,
            double width when WoodSection.AtMost(width, 4.5) => isThick ? 1.05 : 1.1,
            double width when WoodSection.AtMost(width, 7.25) => isThick ? 1.05 : 1.15,
            _ => isThick ? 1.1 : 1.2,
        };
    }

    /// <summary>CM, wet service, on each value.</summary>
    /// <param name="values">Reference values.</param>
    /// <param name="section">Section.</param>
    /// <param name="size">CF on bending and compression, which decide whether weak wood loses anything.</param>
    internal static WetFactors Wet(WoodValues values, WoodSection section, (double Bending, double Tension, double Compression) size)
    {
        if (values.HoldsWet) return WetFactors.None;
        if (section.IsTimber) return WetFactors.None with { Compression = 0.91, Bearing = 0.67 };
        return new WetFactors(
            Bending: values.BendingPa * size.Bending <= 1150 * PsiPa * (1 + 1e-9) ? 1 : 0.85,
            Tension: 1,
            Shear: 0.97,
            Bearing: 0.67,
            Compression: values.CompressionPa * size.Compression <= 750 * PsiPa * (1 + 1e-9) ? 1 : 0.8,
            Young: 0.9);
    }

    /// <summary>Ci on strengths of incised wood; 0.95 on stiffness, none on bearing.</summary>
    internal const double IncisedStrength = 0.80;

    /// <summary>Ci on E and Emin.</summary>
    internal const double IncisedYoung = 0.95;

    /// <summary>Cr on bending of dimension lumber that shares its load.</summary>
    internal const double Repetitive = 1.15;
}
