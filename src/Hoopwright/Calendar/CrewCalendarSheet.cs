using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Calendar;

/// <summary>The days of a crew as plain text for people.</summary>
public static class CrewCalendarSheet
{
    /// <summary>What everyone who plans by a calendar must hear.</summary>
    public const string Caution =
        "The calendar is a plan and no promise: hours are from memory, and a forecast can be wrong. Look at the sky before film or tubes are lifted, and let nobody work alone on a ladder.";

    /// <summary>When all is done, what holds it up, each day with what is worked on and loaded, and the odds.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="odds">The odds; null without them.</param>
    /// <param name="units">The units to show it in.</param>
    public static string Of(CrewCalendar calendar, SeasonOdds? odds, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        var text = new StringBuilder();
        if (calendar.Steps.IsEmpty) return "All steps are done.\n";
        text.Append(CultureInfo.InvariantCulture, $"Crew calendar from {Day(calendar.From)}: all is done by {Time(calendar.End)}");
        text.Append(calendar.IsProven ? "; no order of the steps ends earlier with these people and hours.\n" : "; an earlier end is not ruled out.\n");
        if (calendar.FinishBy is { } by)
        {
            int spare = by.DayNumber - DateOnly.FromDateTime(calendar.End).DayNumber;
            text.Append(CultureInfo.InvariantCulture, $"To be finished by {Day(by)}: {(spare < 0 ? string.Create(CultureInfo.InvariantCulture, $"late by {Days(-spare)}") : spare == 0 ? "just so" : string.Create(CultureInfo.InvariantCulture, $"{Days(spare)} to spare"))}.\n");
        }
        text.Append("What holds up the end: ").AppendJoin(", then ", calendar.HoldsUpTheEnd.Select(id => calendar[id].Step.Title.ToString())).Append(".\n");
        foreach (MoreHelp help in calendar.MoreHelp)
            text.Append(CultureInfo.InvariantCulture, $"With {help.More} more on every day: {(help.End == calendar.End ? "no earlier" : Time(help.End))}.\n");
        foreach (CrewDay day in calendar.Days) Write(text, calendar, day, units);
        text.Append("\nWhy each step starts when it does, and how far it may slip:\n");
        foreach (PlannedStep step in calendar.Steps)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {step.Start:yyyy-MM-dd HH:mm}  {step.Step.Title}: {Why(calendar, step)}; {Slip(step)}");
            if (Look(calendar, step) is { Length: > 0 } look) text.Append("; ").Append(look);
            text.Append(".\n");
        }
        if (odds is not null) Odds(text, calendar, odds);
        text.Append('\n').Append(Caution).Append('\n');
        return text.ToString();
    }

    /// <summary>How far a step may slip, in plain words.</summary>
    /// <param name="step">The step.</param>
    public static string Slip(PlannedStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        if (step.HoldsTheEnd) return "the end moves if this slips";
        return step.MaySlipDays > 0
            ? string.Create(CultureInfo.InvariantCulture, $"may slip {step.MaySlipDays} working {(step.MaySlipDays == 1 ? "day" : "days")}")
            : string.Create(CultureInfo.InvariantCulture, $"may slip {(step.LatestStart - step.Start).TotalHours:0.#} h");
    }

    /// <summary>Why a step does not start earlier, in plain words.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="step">The step.</param>
    public static string Why(CrewCalendar calendar, PlannedStep step)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(step);
        string by = step.HeldByStep is { } id ? $"\"{calendar[id].Step.Title}\"" : "what was done before";
        return step.HeldBy switch
        {
            StepHold.Beginning => "at the beginning",
            StepHold.Step => "after " + by,
            StepHold.Wait => "when the wait after " + by + " is over",
            StepHold.People => "the people are at " + by,
            StepHold.Weather => "the weather is not fit earlier",
            StepHold.Day => "too little is left of the days before, or too few come on them",
        };
    }

    /// <summary>What was looked at of a step's weather; empty where it needs none.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="step">The step.</param>
    public static string Look(CrewCalendar calendar, PlannedStep step)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(step);
        return step.Weather switch
        {
            WeatherLook.NotNeeded => "",
            WeatherLook.Fit => "weather fit by the forecast",
            WeatherLook.PartlyFit => "weather fit as far as the forecast goes",
            WeatherLook.NotLookedAt => calendar.ForecastTo is not { } last ? "weather not looked at: no forecast"
                : DateOnly.FromDateTime(step.Start) >= last ? "weather not looked at: no forecast so far ahead"
                : "weather not looked at: no forecast of its hours",
        };
    }

    /// <summary>A line of materials as one says it: how much of what.</summary>
    /// <param name="line">The line.</param>
    /// <param name="units">The units to show it in.</param>
    public static string Material(MaterialLine line, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(line);
        return $"{MaterialText.Load(line, units)} {line.Name}";
    }

    /// <summary>Lines of the same name as one, with what they come to together.</summary>
    /// <param name="lines">The lines.</param>
    public static ImmutableArray<MaterialLine> Together(IEnumerable<MaterialLine> lines) =>
        [.. lines.GroupBy(line => line.Id).Select(group => group.First() with { Quantity = group.Sum(line => line.Quantity), Pieces = [.. group.SelectMany(line => line.Pieces)] })];

    private static void Write(StringBuilder text, CrewCalendar calendar, CrewDay day, UnitSystem units)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n{Day(day.Day.Date)}, {day.Day.Begins:HH\\:mm} to {day.Day.Ends:HH\\:mm}, {day.Day.People} {(day.Day.People == 1 ? "person" : "people")}\n");
        foreach (StepShift shift in day.Shifts)
        {
            PlannedStep step = calendar[shift.StepId];
            string part = step.Shifts.Length == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $", day {shift.Number} of {step.Shifts.Length}");
            text.Append(CultureInfo.InvariantCulture, $"  {shift.From:HH\\:mm}-{shift.To:HH\\:mm}  {step.Step.Title} ({shift.People} {(shift.People == 1 ? "person" : "people")}{part})\n");
        }
        if (!day.Tools.IsEmpty) text.Append("  tools: ").AppendJoin(", ", day.Tools.Select(tool => string.Create(CultureInfo.InvariantCulture, $"{tool.Count} {tool.Name}"))).Append('\n');
        if (!day.Materials.IsEmpty) text.Append("  load: ").AppendJoin(", ", Together(day.Materials).Select(line => Material(line, units))).Append('\n');
    }

    private static void Odds(StringBuilder text, CrewCalendar calendar, SeasonOdds odds)
    {
        text.Append(CultureInfo.InvariantCulture, $"\nOdds from {odds.Seasons} seasons (seed {odds.Seed}), weather of {(odds.Years > 0 ? string.Create(CultureInfo.InvariantCulture, $"{odds.Years} whole years") : "blocks of days from around the same days of the year")}:\n");
        foreach (int percent in (int[])[10, 50, 90])
            text.Append(CultureInfo.InvariantCulture, $"  done in {percent} of 100 seasons by {(odds.EndsBy(Ratio.FromPercent(percent)) is { } day ? Day(day) : "no day that was looked at")}\n");
        if (calendar.FinishBy is { } by) text.Append(CultureInfo.InvariantCulture, $"  done by {Day(by)}: {odds.OddsBy(by).Percent:0} of 100\n");
        text.Append(CultureInfo.InvariantCulture, $"  done as planned, by {Day(DateOnly.FromDateTime(calendar.End))}: {odds.OddsBy(DateOnly.FromDateTime(calendar.End)).Percent:0} of 100\n");
        foreach (StepOdds step in odds.Waits.Take(5))
            text.Append(CultureInfo.InvariantCulture, $"  {calendar[step.StepId].Step.Title} waits for weather in {step.Waits.Percent:0} of 100 seasons, {step.Waited.TotalHours:0.#} working hours on the mean of all\n");
    }

    private static string Day(DateOnly date) => date.ToString("ddd yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Time(DateTime time) => time.ToString("ddd yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Days(int days) => string.Create(CultureInfo.InvariantCulture, $"{days} {(days == 1 ? "day" : "days")}");
}
