using Hoopwright.Quantities;

namespace Hoopwright.Weather;

/// <summary>What an hour must be like to work in, and how many such hours are needed one after the other.</summary>
public sealed record WindowLimits
{
    /// <summary>Most mean wind where one works.</summary>
    public required Speed Wind { get; init; }

    /// <summary>Highest gust where one works; null for any.</summary>
    public Speed? Gust { get; init; }

    /// <summary>Coldest air.</summary>
    public required Temperature Coldest { get; init; }

    /// <summary>Warmest air.</summary>
    public required Temperature Warmest { get; init; }

    /// <summary>Most chance of rain; rain that is measured or forecast as an amount is always too much. Null where rain does not count.</summary>
    public Ratio? RainChance { get; init; }

    /// <summary>Whole hours needed one after the other.</summary>
    public required int Hours { get; init; }

    /// <summary>Wind where one works over that of the record.</summary>
    public Ratio WindHere { get; init; } = Ratio.FromValue(1);

    /// <summary>Gusts where one works over those of the record: near the ground they fall off less than the mean.</summary>
    public Ratio GustHere { get; init; } = Ratio.FromValue(1);

    /// <summary>Gust over mean wind at the height of the record, for hours whose gust is not known.</summary>
    public Ratio GustFactor { get; init; } = Ratio.FromValue(1);

    /// <summary>Hours before sunrise and after sunset in which one would work too.</summary>
    public int HoursInTheDark { get; init; }
}
