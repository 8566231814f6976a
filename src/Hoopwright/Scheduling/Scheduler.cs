using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;

namespace Hoopwright.Scheduling;

/// <summary>Finds starts by which a job ends as early as can be, and proves it where it can.</summary>
public static class Scheduler
{
    // What is spent on raising the bound once the search for a better plan has ended without proof.
    private const int BoundShare = 4;

    /// <summary>Plans a job. What is wrong with it is told, never thrown.</summary>
    /// <param name="job">The job.</param>
    /// <param name="effort">How much work may be spent; <see cref="ScheduleEffort.Usual"/> when null.</param>
    /// <param name="stopAsked">Asked now and then; true ends the work with the best plan so far. Null never stops.</param>
    public static SchedulePlan Solve(ScheduleJob job, ScheduleEffort? effort = null, Func<bool>? stopAsked = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        ImmutableArray<Diagnostic> wrong = ScheduleCheck.Problems(job);
        if (!wrong.IsEmpty) return new SchedulePlan(null, 0, [], 0, wrong);
        var model = new ScheduleModel(job);
        long most = (effort ?? ScheduleEffort.Usual).DeadEnds;
        int[]? starts = SerialPlan.Best(model);
        // What comes after the end of a plan at hand is of no interest.
        if (starts is not null) model = new ScheduleModel(job, starts[model.End]);
        var search = new ScheduleSearch(model, starts);
        if (starts is not null) search.EndBy(starts[model.End] - 1);
        int lower = search.IsDead ? 0 : search.LeastEnd;
        while (!search.IsDead && search.DeadEnds < most && search.Find(most - search.DeadEnds, stopAsked) is { } found)
        {
            starts = found;
            search.EndBy(found[model.End] - 1);
            if (!search.IsDead) lower = search.LeastEnd;
        }
        long deadEnds = search.DeadEnds;
        if (starts is null)
            return new SchedulePlan(null, search.IsDead ? 0 : search.LeastEnd, [], deadEnds, search.IsDead ? [NoPlan(job)] : [NotFound()]);
        if (search.IsDead) lower = starts[model.End];
        else (starts, lower) = Raise(model, starts, lower, most / BoundShare, stopAsked, ref deadEnds);
        int[] early = SerialPlan.Of(model, activity => starts[activity]) is { } left && left[model.End] <= starts[model.End] ? left : starts;
        return new SchedulePlan(early[model.End], lower, Given(model, early), deadEnds, []) { LatestStarts = Given(model, SerialPlan.Latest(model, early)) };
    }

    // By the numbers of the job.
    private static ImmutableArray<int> Given(ScheduleModel model, int[] starts)
    {
        int[] given = new int[model.End];
        for (int activity = 0; activity < model.End; activity++) given[model.Order[activity]] = starts[activity];
        return [.. given];
    }

    // Asks for ends that are earlier than any plan may reach, until one cannot be ruled out.
    private static (int[] Starts, int Lower) Raise(ScheduleModel model, int[] starts, int lower, long most, Func<bool>? stopAsked, ref long deadEnds)
    {
        while (lower < starts[model.End] && stopAsked?.Invoke() != true)
        {
            var search = new ScheduleSearch(model, starts);
            search.EndBy(lower);
            int[]? found = search.Find(most, stopAsked);
            deadEnds += search.DeadEnds;
            if (found is not null) return (found, found[model.End]);
            if (!search.IsDead) return (starts, lower);
            lower++;
        }
        return (starts, lower);
    }

    private static Diagnostic NoPlan(ScheduleJob job) => new(
        "schedule.no-plan", Severity.Error, "activities", job.DayLengths.IsEmpty
            ? "The activities cannot be done in this order: those for good days find no room on the good days that are listed."
            : "The activities cannot be done in the days there are.",
        job.DayLengths.IsEmpty ? $"good days {string.Join(", ", job.GoodDays.Order().Take(12))}{(job.GoodDays.Length > 12 ? " and more" : "")}" : string.Create(CultureInfo.InvariantCulture, $"{job.DayLengths.Length} days"),
        "more good days, or later ones");

    private static Diagnostic NotFound() => new(
        "schedule.not-found", Severity.Error, "activities", "No plan was found within the work allowed; there may be one.", null, "more work allowed, or more good days");
}
