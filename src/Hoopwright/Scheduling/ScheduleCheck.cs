using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;

namespace Hoopwright.Scheduling;

/// <summary>Finds what no plan can mend.</summary>
internal static class ScheduleCheck
{
    // Times to keep account of, over all activities: about a hundred megabytes.
    private const long MostTimes = 4_000_000;

    /// <summary>Everything wrong with a job, in its order.</summary>
    internal static ImmutableArray<Diagnostic> Problems(ScheduleJob job)
    {
        Tables(job);
        List<Diagnostic> found = [];
        HashSet<string> resources = [], ids = [];
        bool hasDays = job.DayLength is not null || !job.DayLengths.IsEmpty;
        int? day = job.DayLengths.IsEmpty ? job.DayLength : job.DayLengths.Max();
        for (int at = 0; at < job.Resources.Length; at++)
        {
            ScheduleResource resource = job.Resources[at];
            string path = $"resources.{resource.Id}";
            if (!resources.Add(resource.Id)) Error("schedule.duplicate", path, $"The resource {resource.Id} stands twice.", resource.Id, "each name once");
            if (resource.Amount < 0 || resource.AmountByDay.Any(amount => amount < 0)) Error("schedule.negative", path, $"There is less than nothing of {resource.Id}.", Text(resource.AmountByDay.Append(resource.Amount).Min()), "0 or more");
        }
        for (int at = 0; at < job.Activities.Length; at++)
        {
            if (!ids.Add(job.Activities[at].Id)) Error("schedule.duplicate", Path(at), $"Two activities are called {job.Activities[at].Id}.", job.Activities[at].Id, "a name of its own for each");
        }
        if (job.DayLength is <= 0) Error("schedule.negative", "dayLength", "A day has no working time.", Text(job.DayLength.Value), "1 or more");
        for (int at = 0; at < job.GoodDays.Length; at++)
        {
            if (job.GoodDays[at] < 0) Error("schedule.negative", $"goodDays[{at}]", "Days are counted from 0.", Text(job.GoodDays[at]), "0 or more");
        }
        for (int at = 0; at < job.Activities.Length; at++) One(job.Activities[at], Path(at));
        if (found.Count == 0) Circle(job, found);
        if (found.Count == 0)
        {
            long length = job.DayLength ?? 0;
            long sum = job.DayLengths.IsEmpty
                ? job.Activities.Sum(each => each.Duration + length) + Math.Max(length * (job.GoodDays.DefaultIfEmpty(0).Max() + 1L), job.Activities.Select(each => each.MayStart.Length).DefaultIfEmpty(0).Max())
                : job.DayLengths.Sum(each => (long)each);
            if (sum * (job.Activities.Length + 1L) > MostTimes)
                Error("schedule.too-large", "activities", "The job has more activities and times than can be kept account of.", string.Create(CultureInfo.InvariantCulture, $"{job.Activities.Length} activities over up to {sum} units of time"), "longer units of time, such as half hours for minutes, or fewer activities");
        }
        return [.. found];

        void One(ScheduleActivity activity, string path)
        {
            if (activity.Duration < 0) Error("schedule.negative", path + ".duration", "An activity takes less than no time.", Text(activity.Duration), "0 or more");
            foreach ((string id, int need) in activity.Needs.OrderBy(pair => pair.Key, StringComparer.Ordinal))
            {
                if (!resources.Contains(id)) Error("schedule.unknown", $"{path}.needs.{id}", $"There is no resource {id}.", id, Known(resources));
                else if (need < 0) Error("schedule.negative", $"{path}.needs.{id}", "An activity needs less than nothing.", Text(need), "0 or more");
                else if (need > job.Resources.First(resource => resource.Id == id).Most && activity.Duration > 0)
                    Error("schedule.too-few", $"{path}.needs.{id}", $"{activity.Id} needs more of {id} than there is at any time.", $"{Text(need)} needed, {Text(job.Resources.First(resource => resource.Id == id).Most)} there", $"{Text(need)} of {id}, or an activity that needs less");
            }
            foreach (string id in Waits(activity))
            {
                if (!ids.Contains(id)) Error("schedule.unknown", path + ".after", $"{activity.Id} waits for {id}, which is no activity.", id, Known(ids));
            }
            if ((activity.SameDay || activity.GoodDaysOnly) && !hasDays)
                Error("schedule.no-day", "dayLength", $"{activity.Id} minds days, but no length of a day is given.", null, "\"dayLength\": 8");
            else if ((activity.SameDay || activity.GoodDaysOnly) && activity.Pace is null && activity.Duration > day)
                Error("schedule.longer-than-day", path + ".duration", $"{activity.Id} must end on the day on which it starts, and takes longer than a day.", $"{Text(activity.Duration)} in a day of {Text(day!.Value)}", "a longer day, more people, or an activity in parts");
            if (activity.GoodDaysOnly && job.GoodDays.IsEmpty)
                Error("schedule.no-good-day", "goodDays", $"{activity.Id} asks for a good day, and none is listed.", null, "\"goodDays\": [3, 5]");
        }

        void Error(string code, string path, string message, string? seen, string accepted) => found.Add(new Diagnostic(code, Severity.Error, path, message, seen, accepted));
    }

