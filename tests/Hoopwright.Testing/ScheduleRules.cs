using Hoopwright.Scheduling;

namespace Hoopwright.Testing;

/// <summary>What a schedule must keep to, said anew and plainly, so that a planner is not judged by its own rules.</summary>
public static class ScheduleRules
{
    /// <summary>Every rule that a plan breaks, in words.</summary>
    public static List<string> Broken(ScheduleJob job, SchedulePlan plan)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(plan);
        List<string> broken = [];
        Dictionary<string, (int Start, int End)> times = [];
        for (int at = 0; at < job.Activities.Length; at++) times[job.Activities[at].Id] = (plan.Starts[at], plan.Starts[at] + job.Activities[at].Duration);
        foreach (ScheduleActivity activity in job.Activities)
        {
            (int start, int end) = times[activity.Id];
            if (start < 0) broken.Add($"{activity.Id} starts before the beginning");
            if (end > plan.Makespan) broken.Add($"{activity.Id} ends after the end");
            broken.AddRange(activity.After.Where(id => times[id].End > start).Select(id => $"{activity.Id} starts before {id} has ended"));
            if (activity.SameDay || activity.GoodDaysOnly)
            {
                int day = start / job.DayLength!.Value;
                if (end > (day + 1) * job.DayLength) broken.Add($"{activity.Id} goes over a night");
                if (activity.GoodDaysOnly && !job.GoodDays.Contains(day)) broken.Add($"{activity.Id} lies on day {day}, which is not good");
            }
        }
        foreach (ScheduleResource resource in job.Resources)
        {
            foreach (int time in times.Values.Select(each => each.Start).Distinct())
            {
                int used = job.Activities.Where(activity => times[activity.Id].Start <= time && times[activity.Id].End > time).Sum(activity => activity.Needs.GetValueOrDefault(resource.Id));
                if (used > resource.Amount) broken.Add($"{used} of {resource.Id} at {time}, where there are {resource.Amount}");
            }
        }
        if (times.Count > 0 && times.Values.Max(each => each.End) != plan.Makespan) broken.Add("the end is not that of the last activity");
        return broken;
    }
}
