namespace Hoopwright.Weather;

/// <summary>What the time of a row says.</summary>
public enum WeatherStamp
{
    /// <summary>The row is the hour that begins then.</summary>
    HourBeginning,

    /// <summary>The row is the hour that ends then.</summary>
    HourEnding,

    /// <summary>The row is a reading at that instant.</summary>
    Reading,
}
