using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>The plan's answers about loads, asked once, and what follows from them for every case.</summary>
internal sealed class LoadSite
{
    private readonly Answers answers;
    private readonly Plan plan;
    private readonly List<Diagnostic> diagnostics = [];
    private readonly List<Coefficient> coefficients = [];

    public LoadSite(Tunnel tunnel, Answers answers)
    {
        this.answers = answers;
        plan = tunnel.Plan;
        LoadRules rules = plan.Loads;
        Standard = answers.Take("loads.standard", LoadDefaults.Standard, rules.Standard);
        Risk = answers.Take("loads.riskCategory", LoadDefaults.Risk, rules.RiskCategory);
        IsAsce = Standard != LoadStandard.En1991;
        if (IsAsce) Exposure = answers.Take("loads.exposure", LoadDefaults.Exposure, rules.Exposure);
        else Terrain = answers.Take("loads.terrain", LoadDefaults.Terrain, rules.Terrain);
        Hill = answers.Take("loads.hillFactor", LoadDefaults.Hill, rules.HillFactor).Value;
        ElevationM = answers.Take("site.elevation", LoadDefaults.Elevation, plan.Site.Elevation).Metres;
        Roof = answers.Take("loads.roofExposure", LoadDefaults.RoofExposure, rules.RoofExposure);
        Thermal = Heat(rules);
        SlidesFree = answers.Take("loads.slidesFree", LoadDefaults.SlidesFree, rules.SlidesFree);
        ShutBeforeStorms = answers.Take("loads.shutBeforeStorms", LoadDefaults.ShutBeforeStorms, rules.ShutBeforeStorms);
        BuildingWind = answers.Take("loads.buildingWind", LoadDefaults.BuildingWind, rules.BuildingWind).Value;
        Line = new FilmLine(tunnel.Bow);
        Behind = Line.FromBehind();
        SnowPa = DesignSnowPa(rules);
        WindMps = DesignWindMps(rules);
        WindFactor = IsAsce ? AsceFactor() : EnFactor();
        if (AsceWindShapes.HighestRise < Line.Rise && tunnel.Bow.Kind != BowKind.Peaked)
        {
            diagnostics.Add(new Diagnostic("loads.arch-too-steep", Severity.Warning, "frame.bow.peakHeight",
                "The roof is steeper than the standards' arches; their steepest one is taken for the wind on it.",
                Show(Line.Rise), FormattableString.Invariant($"rise up to {AsceWindShapes.HighestRise:0.0} of the span")));
        }
        if (!IsAsce && ElevationM > EnSnow.HighestM)
        {
            Warn("loads.too-high-for-snow", "site.elevation", "EN 1991-1-3 holds for sites up to 1500 m over the sea; higher up, snow is other than it says.",
                plan.Site.Elevation?.Text, "what the building office asks for at this height");
        }
    }

    public LoadStandard Standard { get; }

    public RiskCategory Risk { get; }

    public bool IsAsce { get; }

    public Exposure Exposure { get; }

    public TerrainCategory Terrain { get; }

    /// <summary>Kzt, or the square of the orography factor.</summary>
    public double Hill { get; }

    public double ElevationM { get; }

    public RoofExposure Roof { get; }

    public ThermalClass Thermal { get; }

    public bool SlidesFree { get; }

    public bool ShutBeforeStorms { get; }

    public double BuildingWind { get; }

    public FilmLine Line { get; }

    /// <summary>The bow seen from behind: what wind and snow from the right meet.</summary>
    public FilmLine Behind { get; }

    /// <summary>Ground snow to design for, Pa; null when not given.</summary>
    public double? SnowPa { get; }

    /// <summary>Wind to design for, m/s; null when not given.</summary>
    public double? WindMps { get; }

    /// <summary>½·ρ of the standard, kg/m³.</summary>
    public double HalfAirKgM3 => IsAsce ? 0.613 : EnWind.AirKgM3 / 2;

    /// <summary>½·ρ·V² at the site, Pa; null when no wind is given.</summary>
    public double? WindPa => WindMps is { } windMps ? HalfAirKgM3 * windMps * windMps : null;

    /// <summary>Velocity pressure at the roof for 1 Pa of ½·ρ·V².</summary>
    public double WindFactor { get; }

    /// <summary>Height of a drift by the edition of the standard, m. EN 1991 gives none for what it is asked here; that of ASCE 7-16 stands in.</summary>
    /// <param name="fetchM">Length of roof upwind, m.</param>
    /// <param name="groundPa">Ground snow, Pa.</param>
    /// <param name="importance">Is; the edition of 2022 has it in its ground snow.</param>
    public double DriftM(double fetchM, double groundPa, double importance)
    {
        if (Standard != LoadStandard.Asce7Of2022) return AsceSnow.DriftM(fetchM, groundPa, importance);
        return AsceSnow.DriftByWindM(fetchM, groundPa, answers.Take("loads.winterWind", LoadDefaults.WinterWind, plan.Loads.WinterWind).Value);
    }

    public IReadOnlyList<Diagnostic> Diagnostics => diagnostics;

    public ImmutableArray<Coefficient> Coefficients => [.. coefficients];

    public void Warn(string code, string path, string message, string? seen, string? accepted) =>
        diagnostics.Add(new Diagnostic(code, Severity.Warning, path, message, seen, accepted));

    internal static Coefficient Value(Formula formula, double value, string words) => new(formula, Ratio.FromValue(value), words);

    private static string Show(double value) => FormattableString.Invariant($"{value:0.00}");

    private void Note(Formula formula, double value, string words) => coefficients.Add(Value(formula, value, words));

