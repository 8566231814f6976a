namespace Hoopwright.Weather;

/// <summary>The kind of file that a record came from.</summary>
public enum WeatherForm
{
    /// <summary>An EnergyPlus weather file.</summary>
    Epw,

    /// <summary>A grid forecast of the U.S. National Weather Service.</summary>
    GridForecast,

    /// <summary>An hourly forecast of the U.S. National Weather Service.</summary>
    HourlyForecast,

    /// <summary>A plain table.</summary>
    Table,
}
