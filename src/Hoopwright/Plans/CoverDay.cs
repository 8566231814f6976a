using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>What a day must be like to pull the roof film.</summary>
public sealed record CoverDay : PlanSection
{
    /// <summary>Most mean wind at the height of the bows.</summary>
    [Description("Most mean wind at the height of the bows.")]
    public Written<Speed>? Wind { get; init; }

    /// <summary>Highest gust at the height of the bows.</summary>
    [Description("Highest gust at the height of the bows.")]
    public Written<Speed>? Gust { get; init; }

    /// <summary>Where the wind comes from on the day: S, NW, or degrees clockwise from north; leave out when it is not known.</summary>
    [Description("Where the wind comes from on the day: S, NW, or degrees clockwise from north; leave out when it is not known.")]
    public Written<Angle>? WindFrom { get; init; }

    /// <summary>Coldest air to pull film in.</summary>
    [Description("Coldest air to pull film in.")]
    public Written<Temperature>? Coldest { get; init; }

    /// <summary>Warmest air to pull film in.</summary>
    [Description("Warmest air to pull film in.")]
    public Written<Temperature>? Warmest { get; init; }

    /// <summary>Most chance of rain in any hour.</summary>
    [Description("Most chance of rain in any hour.")]
    public Written<Ratio>? RainChance { get; init; }

    /// <summary>Gust over mean wind, where the weather has no gusts.</summary>
    [Description("Gust over mean wind, where the weather has no gusts.")]
    public Written<Ratio>? GustFactor { get; init; }

    /// <summary>Wind that a hedge or a building leaves at the bows, as a part of that in the open: 1 without shelter.</summary>
    [Description("Wind that a hedge or a building leaves at the bows, as a part of that in the open: 1 without shelter.")]
    public Written<Ratio>? Shelter { get; init; }

    /// <summary>Hours that this crew needs for the roof film, reserve not included; leave out to have them worked out.</summary>
    [Description("Hours that this crew needs for the roof film, reserve not included; leave out to have them worked out.")]
    public int? Hours { get; init; }

    /// <summary>Time kept in reserve, over the hours needed.</summary>
    [Description("Time kept in reserve, over the hours needed.")]
    public Written<Ratio>? Reserve { get; init; }
}
