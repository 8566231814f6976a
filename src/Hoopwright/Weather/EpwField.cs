using System.Collections.Immutable;

namespace Hoopwright.Weather;

/// <summary>A number of an EnergyPlus weather file's rows.</summary>
/// <param name="Cell">Which cell of the row, from 0.</param>
/// <param name="Element">What it is.</param>
/// <param name="Missing">From this value up it stands for not known.</param>
/// <param name="ToKept">Times this it is in the unit kept.</param>
internal sealed record EpwField(int Cell, WeatherElement Element, double Missing, double ToKept = 1)
{
    /// <summary>All numbers of a row after the flags: the data dictionary of the format (EnergyPlus auxiliary programs, public domain), from memory; 777.7 km and 77777 m stand for unlimited in files made of TMY3, and are not kept.</summary>
    internal static ImmutableArray<EpwField> All { get; } =
    [
        new(6, WeatherElement.AirTemperature, 99.9),
        new(7, WeatherElement.DewPoint, 99.9),
        new(8, WeatherElement.Humidity, 999, 0.01),
        new(9, WeatherElement.Pressure, 999_999),
        new(10, WeatherElement.OutsideHorizontal, 9999),
        new(11, WeatherElement.OutsideNormal, 9999),
        new(12, WeatherElement.SkyInfrared, 9999),
        new(13, WeatherElement.GlobalRadiation, 9999),
        new(14, WeatherElement.BeamRadiation, 9999),
        new(15, WeatherElement.DiffuseRadiation, 9999),
        new(16, WeatherElement.GlobalIlluminance, 999_900),
        new(17, WeatherElement.BeamIlluminance, 999_900),
        new(18, WeatherElement.DiffuseIlluminance, 999_900),
        new(19, WeatherElement.ZenithLuminance, 9999),
        new(20, WeatherElement.WindDirection, 999),
        new(21, WeatherElement.Wind, 999),
        new(22, WeatherElement.SkyCover, 99, 0.1),
        new(23, WeatherElement.OpaqueSkyCover, 99, 0.1),
        new(24, WeatherElement.Visibility, 777.7, 1000),
        new(25, WeatherElement.Ceiling, 77_777),
        new(26, WeatherElement.PresentWeatherSeen, double.PositiveInfinity),
        new(27, WeatherElement.PresentWeather, 999_999_999),
        new(28, WeatherElement.PrecipitableWater, 999, 0.001),
        new(29, WeatherElement.AerosolDepth, 0.999),
        new(30, WeatherElement.SnowDepth, 999, 0.01),
        new(31, WeatherElement.DaysSinceSnow, 99),
        new(32, WeatherElement.Albedo, 99),
        new(33, WeatherElement.Precipitation, 999, 0.001),
        new(34, WeatherElement.PrecipitationHours, 99),
    ];
}
