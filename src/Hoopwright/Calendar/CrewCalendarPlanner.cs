using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.BuildSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Scheduling;
using Hoopwright.Weather;

namespace Hoopwright.Calendar;

/// <summary>Plans the days of a crew, so that the job ends as early as can be.</summary>
public static class CrewCalendarPlanner
{
    // Proves the steps of a tunnel many times over; counted in dead ends of the search.
    private static readonly ScheduleEffort Effort = new(20_000);

    private const int MostHelpers = 2;

    /// <summary>Plans.</summary>
    /// <param name="tunnel">The tunnel, with the plan that says who comes when.</param>
    /// <param name="build">The steps.</param>
    /// <param name="weather">A forecast, in whose hours steps wait for the weather that they need; a record of most of a year or more holds nothing up. Null without one.</param>
    /// <param name="from">Plan no earlier than this day; null for the first day of the plan.</param>
    /// <param name="clock">By how much the clock on the wall is ahead of universal time; null for that of the weather, or the standard time of the longitude.</param>
    public static CrewCalendarOutcome Plan(Tunnel tunnel, BuildPlan build, WeatherRecord? weather = null, DateOnly? from = null, TimeSpan? clock = null)
    {
        ArgumentNullException.ThrowIfNull(tunnel);
        ArgumentNullException.ThrowIfNull(build);
        List<Diagnostic> found = [];
        if (CrewSetting.Of(tunnel, build, weather, from, clock, found) is not { } setting) return new(null, [.. found]);
        if (setting.Steps.IsEmpty) return new(Finished(setting), [.. found, .. setting.Answers.Assumptions]);
        foreach (int ahead in CalendarDefaults.DaysAhead)
        {
            ImmutableArray<WorkDay> days = setting.Days.Days(setting.From, ahead);
            if (days.IsEmpty) continue;
            var slots = new WorkSlots(days);
            Dictionary<int, Crewed> crews = Solve(setting, slots, found);
            if (crews.TryGetValue(0, out Crewed? planned))
            {
                CrewCalendar calendar = CrewCalendarMaker.Make(
                    setting, slots, planned.Job, planned.Plan, [.. Enumerable.Range(1, MostHelpers).Where(crews.ContainsKey).Select(more => new MoreHelp(more, slots.EndBefore(crews[more].Plan.Makespan!.Value)))]);
                Late(calendar, found);
                if (setting.Hours is { KnowsRain: false } && setting.Steps.Any(step => step.Weather.Dry))
                    found.Add(new Diagnostic("days.no-rain", Severity.Assumption, "weather", "The weather has nothing on rain, so it was not looked at: the hours found may be wet.", null, "dry"));
                return new(calendar, [.. found, .. setting.Answers.Assumptions]);
            }
            if (found.Any(each => each.Severity == Severity.Error)) return new(null, [.. found]);
        }
        Hopeless(setting, found);
        return new(null, [.. found]);
    }

    /// <summary>True for weather of days to come, in whose hours steps wait; false for a record of most of a year or more, which speaks of a climate.</summary>
    /// <param name="weather">The weather.</param>
    public static bool IsForecast(WeatherRecord weather)
    {
        ArgumentNullException.ThrowIfNull(weather);
        return !CrewSetting.IsClimate(weather);
    }

    /// <summary>The best plan for each number of people more, or fewer, that come on each day.</summary>
    private static Dictionary<int, Crewed> Solve(CrewSetting setting, WorkSlots slots, List<Diagnostic> found)
    {
        var gate = new Gate(slots, setting.Forecast, setting.Hours);
        // Where a step rests on days with few people, one more of them can wake it in the way of another. Then fewer may be better, and who is
        // not needed stays at home: so that a helper more never makes the job longer.
        bool mayRest = setting.Steps.Any(step => slots.Days.Any(day => day.People < step.LeastPeople));
        int fewest = mayRest ? 1 - slots.Days.Max(day => day.People) : 0;
        List<(int More, Crewed Crewed)> tried = [];
        for (int each = MostHelpers; each >= fewest; each--)
        {
            int more = each;
            var job = new CrewJob(slots, gate, setting.Steps, setting.Done, setting.Tools, day => Math.Max(0, day.People + more));
            SchedulePlan plan = Scheduler.Solve(job.Job, Effort);
            if (plan.Diagnostics.FirstOrDefault(diagnostic => diagnostic.Code == "schedule.circle") is { } circle)
            {
                found.Add(new Diagnostic("calendar.circle", Severity.Error, "steps", "Steps wait for each other in a circle, so that none can start.", circle.Seen, circle.Accepted));
                return [];
            }
            // Fewer still cannot do it either.
            if (plan.Makespan is null) break;
            tried.Add((more, new Crewed(job, plan)));
        }
        return Enumerable.Range(0, MostHelpers + 1).Where(more => tried.Exists(each => each.More <= more)).ToDictionary(more => more, more => Best(tried.Where(each => each.More <= more)));
    }

