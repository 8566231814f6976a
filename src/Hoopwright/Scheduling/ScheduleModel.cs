namespace Hoopwright.Scheduling;

/// <summary>
/// A scheduling job in whole numbers: activities numbered so that none stands before one it waits for, and a last one of no length that
/// waits for all. Ends never come earlier for later starts, whatever the pace, so that bounds on starts say all.
/// </summary>
internal sealed class ScheduleModel
{
    private readonly int[][] _firstFrom;
    private readonly int[][] _lastUpTo;
    private readonly int[]?[] _endOf;
    private readonly int[]?[][] _needAt;
    private readonly int[][] _need;

    /// <summary>Puts a job into numbers. It must have been checked: no circles, nothing that needs more than there is.</summary>
    /// <param name="job">The job.</param>
    /// <param name="horizon">A time by which everything can end; null to take one that is late enough for any job that can be done.</param>
    internal ScheduleModel(ScheduleJob job, int? horizon = null)
    {
        Dictionary<string, int> given = [];
        for (int at = 0; at < job.Activities.Length; at++) given[job.Activities[at].Id] = at;
        Order = InOrder([.. job.Activities.Select(each => WaitsFor(each).Select(id => given[id]).Distinct().ToArray())]);
        End = Order.Length;
        int[] placeOf = new int[End];
        for (int place = 0; place < End; place++) placeOf[Order[place]] = place;
        ScheduleActivity[] activities = [.. Order.Select(at => job.Activities[at])];
        var days = new ScheduleDays(job);
        Horizon = horizon ?? days.Last ?? HorizonOf(job, activities);
        _endOf = [.. activities.Select(EndsAtPace), null];
        Duration = [.. activities.Select(Shortest), 0];
        Arcs = [.. activities.SelectMany((each, place) => ArcsOf(each, place, id => placeOf[given[id]])), .. Enumerable.Range(0, End).Select(each => new ScheduleArc(each, End, null))];
        ArcsInto = Grouped(arc => arc.Later);
        ArcsFrom = Grouped(arc => arc.Earlier);
        Times = Horizon + Duration.Max() + 2;
        Most = [.. job.Resources.Select(each => each.Most)];
        Capacity = [.. job.Resources.Select(each => Amounts(each, days))];
        _need = [.. job.Resources.Select(resource => activities.Select(each => each.Pace?.Resource == resource.Id ? each.Pace.Takes.Max() : each.Needs.GetValueOrDefault(resource.Id)).Append(0).ToArray())];
        _needAt = [.. job.Resources.Select(resource => activities.Select(each => NeedAtPace(each, resource.Id)).Append(null).ToArray())];
        _firstFrom = [.. activities.Select((each, place) => Starts(job, days, each, place)), Starts(job, days, null, End)];
        _lastUpTo = [.. _firstFrom.Select(LastStarts)];
    }

    /// <summary>The job's activities, by their numbers there, in the order of the numbers here.</summary>
    internal int[] Order { get; }

    /// <summary>The number of the last activity, which stands for the end.</summary>
    internal int End { get; }

    /// <summary>How long each takes at the least.</summary>
    internal int[] Duration { get; }

    /// <summary>What waits for what.</summary>
    internal ScheduleArc[] Arcs { get; }

    /// <summary>For each activity what it waits for: places in <see cref="Arcs"/>.</summary>
    internal int[][] ArcsInto { get; }

    /// <summary>For each activity what waits for it.</summary>
    internal int[][] ArcsFrom { get; }

    /// <summary>How much there is of each resource at each time.</summary>
    internal int[][] Capacity { get; }

    /// <summary>The most there is of each resource at any time.</summary>
    internal int[] Most { get; }

    /// <summary>A time by which everything can end, if it can be done at all.</summary>
    internal int Horizon { get; }

    /// <summary>Times to keep account of: past the end of any activity that starts before the horizon.</summary>
    internal int Times { get; }

    /// <summary>The first time from this one on at which an activity may start; past the horizon when there is none.</summary>
    internal int FirstFrom(int activity, int time) => time > Horizon ? Horizon + 1 : _firstFrom[activity][time];

    /// <summary>The last time up to this one at which an activity may start; -1 when there is none.</summary>
    internal int LastUpTo(int activity, int time) => time < 0 ? -1 : _lastUpTo[activity][Math.Min(time, Horizon)];

    /// <summary>When an activity ends that starts at a time; past the horizon when it does not end before that.</summary>
    internal int EndOf(int activity, int start) => _endOf[activity] is not { } ends ? start + Duration[activity] : start > Horizon ? Horizon + 1 : ends[start];

    /// <summary>The latest start by which an activity ends by a time; below 0 when there is none.</summary>
    internal int LastEndingBy(int activity, int end) => _endOf[activity] is not { } ends ? end - Duration[activity] : LastAtMost(ends, end);

    /// <summary>The first start by which an activity is not over at a time.</summary>
    internal int FirstEndingAfter(int activity, int time) => LastEndingBy(activity, time) + 1;

    /// <summary>When what waits may start, where what it waits for starts at a time.</summary>
    internal int ReadyAfter(ScheduleArc arc, int start) => Ready(arc, EndOf(arc.Earlier, start));

    /// <summary>The latest start of what is waited for by which what waits may start at a time; below 0 when there is none.</summary>
    internal int LastReadyBy(ScheduleArc arc, int time) => LastEndingBy(arc.Earlier, arc.ReadyAt is null ? time : LastAtMost(arc.ReadyAt, time));

