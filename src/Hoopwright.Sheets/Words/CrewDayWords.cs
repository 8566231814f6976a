using System.Globalization;
using Hoopwright.Calendar;

namespace Hoopwright.Sheets.Words;

/// <summary>Days and hours as a crew says them.</summary>
internal static class CrewDayWords
{
    /// <summary>A time of the day, such as 7:30.</summary>
    public static string Clock(TimeOnly time) => time.ToString("H:mm", CultureInfo.InvariantCulture);

    /// <summary>A day with its weekday, such as Sat 2026-04-18.</summary>
    public static string Day(DateOnly date, CrewWords words) =>
        $"{words.Say(CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedDayName(date.DayOfWeek))} {date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}";

    /// <summary>What is worked on, and on which of its days where it takes several.</summary>
    public static string Title(PlannedStep step, StepShift shift, CrewWords words)
    {
        string title = words.Say(step.Step.Title);
        return step.Shifts.Length == 1 ? title : words.Fill("{0} (day {1} of {2})", title, Number(shift.Number), Number(step.Shifts.Length));
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
