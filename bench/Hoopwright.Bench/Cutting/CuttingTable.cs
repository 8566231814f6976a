using System.Diagnostics;
using System.Globalization;
using Hoopwright.Cuts.Film;
using Hoopwright.Cutting;
using Hoopwright.Cutting.TwoStage;
using Hoopwright.Reference.Tests.Cutting;
using Hoopwright.Testing;

namespace Hoopwright.Bench.Cutting;

/// <summary>
/// The table of docs/cutting.md: each class of instances solved here and by an OR-Tools model in the same run, one after the
/// other on one thread, times in seconds of processor so that other work on the machine does not count.
/// </summary>
internal static class CuttingTable
{
    private const int UsualSeconds = 6;
    private const int LongestArcFlow = 1000;
    private static readonly CutEffort Effort = new(8_000_000_000);
    private static readonly CutEffort LittleEffort = new(300_000_000);
    private static readonly bool[] Ways = [false, true];

    /// <summary>Prints the rows of some classes, of all when none is named; a number among the names is the outside solver's limit in seconds.</summary>
    public static int Print(string[] args, TextWriter to)
    {
        string[] classes = [.. args.Where(arg => !int.TryParse(arg, CultureInfo.InvariantCulture, out _))];
        var milliseconds = 1000 * args.Except(classes).Select(seconds => int.Parse(seconds, CultureInfo.InvariantCulture)).FirstOrDefault(UsualSeconds);
        to.WriteLine("| class | instances | proven | median s | worst s | total s | OR-Tools proven | median s | worst s | total s |");
        to.WriteLine("|---|---|---|---|---|---|---|---|---|---|");
        // Both sides have run once before they are measured.
        _ = Bars("", PracticalOrders.Of(-1, leftovers: false), CutEffort.Usual).Measured(milliseconds);
        foreach (var (name, races) in Classes())
        {
            if (classes.Length == 0 || classes.Contains(name, StringComparer.Ordinal))
                Row(name, [.. races.Select(race => (race.Name, race.Measured(milliseconds)))], to);
        }

        return 0;
    }

    private static IEnumerable<(string Name, IEnumerable<Race> Races)> Classes()
    {
        yield return ("practical", Enumerable.Range(0, 500).Select(seed => Bars($"practical-{seed}", PracticalOrders.Of(seed, leftovers: false), CutEffort.Usual)));
        yield return ("practical, leftovers", Enumerable.Range(0, 500).Select(seed => Bars($"leftovers-{seed}", PracticalOrders.Of(seed, leftovers: true), CutEffort.Usual)));
        yield return ("orders", CuttingData.Optima("orders").Select(entry => Bars(Path.GetFileNameWithoutExtension(entry.File), CuttingData.ReadOrder(entry.File), Effort)));
        yield return ("orders, little effort", CuttingData.Optima("orders").Select(entry => Bars(Path.GetFileNameWithoutExtension(entry.File), CuttingData.ReadOrder(entry.File), LittleEffort)));
        foreach (var family in CuttingData.Optima("csp").GroupBy(entry => entry.Row["family"]))
            yield return (family.Key, family.Select(entry => Bars(entry.Row["instance"], CuttingData.ReadOneLength(entry.File), Effort)));
        yield return ("vs", CuttingData.Optima("vs").Select(entry => Bars(entry.Row["instance"], CuttingData.ReadSeveralLengths(entry.File), Effort)));
        yield return ("film", CuttingData.Optima(Path.Combine("film2stage", "orders")).Select(entry => Film(Path.GetFileNameWithoutExtension(entry.File), TwoStageData.ReadFilmOrder(entry.File))));
        yield return ("cintra", TwoStageData.SeveralSheets().SelectMany(row => Ways.Select(turn =>
            Sheets($"{row.Text("instance")} {(turn ? "rotatable" : "oriented")}", TwoStageData.ReadSeveralSheets(row.Text("instance"), turn)))));
        yield return ("one_sheet", TwoStageData.OneSheet().SelectMany(row => Ways.Select(across =>
            Sheets($"{row.Text("instance")} {(across ? "across" : "along")}", TwoStageData.ReadOneSheet(row.Text("instance"), across)))));
    }

