using System.Collections.Immutable;
using Hoopwright.AsBuilt;
using Hoopwright.Sources;

namespace Hoopwright.Packets;

/// <summary>Workings of what was measured and of the checks before each cut.</summary>
internal static class SiteBookWorkings
{
    private const string Measured = "siteBook.measured[*]";
    private static readonly Citation Practice = Citation.CommonPractice;
    private static readonly Citation Geometry = Citation.Geometry;
    private static readonly string[] Ends = ["Least", "", "Most"];

    public static ImmutableArray<Working> All { get; } =
    [
        Workings.Of(Measured + ".planned", "what the plan alone says", Geometry, [], []),
        Workings.Of(Measured + ".measured", "the latest reading that counts, after corrections", Practice, [], ["siteBook"]),
        Workings.Of(Measured + ".off", "measured less planned", Geometry, [Measured + ".measured", Measured + ".planned"], []),
        Workings.Of(Measured + ".tolerance", "how near is near enough", Citation.FromMemory, [], ["tolerances"]),
        Workings.Of(Measured + ".spread", "longest less shortest of the readings that count", Geometry, [], ["siteBook"]),
        Workings.Of(Measured + ".readings[*].corrections", "entries that corrected it", Geometry, [], ["siteBook"]),
        Workings.Of("siteBook.deviations[*].off", "measured less planned", Geometry, [], ["siteBook"]),
        Workings.Of("siteBook.squaring.diagonalsDiffer", "the longer diagonal less the shorter", Geometry, [], ["siteBook"]),
        .. Corner(".x", "across from where front left stands"),
        .. Corner(".y", "along from where front left stands"),
        .. Corner(".moveRight", "the planned rectangle, laid on the side that leaves fewest corners to move, less where the corner stands"),
        .. Corner(".moveBack", "the planned rectangle, laid on the side that leaves fewest corners to move, less where the corner stands"),
        Workings.Of("siteBook.squaring.residuals[*].left", "measured less computed from the corners: " + Squaring.Rule.Text, Squaring.Rule.Source, [], ["siteBook"]),
        Workings.Of("siteBook.certainty.deviation", "pooled standard deviation of what was read more than once: √(Σ (reading − mean)² / Σ (n − 1)); with fewer than six repeats the accuracy of the tape", Geometry, ["siteBook.certainty.repeats"], ["tolerances.tape"]),
        Workings.Of("siteBook.certainty.repeats", "readings of things that were read before, but of what was moved in between", Geometry, [], ["siteBook"]),
        Workings.Of("siteBook.certainty.confidence", "nineteen times of twenty", Practice, [], []),
        Workings.Of("siteBook.certainty.bowsMeasured", "bows with a length over the outside", Geometry, [], ["siteBook"]),
        Workings.Of("siteBook.certainty.bows", "as planned", Geometry, ["frame.bays"], []),
        Workings.Of("siteBook.certainty.overBowWithin", MeasuringNoise.Rule.Text + ", for the bows that were measured", MeasuringNoise.Rule.Source, ["siteBook.certainty.deviation", "siteBook.certainty.bowsMeasured"], []),
        Workings.Of("siteBook.certainty.alongWithin", MeasuringNoise.Rule.Text + ", for the sides and the last mark that were measured", MeasuringNoise.Rule.Source, ["siteBook.certainty.deviation"], []),
        Workings.Of("siteBook.checks[*].shortBy", "the most that a piece cut by the plan alone would lack", Geometry, ["siteBook.checks[*].changed[0].shortBy"], ["siteBook"]),
        Workings.Of("siteBook.checks[*].changed[*].planned", "its size by the plan alone", Geometry, [], []),
        Workings.Of("siteBook.checks[*].changed[*].now", "its size by what was measured", Geometry, [], ["siteBook"]),
        Workings.Of("siteBook.checks[*].changed[*].shortBy", "what stands less what would be cut by the plan alone: of film the whole steps and rolls of the plan, of holes the planned depth less the measured one", Geometry, ["siteBook.checks[*].changed[*].planned", "siteBook.checks[*].changed[*].now"], []),
        Workings.Of("siteBook.changed.total", "the order as it stands", Geometry, ["orders.total"], []),
        Workings.Of("siteBook.changed.totalByPlan", "the order of the same plan without what was measured, worked out the same way", Geometry, [], []),
        Workings.Of("siteBook.changed.more", "the order as it stands less the order by the plan alone", Geometry, ["siteBook.changed.total", "siteBook.changed.totalByPlan"], []),
        .. ByPlan("length", "of the piece that is bought"), .. ByPlan("width", "of the piece that is bought"),
        .. from side in (string[])["before.", "after."]
           from number in (string[])["needed", "packages", "price", "extension"]
           from working in ByPlan(side + number, side == "after." ? "as in the order" : "as in the order by the plan alone")
           select working,
        .. from limit in (string[])["groundSnow", "wind"]
           from end in Ends
           from working in new[] { Workings.Of($"siteBook.changed.limits[*].{limit}{end}", "as what it stands", Geometry, [$"strength.limits[*].{limit}{end}"], []), Workings.Of($"siteBook.changed.limits[*].{limit}ByPlan{end}", "what the tunnel would stand by the plan alone, worked out the same way", Geometry, [], []) }
           select working,
    ];

    private static IEnumerable<Working> ByPlan(string number, string text) => [Workings.Of("siteBook.changed.orders[*]." + number, text, Geometry, [], [])];

    private static IEnumerable<Working> Corner(string number, string text) => [Workings.Of("siteBook.squaring.corners[*]" + number, $"{text}; {Squaring.Rule.Text}", Squaring.Rule.Source, [], ["siteBook"])];
}
