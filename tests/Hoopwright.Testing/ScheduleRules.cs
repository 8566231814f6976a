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
        for (int at = 0; at < job.Activities.Length; at++) times[job.Activities[at].Id] = (plan.Starts[at], EndOf(job.Activities[at], plan.Starts[at]));
        foreach (ScheduleActivity activity in job.Activities)
        {
            (int start, int end) = times[activity.Id];
            if (start < 0) broken.Add($"{activity.Id} starts before the beginning");
            if (end > plan.Makespan) broken.Add($"{activity.Id} ends after the end");
            broken.AddRange(activity.After.Where(id => times[id].End > start).Select(id => $"{activity.Id} starts before {id} has ended"));
            broken.AddRange(activity.Waits.Where(wait => start < wait.ReadyAt[times[wait.Id].End]).Select(wait => $"{activity.Id} does not wait long enough after {wait.Id}"));
            if (start < activity.MayStart.Length && !activity.MayStart[start]) broken.Add($"{activity.Id} may not start at {start}");
            if (activity.Pace is { } pace && activity.Duration > 0 && pace.Takes[start] == 0) broken.Add($"{activity.Id} starts while nobody is at it");
            if (!job.DayLengths.IsEmpty && end > job.DayLengths.Sum()) broken.Add($"{activity.Id} ends after the last day");
            if (activity.SameDay || activity.GoodDaysOnly)
            {
                int day = DayOf(job, start);
                if (activity.Duration > 0 && DayOf(job, end - 1) != day) broken.Add($"{activity.Id} goes over a night");
                if (activity.GoodDaysOnly && !job.GoodDays.Contains(day)) broken.Add($"{activity.Id} lies on day {day}, which is not good");
            }
        }
        foreach (ScheduleResource resource in job.Resources)
        {
            for (int time = 0; time < times.Values.Select(each => each.End).DefaultIfEmpty(0).Max(); time++)
            {
                int used = job.Activities.Where(activity => times[activity.Id].Start <= time && times[activity.Id].End > time).Sum(activity => Takes(activity, resource.Id, time));
                int there = resource.AmountByDay.IsEmpty ? resource.Amount : resource.AmountByDay[DayOf(job, time)];
                if (used > there) broken.Add($"{used} of {resource.Id} at {time}, where there are {there}");
            }
        }
        if (times.Count > 0 && times.Values.Max(each => each.End) != plan.Makespan) broken.Add("the end is not that of the last activity");
        return broken;
    }

    /// <summary>When an activity ends that starts at a time; past the last day when it never does.</summary>
    public static int EndOf(ScheduleActivity activity, int start)
    {
        ArgumentNullException.ThrowIfNull(activity);
        if (activity.Pace is not { } pace) return start + activity.Duration;
        int time = start;
        for (int left = activity.Duration; left > 0; time++)
        {
            if (time >= pace.Takes.Length) return time + 1;
            left -= pace.Takes[time];
        }
        return time;
    }

    /// <summary>What an activity takes of a resource at a time while it lasts.</summary>
    public static int Takes(ScheduleActivity activity, string resource, int time)
    {
        ArgumentNullException.ThrowIfNull(activity);
        if (activity.Pace is { } pace && pace.Resource == resource) return pace.Takes[time];
        return activity.Pace is { } at && at.Takes[time] == 0 ? 0 : activity.Needs.GetValueOrDefault(resource);
    }

    /// <summary>The day of a time.</summary>
    public static int DayOf(ScheduleJob job, int time)
    {
        ArgumentNullException.ThrowIfNull(job);
        if (job.DayLengths.IsEmpty) return time / job.DayLength!.Value;
        int day = 0;
        for (int end = 0; day < job.DayLengths.Length && (end += job.DayLengths[day]) <= time;) day++;
        return day;
    }
}