    // A heated greenhouse counts only while someone or something watches the heat; without it snow is that of an unheated one.
    private ThermalClass Heat(LoadRules rules)
    {
        ThermalClass heating = answers.Take("loads.heating", LoadDefaults.Heating, rules.Heating);
        if (heating != ThermalClass.HeatedGreenhouse) return heating;
        if (answers.Take("loads.heatWatched", LoadDefaults.HeatWatched, rules.HeatWatched))
        {
            Warn("loads.heated", "loads.heating",
                "Snow is reduced because the tunnel is heated without a break; a heater or power that fails in a storm takes that away.",
                "heatedGreenhouse", "a standby heater, or design as unheated");
            return heating;
        }
        Warn("loads.heat-not-watched", "loads.heating",
            "A heated greenhouse carries less snow only when it is kept at 50 °F or more all winter and an attendant or an alarm watches it; here it counts as unheated.",
            "heatedGreenhouse", "heatWatched: true, if it is so");
        return ThermalClass.Unheated;
    }

    private double? DesignSnowPa(LoadRules rules)
    {
        if (plan.Site.GroundSnow is not { } snow)
        {
            Warn("loads.no-snow", "site.groundSnow",
                "No ground snow load is given, so what the tunnel stands can be worked out, but not whether that is enough for the site.", null,
                "the value from the official map or the building office");
            return null;
        }
        double givenPa = snow.Value.Pascals;
        if (rules.SnowGivenFor is null && rules.SnowDesignFor is null) return givenPa;
        if (Standard == LoadStandard.Asce7Of2022)
        {
            Warn("loads.snow-by-risk", rules.SnowGivenFor is null ? "loads.snowDesignFor" : "loads.snowGivenFor",
                "The snow maps of ASCE 7-22 are drawn by risk and not by return period, so it is not converted.", null, "the ground snow of the map for the risk category");
            return givenPa;
        }
        int given = rules.SnowGivenFor ?? 50, design = rules.SnowDesignFor ?? 50;
        double variation = answers.Take("loads.snowVariation", LoadDefaults.SnowVariation, rules.SnowVariation).Value;
        double ratio = ReturnPeriods.SnowRatio(design, variation) / ReturnPeriods.SnowRatio(given, variation);
        Note(ReturnPeriods.Snow, ratio, FormattableString.Invariant($"ground snow from {given} to {design} years"));
        Shorter("loads.snowDesignFor", "snow", design, 50);
        return givenPa * ratio;
    }

    private double? DesignWindMps(LoadRules rules)
    {
        if (plan.Site.Wind is not { } wind)
        {
            Warn("loads.no-wind", "site.wind",
                "No design wind speed is given, so what the tunnel stands can be worked out, but not whether that is enough for the site.", null,
                "the value from the official map or the building office");
            return null;
        }
        int usual = ReturnPeriods.WindOf(Standard, Risk), given = rules.WindGivenFor ?? usual, design = rules.WindDesignFor ?? usual;
        Note(ReturnPeriods.WindOfStandard(Standard), usual, "return period of the wind that the standard asks for");
        Shorter("loads.windDesignFor", "wind", design, usual);
        if (given == design) return wind.Value.MetresPerSecond;
        double ratio = IsAsce
            ? ReturnPeriods.AsceWindRatio(design) / ReturnPeriods.AsceWindRatio(given)
            : ReturnPeriods.EnWindRatio(design) / ReturnPeriods.EnWindRatio(given);
        Note(IsAsce ? ReturnPeriods.AsceWindSpeed : ReturnPeriods.EnWindSpeed, ratio, FormattableString.Invariant($"wind speed from {given} to {design} years"));
        return wind.Value.MetresPerSecond * ratio;
    }

    private void Shorter(string path, string what, int design, int usual)
    {
        if (design >= usual) return;
        Warn("loads.shorter-return-period", path, $"The {what} is that of a shorter return period than the standard's; that is allowed only where your code says so.",
            FormattableString.Invariant($"{design} years"), FormattableString.Invariant($"{usual} years, or what the building office accepts in writing"));
    }

    private double AsceFactor()
    {
        double kz = AsceWind.Kz(Standard, Exposure, Line.MeanHeightM), ke = AsceWind.Ke(ElevationM);
        Note(AsceWind.ExposureFactor(Standard), kz, FormattableString.Invariant($"at the mean height of the roof, {Line.MeanHeightM:0.00} m"));
        Note(new Formula("Kzt", "from the plan, 1 on level land", "", LoadSources.Asce7("26.8")), Hill, "hill factor");
        Note(AsceWind.DirectionFactor, AsceWind.Direction, "direction factor");
        Note(AsceWind.ElevationFactor, ke, "thinner air over the sea");
        Note(AsceWind.GustFactor, AsceWind.Gust, "gust factor");
        if (WindMps is { } windMps)
            Note(AsceWind.VelocityPressure(Standard), AsceWind.VelocityPressurePa(kz, Hill, AsceWind.Direction, ke, windMps), "velocity pressure at the roof");
        return kz * Hill * AsceWind.Direction * ke;
    }

    private double EnFactor()
    {
        double ce = EnWind.Ce(Terrain, Line.Crown.ZM) * Hill;
        Note(EnWind.Exposure, ce, FormattableString.Invariant($"peak over basic velocity pressure at the ridge, {Line.Crown.ZM:0.00} m"));
        if (WindPa is { } basicPa) Note(EnWind.PeakPressure, ce * basicPa, "peak velocity pressure at the ridge");
        return ce;
    }
}
