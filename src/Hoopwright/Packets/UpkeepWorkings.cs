using System.Collections.Immutable;
using Hoopwright.Sources;
using Hoopwright.Strength;

namespace Hoopwright.Packets;

/// <summary>The working of every number about upkeep.</summary>
internal static class UpkeepWorkings
{
    private const string Found = "dead load and this load once, the load found by halving until the worst place of the worst inner bow uses its reduced strength to the full, second-order";

    private static readonly Citation Method = Register.Aisc360.At("chapter C, direct analysis method");
    private static readonly ImmutableArray<string> Frame = ["frame.bowTube", "frame.bow", "frame.tie", "ground.legBase", "loads"];
    private static readonly ImmutableArray<string> Parts = ["site.soilClass", "ground", "ends", "cover", "loads"];

    /// <summary>Every working.</summary>
    public static ImmutableArray<Working> All { get; } =
    [
        Workings.Of("upkeep.card.roofSnow", "least over the ways in which snow lies of the weight where it lies deepest at the limit, weakest steel and feet; less where the row of bows buckles in space before", Method, ["upkeep.card.limits[*].roofSnowLeast", "strength.row.snowBucklingFactor"], Frame),
        Workings.Of("upkeep.card.fall", "least over the ways in which snow lies: even, what the roof carries; blown or in a gap, the ground snow that lies so by the standard", Method, ["upkeep.card.limits[*].groundSnowLeast"], Frame),
        Workings.Of("upkeep.card.clearAt", "as planned", Citation.CommonPractice, [], ["upkeep.clearAt"]),
        Workings.Of("upkeep.card.snow[*].density", "by the source beside it", SnowDepth.Source, [], []),
        Workings.Of("upkeep.card.snow[*].clear", "part to clear at × weight at the limit ÷ (density × gravity)", Citation.Geometry, ["upkeep.card.roofSnow", "upkeep.card.clearAt", "upkeep.card.snow[*].density"], []),
        Workings.Of("upkeep.card.snow[*].limit", "weight at the limit ÷ (density × gravity)", Citation.Geometry, ["upkeep.card.roofSnow", "upkeep.card.snow[*].density"], []),
        Workings.Of("upkeep.card.gusts[*].gust", "at the limit: least of the bows' shut at the weaker end and of other parts' at their upper end; to stay out: a part of it; to tighten and close: as planned, never more than that; a 10-minute mean of EN 1991 times √ce of terrain II at 10 m", Method, ["upkeep.card.limits[*].windLeast", "upkeep.card.parts[*].windMost"], ["upkeep.closeWind", "upkeep.tightenWind", "upkeep.windShare"]),
        Workings.Of("upkeep.card.bareGust", "limit of the bare frame, where it is 1.15 times that of the covered one or more", Method, ["upkeep.card.limits[*].windLeast"], Frame),
        .. new[] { "roofSnowLeast", "roofSnow", "roofSnowMost" }.Select(name => Workings.Of("upkeep.card.limits[*]." + name, "greatest snow over the plan on the roof in that case; " + Found, Method, [], Frame)),
        .. new[] { "groundSnowLeast", "groundSnow", "groundSnowMost" }.Select(name => Workings.Of("upkeep.card.limits[*]." + name, Found, Method, [], Frame)),
        .. new[] { "windLeast", "wind", "windMost" }.Select(name => Workings.Of("upkeep.card.limits[*]." + name, Found + "; for the bare frame the wind itself, not the part of it counted while building", Method, [], Frame)),
        Workings.Of("upkeep.card.limits[*].bow", "counted from the front end", Citation.CommonPractice, [], []),
        .. new[] { "windLeast", "windMost", "groundSnowLeast", "groundSnowMost" }.Select(name => Workings.Of("upkeep.card.parts[*]." + name, "where the line through demand ÷ allowed, found for two or three sizes of the load with dead load and this load once, meets 1; by the formulas of the part", Method, [], Parts)),
        Workings.Of("upkeep.film.lifeYears", "as planned", Citation.CommonPractice, [], ["upkeep.filmLife"]),
        Workings.Of("upkeep.order[*].quantity", "sum over the steps of the re-cover", Citation.Geometry, [], []),
    ];
}
