using System.Collections.Immutable;

namespace Hoopwright.Web.Parts;

/// <summary>Small drawings of what a field measures: the thing in grey, the measure in colour. Drawn on 72 by 48.</summary>
internal static class Sketches
{
    private const string Bow = "M12 40V26C14 16 28 14 36 7C44 14 58 16 60 26V40M6 40H66", Side = "M4 40V14M20 40V14M36 40V14M52 40V14M68 40V14M4 14H68M2 40H70",
        Post = "M34 4V40H38V4M12 22H34M38 22H60M26 22V44H46V22", End = "M10 42V26C12 14 28 12 36 5C44 12 60 14 62 26V42M4 42H68M26 42V20H46V42",
        Tube = "M36 24m-15 0a15 15 0 1 0 30 0a15 15 0 1 0 -30 0M36 24m-10 0a10 10 0 1 0 20 0a10 10 0 1 0 -20 0", Leaf = "M22 44V6H50V44ZM22 6L50 44", Roll = "M6 12H66V36H6Z";

    private static readonly ImmutableDictionary<string, (string Thing, string Measure)> Known = new Dictionary<string, (string, string)>
    {
        ["frame.span"] = (Bow, Across(12, 60, 45)),
        ["frame.length"] = (Side, Across(4, 68, 45)),
        ["frame.bowSpacing"] = (Side, Across(20, 36, 8)),
        ["frame.bow.peakHeight"] = (Bow, Up(40, 7, 36)),
        ["frame.bow.sideHeight"] = (Bow, Up(40, 26, 6)),
        ["frame.bow.shoulderRadius"] = (Bow, "M26 26L15 20M26 26m-1.5 0a1.5 1.5 0 1 0 3 0a1.5 1.5 0 1 0 -3 0"),
        ["frame.bow.archRadius"] = (Bow, "M46 40L25 15M46 40m-1.5 0a1.5 1.5 0 1 0 3 0a1.5 1.5 0 1 0 -3 0"),
        ["outside"] = (Tube, Across(21, 51, 45)),
        ["wall"] = (Tube, Across(46, 51, 24)),
        ["frame.tie.height"] = (Bow + "M13 24H59", Up(40, 24, 36)),
        ["frame.braces.topHeight"] = (Side + "M4 20L36 40", Up(40, 20, 9)),
        ["ground.postEmbedment"] = (Post, Up(40, 22, 52)),
        ["ground.postLength"] = (Post, Up(40, 4, 56)),
        ["ground.holeDiameter"] = (Post, Across(26, 46, 46)),
        ["ground.holeDepth"] = (Post, Up(44, 22, 18)),
        ["embedment"] = (Post, Up(40, 22, 52)),
        ["holeDepth"] = (Post, Up(44, 22, 18)),
        ["postSpacing"] = (End + "M18 42V18M54 42V18", Across(18, 26, 36)),
        ["doors[].width"] = (End, Across(26, 46, 46)),
        ["doors[].height"] = (End, Up(42, 20, 36)),
        ["doors[].centre"] = (End, Across(10, 36, 46)),
        ["doors[].ventHeight"] = (End + "M26 20V12H46V20", Up(20, 12, 36)),
        ["gap"] = (Leaf + "M18 44V2H54V44", Across(18, 22, 26)),
        ["bottomGap"] = (Leaf + "M8 47H64", Up(47, 44, 36)),
        ["hipHeight"] = (Bow + "M8 24H16M56 24H64", Up(40, 24, 6)),
        ["overlapBelow"] = (Bow, Up(44, 37, 66)),
        ["rolls[].width"] = (Roll, Up(36, 12, 30)),
        ["rolls[].length"] = (Roll, Across(6, 66, 42)),
        ["roomFront"] = ("M26 8H64V40H26Z", Across(4, 26, 24)),
        ["roomBack"] = ("M8 8H46V40H8Z", Across(46, 68, 24)),
        ["roomLeft"] = ("M10 20H62V44H10Z", Up(20, 3, 36)),
        ["roomRight"] = ("M10 4H62V28H10Z", Up(45, 28, 36)),
        ["neighbourLeft"] = ("M2 40V26C4 18 14 18 16 26V40M36 40V26C40 14 64 14 68 26V40M0 40H72", Across(16, 36, 34)),
        ["neighbourRight"] = ("M4 40V26C8 14 32 14 36 26V40M56 40V26C58 18 68 18 70 26V40M0 40H72", Across(36, 56, 34)),
        ["frostDepth"] = (Post + "M8 36H64", Up(36, 22, 12)),
    }.ToImmutableDictionary();

    /// <summary>The thing and the measure as paths; null when there is nothing to draw.</summary>
    /// <param name="pattern">The field's path with [] for list items.</param>
    public static (string Thing, string Measure)? Of(string pattern)
    {
        string name = pattern[(pattern.LastIndexOf('.') + 1)..];
        int before = pattern.LastIndexOf('.', Math.Max(0, pattern.LastIndexOf('.') - 1));
        string two = pattern[(before + 1)..];
        return Known.TryGetValue(pattern, out (string, string) found) || Known.TryGetValue(two, out found) || Known.TryGetValue(name, out found) ? found : null;
    }

    private static string Across(int from, int to, int at) => FormattableString.Invariant($"M{from} {at}H{to}M{from} {at - 3}V{at + 3}M{to} {at - 3}V{at + 3}");

    private static string Up(int from, int to, int at) => FormattableString.Invariant($"M{at} {from}V{to}M{at - 3} {from}H{at + 3}M{at - 3} {to}H{at + 3}");
}
