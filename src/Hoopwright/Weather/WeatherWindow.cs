using Hoopwright.Quantities;

namespace Hoopwright.Weather;

/// <summary>A stretch of hours on one day that meets every limit, and the best time in it to begin.</summary>
public sealed record WeatherWindow
{
    /// <summary>Where it begins.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>Where it ends.</summary>
    public required DateTimeOffset To { get; init; }

    /// <summary>Best time to begin: from here the limits are used least.</summary>
    public required DateTimeOffset Begin { get; init; }

    /// <summary>When the hours needed from there are over.</summary>
    public required DateTimeOffset End { get; init; }

    /// <summary>Highest mean wind where one works, in the hours needed.</summary>
    public required Speed Wind { get; init; }

    /// <summary>Highest gust where one works, in the hours needed.</summary>
    public required Speed Gust { get; init; }

    /// <summary>True when a gust of those hours was estimated from the mean.</summary>
    public required bool GustEstimated { get; init; }

    /// <summary>Coldest of the hours needed.</summary>
    public required Temperature Coldest { get; init; }

    /// <summary>Warmest of the hours needed.</summary>
    public required Temperature Warmest { get; init; }

    /// <summary>Highest chance of rain in the hours needed; null when the record has none.</summary>
    public required Ratio? RainChance { get; init; }

    /// <summary>True when rain was looked at, as a chance or an amount.</summary>
    public required bool RainKnown { get; init; }

    /// <summary>Sunrise of the day.</summary>
    public required DateTimeOffset Sunrise { get; init; }

    /// <summary>Sunset of the day.</summary>
    public required DateTimeOffset Sunset { get; init; }

    /// <summary>How much of the limit that is used most is used: 0 nothing, 1 all of it. Windows are ranked by this.</summary>
    public required Ratio Used { get; init; }

    /// <summary>Which limit that is.</summary>
    public required WindowLimit Tightest { get; init; }
}
