using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Weather;

/// <summary>The eight header lines of an EnergyPlus weather file.</summary>
public sealed record EpwHeader
{
    /// <summary>City, as the file names it.</summary>
    public string City { get; init; } = "";

    /// <summary>State, province or region.</summary>
    public string Region { get; init; } = "";

    /// <summary>Country.</summary>
    public string Country { get; init; } = "";

    /// <summary>Where the data come from.</summary>
    public string Source { get; init; } = "";

    /// <summary>Station number of the World Meteorological Organization.</summary>
    public string Station { get; init; } = "";

    /// <summary>Design conditions, cell by cell as they stand: their number, and for each its source and its lists.</summary>
    public ImmutableArray<string> DesignConditions { get; init; } = [];

    /// <summary>Typical and extreme weeks.</summary>
    public ImmutableArray<EpwPeriod> TypicalPeriods { get; init; } = [];

    /// <summary>Temperatures of the ground by depth.</summary>
    public ImmutableArray<EpwGround> GroundTemperatures { get; init; } = [];

    /// <summary>True when the file says that it has a 29 February.</summary>
    public bool LeapYear { get; init; }

    /// <summary>First day of daylight-saving time as it stands, 0 for none; the rows themselves are in standard time.</summary>
    public string SummerTimeFrom { get; init; } = "0";

    /// <summary>Last day of daylight-saving time as it stands, 0 for none.</summary>
    public string SummerTimeTo { get; init; } = "0";

    /// <summary>Holidays: name and day as they stand.</summary>
    public ImmutableArray<EpwPeriod> Holidays { get; init; } = [];

    /// <summary>First comment.</summary>
    public string Comments1 { get; init; } = "";

    /// <summary>Second comment.</summary>
    public string Comments2 { get; init; } = "";

    /// <summary>Rows an hour; this program reads files with one.</summary>
    public int RowsAnHour { get; init; } = 1;

    /// <summary>Stretches of data; the kind is the weekday of the first day.</summary>
    public ImmutableArray<EpwPeriod> DataPeriods { get; init; } = [];
}

/// <summary>A stretch of days in the header of an EnergyPlus weather file.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kind">What it is.</param>
/// <param name="From">First day as it stands, month and day.</param>
/// <param name="To">Last day as it stands.</param>
public sealed record EpwPeriod(string Name, string Kind, string From, string To);

/// <summary>Temperature of the ground by month, as the header of an EnergyPlus weather file gives it: the mean from the surface down to the depth.</summary>
/// <param name="Depth">Down to where.</param>
/// <param name="Months">Twelve months from January.</param>
public sealed record EpwGround(Length Depth, ImmutableArray<Temperature> Months);
