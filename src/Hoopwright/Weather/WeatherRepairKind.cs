namespace Hoopwright.Weather;

/// <summary>What sort of fault was repaired.</summary>
public enum WeatherRepairKind
{
    /// <summary>A value that cannot be read; it is taken as not known.</summary>
    Unreadable,

    /// <summary>A value that cannot be true; it is taken as not known.</summary>
    Nonsense,

    /// <summary>A row that cannot be read; it is left out.</summary>
    BadRow,

    /// <summary>A last row that breaks off; it is left out.</summary>
    BrokenEnd,

    /// <summary>Rows out of order; they are sorted.</summary>
    Order,

    /// <summary>An hour that stands twice; the first is kept.</summary>
    Twice,

    /// <summary>Times that are not full hours; they are taken to the nearest.</summary>
    OffTheHour,

    /// <summary>Hours of daylight-saving time; they are put back to standard time.</summary>
    SummerTime,

    /// <summary>Hours that are not there.</summary>
    MissingHour,

    /// <summary>Values not known for at most three hours; they are filled from their neighbours.</summary>
    Filled,

    /// <summary>A gust below the mean wind; it is raised to it.</summary>
    GustBelowMean,

    /// <summary>Letters that are not UTF-8; they are read as Latin-1.</summary>
    Letters,
}
