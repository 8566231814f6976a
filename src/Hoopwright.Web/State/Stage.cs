using System.Collections.Immutable;

namespace Hoopwright.Web.State;

/// <summary>One stage of the work: what it asks, and which drawings show what is being decided.</summary>
/// <param name="Name">Its name in addresses and resources.</param>
/// <param name="Sections">The fields and groups of the plan that it asks for.</param>
/// <param name="Figures">Names of its drawings, the one in sight first.</param>
public sealed record Stage(string Name, ImmutableArray<string> Sections, ImmutableArray<string> Figures)
{
    /// <summary>The stages in the order a builder meets them.</summary>
    public static ImmutableArray<Stage> All { get; } =
    [
        new("site", ["name", "note", "units", "site"], ["set-out"]),
        new("frame", ["frame"], ["bow", "left-side"]),
        new("ground", ["ground"], ["left-side", "set-out"]),
        new("ends", ["ends"], ["front-end", "back-end"]),
        new("cover", ["sides", "cover", "fasteners"], ["left-side", "film-cuts", "film-pull", "front-end-film", "roof-pull"]),
        new("weather", ["coverDay", "crew", "build"], ["roof-pull", "film-pull"]),
        new("inside", ["inside"], ["left-side"]),
        new("strength", ["loads"], ["strength-bow", "strength-loads", "bow"]),
        new("orders", ["prices", "stock", "orders"], ["bow"]),
        new("cuts", ["cuts"], ["cut-lists", "film-cuts"]),
        new("steps", [], ["set-out", "bow", "left-side", "front-end", "roof-pull"]),
        new("days", ["build"], ["set-out", "roof-pull"]),
        new("upkeep", ["upkeep"], ["left-side", "film-cuts", "roof-pull"]),
        new("site-book", ["siteBook", "tolerances"], ["set-out"]),
    ];

    /// <summary>The stage that asks for a path of the plan; the first when none does.</summary>
    public static Stage Of(string path) => All.FirstOrDefault(stage => stage.Sections.Any(section =>
        path == section || path.StartsWith(section + ".", StringComparison.Ordinal) || path.StartsWith(section + "[", StringComparison.Ordinal))) ?? All[0];
}
