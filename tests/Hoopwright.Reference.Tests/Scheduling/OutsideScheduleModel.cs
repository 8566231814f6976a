using Google.OrTools.Sat;
using Google.OrTools.Util;
using Hoopwright.Scheduling;
using Hoopwright.Testing;

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

    /// <summary>The least end of a job over days with lengths of their own: one yes or no for each activity and start, and at each time no more in use than there is.</summary>
    /// <param name="job">The job.</param>
    /// <param name="mostWork">When to give up, in about so many seconds' work.</param>
    /// <returns>The end; null when it is proven that there is no plan; and whether anything is proven at all.</returns>
    public static (int? End, bool IsProven) LeastEndOverDays(ScheduleJob job, double mostWork)
    {
        int times = job.DayLengths.Sum();
        CpModel model = new();
        Dictionary<string, Dictionary<int, BoolVar>> starts = job.Activities.ToDictionary(each => each.Id, each => Enumerable.Range(0, times + 1).Where(start => May(job, each, start, times)).ToDictionary(start => start, start => model.NewBoolVar($"{each.Id} {start}")));
        IntVar end = model.NewIntVar(0, times, "end");
        foreach (ScheduleActivity activity in job.Activities)
        {
            model.AddExactlyOne(starts[activity.Id].Values);
            foreach ((int start, BoolVar at) in starts[activity.Id])
            {
                model.Add(end >= ScheduleRules.EndOf(activity, start)).OnlyEnforceIf(at);
                foreach (string id in activity.After.Concat(activity.Waits.Select(wait => wait.Id)))
                {
                    ScheduleActivity earlier = job.Activities.First(each => each.Id == id);
                    foreach ((int before, BoolVar other) in starts[id])
                    {
                        int over = ScheduleRules.EndOf(earlier, before);
                        int ready = activity.Waits.Where(wait => wait.Id == id).Select(wait => wait.ReadyAt[over]).Append(over).Max();
                        if (start < ready) model.AddBoolOr([at.Not(), other.Not()]);
                    }
                }
            }
        }
        foreach (ScheduleResource resource in job.Resources)
        {
            for (int time = 0; time < times; time++)
            {
                LinearExpr[] uses = [.. job.Activities.SelectMany(each => starts[each.Id].Where(start => start.Key <= time && ScheduleRules.EndOf(each, start.Key) > time).Select(start => start.Value * ScheduleRules.Takes(each, resource.Id, time)))];
                if (uses.Length > 0) model.Add(LinearExpr.Sum(uses) <= (resource.AmountByDay.IsEmpty ? resource.Amount : resource.AmountByDay[ScheduleRules.DayOf(job, time)]));
            }
        }
        model.Minimize(end);
        CpSolver solver = new() { StringParameters = FormattableString.Invariant($"num_workers:1 max_deterministic_time:{mostWork}") };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal => ((int)solver.ObjectiveValue, true),
            CpSolverStatus.Infeasible => (null, true),
            _ => (null, false),
        };
    }

    private static bool May(ScheduleJob job, ScheduleActivity activity, int start, int times)
    {
        int end = ScheduleRules.EndOf(activity, start);
        if (end > times || (start < activity.MayStart.Length && !activity.MayStart[start])) return false;
        if (activity.Duration > 0 && activity.Pace is { } pace && pace.Takes[start] == 0) return false;
        if (!activity.SameDay && !activity.GoodDaysOnly) return true;
        int day = ScheduleRules.DayOf(job, start);
        return end <= job.DayLengths.Take(day + 1).Sum() && (!activity.GoodDaysOnly || job.GoodDays.Contains(day));
    }

    private static Domain Starts(ScheduleJob job, ScheduleActivity activity, int horizon)
    {
        if (!activity.SameDay && !activity.GoodDaysOnly) return new Domain(0, horizon);
        int day = job.DayLength!.Value;
        return Domain.FromValues([.. Enumerable.Range(0, horizon + 1).Where(start => (start % day) + activity.Duration <= day && (!activity.GoodDaysOnly || job.GoodDays.Contains(start / day))).Select(start => (long)start)]);
    }
}
