using System.Collections.Immutable;

namespace Hoopwright.Weather;

/// <summary>What is known of an element beforehand: its name, what can be true on earth, how a short gap is filled.</summary>
/// <param name="Element">Which.</param>
/// <param name="Name">As people say it.</param>
/// <param name="Least">Below this it is nonsense, in the unit of <see cref="WeatherElement"/>.</param>
/// <param name="Most">Above this it is nonsense.</param>
/// <param name="Fill">How a gap of a few hours is filled.</param>
/// <param name="Jump">More than this above or below both neighbours is nonsense; infinite where nothing is said.</param>
internal sealed record ElementFact(WeatherElement Element, string Name, double Least, double Most, GapFill Fill, double Jump = double.PositiveInfinity)
{
    // Precipitable water of files made of TMY3 is in tenths of a millimetre where the format says millimetres; nothing rests on it.
    // Bounds a little beyond what was ever measured: -89.2 and 56.7 °C, 1084 hPa; a gust of 113 m/s; from memory of the record
    // lists of the World Meteorological Organization. Jumps: common practice, no source.
    private static readonly ImmutableArray<ElementFact> Facts =
    [
        new(WeatherElement.AirTemperature, "air temperature", -90, 60, GapFill.Straight, 20),
        new(WeatherElement.DewPoint, "dew point", -100, 40, GapFill.Straight, 20),
        new(WeatherElement.Humidity, "humidity", 0, 1.1, GapFill.Straight),
        new(WeatherElement.Pressure, "air pressure", 31_000, 120_000, GapFill.Straight),
        new(WeatherElement.OutsideHorizontal, "light outside the air, level", 0, 1500, GapFill.None),
        new(WeatherElement.OutsideNormal, "light outside the air, square to the sun", 0, 1500, GapFill.None),
        new(WeatherElement.SkyInfrared, "infrared from the sky", 0, 700, GapFill.None),
        new(WeatherElement.GlobalRadiation, "global radiation", 0, 1600, GapFill.None),
        new(WeatherElement.BeamRadiation, "beam radiation", 0, 1400, GapFill.None),
        new(WeatherElement.DiffuseRadiation, "diffuse radiation", 0, 1200, GapFill.None),
        new(WeatherElement.GlobalIlluminance, "global illuminance", 0, 999_900, GapFill.None),
        new(WeatherElement.BeamIlluminance, "beam illuminance", 0, 999_900, GapFill.None),
        new(WeatherElement.DiffuseIlluminance, "diffuse illuminance", 0, 999_900, GapFill.None),
        new(WeatherElement.ZenithLuminance, "zenith luminance", 0, 99_990, GapFill.None),
        new(WeatherElement.WindDirection, "wind direction", 0, 360, GapFill.None),
        new(WeatherElement.Wind, "wind", 0, 80, GapFill.Higher, 25),
        new(WeatherElement.SkyCover, "sky cover", 0, 1, GapFill.None),
        new(WeatherElement.OpaqueSkyCover, "opaque sky cover", 0, 1, GapFill.None),
        new(WeatherElement.Visibility, "visibility", 0, 1e6, GapFill.None),
        new(WeatherElement.Ceiling, "ceiling", 0, 99_999, GapFill.None),
        new(WeatherElement.PresentWeatherSeen, "present weather observation", 0, 9, GapFill.None),
        new(WeatherElement.PresentWeather, "present weather", 0, 999_999_999, GapFill.None),
        new(WeatherElement.PrecipitableWater, "precipitable water", 0, 1, GapFill.None),
        new(WeatherElement.AerosolDepth, "aerosol depth", 0, 10, GapFill.None),
        new(WeatherElement.SnowDepth, "snow depth", 0, 15, GapFill.None),
        new(WeatherElement.DaysSinceSnow, "days since snow", 0, 366, GapFill.None),
        new(WeatherElement.Albedo, "albedo", 0, 1, GapFill.None),
        new(WeatherElement.Precipitation, "precipitation", 0, 0.5, GapFill.None),
        new(WeatherElement.PrecipitationHours, "hours of precipitation", 0, 24, GapFill.None),
        new(WeatherElement.Gust, "gust", 0, 115, GapFill.None, 40),
        new(WeatherElement.PrecipitationChance, "chance of precipitation", 0, 1, GapFill.None),
    ];

    internal static int Count => Facts.Length;

    internal static ElementFact Of(WeatherElement element) => Facts[(int)element];
}

/// <summary>How a gap of a few hours is filled.</summary>
internal enum GapFill
{
    /// <summary>It is left.</summary>
    None,

    /// <summary>In a straight line between the neighbours.</summary>
    Straight,

    /// <summary>By the higher of the neighbours, which errs on the side of caution.</summary>
    Higher,
}
