using Hoopwright.Sources;

namespace Hoopwright.Inside.Air;

/// <summary>Water in the air.</summary>
internal static class MoistAir
{
    internal static readonly Formula Saturation = new("e_s", "610.8·exp(17.27·t/(t + 237.3)), t in °C", "Pa", Register.Fao56.At("chapter 3, equation 11"));

    /// <summary>Heat that a kilogram of water takes up to evaporate, J/kg: FAO-56, chapter 3, 2.45 MJ/kg, from memory.</summary>
    internal const double EvaporationJPerKg = 2.45e6;

    /// <summary>Heat that a kilogram of air takes up to warm by a kelvin, J/kg K; from memory.</summary>
    internal const double HeatJPerKgK = 1006;

    private const double WaterOverAir = 0.622;

    /// <summary>Pressure of saturated vapour, Pa.</summary>
    internal static double SaturationPa(double celsius) => 610.8 * Math.Exp(17.27 * celsius / (celsius + 237.3));

    /// <summary>Kilograms of water in a kilogram of dry air.</summary>
    /// <param name="vapourPa">Pressure of the vapour, Pa.</param>
    /// <param name="airPa">Pressure of the air, Pa.</param>
    internal static double Ratio(double vapourPa, double airPa) => WaterOverAir * vapourPa / Math.Max(airPa - vapourPa, 0.5 * airPa);

    /// <summary>The most water that air of a temperature holds, kg/kg, and by how much it grows with a kelvin. Below -60 °C next to nothing, above 80 °C no more: neither is found in a tunnel.</summary>
    internal static (double Ratio, double PerK) Saturated(double kelvins, double airPa)
    {
        double asked = kelvins - 273.15, celsius = Math.Clamp(asked, -60, 80), vapour = SaturationPa(celsius), ratio = Ratio(vapour, airPa);
        double dry = Math.Max(airPa - vapour, 0.5 * airPa);
        return (ratio, asked == celsius ? ratio * 17.27 * 237.3 / ((celsius + 237.3) * (celsius + 237.3)) * airPa / dry : 0);
    }

    /// <summary>Density of air, kg/m³, from its pressure and temperature as a dry gas.</summary>
    internal static double DensityKgM3(double airPa, double kelvins) => airPa / (287.05 * kelvins);
}
