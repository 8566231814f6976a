namespace Hoopwright.Scheduling;

/// <summary>
/// A scheduling job in whole numbers: activities numbered so that none stands before one it waits for, and a last one of no length that
/// waits for all.
/// </summary>
internal sealed class ScheduleModel
{
    private readonly int[][] _firstFrom;

    /// <summary>Puts a job into numbers. It must have been checked: no circles, nothing that needs more than there is.</summary>
    /// <param name="job">The job.</param>
    /// <param name="horizon">A time by which everything can end; null to take one that is late enough for any job that can be done.</param>
    internal ScheduleModel(ScheduleJob job, int? horizon = null)
    {
        Dictionary<string, int> given = [];
        for (int at = 0; at < job.Activities.Length; at++) given[job.Activities[at].Id] = at;
        Order = InOrder([.. job.Activities.Select(each => each.After.Select(id => given[id]).Distinct().ToArray())]);
        End = Order.Length;
        int[] placeOf = new int[End];
        for (int place = 0; place < End; place++) placeOf[Order[place]] = place;
        ScheduleActivity[] activities = [.. Order.Select(at => job.Activities[at])];
        Duration = [.. activities.Select(each => each.Duration), 0];
        After = [.. activities.Select(each => each.After.Select(id => placeOf[given[id]]).Distinct().Order().ToArray()), [.. Enumerable.Range(0, End)]];
        List<int>[] before = [.. Enumerable.Range(0, End + 1).Select(_ => new List<int>())];
        for (int place = 0; place <= End; place++)
        {
            foreach (int earlier in After[place]) before[earlier].Add(place);
        }
        Before = [.. before.Select(each => each.ToArray())];
        Capacity = [.. job.Resources.Select(each => each.Amount)];
        Need = [.. job.Resources.Select(resource => activities.Select(each => each.Needs.GetValueOrDefault(resource.Id)).Append(0).ToArray())];
        Horizon = horizon ?? HorizonOf(job, activities);
        _firstFrom = [.. activities.Select(each => Starts(job, each)), Starts(job, null)];
    }

    /// <summary>The job's activities, by their numbers there, in the order of the numbers here.</summary>
    internal int[] Order { get; }

    /// <summary>The number of the last activity, which stands for the end.</summary>
    internal int End { get; }

    /// <summary>How long each takes.</summary>
    internal int[] Duration { get; }

    /// <summary>What each waits for.</summary>
    internal int[][] After { get; }

    /// <summary>What waits for each.</summary>
    internal int[][] Before { get; }

    /// <summary>How much there is of each resource.</summary>
    internal int[] Capacity { get; }

    /// <summary>What each activity takes of each resource: by resource, then by activity.</summary>
    internal int[][] Need { get; }

    /// <summary>A time by which everything can end, if it can be done at all.</summary>
    internal int Horizon { get; }

    /// <summary>The first time from this one on at which an activity may start; past the horizon when there is none.</summary>
    internal int FirstFrom(int activity, int time) => time > Horizon ? Horizon + 1 : _firstFrom[activity][time];

    /// <summary>The last time up to this one at which an activity may start; -1 when there is none.</summary>
    internal int LastUpTo(int activity, int time)
    {
        int at = Math.Min(time, Horizon);
        while (at >= 0 && _firstFrom[activity][at] != at) at--;
        return at;
    }

    // One after the other, each in a day of its own where it must not go over a night, after the last good day that is known.
    private static int HorizonOf(ScheduleJob job, ScheduleActivity[] activities)
    {
        int day = job.DayLength ?? 0, sum = activities.Sum(each => each.Duration + (each.SameDay || each.GoodDaysOnly ? day : 0));
        return activities.Any(each => each.GoodDaysOnly) ? ((job.GoodDays.DefaultIfEmpty(0).Max() + 1) * day) + sum : sum;
    }

    private int[] Starts(ScheduleJob job, ScheduleActivity? activity)
    {
        int[] first = new int[Horizon + 1];
        HashSet<int> good = [.. job.GoodDays];
        int next = Horizon + 1;
        for (int time = Horizon; time >= 0; time--)
        {
            if (activity is null || May(time)) next = time;
            first[time] = next;
        }
        return first;

        bool May(int time)
        {
            if (!activity.SameDay && !activity.GoodDaysOnly) return true;
            int day = time / job.DayLength!.Value;
            return (time % job.DayLength.Value) + activity.Duration <= job.DayLength && (!activity.GoodDaysOnly || good.Contains(day));
        }
    }

    // As given, but each after what it waits for.
    private static int[] InOrder(int[][] after)
    {
        List<int> order = [];
        bool[] done = new bool[after.Length];
        Stack<(int At, int Next)> open = new();
        for (int root = 0; root < after.Length; root++)
        {
            open.Push((root, 0));
            while (open.TryPop(out (int At, int Next) top))
            {
                if (done[top.At]) continue;
                if (top.Next < after[top.At].Length)
                {
                    open.Push((top.At, top.Next + 1));
                    open.Push((after[top.At][top.Next], 0));
                }
                else
                {
                    done[top.At] = true;
                    order.Add(top.At);
                }
            }
        }
        return [.. order];
    }
}
