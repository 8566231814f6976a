using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>
/// What is taken where the plan does not say. None of it is a value of a place: snow and wind have no usual value, and without
/// them only what the frame stands can be worked out, not whether it stands at the site.
/// </summary>
internal static class LoadDefaults
{
    private static readonly Citation GrowersManual = new(
        "Structural Design Manual (2004) of the national association of greenhouse makers, as quoted by an extension engineer", "100 lb at mid-span", Standing.Published);

    internal static Usual<LoadStandard> Standard { get; } = new(
        LoadStandard.Asce7Of2016, "Loads are worked out by this standard; your building office names the one that holds.", Citation.CommonPractice, Matters: true);

    internal static Usual<RiskCategory> Risk { get; } = new(
        RiskCategory.I, "A growing tunnel that the public does not enter.",
        new Citation("2003 International Building Code", "1608.3.3, as quoted second-hand", Standing.Published), Matters: true);

    internal static Usual<Exposure> Exposure { get; } = new(Plans.Exposure.C, "Open country lies around.", Citation.CommonPractice, Matters: true);

    internal static Usual<TerrainCategory> Terrain { get; } = new(TerrainCategory.II, "Open country lies around.", Citation.CommonPractice, Matters: true);

    internal static Usual<Ratio> Hill { get; } = new(Ratio.FromValue(1), "The land is level: no hill speeds the wind up.", Citation.CommonPractice, Matters: true);

    internal static Usual<Length> Elevation { get; } = new(Length.Zero, "The place counts as lying at the sea, where the air is densest.", Citation.CommonPractice);

    internal static Usual<RoofExposure> RoofExposure { get; } = new(
        Plans.RoofExposure.Partly, "The roof is neither swept by wind from all sides nor sheltered.", Citation.CommonPractice, Matters: true);

    internal static Usual<ThermalClass> Heating { get; } = new(ThermalClass.Unheated, "The tunnel is not heated while it snows.", Citation.CommonPractice, Matters: true);

    internal static Usual<bool> HeatWatched { get; } = new(false, "No one watches the heat, so snow is not reduced for it.", Citation.CommonPractice, Matters: true);

    internal static Usual<bool> SlidesFree { get; } = new(
        false, "Boards, channel or the next tunnel hinder snow from sliding off.", Citation.CommonPractice, Matters: true);

    internal static Usual<Ratio> SnowVariation { get; } = new(
        Ratio.FromValue(0.4), "How much the greatest snow of a year varies from year to year; the weather service has it.", Citation.FromMemory, Matters: true);

    internal static Usual<Ratio> WinterWind { get; } = new(
        Ratio.FromValue(0.65), "The wind is above 10 mph in this part of the winter, as in the windiest places; the hazard tool of the standard has it for yours.",
        LoadSources.Asce7(LoadStandard.Asce7Of2022, "Fig. 7.6-1"), Matters: true);

    internal static Usual<Pressure> Crop { get; } = new(Pressure.Zero, "No crop hangs from the frame.", Citation.CommonPractice, Matters: true);

    internal static Usual<CropSupport> CropHungOn { get; } = new(CropSupport.Bows, "Crops hang from the bows.", Citation.CommonPractice, Matters: true);

    internal static Usual<Force> Person { get; } = new(Force.FromPounds(100), "A person on a ladder puts this on a purlin at the middle of a bay.", GrowersManual);

    internal static Usual<Ratio> BuildingWind { get; } = new(
        Ratio.FromValue(0.75), "While it is built, which takes under six weeks, this part of the design wind is counted.",
        new Citation("ASCE/SEI 37, Design Loads on Structures during Construction", "6.2.1", Standing.FromMemory), Matters: true);

    internal static Usual<bool> ShutBeforeStorms { get; } = new(
        false, "Doors and sides may stand open in a storm, so open ones count.", Citation.CommonPractice, Matters: true);

    internal static Usual<string> Neighbour { get; } = new("none near", "No other tunnel stands so near that snow piles up between.", Citation.CommonPractice, Matters: true);

    internal static Usual<SoilClass> Soil { get; } = new(
        SoilClass.Clay, "The weakest soil that the building code gives values for.", new Citation("International Building Code", "Table 1806.2", Standing.FromMemory), Matters: true);
}