    /// <summary>What an activity takes of a resource at a time while it lasts.</summary>
    internal int NeedAt(int resource, int activity, int time) => _needAt[resource][activity] is not { } takes ? _need[resource][activity] : time < takes.Length ? takes[time] : 0;

    /// <summary>What an activity takes of a resource at each time, where that differs; null where it is always <see cref="MostNeed"/>.</summary>
    internal int[]? NeedByTime(int resource, int activity) => _needAt[resource][activity];

    /// <summary>The most that an activity takes of a resource.</summary>
    internal int MostNeed(int resource, int activity) => _need[resource][activity];

    private int Ready(ScheduleArc arc, int end) => arc.ReadyAt is null ? end : end > Horizon ? Horizon + 1 : arc.ReadyAt[end];

    // The last place of a list that never falls, up to a value.
    private static int LastAtMost(int[] values, int most)
    {
        int low = 0, high = values.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (values[middle] <= most) low = middle + 1;
            else high = middle;
        }
        return low - 1;
    }

    private static IEnumerable<string> WaitsFor(ScheduleActivity activity) => activity.After.Concat(activity.Waits.Select(wait => wait.Id));

    private IEnumerable<ScheduleArc> ArcsOf(ScheduleActivity activity, int place, Func<string, int> placeOf)
    {
        foreach (string id in WaitsFor(activity).Distinct().OrderBy(placeOf))
        {
            int[][] tables = [.. activity.Waits.Where(wait => wait.Id == id).Select(wait => wait.ReadyAt.Take(Horizon + 1).Select(ready => Math.Min(ready, Horizon + 1)).ToArray())];
            int[]? latest = tables.Length == 0 ? null : [.. tables[0].Select((_, end) => tables.Max(table => table[end]))];
            yield return new ScheduleArc(placeOf(id), place, latest);
        }
    }

    private int[][] Grouped(Func<ScheduleArc, int> by)
    {
        ILookup<int, int> groups = Enumerable.Range(0, Arcs.Length).ToLookup(arc => by(Arcs[arc]));
        return [.. Enumerable.Range(0, End + 1).Select(activity => groups[activity].ToArray())];
    }

    private int[]? EndsAtPace(ScheduleActivity activity)
    {
        if (activity.Pace is not { } pace) return null;
        int[] ends = new int[Horizon + 1];
        int end = 0, done = 0;
        for (int start = 0; start <= Horizon; start++)
        {
            if (end < start) (end, done) = (start, 0);
            while (done < activity.Duration && end < Math.Min(Horizon, pace.Takes.Length)) done += pace.Takes[end++];
            ends[start] = done >= activity.Duration ? end : Horizon + 1;
            if (start < end) done -= pace.Takes[start];
        }
        return ends;
    }

    private int Shortest(ScheduleActivity activity, int place) =>
        _endOf[place] is not { } ends ? activity.Duration : ends.Select((end, start) => end <= Horizon && activity.Pace!.Takes[Math.Min(start, activity.Pace.Takes.Length - 1)] > 0 ? end - start : Horizon + 1).Min();

    private static int[]? NeedAtPace(ScheduleActivity activity, string resource) =>
        activity.Pace is not { } pace ? null
        : pace.Resource == resource ? [.. pace.Takes]
        : activity.Needs.GetValueOrDefault(resource) is > 0 and var need ? [.. pace.Takes.Select(takes => takes > 0 ? need : 0)]
        : null;

    private int[] Amounts(ScheduleResource resource, ScheduleDays days)
    {
        int[] amounts = new int[Times];
        for (int time = 0; time < Times; time++)
            amounts[time] = resource.AmountByDay.IsEmpty ? resource.Amount : resource.AmountByDay[Math.Min(days.DayOf(time), resource.AmountByDay.Length - 1)];
        return amounts;
    }

    // One after the other, each in a day of its own where it must not go over a night, after the last time of which anything is said.
    private static int HorizonOf(ScheduleJob job, ScheduleActivity[] activities)
    {
        int day = job.DayLength ?? 0, sum = activities.Sum(each => each.Duration + (each.SameDay || each.GoodDaysOnly ? day : 0));
        int listed = activities.Any(each => each.GoodDaysOnly) ? (job.GoodDays.DefaultIfEmpty(0).Max() + 1) * day : 0;
        return Math.Max(listed, activities.Select(each => each.MayStart.Length).DefaultIfEmpty(0).Max()) + sum;
    }

    private int[] Starts(ScheduleJob job, ScheduleDays days, ScheduleActivity? activity, int place)
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
            if (time < activity.MayStart.Length && !activity.MayStart[time]) return false;
            if (activity.Pace is { } pace && activity.Duration > 0 && (time >= pace.Takes.Length || pace.Takes[time] == 0)) return false;
            if (!activity.SameDay && !activity.GoodDaysOnly) return true;
            int day = days.DayOf(time);
            return EndOf(place, time) <= days.EndOf(day) && (!activity.GoodDaysOnly || good.Contains(day));
        }
    }

    private int[] LastStarts(int[] first)
    {
        int[] last = new int[Horizon + 1];
        int before = -1;
        for (int time = 0; time <= Horizon; time++)
        {
            if (first[time] == time) before = time;
            last[time] = before;
        }
        return last;
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
