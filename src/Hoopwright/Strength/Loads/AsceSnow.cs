using Hoopwright.Plans;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>Snow by ASCE 7, chapter 7. Slopes are in degrees from the level, loads over the plan.</summary>
internal static class AsceSnow
{
    /// <summary>Steeper parts carry no snow.</summary>
    internal const double BareDeg = 70;

    /// <summary>The slope at which the unbalanced load of a curved roof peaks.</summary>
    internal const double PeakDeg = 30;

    /// <summary>Greatest density of snow that counts: 30 lb/ft³ as a weight.</summary>
    internal const double DensestNPerM3 = 30 * NPerM3PerPcf;

    private const double PaPerPsf = AsceWind.PaPerPsf, FootM = 0.3048;
    private const double NPerM3PerPcf = PaPerPsf / FootM;

    internal static readonly Formula Exposure = new("Ce", "0.9 to 1.2 by terrain and shelter of the roof", "", LoadSources.SnowTables("Table 7.3-1"));

    internal static readonly Formula Thermal = new(
        "Ct", "1.0; 1.1 just above freezing; 1.2 unheated and open; 0.85 continuously heated greenhouse", "", LoadSources.SnowTables("Table 7.3-2"));

    internal static readonly Formula Thermal2022 = new(
        "Ct", "1.2 unheated and open; 0.85 continuously heated greenhouse; what depends on the roof's thermal resistance is taken as 1.2", "",
        LoadSources.Asce7(LoadStandard.Asce7Of2022, "Table 7.3-2"));

    internal static readonly Formula Importance = new("Is", "0.8, 1.0, 1.1, 1.2 by risk category", "", LoadSources.SnowTables("Table 1.5-2"));

    internal static readonly Formula Minimum = new("pm", "Is·pg up to 20 psf, 20·Is above, where the roof is flatter than 10°", "Pa", LoadSources.Asce7("7.3.4"));

    internal static readonly Formula Slope = new(
        "Cs", "1 up to a slope, then straight to 0 at 70°: slippery from 5°, 10°, 15°, other from 30°, 37.5°, 45° for Ct of 1.0, 1.1, 1.2", "",
        LoadSources.Asce7("Fig. 7.4-1"));

    internal static readonly Formula CurvedUnbalanced = new(
        "p", "windward half bare; crown 0.5·pf, then to 2·pf·Cs/Ce where the slope is 30° or at the eave, to 0 where it is 70°", "Pa",
        LoadSources.Asce7("7.6.2 and Fig. 7.4-2"));

    internal static readonly Formula GableUnbalanced = new(
        "p", "slopes of 2.4° to 30.3°, bows and no simple rafters from eave to ridge: 0.3·ps windward, ps leeward and hd·γ/√S over 8/3·hd·√S from the ridge", "Pa",
        LoadSources.Asce7("7.6.1"));

    internal static readonly Formula Drift = new("hd", "(0.43·lu^(1/3)·(pg + 10)^(1/4) - 1.5)·√Is, in ft and psf, lu at least 20 ft", "m", LoadSources.Asce7(LoadStandard.Asce7Of2016, "Fig. 7.6-1"));

    internal static readonly Formula Drift2022 = new(
        "hd", "1.5·√(pg^0.74·lu^0.70·W2^1.7/γ), in ft, psf and lb/ft³, lu at least 20 ft", "m", LoadSources.Asce7(LoadStandard.Asce7Of2022, "Eq. 7.6-1"));

    internal static readonly Formula Weight = new("γ", "0.13·pg + 14, at most 30, in lb/ft³ and psf", "N/m³", LoadSources.Asce7("Eq. 7.7-1"));

    internal static readonly Formula Sliding = new("p", "0.4·pf·W a length of eave", "N/m", LoadSources.Asce7("7.9"));

    internal static Formula Flat(LoadStandard standard) => new(
        "pf", standard == LoadStandard.Asce7Of2022 ? "0.7·Ce·Ct·pg" : "0.7·Ce·Ct·Is·pg", "Pa", LoadSources.Asce7(standard, "Eq. 7.3-1"));

    /// <summary>Ce, exposure factor of the roof.</summary>
    internal static double Ce(Exposure exposure, RoofExposure roof) => (exposure, roof) switch
    {
        (Plans.Exposure.B, RoofExposure.Sheltered) => 1.2,
        (Plans.Exposure.C, RoofExposure.Sheltered) => 1.1,
        (Plans.Exposure.D, RoofExposure.Sheltered) => 1.0,
        (Plans.Exposure.D, RoofExposure.Partly) => 0.9,
        (Plans.Exposure.D, RoofExposure.Exposed) => 0.8,
        (_, RoofExposure.Partly) => 1.0,
        (_, RoofExposure.Exposed) => 0.9,
    };