    private static Race Bars(string name, UnitlessCutJob job, CutEffort effort) => new(
        name,
        () =>
        {
            var plan = Cutter.Solve(job, effort);
            return new Answer(plan.Cost, plan.LowerBound, plan.Proven);
        },
        milliseconds => GapPatternModel.LeastCost(job, milliseconds) ?? (SuitsArcFlow(job) ? ArcFlowModel.LeastCost(job, milliseconds) : null));

    private static Race Film(string name, TwoStageJob job) => new(
        name,
        () =>
        {
            var (sizes, offers) = TwoStageData.ForSets(job);
            var (rolls, leftOut) = FilmSearch.Best(sizes, offers, slit: true);
            var cost = rolls.Sum(roll => offers[roll.Offer].Cost);
            return new Answer(cost, cost, leftOut.All(count => count == 0));
        },
        milliseconds => LevelAssignmentModel.LeastCost(job, milliseconds));

    private static Race Sheets(string name, TwoStageJob job) => new(
        name,
        () => TwoStageCutter.Solve(job, Effort) is { } plan ? new Answer(plan.Cost, plan.Bound, plan.Proven) : throw new InvalidOperationException("Sheets without a limit ran out."),
        milliseconds => LevelArcFlowModel.LeastCost(job, milliseconds));

    private static bool SuitsArcFlow(UnitlessCutJob job) =>
        job.Leftover is null && job.Stock.All(bar => bar.Limit is null && bar.Length <= LongestArcFlow);

    private static (T Value, double Seconds) Timed<T>(Func<T> work)
    {
        using var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        var value = work();
        process.Refresh();
        return (value, (process.TotalProcessorTime - before).TotalSeconds);
    }

    /// <summary>One instance and how either side solves it; the outside one gives null where it proves nothing in so many milliseconds.</summary>
    private sealed record Race(string Name, Func<Answer> Here, Func<int, decimal?> There)
    {
        public Outcome Measured(int milliseconds)
        {
            var (plan, seconds) = Timed(Here);
            var (outside, outsideSeconds) = Timed(() => There(milliseconds));
            return new Outcome(plan, seconds, outside, outsideSeconds);
        }
    }

    private sealed record Answer(decimal Cost, decimal LowerBound, bool Proven);

    private static void Row(string name, List<(string Name, Outcome Outcome)> all, TextWriter to)
    {
        double[] here = [.. all.Select(each => each.Outcome.Seconds).Order()], outside = [.. all.Select(each => each.Outcome.OutsideSeconds).Order()];
        to.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"| {name} | {all.Count} | {all.Count(each => each.Outcome.Plan.Proven)} | {here[here.Length / 2]:0.000} | {here[^1]:0.00} | {here.Sum():0.0} | {all.Count(each => each.Outcome.Outside is not null)} | {outside[outside.Length / 2]:0.000} | {outside[^1]:0.00} | {outside.Sum():0.0} |"));
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  99th percentile {here[here.Length * 99 / 100]:0.000} s; compared {all.Count(each => each.Outcome.Outside is not null)}; not proven here:"));
        foreach (var (instance, outcome) in all)
        {
            if (!outcome.Plan.Proven)
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    {instance}: {outcome.Plan.Cost}, bound {outcome.Plan.LowerBound}, outside {outcome.Outside}, {outcome.Seconds:0.00} s"));
            if (outcome.Outside is { } least && (outcome.Plan.LowerBound > least || (outcome.Plan.Proven && outcome.Plan.Cost != least) || outcome.Plan.Cost < least))
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    DIFFERS {instance}: {outcome.Plan.Cost}, bound {outcome.Plan.LowerBound}, outside {least}"));
        }

        to.Flush();
    }

    /// <summary>What both sides found, and the processor seconds they took; <c>Outside</c> is null where it proved nothing in time.</summary>
    private sealed record Outcome(Answer Plan, double Seconds, decimal? Outside, double OutsideSeconds);
}
