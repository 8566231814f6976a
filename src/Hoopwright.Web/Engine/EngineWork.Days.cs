using System.Globalization;
using Hoopwright.BuildSteps;
using Hoopwright.Calendar;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Ics;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Words;
using Hoopwright.Weather;

namespace Hoopwright.Web.Engine;

/// <content>The days of the crew.</content>
public static partial class EngineWork
{
    // Enough that the odds of a day are known to a few percent, and soon worked out in a browser.
    private const int SeasonsTried = 300;
    private const ulong SeasonSeed = 1;

    /// <summary>Who does what on which day, from today on.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="job">build, or recover for new film on a tunnel that stands.</param>
    /// <param name="weather">A forecast, in whose hours steps wait for their weather, or weather of a year or more, from which the odds of ending by a day are drawn; empty for none.</param>
    /// <param name="clock">The clock on the wall, as -04:00, by which hours are told; empty for that of the file.</param>
    /// <param name="today">The day, as 2026-04-18; nothing is planned before it.</param>
    /// <param name="language">The language of the crew.</param>
    /// <returns>
    /// JSON: diagnostics [code, severity, path, message, seen, accepted]; end, proven, finishBy, forecastTo, left, workDays, holds [titles], help [more, end], days [date, name, begins, ends, people, works, shifts [step, title, from, to,
    /// people, holdsTheEnd, slip, heldBy, heldByTitle, look], tools, load]; odds {seasons, half, most, byFinish, waits [title, hours]} or null; empty when the plan has errors.
    /// </returns>
    public static string Days(string document, string job, string weather, string clock, string today, string language)
    {
        PlannedTunnel planned = Supplied(document);
        if (Crewed(planned, job, weather, clock, today) is not { } crewed) return "";
        (BuildPlan build, CrewCalendarOutcome outcome, WeatherRecord? record) = crewed;
        CrewWords words = CrewWords.Of(language);
        StepSheet sheet = new(planned, planned.Tunnel!, build, words);
        return Json(json =>
        {
            json.WritePropertyName("diagnostics");
            DiagnosticJson.Write(json, outcome.Diagnostics);
            if (outcome.Calendar is not { } calendar) return;
            json.WriteString("end", calendar.Steps.IsEmpty ? "" : Day(DateOnly.FromDateTime(calendar.End)));
            json.WriteBoolean("proven", calendar.IsProven);
            json.WriteString("finishBy", calendar.FinishBy is { } by ? Day(by) : "");
            json.WriteString("forecastTo", calendar.ForecastTo is { } to ? Day(to) : "");
            json.WriteNumber("left", calendar.Steps.Length);
            json.WriteNumber("workDays", calendar.Days.Length);
            Texts(json, "holds", calendar.HoldsUpTheEnd.Select(TitleOf));
            List(json, "help", calendar.MoreHelp, help =>
            {
                json.WriteNumber("more", help.More);
                json.WriteString("end", Day(DateOnly.FromDateTime(help.End)));
            });
            Dictionary<DateOnly, CrewDay> days = calendar.Days.ToDictionary(day => day.Day.Date);
            // Days on which nobody comes stand between the others, so that one can be moved onto them.
            IEnumerable<DateOnly> dates = calendar.Days.IsEmpty ? [] : Enumerable.Range(calendar.Days[0].Day.Date.DayNumber, calendar.Days[^1].Day.Date.DayNumber - calendar.Days[0].Day.Date.DayNumber + 1).Select(DateOnly.FromDayNumber);
            List(json, "days", dates, date =>
            {
                json.WriteString("date", date.ToString(StepMarks.DayForm, CultureInfo.InvariantCulture));
                json.WriteString("name", Day(date));
                json.WriteBoolean("works", days.ContainsKey(date));
                if (!days.TryGetValue(date, out CrewDay? day)) return;
                json.WriteString("begins", StepSheet.Clock(day.Day.Begins));
                json.WriteString("ends", StepSheet.Clock(day.Day.Ends));
                json.WriteNumber("people", day.Day.People);
                List(json, "shifts", day.Shifts, shift =>
                {
                    PlannedStep step = calendar[shift.StepId];
                    json.WriteString("step", shift.StepId);
                    json.WriteString("title", TitleOf(shift.StepId));
                    json.WriteString("from", StepSheet.Clock(TimeOnly.FromDateTime(shift.From)));
                    json.WriteString("to", StepSheet.Clock(TimeOnly.FromDateTime(shift.To)));
                    json.WriteNumber("people", shift.People);
                    json.WriteBoolean("holdsTheEnd", step.HoldsTheEnd);
                    json.WriteNumber("slip", step.MaySlipDays);
                    json.WriteString("heldBy", step.HeldBy.ToString());
                    json.WriteString("heldByTitle", step.HeldByStep is { } other && build.Steps.Any(each => each.Id == other) ? TitleOf(other) : "");
                    json.WriteString("look", step.Weather.ToString());
                });
                json.WriteString("tools", string.Join(", ", day.Tools.Select(sheet.Tool)));
                json.WriteString("load", sheet.Together(day.Materials));
            });
            Odds(json, planned, build, calendar, record, OffsetOf(clock), words, TitleOf);
        });

        string Day(DateOnly date) => StepSheet.Day(date, words);

        string TitleOf(string step) => sheet.Said(build.Steps.First(each => each.Id == step).Title);
    }

