using System.Diagnostics;
using System.Globalization;
using Hoopwright.Cutting;
using Hoopwright.Reference.Tests.Cutting;

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

    /// <summary>Prints the rows of some classes, of all when none is named; a number among the names is the outside solver's limit in seconds.</summary>
    public static int Print(string[] args, TextWriter to)
    {
        string[] classes = [.. args.Where(arg => !int.TryParse(arg, CultureInfo.InvariantCulture, out _))];
        var milliseconds = 1000 * args.Except(classes).Select(seconds => int.Parse(seconds, CultureInfo.InvariantCulture)).FirstOrDefault(UsualSeconds);
        to.WriteLine("| class | instances | proven | median s | worst s | total s | OR-Tools proven | median s | worst s | total s |");
        to.WriteLine("|---|---|---|---|---|---|---|---|---|---|");
        // Both sides have run once before they are measured.
        _ = Measured(PracticalOrders.Of(-1, leftovers: false), CutEffort.Usual, milliseconds);
        foreach (var (name, effort, jobs) in Classes())
        {
            if (classes.Length == 0 || classes.Contains(name, StringComparer.Ordinal))
                Row(name, [.. jobs.Select(job => (job.Name, Measured(job.Job, effort, milliseconds)))], to);
        }

        return 0;
    }

    private static IEnumerable<(string Name, CutEffort Effort, IEnumerable<(string Name, UnitlessCutJob Job)> Jobs)> Classes()
    {
        yield return ("practical", CutEffort.Usual, Enumerable.Range(0, 500).Select(seed => ($"practical-{seed}", PracticalOrders.Of(seed, leftovers: false))));
        yield return ("practical, leftovers", CutEffort.Usual, Enumerable.Range(0, 500).Select(seed => ($"leftovers-{seed}", PracticalOrders.Of(seed, leftovers: true))));
        yield return ("orders", Effort, CuttingData.Optima("orders").Select(entry => (Path.GetFileNameWithoutExtension(entry.File), CuttingData.ReadOrder(entry.File))));
        foreach (var family in CuttingData.Optima("csp").GroupBy(entry => entry.Row["family"]))
            yield return (family.Key, Effort, family.Select(entry => (entry.Row["instance"], CuttingData.ReadOneLength(entry.File))));
        yield return ("vs", Effort, CuttingData.Optima("vs").Select(entry => (entry.Row["instance"], CuttingData.ReadSeveralLengths(entry.File))));
    }

    private static Outcome Measured(UnitlessCutJob job, CutEffort effort, int milliseconds)
    {
        var (plan, seconds) = Timed(() => Cutter.Solve(job, effort));
        var (outside, outsideSeconds) = Timed(() => GapPatternModel.LeastCost(job, milliseconds) ?? (SuitsArcFlow(job) ? ArcFlowModel.LeastCost(job, milliseconds) : null));
        return new Outcome(plan, seconds, outside, outsideSeconds);
    }

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
    private sealed record Outcome(UnitlessCutPlan Plan, double Seconds, decimal? Outside, double OutsideSeconds);
}
