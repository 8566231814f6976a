namespace Hoopwright.Scheduling;

/// <summary>A plan made in one go: one activity after another is put where it fits first.</summary>
internal static class SerialPlan
{
    /// <summary>The best plan by a few orders of precedence, justified from both ends; null when none of them fits before the horizon.</summary>
    internal static int[]? Best(ScheduleModel model)
    {
        int[] tail = Tails(model);
        int[]? best = null;
        int[] followers = [.. Enumerable.Range(0, model.End + 1).Select(activity => model.ArcsFrom[activity].Length)];
        int[] work = [.. Enumerable.Range(0, model.End + 1).Select(activity => -model.Duration[activity] * Enumerable.Range(0, model.Capacity.Length).Sum(resource => 1000 * model.MostNeed(resource, activity) / Math.Max(1, model.Most[resource])))];
        Func<int, int>[] orders = [activity => -tail[activity], activity => -followers[activity], activity => model.Duration[activity], activity => work[activity]];
        foreach (Func<int, int> order in orders)
        {
            int[]? starts = Of(model, order);
            while (starts is not null && (best is null || starts[model.End] < best[model.End]))
            {
                best = starts;
                // What must end early goes first: ends of the plan at hand, pushed to the back, say which.
                int[] late = Latest(model, starts);
                starts = Of(model, activity => late[activity]);
            }
        }
        return best;
    }

    /// <summary>The plan in which activities are put in, each as early as it fits, by an order; null when one fits nowhere.</summary>
    /// <param name="model">The job.</param>
    /// <param name="order">What goes first of those that wait for nothing: the one with the least.</param>
    internal static int[]? Of(ScheduleModel model, Func<int, int> order)
    {
        int[] starts = new int[model.End + 1], waits = [.. model.ArcsInto.Select(each => each.Length)];
        var use = new Booked(model);
        PriorityQueue<int, (int, int)> open = new();
        for (int activity = 0; activity <= model.End; activity++)
        {
            if (waits[activity] == 0) open.Enqueue(activity, (order(activity), activity));
        }
        while (open.TryDequeue(out int activity, out _))
        {
            int start = model.FirstFrom(activity, model.ArcsInto[activity].Select(arc => model.ReadyAfter(model.Arcs[arc], starts[model.Arcs[arc].Earlier])).DefaultIfEmpty(0).Max());
            while (start <= model.Horizon && use.Lacks(activity, start) is >= 0 and var lack) start = model.FirstFrom(activity, lack + 1);
            if (start > model.Horizon || model.EndOf(activity, start) > model.Horizon) return null;
            starts[activity] = start;
            use.Add(activity, start);
            foreach (int later in model.ArcsFrom[activity].Select(arc => model.Arcs[arc].Later))
            {
                if (--waits[later] == 0) open.Enqueue(later, (order(later), later));
            }
        }
        return starts;
    }

    /// <summary>As late as each may start with the end where it is, taking ends of a plan from the back.</summary>
    internal static int[] Latest(ScheduleModel model, int[] starts)
    {
        int end = starts[model.End];
        int[] late = new int[model.End + 1];
        var use = new Booked(model);
        foreach (int activity in Enumerable.Range(0, model.End + 1).OrderByDescending(each => model.EndOf(each, starts[each])).ThenByDescending(each => each))
        {
            int last = model.ArcsFrom[activity].Select(arc => model.LastReadyBy(model.Arcs[arc], late[model.Arcs[arc].Later])).DefaultIfEmpty(end).Min();
            int start = Math.Max(starts[activity], model.LastUpTo(activity, last));
            while (start > starts[activity] && use.Lacks(activity, start) >= 0) start = Math.Max(starts[activity], model.LastUpTo(activity, start - 1));
            late[activity] = start;
            use.Add(activity, start);
        }
        return late;
    }

    // The longest way from the start of each to the end.
    private static int[] Tails(ScheduleModel model)
    {
        int[] tail = new int[model.End + 1];
        for (int activity = model.End; activity >= 0; activity--)
            tail[activity] = model.Duration[activity] + model.ArcsFrom[activity].Select(arc => tail[model.Arcs[arc].Later]).DefaultIfEmpty(0).Max();
        return tail;
    }

    /// <summary>What of each resource is in use at each time.</summary>
    private sealed class Booked(ScheduleModel model)
    {
        private readonly int[][] _use = [.. model.Capacity.Select(_ => new int[model.Times])];

        /// <summary>The last time within an activity at which too little is left for it; -1 when it fits.</summary>
        internal int Lacks(int activity, int start)
        {
            for (int time = model.EndOf(activity, start) - 1; time >= start; time--)
            {
                for (int resource = 0; resource < _use.Length; resource++)
                {
                    if (_use[resource][time] + model.NeedAt(resource, activity, time) > model.Capacity[resource][time]) return time;
                }
            }
            return -1;
        }

        internal void Add(int activity, int start)
        {
            for (int resource = 0; resource < _use.Length; resource++)
            {
                for (int time = start; time < model.EndOf(activity, start); time++) _use[resource][time] += model.NeedAt(resource, activity, time);
            }
        }
    }
}
