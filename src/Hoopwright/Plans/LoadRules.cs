using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>How snow, wind and other loads are worked out. Nothing here is looked up: the building office has the values.</summary>
public sealed record LoadRules : PlanSection
{
    /// <summary>The standard that loads are worked out by; your building office names it.</summary>
    [Description("The standard that loads are worked out by; your building office names it.")]
    public LoadStandard? Standard { get; init; }

    /// <summary>Risk category of ASCE 7. I: a growing tunnel that the public does not enter.</summary>
    [Description("Risk category of ASCE 7. I: a growing tunnel that the public does not enter.")]
    public RiskCategory? RiskCategory { get; init; }

    /// <summary>Return period in years of the wind speed in site.wind; leave out when it is that of the standard.</summary>
    [Description("Return period in years of the wind speed in site.wind; leave out when it is that of the standard.")]
    public int? WindGivenFor { get; init; }

    /// <summary>Return period in years of the wind to design for, where your code allows another than that of the standard.</summary>
    [Description("Return period in years of the wind to design for, where your code allows another than that of the standard.")]
    public int? WindDesignFor { get; init; }

    /// <summary>Return period in years of the ground snow in site.groundSnow; leave out when it is that of the standard.</summary>
    [Description("Return period in years of the ground snow in site.groundSnow; leave out when it is that of the standard.")]
    public int? SnowGivenFor { get; init; }

    /// <summary>Return period in years of the snow to design for, where your code allows another than that of the standard.</summary>
    [Description("Return period in years of the snow to design for, where your code allows another than that of the standard.")]
    public int? SnowDesignFor { get; init; }

    /// <summary>Coefficient of variation of the yearly greatest snow, with which snow is converted between return periods.</summary>
    [Description("Coefficient of variation of the yearly greatest snow, with which snow is converted between return periods.")]
    public Written<Ratio>? SnowVariation { get; init; }

    /// <summary>Part of the winter in which the wind is above 10 mph, W2 of ASCE 7-22, which drifts of snow go by.</summary>
    [Description("Part of the winter in which the wind is above 10 mph, W2 of ASCE 7-22, which drifts of snow go by.")]
    public Written<Ratio>? WinterWind { get; init; }

    /// <summary>How open the land around is to wind, for ASCE 7. C: open country.</summary>
    [Description("How open the land around is to wind, for ASCE 7. C: open country.")]
    public Exposure? Exposure { get; init; }

    /// <summary>How open the land around is to wind, for EN 1991. II: low vegetation and scattered obstacles.</summary>
    [Description("How open the land around is to wind, for EN 1991. II: low vegetation and scattered obstacles.")]
    public TerrainCategory? Terrain { get; init; }

    /// <summary>How much a hill or an escarpment raises the wind pressure: Kzt of ASCE 7, or the square of the orography factor of EN 1991; 1 on level land.</summary>
    [Description("How much a hill or an escarpment raises the wind pressure: Kzt of ASCE 7, or the square of the orography factor of EN 1991; 1 on level land.")]
    public Written<Ratio>? HillFactor { get; init; }

    /// <summary>How much wind the roof gets to blow snow off.</summary>
    [Description("How much wind the roof gets to blow snow off.")]
    public RoofExposure? RoofExposure { get; init; }

    /// <summary>How warm the film is kept while it snows.</summary>
    [Description("How warm the film is kept while it snows.")]
    public ThermalClass? Heating { get; init; }

    /// <summary>True when an attendant or an alarm watches the heat day and night; a heated greenhouse counts as heated only then.</summary>
    [Description("True when an attendant or an alarm watches the heat day and night; a heated greenhouse counts as heated only then.")]
    public bool? HeatWatched { get; init; }

    /// <summary>True when snow can slide off: nothing stands out over the film and there is room for the snow at the foot.</summary>
    [Description("True when snow can slide off: nothing stands out over the film and there is room for the snow at the foot.")]
    public bool? SlidesFree { get; init; }

    /// <summary>Crops hung from the frame, as a load over the floor.</summary>
    [Description("Crops hung from the frame, as a load over the floor.")]
    public Written<Pressure>? CropLoad { get; init; }

    /// <summary>Crops hung from the frame, as a force per length of tie, or per width of bow.</summary>
    [Description("Crops hung from the frame, as a force per length of tie, or per width of bow.")]
    public Written<ForcePerLength>? CropLine { get; init; }

    /// <summary>What carries hung crops.</summary>
    [Description("What carries hung crops.")]
    public CropSupport? CropHungOn { get; init; }

    /// <summary>What a person on a ladder puts on a purlin at the middle of a bay.</summary>
    [Description("What a person on a ladder puts on a purlin at the middle of a bay.")]
    public Written<Force>? Person { get; init; }

    /// <summary>Wind speed to stand while building, as a part of the design wind.</summary>
    [Description("Wind speed to stand while building, as a part of the design wind.")]
    public Written<Ratio>? BuildingWind { get; init; }

    /// <summary>True when someone shuts doors and sides before every storm, so that open ones do not count.</summary>
    [Description("True when someone shuts doors and sides before every storm, so that open ones do not count.")]
    public bool? ShutBeforeStorms { get; init; }

    /// <summary>Temperature at which frame and film are put up.</summary>
    [Description("Temperature at which frame and film are put up.")]
    public Written<Temperature>? InstallTemperature { get; init; }

    /// <summary>Coldest temperature that the frame sees.</summary>
    [Description("Coldest temperature that the frame sees.")]
    public Written<Temperature>? Coldest { get; init; }

    /// <summary>Hottest temperature that the frame sees.</summary>
    [Description("Hottest temperature that the frame sees.")]
    public Written<Temperature>? Hottest { get; init; }
}
