using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Strength;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Sheets.Figures;

/// <summary>A load case that governs, with the snow or wind it is drawn for.</summary>
/// <param name="Load">The case, fixed.</param>
/// <param name="Limit">The limit that it governs.</param>
/// <param name="IsAtSite">True when that is what the plan gives; false when it is the limit itself.</param>
internal sealed record ShownLoad(LoadCase Load, StrengthLimit Limit, bool IsAtSite)
{
    /// <summary>The cases that govern snow and wind by the code; none where there are no limits.</summary>
    public static ImmutableArray<ShownLoad> Of(StrengthReport report) =>
        [.. report.Limits.Where(limit => limit.Level == StrengthLevel.Code).Select(limit => Of(report.Loads, limit))];

    /// <summary>The snow or wind it is drawn for, in words.</summary>
    public string At(StrengthReport report, UnitSystem units) => (Limit, IsAtSite) switch
    {
        ({ GroundSnow: not null }, true) when report.Loads.GroundSnow is { } snow => $"at the site's ground snow of {TapeText.Of(snow, units)}",
        ({ GroundSnow: { } snow }, _) => $"at the limit, ground snow of {TapeText.Of(snow.Taken, units)}",
        ({ Wind: not null }, true) when report.Loads.Wind is { } wind => $"at the site's wind of {TapeText.Of(wind, units)}",
        ({ Wind: { } wind }, _) => $"at the limit, wind of {TapeText.Of(wind.Taken, units)}",
        _ => "",
    };

    private static ShownLoad Of(TunnelLoads loads, StrengthLimit limit)
    {
        LoadCase load = loads.Case(limit.CaseCode);
        if (load.AtSite() is { } there) return new ShownLoad(there, limit, true);
        Pressure reference = limit.GroundSnow is { } snow ? snow.Taken : limit.Wind is { } wind ? loads.ReferenceOf(wind.Taken) : Pressure.Zero;
        return new ShownLoad(load.Times(reference), limit, false);
    }
}
