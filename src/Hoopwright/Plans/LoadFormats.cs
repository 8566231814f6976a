using Hoopwright.Quantities;
using static Hoopwright.Plans.PlanFields;

namespace Hoopwright.Plans;

/// <summary>How loads are worked out.</summary>
internal static class LoadFormats
{
    private static readonly QuantityRange<Temperature> Weather =
        PlanQuantities.Temperature.Within("-80 °F", "180 °F", "-62 °C", "82 °C").Like("60 °F", "15 °C");

    public static PlanFormat<LoadRules> Loads { get; } = new(
        Choice<LoadRules, LoadStandard>("standard", loads => loads.Standard, (loads, value) => loads with { Standard = value }),
        Choice<LoadRules, RiskCategory>("riskCategory", loads => loads.RiskCategory, (loads, value) => loads with { RiskCategory = value }),
        Count<LoadRules>("windGivenFor", 2, 10_000, loads => loads.WindGivenFor, (loads, value) => loads with { WindGivenFor = value }),
        Count<LoadRules>("windDesignFor", 2, 10_000, loads => loads.WindDesignFor, (loads, value) => loads with { WindDesignFor = value }),
        Count<LoadRules>("snowGivenFor", 2, 10_000, loads => loads.SnowGivenFor, (loads, value) => loads with { SnowGivenFor = value }),
        Count<LoadRules>("snowDesignFor", 2, 10_000, loads => loads.SnowDesignFor, (loads, value) => loads with { SnowDesignFor = value }),
        Quantity<LoadRules, Ratio>(
            "snowVariation", PlanQuantities.Ratio.Within("0.1", "1").Like("0.4", "0.4"), loads => loads.SnowVariation, (loads, value) => loads with { SnowVariation = value }),
        Quantity<LoadRules, Ratio>(
            "winterWind", PlanQuantities.Ratio.Within("0.1", "0.9").Like("0.5", "0.5"), loads => loads.WinterWind, (loads, value) => loads with { WinterWind = value }),
        Choice<LoadRules, Exposure>("exposure", loads => loads.Exposure, (loads, value) => loads with { Exposure = value }),
        Choice<LoadRules, TerrainCategory>("terrain", loads => loads.Terrain, (loads, value) => loads with { Terrain = value }),
        Quantity<LoadRules, Ratio>(
            "hillFactor", PlanQuantities.Ratio.Within("1", "4").Like("1.3", "1.3"), loads => loads.HillFactor, (loads, value) => loads with { HillFactor = value }),
        Choice<LoadRules, RoofExposure>("roofExposure", loads => loads.RoofExposure, (loads, value) => loads with { RoofExposure = value }),
        Choice<LoadRules, ThermalClass>("heating", loads => loads.Heating, (loads, value) => loads with { Heating = value }),
        YesNo<LoadRules>("heatWatched", loads => loads.HeatWatched, (loads, value) => loads with { HeatWatched = value }),
        YesNo<LoadRules>("slidesFree", loads => loads.SlidesFree, (loads, value) => loads with { SlidesFree = value }),
        Quantity<LoadRules, Pressure>(
            "cropLoad", PlanQuantities.Pressure.Within("0 psf", "40 psf", "0 kPa", "1.9 kPa").Like("4 psf", "0.2 kPa"),
            loads => loads.CropLoad, (loads, value) => loads with { CropLoad = value }),
        Quantity<LoadRules, ForcePerLength>(
            "cropLine", PlanQuantities.ForcePerLength.Within("0 lb/ft", "200 lb/ft", "0 N/m", "2900 N/m").Like("15 lb/ft", "200 N/m"),
            loads => loads.CropLine, (loads, value) => loads with { CropLine = value }),
        Choice<LoadRules, CropSupport>("cropHungOn", loads => loads.CropHungOn, (loads, value) => loads with { CropHungOn = value }),
        Quantity<LoadRules, Force>(
            "person", PlanQuantities.Force.Within("0 lb", "1000 lb", "0 N", "4440 N").Like("100 lb", "450 N"),
            loads => loads.Person, (loads, value) => loads with { Person = value }),
        Quantity<LoadRules, Ratio>(
            "buildingWind", PlanQuantities.Ratio.Within("0.1", "1").Like("0.75", "0.75"), loads => loads.BuildingWind, (loads, value) => loads with { BuildingWind = value }),
        YesNo<LoadRules>("shutBeforeStorms", loads => loads.ShutBeforeStorms, (loads, value) => loads with { ShutBeforeStorms = value }),
        Quantity<LoadRules, Temperature>("installTemperature", Weather, loads => loads.InstallTemperature, (loads, value) => loads with { InstallTemperature = value }),
        Quantity<LoadRules, Temperature>("coldest", Weather, loads => loads.Coldest, (loads, value) => loads with { Coldest = value }),
        Quantity<LoadRules, Temperature>("hottest", Weather, loads => loads.Hottest, (loads, value) => loads with { Hottest = value }));
}
