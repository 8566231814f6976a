using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Comparisons;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Strength;

namespace Hoopwright.Sweeps;

/// <summary>Writes ranked changes, and changes made one after the other: as JSON, as CSV, and as rows of texts for a table.</summary>
public static class ChangeText
{
    /// <summary>The heads of the table's columns.</summary>
    public static ImmutableArray<string> Heads(ChangeStudy study) =>
        ["change", $"cost {Currency(study)}", "storm snow", "settled snow", "storm gust", "used at worst", "verdict", "what is worst"];

    /// <summary>The plan as it is, as the table's first row.</summary>
    public static ImmutableArray<string> AsItIs(ChangeStudy study)
    {
        var design = SweptDesign.Of(0, [], study.Before);
        UnitSystem units = study.Before.Units;
        return
        [
            "as it is", design.Cost?.ToString() ?? "-", SweepText.Snow(design.StormSnow, units), study.Before.Strength?.InSnow(StrengthLevel.Storm)?.Depths is [_, var settled, ..] ? TapeText.Rough(settled.Depth, units) : "-",
            SweepText.Gust(design.StormGust, units), study.Before.Strength is { } strength && LoadUse.Worst(strength) is { } worst ? Times(worst.Used) : "-", design.Verdict is { } verdict ? VerdictWords.Of(verdict) : "-",
            Why(design, study.Before.Strength is { } report ? LoadUse.Worst(report)?.Part : null),
        ];
    }

    /// <summary>A change as a row of the table: what it costs and gains.</summary>
    public static ImmutableArray<string> Cells(ChangeStudy study, ChangedDesign change)
    {
        UnitSystem units = study.Before.Units;
        return
        [
            change.Change.Words, Cost(change), change.MoreSnow is { } snow ? Signed(TapeText.Of(snow, units), snow.Pascals) : "-",
            change.DeeperSnow is { } depth ? Signed(TapeText.Rough(depth, units), depth.Metres) : "-", change.MoreGust is { } gust ? Signed(TapeText.Of(gust, units), gust.MetresPerSecond) : "-",
            change.WorstUse is { } worst ? Times(worst.Value) : "-", change.Design.Verdict is { } verdict ? VerdictWords.Of(verdict) : "cannot be built", Why(change.Design, change.WorstPart),
        ];
    }

    /// <summary>What changes made one after the other come to, in a sentence.</summary>
    /// <param name="study">The study.</param>
    /// <param name="steps">The changes; at least one.</param>
    public static string Together(ChangeStudy study, ImmutableArray<ChangedDesign> steps)
    {
        Money cost = steps.Aggregate(Money.Zero, (sum, step) => sum + (step.MoreCost ?? Money.Zero));
        string count = steps.Length == 1 ? "This change costs" : string.Create(CultureInfo.InvariantCulture, $"These {steps.Length} changes together cost");
        string unpriced = steps.Sum(step => step.MoreUnpriced) is > 0 and var more ? string.Create(CultureInfo.InvariantCulture, $" and {more} lines without a price") : "";
        string verdict = steps[^1].Design.Verdict switch
        {
            StrengthVerdict.Stands => "and on these assumptions the tunnel then stands the entered loads",
            StrengthVerdict.Marginal => "and on these assumptions the tunnel is then marginal under the entered loads",
            StrengthVerdict.DoesNotStand or StrengthVerdict.NothingEntered or null => "and the tunnel still does not stand the entered loads on these assumptions",
        };
        return $"{count} {ComparisonTexts.Signed(cost)} {Currency(study)}{unpriced}, {verdict}.";
    }