    /// <summary>Ct, thermal factor.</summary>
    internal static double Ct(LoadStandard standard, ThermalClass thermal) => thermal switch
    {
        ThermalClass.HeatedGreenhouse => 0.85,
        ThermalClass.Unheated => 1.2,
        ThermalClass.AboveFreezing => standard == LoadStandard.Asce7Of2022 ? 1.2 : 1.1,
        ThermalClass.Heated => standard == LoadStandard.Asce7Of2022 ? 1.2 : 1.0,
    };

    /// <summary>Is, importance factor of snow; 1 in 7-22, whose maps hold it.</summary>
    internal static double Is(LoadStandard standard, RiskCategory risk) => standard == LoadStandard.Asce7Of2022
        ? 1
        : risk switch { RiskCategory.I => 0.8, RiskCategory.II => 1.0, RiskCategory.III => 1.1, RiskCategory.IV => 1.2 };

    /// <summary>pf, snow on a flat roof, Pa.</summary>
    internal static double FlatPa(double ce, double ct, double importance, double groundPa) => 0.7 * ce * ct * importance * groundPa;

    /// <summary>pm, least snow of flat roofs, Pa.</summary>
    internal static double MinimumPa(double importance, double groundPa) => importance * Math.Min(groundPa, 20 * PaPerPsf);

    /// <summary>Cs, what of the flat-roof snow lies on a slope.</summary>
    /// <param name="ct">Ct, thermal factor.</param>
    /// <param name="slippery">True where snow slides off a slippery cover without hindrance.</param>
    /// <param name="slopeDeg">Slope, degrees; 0 or more.</param>
    internal static double Cs(double ct, bool slippery, double slopeDeg)
    {
        double fullDeg = FullUpToDeg(ct, slippery);
        return Math.Clamp((BareDeg - slopeDeg) / (BareDeg - fullDeg), 0, 1);
    }

    /// <summary>The slope up to which all snow stays, degrees.</summary>
    internal static double FullUpToDeg(double ct, bool slippery) => ct switch
    {
        < 1.05 => slippery ? 5 : 30,
        < 1.15 => slippery ? 10 : 37.5,
        _ => slippery ? 15 : 45,
    };

    /// <summary>Which of the three shapes the unbalanced load of a curved roof has; 0 where none is asked.</summary>
    /// <param name="eaveDeg">Slope at the eave, degrees.</param>
    /// <param name="crownLineDeg">Slope of the line from the eave, or from the point of 70°, to the crown, degrees.</param>
    internal static int UnbalancedCase(double eaveDeg, double crownLineDeg) =>
        crownLineDeg is < 10 or > 60 ? 0 : eaveDeg < PeakDeg ? 1 : eaveDeg <= BareDeg ? 2 : 3;

    /// <summary>Height of a drift, m.</summary>
    /// <param name="fetchM">lu, length of roof upwind, m; counted from 20 ft.</param>
    /// <param name="groundPa">pg, Pa.</param>
    /// <param name="importance">Is.</param>
    internal static double DriftM(double fetchM, double groundPa, double importance) => FootM * Math.Sqrt(importance) * Math.Max(
        0, (0.43 * Math.Cbrt(Math.Max(fetchM / FootM, 20)) * Math.Pow((groundPa / PaPerPsf) + 10, 0.25)) - 1.5);

    /// <summary>Height of a drift by the winter wind, m.</summary>
    /// <param name="fetchM">lu, length of roof upwind, m; counted from 20 ft.</param>
    /// <param name="groundPa">pg, Pa.</param>
    /// <param name="winterWind">W2, the part of the winter in which the wind is above 10 mph.</param>
    internal static double DriftByWindM(double fetchM, double groundPa, double winterWind) => FootM * 1.5 * Math.Sqrt(
        Math.Pow(groundPa / PaPerPsf, 0.74) * Math.Pow(Math.Max(fetchM / FootM, 20), 0.70) * Math.Pow(winterWind, 1.7) / (WeightNPerM3(groundPa) / NPerM3PerPcf));

    /// <summary>Weight of snow, N/m³.</summary>
    internal static double WeightNPerM3(double groundPa) => Math.Min(DensestNPerM3, ((0.13 * groundPa / PaPerPsf) + 14) * NPerM3PerPcf);

    /// <summary>Snow that slides off one slope, N for a metre of eave.</summary>
    /// <param name="flatPa">pf, Pa.</param>
    /// <param name="eaveToRidgeM">W, level distance from eave to ridge, m.</param>
    internal static double SlidingNPerM(double flatPa, double eaveToRidgeM) => 0.4 * flatPa * eaveToRidgeM;
}