    // Of those that end first the one with most people.
    private static Crewed Best(IEnumerable<(int More, Crewed Crewed)> tried)
    {
        Crewed best = tried.OrderBy(each => each.Crewed.Plan.Makespan).ThenByDescending(each => each.More).First().Crewed;
        return best with { Plan = best.Plan with { LowerBound = Math.Min(best.Plan.Makespan!.Value, tried.Min(each => each.Crewed.Plan.LowerBound)) } };
    }

    private static CrewCalendar Finished(CrewSetting setting) => new()
    {
        Job = setting.Build.Job,
        From = setting.From,
        End = setting.Done.Values.Max() ?? setting.From.ToDateTime(TimeOnly.MinValue),
        FinishBy = setting.Tunnel.Plan.Build.FinishBy,
        IsProven = true,
        Steps = [],
        Done = [.. setting.Build.Steps.Select(step => step.Id)],
        Days = [],
        HoldsUpTheEnd = [],
        MoreHelp = [],
        ForecastTo = null,
        Rules = setting.Answers.Rules,
    };

    private static void Late(CrewCalendar calendar, List<Diagnostic> found)
    {
        if (calendar.FinishBy is not { } by || DateOnly.FromDateTime(calendar.End) <= by) return;
        MoreHelp? help = calendar.MoreHelp.FirstOrDefault(each => DateOnly.FromDateTime(each.End) <= by);
        found.Add(new Diagnostic(
            "calendar.late", Severity.Warning, "build.finishBy", "The job ends later than it is to be finished.", CrewSetting.Written(DateOnly.FromDateTime(calendar.End)),
            help is null ? "an earlier start, more days a week or longer days" : string.Create(CultureInfo.InvariantCulture, $"{help.More} more on every day, which ends on {help.End:yyyy-MM-dd}; an earlier start, more days a week or longer days")));
    }

    // What no day that comes can mend, step by step.
    private static void Hopeless(CrewSetting setting, List<Diagnostic> found)
    {
        ImmutableArray<WorkDay> days = setting.Days.Days(setting.From, CalendarDefaults.DaysAhead[^1]);
        if (days.IsEmpty)
        {
            found.Add(new Diagnostic("calendar.nobody", Severity.Error, "build.days", "Nobody comes on any day from the first on.", CrewSetting.Written(setting.From), "a weekday or a date with people, \"weekday\": \"saturday\""));
            return;
        }
        int most = days.Max(day => day.People);
        var slots = new WorkSlots(days);
        var job = new CrewJob(slots, new Gate(slots, null, null), setting.Steps, setting.Done, setting.Tools, day => day.People);
        for (int at = 0; at < setting.Steps.Length; at++)
        {
            BuildStep step = setting.Steps[at];
            if (step.LeastPeople > most)
            {
                found.Add(new Diagnostic(
                    "calendar.crew-too-small", Severity.Error, "crew.people", $"{step.Title} takes more people than ever come.", Count(most), $"{Count(step.LeastPeople)} or more: in crew.people, or on one day in build.days"));
            }
            else if (step.InOneGo && !Enumerable.Range(0, slots.Count).Any(slot => job.FitsInOneGo(at, slot)))
            {
                double hours = Math.Ceiling(step.Work.Likely.TotalHours / Math.Min(most, step.BestPeople) * 2) / 2;
                found.Add(new Diagnostic(
                    "calendar.longer-than-a-day", Severity.Error, "build.hours", $"{step.Title} must be done in one go, and takes longer than any day.",
                    string.Create(CultureInfo.InvariantCulture, $"{hours:0.#} h with {Count(Math.Min(most, step.BestPeople))}"), most < step.BestPeople ? $"a longer day, or up to {Count(step.BestPeople)}" : "a longer day"));
            }
        }
        if (found.All(each => each.Severity != Severity.Error))
            found.Add(new Diagnostic("calendar.no-plan", Severity.Error, "build.days", "The work does not fit into two years of the days on which people come.", null, "more people, more days a week or longer days"));
    }

    private static string Count(int people) => string.Create(CultureInfo.InvariantCulture, $"{people} {(people == 1 ? "person" : "people")}");

    private sealed record Crewed(CrewJob Job, SchedulePlan Plan);
}
