namespace Hoopwright.Weather;

/// <summary>What a weather file may hold of an hour.</summary>
public enum WeatherElement
{
    /// <summary>Temperature of the air, °C.</summary>
    AirTemperature,

    /// <summary>Dew point, °C.</summary>
    DewPoint,

    /// <summary>Relative humidity, 0 to 1.</summary>
    Humidity,

    /// <summary>Pressure of the air at the place, Pa.</summary>
    Pressure,

    /// <summary>Sunlight outside the air on level ground, Wh/m² in the hour.</summary>
    OutsideHorizontal,

    /// <summary>Sunlight outside the air square to the sun, Wh/m² in the hour.</summary>
    OutsideNormal,

    /// <summary>Infrared from the sky on level ground, Wh/m² in the hour.</summary>
    SkyInfrared,

    /// <summary>Light of sun and sky on level ground, Wh/m² in the hour.</summary>
    GlobalRadiation,

    /// <summary>Light of the sun square to it, Wh/m² in the hour.</summary>
    BeamRadiation,

    /// <summary>Light of the sky on level ground, Wh/m² in the hour.</summary>
    DiffuseRadiation,

    /// <summary>Visible light of sun and sky on level ground, lux.</summary>
    GlobalIlluminance,

    /// <summary>Visible light of the sun square to it, lux.</summary>
    BeamIlluminance,

    /// <summary>Visible light of the sky on level ground, lux.</summary>
    DiffuseIlluminance,

    /// <summary>Brightness of the sky straight above, cd/m².</summary>
    ZenithLuminance,

    /// <summary>Where the wind comes from, degrees clockwise from north.</summary>
    WindDirection,

    /// <summary>Mean wind, m/s.</summary>
    Wind,

    /// <summary>Part of the sky that is covered, 0 to 1.</summary>
    SkyCover,

    /// <summary>Part of the sky that is covered and lets no light through, 0 to 1.</summary>
    OpaqueSkyCover,

    /// <summary>How far one sees, m.</summary>
    Visibility,

    /// <summary>Height of the clouds, m.</summary>
    Ceiling,

    /// <summary>Whether present weather was observed: 0 when it was.</summary>
    PresentWeatherSeen,

    /// <summary>Nine digits of present weather, as a number.</summary>
    PresentWeather,

    /// <summary>Water in all the air above, m.</summary>
    PrecipitableWater,

    /// <summary>Depth of dust and haze for light.</summary>
    AerosolDepth,

    /// <summary>Snow on the ground, m.</summary>
    SnowDepth,

    /// <summary>Days since it last snowed.</summary>
    DaysSinceSnow,

    /// <summary>Part of the light that the ground throws back.</summary>
    Albedo,

    /// <summary>Rain and melted snow in the hour, m.</summary>
    Precipitation,

    /// <summary>Hours over which precipitation was gathered.</summary>
    PrecipitationHours,

    /// <summary>The highest gust in the hour, m/s.</summary>
    Gust,

    /// <summary>Chance that it rains or snows in the hour, 0 to 1.</summary>
    PrecipitationChance,
}
