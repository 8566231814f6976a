using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Hoopwright.Cutting;

/// <summary>Writes what cutting a job file gave as a sheet to cut by.</summary>
public static class CutFileSheet
{
    // More boxes than this in a row are counted instead.
    private const int MostBoxes = 6;
    private const int MostPatterns = 400;

    /// <summary>
    /// The sheet: what it costs and how sure that is, what to take, how to cut each bar with running marks and a box to tick for
    /// each cut, the settings of the saw stop, and what is left over. Empty when there is no plan.
    /// </summary>
    /// <param name="answer">The answer.</param>
    public static string Of(CutFileAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer is not { Plan: { } plan, Job: { } job })
            return "";
        var text = new StringBuilder();
        text.Append(Result(job, plan)).Append('\n');
        if (plan.Patterns.IsEmpty)
            return text.ToString();
        if (answer.Again is { } again)
            Changes(text, again);
        var patterns = InOrder(job.Job, plan);
        Stock(text, job, plan, answer.Again);
        Bars(text, job, patterns);
        Stops(text, job, patterns);
        Leftovers(text, job, patterns);
        return text.ToString();
    }

    private static string Result(CutFileJob job, UnitlessCutPlan plan)
    {
        string cost = Amount(job, plan.Cost), bars = plan.Bars == 1 ? "1 bar" : $"{Number(plan.Bars)} bars";
        if (plan.Proven)
            return $"{bars}, cost {cost}: proven least cost.";
        var gap = plan.LowerBound > 0 ? $"at most {Rounded((plan.Cost - plan.LowerBound) / plan.LowerBound * 100)} % over the least possible" : "not proven least";
        return $"{bars}, cost {cost}: {gap}. No plan costs less than {Amount(job, plan.LowerBound)}; a longer --limit may close the gap.";
    }

    /// <summary>Long stock first, and of that the bars with the longest pieces, so that long stock goes to long pieces.</summary>
    private static ImmutableArray<UnitlessCutPattern> InOrder(UnitlessCutJob job, UnitlessCutPlan plan)
    {
        var stock = job.Stock.ToDictionary(bar => bar.Id, bar => bar.Length, StringComparer.Ordinal);
        var pieces = job.Pieces.ToDictionary(piece => piece.Id, piece => piece.Length, StringComparer.Ordinal);
        return
        [
            .. plan.Patterns.OrderByDescending(pattern => stock[pattern.StockId]).ThenBy(pattern => pattern.StockId, StringComparer.Ordinal)
                .ThenByDescending(pattern => pieces[pattern.Pieces[0]]),
        ];
    }

    private static void Changes(StringBuilder text, RecutPlan again)
    {
        var kept = again.Kept.Sum();
        text.Append(CultureInfo.InvariantCulture, $"{kept} of the {again.Waiting} bars still to be cut are cut as planned before{(again.FewestChanged ? "; more cannot be kept at this cost" : "")}.\n");
        for (var index = 0; index < again.Kept.Length; index++)
        {
            var changed = again.Plan.Patterns[index].Times - again.Kept[index];
            if (changed > 0)
                text.Append(CultureInfo.InvariantCulture, $"  new: {changed} × {again.Plan.Patterns[index].StockId}: {string.Join(", ", again.Plan.Patterns[index].Pieces)}\n");
        }
    }

    private static void Stock(StringBuilder text, CutFileJob job, UnitlessCutPlan plan, RecutPlan? again)
    {
        text.Append("\nTake\n");
        foreach (var bar in job.Job.Stock)
        {
            var times = plan.Patterns.Where(pattern => pattern.StockId == bar.Id).Sum(pattern => pattern.Times);
            var further = again is null ? times : plan.Patterns.Zip(again.Further).Where(entry => entry.First.StockId == bar.Id).Sum(entry => entry.Second);
            if (times > further)
                text.Append(CultureInfo.InvariantCulture, $"  {times - further,4} × {bar.Id}  {job.Words.Length(bar.Length)}  of those that are there\n");
            times = further;
            if (times > 0)
                text.Append(CultureInfo.InvariantCulture, $"  {times,4} × {bar.Id}  {job.Words.Length(bar.Length)}  at {Amount(job, bar.Price)}\n");
        }
    }

    private static void Bars(StringBuilder text, CutFileJob job, ImmutableArray<UnitlessCutPattern> patterns)
    {
        var stock = job.Job.Stock.ToDictionary(bar => bar.Id, StringComparer.Ordinal);
        var pieces = job.Job.Pieces.ToDictionary(piece => piece.Id, piece => piece.Length, StringComparer.Ordinal);
        var widest = patterns.SelectMany(pattern => pattern.Pieces).Max(id => id.Length);
        text.Append("\nCut, each mark from the same end of the bar; the saw runs past the mark\n");
        if (job.Job.Trim > 0)
            text.Append(CultureInfo.InvariantCulture, $"First trim {job.Words.Length(job.Job.Trim)} off the end of every bar.\n");
        var number = 1;
        foreach (var pattern in patterns.Take(MostPatterns))
        {
            var bars = pattern.Times == 1 ? $"Bar {Number(number)}" : $"Bars {Number(number)} to {Number(number + pattern.Times - 1)}, alike";
            text.Append(CultureInfo.InvariantCulture, $"\n  {bars}: {pattern.StockId}, {job.Words.Length(stock[pattern.StockId].Length)}\n");
            var boxes = pattern.Times <= MostBoxes ? string.Concat(Enumerable.Repeat("[ ]", pattern.Times)) : $"[ ] × {Number(pattern.Times)}";
            var at = job.Job.Trim;
            foreach (var id in pattern.Pieces)
            {
                at += pieces[id];
                text.Append(CultureInfo.InvariantCulture, $"    {boxes}  {id.PadRight(widest)}  {job.Words.Length(pieces[id])}  mark {job.Words.Length(at)}\n");
                at += job.Job.Kerf;
            }

            text.Append(CultureInfo.InvariantCulture, $"    left {job.Words.Length(pattern.Leftover)}{(pattern.Times == 1 ? "" : " of each")}\n");
            number += pattern.Times;
        }

        if (patterns.Length > MostPatterns)
            text.Append(CultureInfo.InvariantCulture, $"\n  and {patterns.Length - MostPatterns} more ways of cutting: --json lists them all.\n");
    }

    private static void Stops(StringBuilder text, CutFileJob job, ImmutableArray<UnitlessCutPattern> patterns)
    {
        // From the plan and not from the job, of which a part may have been cut before.
        var made = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var pattern in patterns)
        {
            foreach (var id in pattern.Pieces)
                made[id] = made.GetValueOrDefault(id) + pattern.Times;
        }

        var groups = job.Job.Pieces.Select(piece => piece with { Count = made.GetValueOrDefault(piece.Id) }).Where(piece => piece.Count > 0).GroupBy(piece => piece.Length).OrderByDescending(group => group.Key).ToList();
        if (groups.Count > MostPatterns)
            return;
        text.Append("\nSaw stop, longest first\n");
        foreach (var group in groups)
            text.Append(CultureInfo.InvariantCulture, $"  {job.Words.Length(group.Key)}: {string.Join(", ", group.Select(piece => $"{Number(piece.Count)} × {piece.Id}"))}\n");
    }

    private static void Leftovers(StringBuilder text, CutFileJob job, ImmutableArray<UnitlessCutPattern> patterns)
    {
        var rests = patterns.Where(pattern => pattern.Leftover > 0).GroupBy(pattern => pattern.Leftover).OrderByDescending(group => group.Key).ToList();
        if (rests.Count is 0 or > MostPatterns)
            return;
        text.Append("\nLeft over, longest first\n");
        foreach (var group in rests)
        {
            var use = job.Job.Leftover is not { } rule ? "" : group.Key >= rule.MinLength ? ": keep, label with its length" : ": too short to count";
            text.Append(CultureInfo.InvariantCulture, $"  {group.Sum(pattern => pattern.Times)} of {job.Words.Length(group.Key)}{use}\n");
        }
    }

    private static string Amount(CutFileJob job, decimal money) => job.NamesUnits
        ? (money / job.MoneyScale).ToString("0.00##", CultureInfo.InvariantCulture)
        : job.Words.Money(money);

    private static string Rounded(decimal percent) => percent.ToString(percent < 0.1m ? "0.####" : "0.##", CultureInfo.InvariantCulture);

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