    /// <summary>The days of the crew as a file.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="job">build or recover.</param>
    /// <param name="weather">A forecast; empty for none.</param>
    /// <param name="clock">The clock on the wall; empty for that of the file.</param>
    /// <param name="today">The day.</param>
    /// <param name="language">The language of the crew.</param>
    /// <param name="paper">letter or a4.</param>
    /// <param name="what">ics for a calendar file, pdf for the wall.</param>
    /// <param name="stamp">When the file is made, seconds since 1970.</param>
    /// <returns>The bytes; empty when there is no calendar.</returns>
    public static byte[] DaysFile(string document, string job, string weather, string clock, string today, string language, string paper, string what, string stamp)
    {
        PlannedTunnel planned = Supplied(document);
        if (Crewed(planned, job, weather, clock, today) is not { Outcome.Calendar: { } calendar }) return [];
        DateTimeOffset made = DateTimeOffset.FromUnixTimeSeconds(long.Parse(stamp, CultureInfo.InvariantCulture));
        CrewWords words = CrewWords.Of(language);
        return what == "ics"
            ? CrewIcs.Write(calendar, planned.Plan.Name ?? "", words, planned.Units, made, KeptEvents.None)
            : [.. WallCalendar.Write(planned, calendar, paper == "a4" ? Paper.A4 : Paper.Letter, DateOnly.ParseExact(today, StepMarks.DayForm, CultureInfo.InvariantCulture), language).Bytes];
    }

    private static (BuildPlan Build, CrewCalendarOutcome Outcome, WeatherRecord? Record)? Crewed(PlannedTunnel planned, string job, string weather, string clock, string today)
    {
        if (planned is not { Tunnel: { } tunnel, Steps: { } whole, RecoverSteps: { } recover }) return null;
        BuildPlan build = job == "recover" ? recover : whole;
        WeatherRecord? record = weather.Length == 0 ? null : RecordOf(weather, clock).Record;
        DateOnly day = DateOnly.ParseExact(today, StepMarks.DayForm, CultureInfo.InvariantCulture);
        return (build, CrewCalendarPlanner.Plan(tunnel, build, record is not null && CrewCalendarPlanner.IsForecast(record) ? record : null, day, OffsetOf(clock)), record);
    }

    private static void Odds(System.Text.Json.Utf8JsonWriter json, PlannedTunnel planned, BuildPlan build, CrewCalendar calendar, WeatherRecord? record, TimeSpan? clock, CrewWords words, Func<string, string> titleOf)
    {
        json.WritePropertyName("odds");
        if (record is null || calendar.Steps.IsEmpty || CrewCalendarPlanner.IsForecast(record) || SeasonPlanner.Odds(planned.Tunnel!, build, calendar, record, SeasonsTried, SeasonSeed, clock).Odds is not { } odds)
        {
            json.WriteNullValue();
            return;
        }
        json.WriteStartObject();
        json.WriteNumber("seasons", odds.Seasons);
        json.WriteString("half", odds.EndsBy(Ratio.FromPercent(50)) is { } half ? StepSheet.Day(half, words) : "");
        json.WriteString("most", odds.EndsBy(Ratio.FromPercent(90)) is { } most ? StepSheet.Day(most, words) : "");
        json.WriteString("byFinish", calendar.FinishBy is { } by ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round(odds.OddsBy(by).Value * 100)} %") : "");
        List(json, "waits", odds.Waits.Take(5), wait =>
        {
            json.WriteString("title", titleOf(wait.StepId));
            json.WriteString("hours", wait.Waited.TotalHours.ToString("0", CultureInfo.InvariantCulture));
        });
        json.WriteEndObject();
    }
}
