using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Sun;
using Hoopwright.Weather;

namespace Hoopwright.Calendar;

/// <summary>Which days people come, when they begin and for how long, from the plan and the sun.</summary>
internal sealed class WorkDays
{
    private readonly Dictionary<DayOfWeek, BuildDay> _weekdays = [];
    private readonly Dictionary<DateOnly, BuildDay> _dates = [];
    private readonly TimeOnly _begins;
    private readonly int _hours;
    private readonly int _people;
    private readonly Place? _place;
    private readonly TimeSpan _offset;

    private WorkDays(Plan plan, Answers answers, Place? place, TimeSpan offset)
    {
        _people = answers.Take("crew.people", DayDefaults.People(answers.Units), plan.Crew.People);
        _begins = answers.Take("build.begins", CalendarDefaults.Begins, plan.Build.Begins);
        _hours = answers.Take("build.hours", CalendarDefaults.Hours, plan.Build.Hours);
        (_place, _offset) = (place, offset);
        foreach (BuildDay row in plan.Build.Days)
        {
            if (row.Weekday is { } weekday) _weekdays[weekday] = row;
            if (row.Date is { } date) _dates[date] = row;
        }
        if (_weekdays.Count == 0) answers.Take("build.days", CalendarDefaults.Days, null);
    }

    /// <summary>When work usually ends.</summary>
    internal TimeSpan UsualEnd => _begins.ToTimeSpan() + TimeSpan.FromHours(_hours);

    /// <summary>From the plan; null when its rows of days cannot be followed.</summary>
    internal static WorkDays? Of(Plan plan, WeatherRecord? weather, TimeSpan? clock, Answers answers, List<Diagnostic> found)
    {
        bool isWrong = false;
        HashSet<object> seen = [];
        for (int at = 0; at < plan.Build.Days.Length; at++)
        {
            BuildDay row = plan.Build.Days[at];
            string path = string.Create(CultureInfo.InvariantCulture, $"build.days[{at}]");
            object? day = row.Date is { } date ? date : row.Weekday;
            if (day is null || (row.Date is not null && row.Weekday is not null))
                found.Add(new Diagnostic("calendar.no-day", Severity.Error, path, "A row of who comes when must be for a weekday or for a date.", row.Date is null ? "neither" : "both", "\"weekday\": \"saturday\", or \"date\": \"2026-04-18\""));
            else if (!seen.Add(day))
                found.Add(new Diagnostic("calendar.day-twice", Severity.Error, path, "Two rows say who comes on the same day.", row.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? PlanChoices.Word(row.Weekday!.Value), "one of the two"));
            else continue;
            isWrong = true;
        }
        if (isWrong) return null;
        Place? place = plan.Site is { Latitude: { } north, Longitude: { } east } ? new Place(north.Value, east.Value, plan.Site.Elevation?.Value ?? weather?.Place?.Elevation ?? Quantities.Length.Zero) : weather?.Place;
        TimeSpan offset = clock ?? weather?.UtcOffset ?? TimeSpan.FromHours(Math.Round((place?.Longitude.Degrees ?? 0) / 15));
        if (place is null)
            found.Add(new Diagnostic("calendar.no-place", Severity.Assumption, "site.latitude", "It is not known where the place is, so the end of daylight was not looked at.", null, "site.latitude and site.longitude"));
        else if (weather is null && clock is null)
            found.Add(new Diagnostic("calendar.clock", Severity.Assumption, "site.longitude", "Sunrise and sunset are by the standard time of the longitude; in summer time they are an hour later.", null, string.Create(CultureInfo.InvariantCulture, $"UTC{(offset < TimeSpan.Zero ? "-" : "+")}{offset:hh\\:mm}")));
        return new WorkDays(plan, answers, place, offset);
    }

    /// <summary>The days on which people come.</summary>
    /// <param name="from">First day.</param>
    /// <param name="days">Days of the calendar looked at.</param>
    internal ImmutableArray<WorkDay> Days(DateOnly from, int days) => [.. Enumerable.Range(0, days).Select(day => Day(from.AddDays(day))).OfType<WorkDay>()];

    private WorkDay? Day(DateOnly date)
    {
        BuildDay? row = _dates.GetValueOrDefault(date) ?? _weekdays.GetValueOrDefault(date.DayOfWeek);
        if (row is null && (_weekdays.Count > 0 || !CalendarDefaults.IsUsual(date.DayOfWeek))) return null;
        int people = row?.People ?? _people;
        if (people == 0) return null;
        TimeSpan begins = (row?.Begins ?? _begins).ToTimeSpan(), latest = TimeSpan.FromMinutes((24 * 60) - CalendarDefaults.SlotMinutes);
        TimeSpan ends = begins + TimeSpan.FromHours(row?.Hours ?? _hours);
        if (ends > latest) ends = latest;
        if (_place is not null)
        {
            SunDay sun = SunAlmanac.Day(_place, date, _offset);
            if (sun.DayLength == TimeSpan.Zero) return null;
            if (sun is { Rise: { } rise, Set: { } set })
            {
                // Whole slots, counted from the beginning of work.
                TimeSpan dawn = rise.TimeOfDay, dusk = set.Date > rise.Date ? latest : set.TimeOfDay;
                if (dawn > begins) begins += Slots(dawn - begins, up: true);
                if (dusk < ends) ends = dusk;
            }
        }
        ends = begins + Slots(ends - begins, up: false);
        return ends > begins ? new WorkDay(date, TimeOnly.FromTimeSpan(begins), TimeOnly.FromTimeSpan(ends), people) : null;
    }

    private static TimeSpan Slots(TimeSpan span, bool up)
    {
        double slots = span.TotalMinutes / CalendarDefaults.SlotMinutes;
        return TimeSpan.FromMinutes(CalendarDefaults.SlotMinutes * (up ? Math.Ceiling(slots) : Math.Floor(slots)));
    }
}
