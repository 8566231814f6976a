using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Orders;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Strength;

namespace Hoopwright.Comparisons;

/// <summary>A comparison in words, row by row, in the units of the second plan.</summary>
public static class ComparisonTexts
{
    /// <summary>What stands: verdict, limits in storm and by code, snow depths, what gives way, posts and film.</summary>
    public static ImmutableArray<ComparedText> Strength(Comparison comparison) => Rows(comparison, StrengthOf);

    /// <summary>Counts and measures: bows, tubes, holes, concrete, film, cuts.</summary>
    public static ImmutableArray<ComparedText> Measures(Comparison comparison) => Rows(comparison, MeasuresOf);

    /// <summary>Cost by stage, and in all; with the difference where both are in one currency.</summary>
    public static ImmutableArray<ComparedText> Costs(Comparison comparison)
    {
        if (comparison is not { FactsBefore: { } before, FactsAfter: { } after }) return [];
        ComparedText Row(string what, Money was, Money now) =>
            new(what, $"{was} {before.Currency}", $"{now} {after.Currency}", comparison.SameCurrency ? Signed(now - was) : "");
        List<ComparedText> rows = [.. comparison.Stages.Select(stage => Row(stage.Stage is { } named ? TunnelResults.Word(named) : "without a stage", stage.Before, stage.After)), Row("in all", before.Total, after.Total)];
        if (before.Unpriced + after.Unpriced > 0) rows.Add(new ComparedText("lines without a price, not in it", Count(before.Unpriced), Count(after.Unpriced)));
        return [.. rows];
    }

    /// <summary>Lines of the order that differ: packages to buy.</summary>
    public static ImmutableArray<ComparedText> Orders(Comparison comparison)
    {
        UnitSystem units = comparison.After.Units;
        return [.. comparison.Orders.Select(order => new ComparedText(
            Name(order.Line, units), Bought(order.Before, units), Bought(order.After, units), order.Before is null ? "appears" : order.After is null ? "vanishes" : Cost(order.Before, order.After, comparison.SameCurrency)))];
    }

    /// <summary>Those of them that are bought otherwise; what is needed may change by a little nearly everywhere.</summary>
    private static ImmutableArray<ComparedText> Bought(Comparison comparison) =>
        Orders(comparison with { Orders = [.. comparison.Orders.Where(order => order.Before?.Packages != order.After?.Packages || order.Before?.Extension != order.After?.Extension)] });

    /// <summary>What differs in what is paid: lines that are bought otherwise, and the order in all.</summary>
    public static ImmutableArray<ComparedText> Paid(Comparison comparison) => [.. Bought(comparison), .. Costs(comparison).Skip(comparison.Stages.Length)];

    /// <summary>An order line by item, size and length.</summary>
    public static string Name(OrderLine line, UnitSystem units) => (line.Width, line.Length) switch
    {
        ({ } width, { } length) => $"{line.Name}, {TapeText.Of(width, units)} × {TapeText.Of(length, units)}",
        (_, { } length) => $"{line.Name}, {TapeText.Of(length, units)}",
        _ => line.Name,
    };

    /// <summary>A difference with its sign.</summary>
    internal static string Signed(Money change) => change.RoundToCents().Amount > 0 ? "+" + change : change.ToString();

    private static ImmutableArray<ComparedText> Rows(Comparison comparison, Func<TunnelFacts?, UnitSystem, ImmutableArray<KeyValuePair<string, string>>> of)
    {
        var first = of(comparison.FactsBefore, comparison.After.Units);
        Dictionary<string, string> was = new(first), now = new(of(comparison.FactsAfter, comparison.After.Units));
        return [.. first.Select(row => row.Key).Union(now.Keys).Select(what => new ComparedText(what, was.GetValueOrDefault(what, "-"), now.GetValueOrDefault(what, "-")))];
    }

