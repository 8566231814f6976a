using System.Collections.Immutable;
using Hoopwright.Cover.Pull;
using Hoopwright.Sources;

namespace Hoopwright.Packets;

/// <summary>Workings of how tight film is pulled.</summary>
internal static class PullWorkings
{
    private static readonly Citation Geometry = Citation.Geometry;
    private static readonly Citation Practice = Citation.CommonPractice;
    private static readonly ImmutableArray<string> Limits = ["cover.pull.coldest", "cover.pull.hottest", "cover.pull.coldLimit", "cover.pull.hotLimit"];

    public static ImmutableArray<Working> All { get; } =
    [
        Of("cover.pull.coldest", FilmWarmth.Balance, [], ["loads.coldest"]),
        Of("cover.pull.hottest", FilmWarmth.Balance, [], ["loads.hottest"]),
        Workings.Of("cover.pull.coldLimit", "part of the yield that is allowed · yield · (1 - ν) ÷ E; yield and E rise alike in the cold", FilmStrength.Yield.Source, [], ["cover.coldPart"]),
        Workings.Of("cover.pull.hotLimit", "8/3 · (part of the bay that it may hang)²", Geometry, [], ["cover.hotSag"]),
        Workings.Of("cover.pull.best", "film temperature at which least and most are as far from snug", Geometry, Limits, []),
        Workings.Of("cover.pull.gaugePush", "a spring scale's pull that one can hold", Practice, [], []),
        Workings.Of("cover.pull.oneHand", "what one person pulls steadily", Practice, [], []),
        Workings.Of("cover.pull.hands", "one to a rope, three at least", Practice, ["cover.ropes.count"], []),
        .. Row("cover.pull.planned", ["loads.installTemperature"]),
        .. Row("cover.pull.rows[*]", []),
    ];

    private static IEnumerable<Working> Row(string row, ImmutableArray<string> rules) =>
    [
        Workings.Of(row + ".film", "a temperature that a day may have", Geometry, [], rules),
        Of(row + ".airInSun", FilmWarmth.Balance, [row + ".film"], []),
        Of(row + ".least", FilmSheet.Held, [row + ".film", .. Limits], []),
        Of(row + ".most", FilmSheet.Held, [row + ".film", .. Limits], []),
        Workings.Of(row + ".target", "midway between least and most, within what hands can pull and evenly lay", Geometry, [row + ".least", row + ".most", "cover.pull.hands", "cover.pull.oneHand"], ["cover.looseSag"]),
        Workings.Of(row + ".pastSnugPerBay", "target × widest bay", Geometry, [row + ".target"], []),
        Workings.Of(row + ".pastSnugAlong", "target × length of the tunnel", Geometry, [row + ".target", "frame.length"], []),
        Workings.Of(row + ".pastSnugOverBow", "target × film line over a bow", Geometry, [row + ".target"], []),
        Of(row + ".sag", FilmSheet.Slack, [row + ".target"], []),
        Workings.Of(row + ".give", "δ with F = 4·δ·E·t·(ε + 2·δ²/s²): a strip as wide as the bay carries; about", FilmSheet.Slack.Source, [row + ".target", "cover.pull.gaugePush"], []),
        Of(row + ".handPull", FilmSheet.Pull, [row + ".target"], []),
        Of(row + ".coldPull", FilmSheet.Pull, [row + ".target", "cover.pull.coldest"], []),
        Of(row + ".coldPullCrept", FilmSheet.Crept, [row + ".coldPull"], []),
        Of(row + ".hotSag", FilmSheet.Slack, [row + ".target", "cover.pull.hottest"], []),
        Of(row + ".hotSagCrept", FilmSheet.Slack, ["cover.pull.hottest"], []),
    ];

    private static Working Of(string pattern, Formula formula, ImmutableArray<string> inputs, ImmutableArray<string> rules) =>
        Workings.Of(pattern, $"{formula.Symbol} = {formula.Text}", formula.Source, inputs, rules);
}
