using System.Diagnostics;
using System.Globalization;
using Hoopwright.Reference.Tests.Scheduling;
using Hoopwright.Scheduling;

namespace Hoopwright.Bench.Scheduling;

/// <summary>
/// The table of docs/schedule-job.md: published instances solved here and by OR-Tools CP-SAT in the same run, one after the other on one
/// thread, times in seconds of processor so that other work on the machine does not count.
/// </summary>
internal static class ScheduleTable
{
    private const double MostSeconds = 60;

    /// <summary>Prints the rows.</summary>
    public static int Print(TextWriter to)
    {
        to.WriteLine("| set | instances | at the optimum | proven | median s | worst s | total s | CP-SAT proven | median s | worst s | total s |");
        to.WriteLine("|---|---|---|---|---|---|---|---|---|---|---|");
        // Both sides have run once before they are measured.
        foreach ((_, ScheduleJob job, _) in ScheduleData.Calendar().Take(2)) _ = (Scheduler.Solve(job), OutsideScheduleModel.LeastEnd(job, MostSeconds));
        Row("30 activities", [.. ScheduleData.Psplib("j30")], to);
        Row("30 activities, working days and calm days", [.. ScheduleData.Calendar()], to);
        Row("60 activities", [.. ScheduleData.Psplib("j60")], to);
        return 0;
    }

    private static void Row(string name, (string Name, ScheduleJob Job, int Optimum)[] instances, TextWriter to)
    {
        List<double> own = [], outside = [];
        int best = 0, proven = 0, outsideProven = 0;
        foreach ((string instance, ScheduleJob job, int optimum) in instances)
        {
            (SchedulePlan plan, double seconds) = Timed(() => Scheduler.Solve(job));
            own.Add(seconds);
            best += plan.Makespan == optimum ? 1 : 0;
            proven += plan.IsProven ? 1 : 0;
            if (!plan.IsProven) to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"open: {instance}, {plan.Makespan} with bound {plan.LowerBound}, optimum {optimum}"));
            ((int End, bool IsProven)? other, double otherSeconds) = Timed(() => OutsideScheduleModel.LeastEnd(job, MostSeconds));
            outside.Add(otherSeconds);
            outsideProven += other is { IsProven: true } ? 1 : 0;
        }
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {name} | {instances.Length} | {best} | {proven} | {Middle(own):0.000} | {own.Max():0.0} | {own.Sum():0.0} | {outsideProven} | {Middle(outside):0.000} | {outside.Max():0.0} | {outside.Sum():0.0} |"));
    }

    private static double Middle(List<double> values) => values.Order().ElementAt(values.Count / 2);

    private static (T Value, double Seconds) Timed<T>(Func<T> work)
    {
        using var process = Process.GetCurrentProcess();
        TimeSpan before = process.TotalProcessorTime;
        T value = work();
        process.Refresh();
        return (value, (process.TotalProcessorTime - before).TotalSeconds);
    }
}