    private static void Circle(ScheduleJob job, List<Diagnostic> found)
    {
        Dictionary<string, int> at = [];
        for (int each = 0; each < job.Activities.Length; each++) at[job.Activities[each].Id] = each;
        int[] waits = [.. job.Activities.Select(each => Waits(each).Distinct().Count())];
        Queue<int> free = new(Enumerable.Range(0, waits.Length).Where(each => waits[each] == 0));
        ILookup<int, int> before = job.Activities.SelectMany((each, later) => Waits(each).Distinct().Select(id => (Earlier: at[id], Later: later))).ToLookup(pair => pair.Earlier, pair => pair.Later);
        int done = 0;
        while (free.TryDequeue(out int each))
        {
            done++;
            foreach (int later in before[each])
            {
                if (--waits[later] == 0) free.Enqueue(later);
            }
        }
        if (done == waits.Length) return;
        // Each that is left waits for another that is left: following them comes round.
        List<int> way = [Array.FindIndex(waits, each => each > 0)];
        while (true)
        {
            int next = Waits(job.Activities[way[^1]]).Select(id => at[id]).First(each => waits[each] > 0);
            int seen = way.IndexOf(next);
            way.Add(next);
            if (seen < 0) continue;
            string round = string.Join(" waits for ", way.Skip(seen).Select(each => job.Activities[each].Id));
            found.Add(new Diagnostic("schedule.circle", Severity.Error, Path(way[seen]), "Activities wait for each other in a circle, so that none can start.", round, "one of these waits left out"));
            return;
        }
    }

    private static IEnumerable<string> Waits(ScheduleActivity activity) => activity.After.Concat(activity.Waits.Select(wait => wait.Id));

    // Tables by time are made by programs and not by people: one that does not fit is a fault of the caller.
    private static void Tables(ScheduleJob job)
    {
        int times = job.DayLengths.Sum();
        if (job.DayLengths.Any(length => length < 1)) throw new ArgumentException("A day without working time is no day of a schedule.", nameof(job));
        foreach (ScheduleResource resource in job.Resources)
        {
            if (!resource.AmountByDay.IsEmpty && resource.AmountByDay.Length != job.DayLengths.Length) throw new ArgumentException($"{resource.Id} must have an amount for each day with a length of its own.", nameof(job));
        }
        foreach (ScheduleActivity activity in job.Activities)
        {
            if (activity.Pace is { } pace && (pace.Takes.Length != times || times == 0 || pace.Takes.Any(takes => takes < 0) || job.Resources.All(resource => resource.Id != pace.Resource) || activity.Needs.ContainsKey(pace.Resource)))
                throw new ArgumentException($"The pace of {activity.Id} must name a resource that is not among its needs, and say for each time how much of it is at work.", nameof(job));
            foreach (ScheduleWait wait in activity.Waits)
            {
                if (times == 0 || wait.ReadyAt.Length != times + 1) throw new ArgumentException($"The wait of {activity.Id} for {wait.Id} must say for each end when it is over.", nameof(job));
                for (int end = 0; end <= times; end++)
                {
                    if (wait.ReadyAt[end] < end || (end > 0 && wait.ReadyAt[end] < wait.ReadyAt[end - 1])) throw new ArgumentException($"The wait of {activity.Id} for {wait.Id} must never be over before its beginning, nor earlier for a later one.", nameof(job));
                }
            }
        }
    }

    private static string Path(int activity) => string.Create(CultureInfo.InvariantCulture, $"activities[{activity}]");

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Known(IEnumerable<string> names) => string.Join(", ", names.Order(StringComparer.Ordinal).Take(8)) is { Length: > 0 } some ? "one of " + some : "none is given";
}
