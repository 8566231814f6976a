using Hoopwright.Sources;

namespace Hoopwright.Weather;

/// <summary>Degree days of one day by the three usual methods. The method alone moves a year's sum by a tenth: always name it.</summary>
internal static class DegreeDays
{
    internal static readonly Formula SineFormula = new("GDD", "area over the base of a sine from the day's lowest to its highest", "K·d", Register.Baskerville.At("the single sine"));

    /// <summary>The middle between highest and lowest over a base, not below nothing.</summary>
    internal static double Middle(double highest, double lowest, double lower) => Math.Max(0, ((highest + lowest) / 2) - lower);

    /// <summary>The same with both cut off at base and cap first; the 86/50 method of field crops has 86 and 50 °F.</summary>
    internal static double Cut(double highest, double lowest, double lower, double upper) =>
        ((Math.Clamp(highest, lower, upper) + Math.Clamp(lowest, lower, upper)) / 2) - lower;

    /// <summary>The area between a sine through highest and lowest and a base: Baskerville and Emin (1969).</summary>
    internal static double Sine(double highest, double lowest, double lower)
    {
        if (highest <= lower) return 0;
        double middle = (highest + lowest) / 2, half = (highest - lowest) / 2;
        if (lowest >= lower) return middle - lower;
        double from = Math.Asin((lower - middle) / half);
        return ((half * Math.Cos(from)) - ((lower - middle) * ((Math.PI / 2) - from))) / Math.PI;
    }
}
