using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Days;

/// <summary>Wind at the top of the bows over wind at the mast of a weather station in open country.</summary>
/// <param name="Mean">Of the mean wind.</param>
/// <param name="Gust">Of gusts, which fall off less towards the ground.</param>
/// <param name="Formula">By which formula.</param>
public sealed record SiteWind(Ratio Mean, Ratio Gust, Formula Formula)
{
    internal static readonly Formula Asce = new(
        "v/v10", "b·(z/10)^a over 0.65, z no lower than the least height of the exposure; gusts by the square root of Kz", "", LoadSources.Asce7(LoadStandard.Asce7Of2016, "Table 26.11-1, hourly mean wind; Table 26.10-1"));

    internal static readonly Formula En = new(
        "v/v10", "cr(z) of the terrain over cr(10 m) of terrain II, z no lower than its least height; gusts by the square root of ce", "", LoadSources.EnWind("4.3.2, 4.5"));

    /// <summary>By the standard of the plan's loads.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="answers">Asked for standard, exposure and shelter.</param>
    /// <param name="height">Height of the bows.</param>
    /// <param name="windHeight">Height at which the record has its wind.</param>
    internal static SiteWind Of(Plan plan, Answers answers, Length height, Length windHeight)
    {
        double shelter = answers.Take("coverDay.shelter", DayDefaults.Shelter, plan.CoverDay.Shelter).Value;
        return answers.Take("loads.standard", LoadDefaults.Standard, plan.Loads.Standard) switch
        {
            LoadStandard.Asce7Of2016 or LoadStandard.Asce7Of2022 => ByExposure(answers.Take("loads.exposure", LoadDefaults.Exposure, plan.Loads.Exposure), height.Metres, windHeight.Metres, shelter),
            LoadStandard.En1991 => ByTerrain(answers.Take("loads.terrain", LoadDefaults.Terrain, plan.Loads.Terrain), height.Metres, windHeight.Metres, shelter),
        };
    }

    /// <summary>In open country without shelter, for weather without a plan.</summary>
    internal static SiteWind Open(Length height, Length windHeight) => ByExposure(Exposure.C, height.Metres, windHeight.Metres, 1);

    private static SiteWind ByExposure(Exposure exposure, double heightM, double mastM, double shelter)
    {
        double mean = AsceWind.MeanOverGust(exposure, heightM) / AsceWind.MeanOverGust(Exposure.C, mastM);
        double gust = Math.Sqrt(AsceWind.Kz(LoadStandard.Asce7Of2016, exposure, heightM) / AsceWind.Kz(LoadStandard.Asce7Of2016, Exposure.C, mastM));
        return new(Ratio.FromValue(mean * shelter), Ratio.FromValue(gust * shelter), Asce);
    }

    private static SiteWind ByTerrain(TerrainCategory terrain, double heightM, double mastM, double shelter)
    {
        double mean = EnWind.Cr(terrain, heightM) / EnWind.Cr(TerrainCategory.II, mastM);
        double gust = Math.Sqrt(EnWind.Ce(terrain, heightM) / EnWind.Ce(TerrainCategory.II, mastM));
        return new(Ratio.FromValue(mean * shelter), Ratio.FromValue(gust * shelter), En);
    }
}
