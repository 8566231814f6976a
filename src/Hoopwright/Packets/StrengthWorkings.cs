using System.Collections.Immutable;
using Hoopwright.Sources;
using Hoopwright.Strength;

namespace Hoopwright.Packets;

/// <summary>The working of every number about strength.</summary>
internal static class StrengthWorkings
{
    private const string Analysis =
        "second-order analysis of the bow in its plane, members at 0.8 of their stiffness, notional sideways loads of 0.3 % of the weight, iterated until the forces are in balance to 1e-8";

    private static readonly Citation Method = Register.Aisc360.At("chapter C, direct analysis method");
    private static readonly Citation Check = Register.AisiS100.At("Eq. H1.2-1; square tube: AISC 360, Eq. H1-1");
    private static readonly ImmutableArray<string> Site = ["site.groundSnow", "site.wind", "loads"];
    private static readonly ImmutableArray<string> Frame = ["frame.bowTube", "frame.bow", "frame.tie", "ground.legBase", "loads"];

    private static readonly ImmutableArray<string> Row = [.. Frame, "frame.purlins", "frame.braces", "ends", "cover"];

    private static readonly ImmutableArray<string> Parts = ["site.soilClass", "site.frostDepth", "ground", "ends", "cover", "loads"];

    /// <summary>Every working.</summary>
    public static ImmutableArray<Working> All { get; } =
    [
        Of("strength.groundSnow", "ground snow of the plan, brought to the return period of the design", Citation.Geometry, Site),
        Of("strength.wind", "wind speed of the plan, brought to the return period of the design", Citation.Geometry, Site),
        Of("strength.yieldLeast", "lower end of the range of the steel", Citation.FromMemory, ["frame.bowTube.yield"]),
        Of("strength.yield", "yield stress of the plan, or of unknown steel", Citation.FromMemory, ["frame.bowTube.yield"]),
        Of("strength.yieldMost", "upper end of the range of the steel", Citation.FromMemory, ["frame.bowTube.yield"]),
        .. new[] { "groundSnowLeast", "groundSnow", "groundSnowMost", "windLeast", "wind", "windMost" }.Select(name => Of(
            "strength.limits[*]." + name, "found by halving until the worst place of the worst inner bow uses its strength to the full; " + Analysis, Method, Frame)),
        Of("strength.limits[*].roofSnow", "greatest snow over the plan in that load case at the limit", Citation.Geometry, Frame),
        Of("strength.limits[*].depths[*].depth", "weight on the roof ÷ (density × gravity)", SnowDepth.Source, Frame),
        Of("strength.limits[*].bow", "counted from the front end", Citation.CommonPractice, []),
        Of("strength.limits[*].across", "place where the limit is reached, from the left ground line", Citation.Geometry, Frame),
        Of("strength.limits[*].up", "place where the limit is reached, over the ground line", Citation.Geometry, Frame),
        Of("strength.combinations[*].utilisation", "axial force ÷ its strength + moment ÷ its strength at the worst place; " + Analysis, Check, Frame),
        Of("strength.combinations[*].bow", "counted from the front end", Citation.CommonPractice, []),
        Of("strength.combinations[*].across", "place of the worst use, from the left ground line", Citation.Geometry, Frame),
        Of("strength.combinations[*].up", "place of the worst use, over the ground line", Citation.Geometry, Frame),
        Of("strength.combinations[*].bucklingFactor", "multiple of the axial forces at which the bow, weakened, loses its hold in its plane", Method, Frame),
        Of("strength.parts[*].utilisationAtWeakest", "demand ÷ what is allowed, by the formulas beside it, with soil, wood or film at the lower end of what is known; for posts the forces of the feet, " + Analysis + ", under 1.6 times the allowable combinations and divided by it", Method, Parts),
        Of("strength.parts[*].utilisationAtStrongest", "demand ÷ what is allowed, by the same formulas, with soil, wood or film at the upper end of what is known", Method, Parts),
        Of("strength.parts[*].worked[*].value", "by the formulas beside it, at the lower end of what is known, in the unit beside it", Citation.FromMemory, Parts),
        .. new[] { "pull.force", "press.force", "across.force", "turning.moment" }.Select(name => Of(
            "strength.footLoads[*]." + name, "greatest over the combinations that posts are held against and over both feet; " + Analysis + ", under 1.6 times the allowable combinations and divided by it", Method, Parts)),
        .. new[] { "pull", "press", "across", "turning" }.Select(name => Of($"strength.footLoads[*].{name}.bow", "counted from the front end", Citation.CommonPractice, [])),
        Of("strength.worst.bow", "counted from the front end", Citation.CommonPractice, []),
        .. new[] { "leftFoot", "rightFoot" }.SelectMany(foot => new[] { "across", "up", "turning" }.Select(name => Of(
            $"strength.worst.{foot}.{name}", "what the ground puts on the foot: end forces of the first chord, " + Analysis, Method, Frame))),
        Of("strength.worst.points[*].across", "node of the bow, on the middle of the tube", Citation.Geometry, Frame),
        Of("strength.worst.points[*].up", "node of the bow, on the middle of the tube", Citation.Geometry, Frame),
        .. new[] { "movedAcross", "movedUp", "axial", "shear", "moment" }.Select(name => Of("strength.worst.points[*]." + name, Analysis, Method, Frame)),
        Of("strength.worst.points[*].utilisation", "axial force ÷ its strength + moment ÷ its strength", Check, Frame),
        Of("strength.row.snowBucklingFactor", "least multiple of the snow combination at which K + λ·K_G of the whole row in space loses its hold; members at 0.8 of their stiffness", Method, Frame),
        Of("strength.row.parts[*].utilisation", "axial force ÷ its strength + moment ÷ its strength in the row in space; second-order, members at 0.8 of their stiffness, notional loads across and along, posts and girts of the ends, and the film's pull on the end bows", Check, Row),
        Of("strength.row.looked", "combinations of the site; of each the sum of linear load cases decides whether it is solved at second order", Citation.Geometry, Site),
        Of("strength.loadCases[*].coefficients[*].value", "by the formula beside it", Citation.FromMemory, ["loads"]),
        Of("strength.coefficients[*].value", "by the formula beside it", Citation.FromMemory, ["loads"]),
    ];

    private static Working Of(string pattern, string text, Citation source, ImmutableArray<string> rules) => new(pattern, text, source, [], rules);
}
