using Hoopwright.Quantities;

namespace Hoopwright.Weather;

/// <summary>One hour of a record; null is not known.</summary>
public readonly record struct WeatherHour
{
    /// <summary>When the hour begins, or when the reading was taken; by the clock of the record.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Temperature of the air.</summary>
    public Temperature? AirTemperature { get; init; }

    /// <summary>Dew point.</summary>
    public Temperature? DewPoint { get; init; }

    /// <summary>Relative humidity; 1 is saturated.</summary>
    public Ratio? Humidity { get; init; }

    /// <summary>Mean wind, at the height of the record.</summary>
    public Speed? Wind { get; init; }

    /// <summary>Highest gust.</summary>
    public Speed? Gust { get; init; }

    /// <summary>Where the wind comes from, clockwise from north.</summary>
    public Angle? WindDirection { get; init; }

    /// <summary>Rain and melted snow in the hour, as a depth.</summary>
    public Length? Precipitation { get; init; }

    /// <summary>Chance of rain or snow.</summary>
    public Ratio? PrecipitationChance { get; init; }

    /// <summary>Part of the sky that is covered.</summary>
    public Ratio? SkyCover { get; init; }
}
