using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>What the climate inside is worked out with.</summary>
public sealed record InsideRules : PlanSection
{
    /// <summary>Part of the light that one new film lets through, square to it.</summary>
    [Description("Part of the light that one new film lets through, square to it.")]
    public Written<Ratio>? FilmLight { get; init; }

    /// <summary>Light that dirt, age and drops on the film take.</summary>
    [Description("Light that dirt, age and drops on the film take.")]
    public Written<Ratio>? Dirt { get; init; }

    /// <summary>plain, or infrared for film made to hold warmth back.</summary>
    [Description("plain, or infrared for film made to hold warmth back.")]
    public FilmKind? Film { get; init; }

    /// <summary>How often an hour the air is changed through cracks with everything shut.</summary>
    [Description("How often an hour the air is changed through cracks with everything shut.")]
    public Written<Ratio>? Leak { get; init; }

    /// <summary>Part of the floor that a watered crop covers.</summary>
    [Description("Part of the floor that a watered crop covers.")]
    public Written<Ratio>? CropCover { get; init; }

    /// <summary>True when doors stand open for air as well as sides and vents.</summary>
    [Description("True when doors stand open for air as well as sides and vents.")]
    public bool? DoorsOpen { get; init; }

    /// <summary>Air inside at which sides, vents and doors are opened.</summary>
    [Description("Air inside at which sides, vents and doors are opened.")]
    public Written<Temperature>? VentAt { get; init; }

    /// <summary>True when a row cover is laid over the crop on hoops each night.</summary>
    [Description("True when a row cover is laid over the crop on hoops each night.")]
    public bool? InnerCover { get; init; }

    /// <summary>Temperature that a heater holds; leave out where there is none.</summary>
    [Description("Temperature that a heater holds; leave out where there is none.")]
    public Written<Temperature>? HeatTo { get; init; }

    /// <summary>Hours with air colder than this are counted: what the crop dies of.</summary>
    [Description("Hours with air colder than this are counted: what the crop dies of.")]
    public Written<Temperature>? Coldest { get; init; }

    /// <summary>Hours with air warmer than this are counted: what spoils the crop.</summary>
    [Description("Hours with air warmer than this are counted: what spoils the crop.")]
    public Written<Temperature>? Warmest { get; init; }

    /// <summary>Temperature from which degree days of growth are counted.</summary>
    [Description("Temperature from which degree days of growth are counted.")]
    public Written<Temperature>? GrowthFrom { get; init; }
}
