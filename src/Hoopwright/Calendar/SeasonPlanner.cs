using System.Collections.Immutable;
using Hoopwright.BuildSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Weather;

namespace Hoopwright.Calendar;

/// <summary>The odds of ending by a day: the planned order followed through many seasons. The same plan, weather and seed give the same odds everywhere.</summary>
public static class SeasonPlanner
{
    // Days that a season may last longer than planned.
    private const int DaysLater = 240;

    /// <summary>Goes through the seasons.</summary>
    /// <param name="tunnel">The tunnel, with the plan that says who comes when.</param>
    /// <param name="build">The steps.</param>
    /// <param name="calendar">Their calendar, whose order is followed.</param>
    /// <param name="climate">Weather of most of a year or more.</param>
    /// <param name="seasons">How many; 1 to 100,000.</param>
    /// <param name="seed">What they are drawn by.</param>
    /// <param name="clock">By how much the clock on the wall is ahead of universal time; null for that of the weather.</param>
    /// <returns>The odds; none when the weather is too short, and why.</returns>
    public static (SeasonOdds? Odds, ImmutableArray<Diagnostic> Diagnostics) Odds(Tunnel tunnel, BuildPlan build, CrewCalendar calendar, WeatherRecord climate, int seasons, ulong seed, TimeSpan? clock = null)
    {
        ArgumentNullException.ThrowIfNull(tunnel);
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(climate);
        ArgumentOutOfRangeException.ThrowIfLessThan(seasons, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(seasons, 100_000);
        climate = climate.ByClock(clock ?? climate.UtcOffset);
        var days = new SeasonDays(climate);
        if (!CrewSetting.IsClimate(climate) || days.Count < 300)
        {
            return (null, [new Diagnostic("calendar.no-climate", Severity.Error, "weather", "The weather is too short to draw seasons from.", FormattableString.Invariant($"{days.Count} whole days"), "a weather file of a year, or of many")]);
        }
        List<Diagnostic> found = [];
        // The clock, the sun and the people are those of the calendar, which has told what is wrong with them.
        if (CrewSetting.Of(tunnel, build, climate, calendar.From, clock, found) is not { } setting) return (null, [.. found]);
        var hours = new StepHours(tunnel, climate, new Answers(tunnel.Units));
        var slots = new WorkSlots(setting.Days.Days(calendar.From, DateOnly.FromDateTime(calendar.End).DayNumber - calendar.From.DayNumber + DaysLater));
        var plan = new SeasonPlan(slots, new CrewJob(slots, new Gate(slots, null, null), setting.Steps, setting.Done, setting.Tools, day => day.People), calendar.Steps.Select(step => step.Step.Id));
        return (Draw(plan, hours, days, setting.Steps, calendar.From, seasons, seed), []);
    }

    private static SeasonOdds Draw(SeasonPlan plan, StepHours hours, SeasonDays days, ImmutableArray<BuildStep> steps, DateOnly from, int seasons, ulong seed, TimeSpan? clock = null)
    {
        StepWeather[] kinds = [.. steps.Select(step => step.Weather).Distinct().Where(weather => weather != StepWeather.Any)];
        bool[][] rows = [.. kinds.Select(hours.Of)], fit = [.. kinds.Select(_ => new bool[plan.Slots.Count])];
        int[] kindOf = [.. steps.Select(step => Array.IndexOf(kinds, step.Weather))];
        bool[]?[] fitOf = [.. kindOf.Select(kind => kind < 0 ? null : fit[kind])];
        // Which day of the season, and which hours of it, each slot needs.
        (int Day, int First, int Last)[] needs = [.. Enumerable.Range(0, plan.Slots.Count).Select(slot => plan.Slots.StartOf(slot)).Select(start => (
            DateOnly.FromDateTime(start).DayNumber - from.DayNumber, start.Hour, start.AddMinutes(CalendarDefaults.SlotMinutes - 1).Hour))];
        var season = new Season(plan);
        int[] work = new int[steps.Length], waited = new int[steps.Length], seasonsWaited = new int[steps.Length];
        long[] allWaited = new long[steps.Length];
        SortedDictionary<DateOnly, int> ends = [];
        for (int at = 0; at < seasons; at++)
        {
            // Each season has numbers of its own, so that more of them leave the first as they are.
            var numbers = new SeededNumbers(new SeededNumbers(seed + (ulong)at).Next());
            int[] first = days.Draw(from, needs[^1].Day + 1, numbers);
            for (int kind = 0; kind < kinds.Length; kind++)
            {
                for (int slot = 0; slot < needs.Length; slot++)
                {
                    (int day, int hour, int last) = needs[slot];
                    fit[kind][slot] = rows[kind][first[day] + hour] && rows[kind][first[day] + last];
                }
            }
            for (int step = 0; step < steps.Length; step++)
            {
                WorkSpan span = steps[step].Work;
                work[step] = Math.Max(1, WorkSlots.Of(TimeSpan.FromMinutes(Math.Round(numbers.Triangle(span.Least.TotalMinutes, span.Likely.TotalMinutes, span.Most.TotalMinutes)))));
            }
            Array.Clear(waited);
            int end = season.Run(fitOf, work, waited);
            if (end <= plan.Slots.Count)
            {
                var day = DateOnly.FromDateTime(plan.Slots.EndBefore(end));
                ends[day] = ends.GetValueOrDefault(day) + 1;
            }
            for (int step = 0; step < steps.Length; step++)
            {
                allWaited[step] += waited[step];
                seasonsWaited[step] += waited[step] > 0 ? 1 : 0;
            }
        }
        int done = 0;
        return new SeasonOdds
        {
            Seasons = seasons,
            Seed = seed,
            Years = days.Years,
            ByDate = [.. ends.Select(day => (day.Key, Ratio.FromValue((done += day.Value) / (double)seasons)))],
            Waits = [.. Enumerable.Range(0, steps.Length).Where(step => seasonsWaited[step] > 0)
                .OrderByDescending(step => allWaited[step]).ThenBy(step => step)
                .Select(step => new StepOdds(steps[step].Id, Ratio.FromValue(seasonsWaited[step] / (double)seasons), TimeSpan.FromMinutes(Math.Round(allWaited[step] * CalendarDefaults.SlotMinutes / (double)seasons))))],
        };
    }
}
