namespace Hoopwright.Weather;

/// <summary>A limit of the work.</summary>
public enum WindowLimit
{
    /// <summary>Mean wind.</summary>
    Wind,

    /// <summary>Gusts.</summary>
    Gust,

    /// <summary>The coldest air.</summary>
    Coldest,

    /// <summary>The warmest air.</summary>
    Warmest,

    /// <summary>The chance of rain.</summary>
    Rain,

    /// <summary>Hours one after the other.</summary>
    Hours,

    /// <summary>Daylight.</summary>
    Daylight,
}
