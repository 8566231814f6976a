using System.Globalization;
using System.Text.Json;
using Hoopwright.BuildSteps;
using Hoopwright.Plans;
using Hoopwright.Takeoff;
using Hoopwright.Weather;

namespace Hoopwright.Calendar;

/// <summary>The days of a crew as JSON for machines. Times are by the clock on the wall, numbers SI with the unit at the end of their names.</summary>
public static class CrewCalendarJson
{
    /// <summary>Writes the calendar as an object.</summary>
    /// <param name="json">Where to; after a property's name, or where a value may stand.</param>
    /// <param name="calendar">The calendar.</param>
    public static void Write(Utf8JsonWriter json, CrewCalendar calendar)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(calendar);
        json.WriteStartObject();
        json.WriteString("job", WeatherJson.Camel(calendar.Job.ToString()));
        Date(json, "from", calendar.From);
        Time(json, "end", calendar.End);
        Date(json, "finishBy", calendar.FinishBy);
        json.WriteBoolean("proven", calendar.IsProven);
        Date(json, "forecastTo", calendar.ForecastTo);
        Names(json, "holdsUpTheEnd", calendar.HoldsUpTheEnd);
        Names(json, "done", calendar.Done);
        json.WriteStartArray("moreHelp");
        foreach (MoreHelp help in calendar.MoreHelp)
        {
            json.WriteStartObject();
            json.WriteNumber("more", help.More);
            Time(json, "end", help.End);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("steps");
        foreach (PlannedStep step in calendar.Steps) Step(json, calendar, step);
        json.WriteEndArray();
        json.WriteStartArray("days");
        foreach (CrewDay day in calendar.Days) Day(json, day);
        json.WriteEndArray();
        RuleJson.Write(json, calendar.Rules);
        json.WriteString("caution", CrewCalendarSheet.Caution);
        json.WriteEndObject();
    }

    /// <summary>Writes the odds as an object.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="odds">The odds.</param>
    /// <param name="finishBy">The day by which it is to be finished; null without one.</param>
    public static void Write(Utf8JsonWriter json, SeasonOdds odds, DateOnly? finishBy)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(odds);
        json.WriteStartObject();
        json.WriteNumber("seasons", odds.Seasons);
        json.WriteNumber("seed", odds.Seed);
        json.WriteNumber("years", odds.Years);
        foreach (int percent in (int[])[10, 50, 90]) Date(json, string.Create(CultureInfo.InvariantCulture, $"endsBy{percent}"), odds.EndsBy(Quantities.Ratio.FromPercent(percent)));
        if (finishBy is { } by) WeatherJson.Number(json, "byFinish", odds.OddsBy(by).Value, 4);
        json.WriteStartArray("byDate");
        foreach ((DateOnly date, Quantities.Ratio part) in odds.ByDate)
        {
            json.WriteStartObject();
            Date(json, "date", date);
            WeatherJson.Number(json, "odds", part.Value, 4);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("waits");
        foreach (StepOdds step in odds.Waits)
        {
            json.WriteStartObject();
            json.WriteString("step", step.StepId);
            WeatherJson.Number(json, "seasons", step.Waits.Value, 4);
            WeatherJson.Number(json, "meanHours", step.Waited.TotalHours, 2);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Step(Utf8JsonWriter json, CrewCalendar calendar, PlannedStep step)
    {
        json.WriteStartObject();
        json.WriteString("id", step.Step.Id);
        json.WriteString("title", step.Step.Title.ToString());
        Time(json, "start", step.Start);
        Time(json, "end", step.End);
        json.WriteNumber("people", step.Shifts.Max(shift => shift.People));
        WeatherJson.Number(json, "likelyHours", step.Step.Work.Likely.TotalHours, 2);
        Time(json, "latestStart", step.LatestStart);
        json.WriteNumber("maySlipDays", step.MaySlipDays);
        json.WriteBoolean("holdsTheEnd", step.HoldsTheEnd);
        json.WriteString("slip", CrewCalendarSheet.Slip(step));
        json.WriteString("heldBy", WeatherJson.Camel(step.HeldBy.ToString()));
        json.WriteString("heldByStep", step.HeldByStep);
        json.WriteString("why", CrewCalendarSheet.Why(calendar, step));
        json.WriteString("weather", WeatherJson.Camel(step.Weather.ToString()));
        json.WriteString("weatherSays", CrewCalendarSheet.Look(calendar, step));
        json.WriteEndObject();
    }

    private static void Day(Utf8JsonWriter json, CrewDay day)
    {
        json.WriteStartObject();
        Date(json, "date", day.Day.Date);
        json.WriteString("begins", day.Day.Begins.ToString("HH:mm", CultureInfo.InvariantCulture));
        json.WriteString("ends", day.Day.Ends.ToString("HH:mm", CultureInfo.InvariantCulture));
        json.WriteNumber("people", day.Day.People);
        json.WriteStartArray("shifts");
        foreach (StepShift shift in day.Shifts)
        {
            json.WriteStartObject();
            json.WriteString("step", shift.StepId);
            json.WriteNumber("number", shift.Number);
            Time(json, "from", shift.From);
            Time(json, "to", shift.To);
            json.WriteNumber("people", shift.People);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("tools");
        foreach (Tool tool in day.Tools)
        {
            json.WriteStartObject();
            json.WriteString("name", tool.Name);
            json.WriteNumber("count", tool.Count);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("load");
        foreach (MaterialLine line in CrewCalendarSheet.Together(day.Materials))
        {
            json.WriteStartObject();
            json.WriteString("line", line.Id);
            json.WriteString("item", line.Item);
            json.WriteString("size", line.Size);
            json.WriteString("unit", WeatherJson.Camel(line.Unit.ToString()));
            json.WriteNumber("quantity", decimal.Round(line.Quantity, 6));
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Names(Utf8JsonWriter json, string name, IEnumerable<string> names)
    {
        json.WriteStartArray(name);
        foreach (string each in names) json.WriteStringValue(each);
        json.WriteEndArray();
    }

    private static void Date(Utf8JsonWriter json, string name, DateOnly? date) => json.WriteString(name, date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    private static void Time(Utf8JsonWriter json, string name, DateTime time) => json.WriteString(name, time.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture));
}