    /// <summary>The changes as CSV (RFC 4180, but lines end in \n): SI numbers with the unit in the column's name.</summary>
    /// <param name="study">The study.</param>
    /// <param name="ranked">The changes, in order.</param>
    /// <param name="steps">Changes made one after the other, each against the one before; none when not asked.</param>
    public static string Csv(ChangeStudy study, ImmutableArray<ChangedDesign> ranked, ImmutableArray<ChangedDesign> steps)
    {
        ImmutableArray<string> Row(string list, ChangedDesign change, int place) =>
        [
            list, SweepText.Whole(place + 1), change.Change.Code, change.Change.Words, string.Join("; ", change.Change.Values.Select(value => $"{value.Path}={value.Text}")),
            change.MoreCost?.ToString() ?? "", Currency(study), SweepText.Whole(change.MoreUnpriced), SweepText.Number(change.MoreSnow?.Pascals), SweepText.Number(change.DeeperSnow?.Metres), SweepText.Number(change.MoreGust?.MetresPerSecond),
            SweepText.Number(change.Design.StormSnow?.Pascals), SweepText.Number(change.Design.StormGust?.MetresPerSecond), SweepText.Number(change.Design.CodeSnow?.Pascals), SweepText.Number(change.Design.CodeGust?.MetresPerSecond),
            SweepText.Number(change.WorstUse?.Value), change.WorstPart ?? "", SweepText.Verdict(change.Design), change.Design.Governs, change.Design.Problem, change.Change.Source.ToString(),
        ];
        return SweepText.Rows(
        [
            ["list", "place", "code", "change", "sets", "moreCost", "currency", "moreUnpricedLines", "moreStormSnowPa", "deeperSettledSnowM", "moreStormGustMps", "stormSnowPa", "stormGustMps", "codeSnowPa", "codeGustMps", "usedAtWorst", "worst", "verdict", "governs", "problem", "source"],
            .. ranked.Select((change, place) => Row("single", change, place)),
            .. steps.Select((change, place) => Row("oneAfterTheOther", change, place)),
        ]);
    }

    /// <summary>The changes as JSON.</summary>
    /// <param name="study">The study.</param>
    /// <param name="ranked">The changes, in order.</param>
    /// <param name="steps">Changes made one after the other, each against the one before; none when not asked.</param>
    public static byte[] Json(ChangeStudy study, ImmutableArray<ChangedDesign> ranked, ImmutableArray<ChangedDesign> steps)
    {
        using var stream = new MemoryStream();
        using (var json = new ResultWriter(stream, study.Before.Units))
        {
            json.Whole(() =>
            {
                json.Text("caution", StrengthCaution.Text);
                json.Text("currency", Currency(study));
                json.Group("asItIs", () =>
                {
                    if (study.Before.Orders is { } orders) json.Price("cost", orders.Total);
                    if (study.Before.Strength is { } strength)
                    {
                        if (LoadUse.Worst(strength) is { } worst)
                        {
                            json.Ratio("usedAtWorst", Ratio.FromValue(worst.Used));
                            json.Text("worst", worst.Part);
                        }
                        StrengthResults.InShort(json, strength);
                    }
                });
                json.List("ranked", ranked, change => Change(json, change));
                json.List("oneAfterTheOther", steps, change => Change(json, change));
            });
        }
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void Change(ResultWriter json, ChangedDesign change)
    {
        json.Text("code", change.Change.Code);
        json.Text("words", change.Change.Words);
        json.List("sets", change.Change.Values, value =>
        {
            json.Text("path", value.Path);
            json.Text("value", value.Text);
        });
        json.Text("source", change.Change.Source.ToString());
        json.Flag("helps", change.Helps);
        json.Price("moreCost", change.MoreCost);
        json.Count("moreUnpricedLines", change.MoreUnpriced);
        if (change.MoreSnow is { } snow) json.Pressure("moreStormSnow", snow);
        if (change.DeeperSnow is { } depth) json.Movement("deeperSettledSnow", depth);
        if (change.MoreGust is { } gust) json.Speed("moreStormGust", gust);
        if (change.WorstUse is { } worst) json.Ratio("usedAtWorst", worst);
        if (change.WorstPart is { } part) json.Text("worst", part);
        SweepText.Stands(json, change.Design);
    }

    private static string Cost(ChangedDesign change) => change.MoreCost is not { } cost ? "-" : change.MoreUnpriced == 0
        ? ComparisonTexts.Signed(cost)
        : string.Create(CultureInfo.InvariantCulture, $"{ComparisonTexts.Signed(cost)} {(change.MoreUnpriced > 0 ? "+" : "-")} {Math.Abs(change.MoreUnpriced)} unpriced");

    private static string Signed(string text, double value) => value > 0 && text.AsSpan().ContainsAnyInRange('1', '9') ? "+" + text : text;

    private static string Times(double used) => used >= 100 ? "over 100" : used.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Why(SweptDesign design, string? part) => design.Problem.Length > 0 ? design.Problem : part ?? design.Governs;

    private static string Currency(ChangeStudy study) => study.Before.Orders?.Currency ?? Pricing.ExamplePrices.Currency;
}
