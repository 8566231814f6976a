using Google.OrTools.Sat;
using Google.OrTools.Util;
using Hoopwright.Scheduling;

namespace Hoopwright.Reference.Tests.Scheduling;

/// <summary>A scheduling job as OR-Tools CP-SAT solves it: intervals, one cumulative per resource, domains of starts for days.</summary>
internal static class OutsideScheduleModel
{
    /// <summary>The least end and whether it is proven; null when the solver finds no plan.</summary>
    /// <param name="job">The job.</param>
    /// <param name="mostSeconds">When to give up.</param>
    /// <param name="byWork">True to count about so many seconds' work and not the clock, so that the same jobs are given up on every machine.</param>
    public static (int End, bool IsProven)? LeastEnd(ScheduleJob job, double mostSeconds, bool byWork = false)
    {
        int day = job.DayLength ?? 0;
        int horizon = job.Activities.Sum(each => each.Duration + day) + (day * (job.GoodDays.DefaultIfEmpty(0).Max() + 1));
        CpModel model = new();
        Dictionary<string, IntVar> starts = job.Activities.ToDictionary(each => each.Id, each => model.NewIntVarFromDomain(Starts(job, each, horizon), each.Id));
        IntVar end = model.NewIntVar(0, horizon, "end");
        foreach (ScheduleActivity activity in job.Activities)
        {
            model.Add(end >= starts[activity.Id] + activity.Duration);
            foreach (string earlier in activity.After) model.Add(starts[activity.Id] >= starts[earlier] + job.Activities.First(each => each.Id == earlier).Duration);
        }
        foreach (ScheduleResource resource in job.Resources)
        {
            CumulativeConstraint uses = model.AddCumulative(resource.Amount);
            foreach (ScheduleActivity activity in job.Activities.Where(each => each.Needs.GetValueOrDefault(resource.Id) > 0 && each.Duration > 0))
                uses.AddDemand(model.NewFixedSizeIntervalVar(starts[activity.Id], activity.Duration, $"{activity.Id} {resource.Id}"), activity.Needs[resource.Id]);
        }
        model.Minimize(end);
        CpSolver solver = new() { StringParameters = FormattableString.Invariant($"num_workers:1 {(byWork ? "max_deterministic_time" : "max_time_in_seconds")}:{mostSeconds}") };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal => ((int)solver.ObjectiveValue, true),
            CpSolverStatus.Feasible => ((int)solver.ObjectiveValue, false),
            _ => null,
        };
    }

    private static Domain Starts(ScheduleJob job, ScheduleActivity activity, int horizon)
    {
        if (!activity.SameDay && !activity.GoodDaysOnly) return new Domain(0, horizon);
        int day = job.DayLength!.Value;
        return Domain.FromValues([.. Enumerable.Range(0, horizon + 1).Where(start => (start % day) + activity.Duration <= day && (!activity.GoodDaysOnly || job.GoodDays.Contains(start / day))).Select(start => (long)start)]);
    }
}