    private static ImmutableArray<KeyValuePair<string, string>> StrengthOf(TunnelFacts? facts, UnitSystem units)
    {
        if (facts?.Strength is not { } strength) return [];
        List<KeyValuePair<string, string>> rows = [new("verdict", VerdictWords.Of(strength.Verdict))];
        if (strength.NotChecked is { } reason) rows.Add(new("not checked", reason));
        if (strength.Combinations is [var worst, ..]) rows.Add(new("worst entered combination", $"{worst.Words}: {(worst.Utilisation is { } used ? string.Create(CultureInfo.InvariantCulture, $"{used.Value:0.00} of the strength") : "buckles")}, bow {worst.Bow}, {worst.Governs}"));
        foreach (StrengthLevel level in (StrengthLevel[])[StrengthLevel.Storm, StrengthLevel.Code])
        {
            string name = TunnelResults.Word(level);
            if (strength.InSnow(level) is { GroundSnow: { } snow } inSnow)
            {
                rows.Add(new($"{name}: ground snow at the limit", $"{TapeText.Of(snow.Taken, units)} ({TapeText.Of(snow.Least, units)} to {TapeText.Of(snow.Most, units)})"));
                if (level == StrengthLevel.Storm) rows.Add(new($"{name}: snow lies on the roof so deep", string.Join(", ", inSnow.Depths.Select(depth => $"{TapeText.Rough(depth.Depth, units)} {depth.Words}"))));
                rows.Add(new($"{name}: what gives way in snow", $"{inSnow.Governs}, bow {inSnow.Bow.ToString(CultureInfo.InvariantCulture)}, {inSnow.CaseWords}"));
            }
            if (strength.InWind(level) is { Wind: { } gust } inWind)
            {
                rows.Add(new($"{name}: {strength.WindNoun} at the limit", $"{TapeText.Of(gust.Taken, units)} ({TapeText.Of(gust.Least, units)} to {TapeText.Of(gust.Most, units)})"));
                rows.Add(new($"{name}: what gives way in wind", $"{inWind.Governs}, bow {inWind.Bow.ToString(CultureInfo.InvariantCulture)}, {inWind.CaseWords}"));
            }
        }
        if (strength.Row?.SnowBucklingFactor is { } factor) rows.Add(new("the row buckles at, times its worst snow", factor.Value.ToString("0.00", CultureInfo.InvariantCulture)));
        foreach (PartStrength part in strength.Parts) rows.TryAddFirst(part.Words, $"{VerdictWords.Of(part.Verdict)}: {UsedWords.Of(part)} of what is allowed");
        return [.. rows];
    }

    private static ImmutableArray<KeyValuePair<string, string>> MeasuresOf(TunnelFacts? facts, UnitSystem units) => facts is null ? [] :
    [
        new("bows", Count(facts.Bows)), new("bay", TapeText.Of(facts.Bay, units)), new("tube of the bows", facts.BowTube), new("tube of one bow", TapeText.Of(facts.BowTubeLength, units)),
        new("peak", TapeText.Of(facts.Peak, units)), new("ties", Count(facts.Ties)), new("lengthwise tubes", Count(facts.Purlins)), new("corner braces", Count(facts.Braces)),
        new("ground posts", Count(facts.GroundPosts)), new("holes with concrete", Count(facts.Holes)), new("concrete", TapeText.Of(facts.Concrete, units)),
        new("pieces of film", Count(facts.FilmPieces)),
        new("rolls of film", string.Join(", ", facts.FilmRolls.Select(roll => $"{TapeText.Of(roll.Width, units)} × {TapeText.Of(roll.Length, units)}"))),
        new("film in those rolls", TapeText.Of(facts.FilmBought, units)), new("bars and boards to cut", Count(facts.CutBars)), new("pieces cut", Count(facts.CutPieces)),
    ];

    private static void TryAddFirst(this List<KeyValuePair<string, string>> rows, string what, string text)
    {
        if (!rows.Any(row => row.Key == what)) rows.Add(new(what, text));
    }

    private static string Bought(OrderLine? line, UnitSystem units) => line is null ? "-" : line.PerPackage == 1 || line.Package == line.Unit
        ? string.Create(CultureInfo.InvariantCulture, $"{line.Packages} {line.Package}")
        : string.Create(CultureInfo.InvariantCulture, $"{line.Packages} {line.Package} ({OrderAmount.Needed(line, units)} needed)");

    private static string Cost(OrderLine before, OrderLine after, bool sameCurrency) =>
        sameCurrency && before.Extension is { } was && after.Extension is { } now ? Signed(now - was) : "";

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
