using System.Globalization;
using System.Text;
using Hoopwright.Plans;
using Hoopwright.Sheets.Words;
using Hoopwright.Upkeep;

namespace Hoopwright.Sheets.Ics;

/// <summary>
/// The season calendar of the upkeep as an iCalendar file (RFC 5545, IETF, 2009): days without a time, rounds that come back every week or
/// year, the next cover. Events keep their names, so that reading a new file in again moves them and makes no doubles.
/// </summary>
public static class UpkeepIcs
{
    /// <summary>The file.</summary>
    /// <param name="report">The upkeep.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="words">The language.</param>
    /// <param name="from">The day it is made, which is the first that it tells of.</param>
    public static byte[] Write(UpkeepReport report, Plan plan, CrewWords words, DateOnly from)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(words);
        var file = new StringBuilder();
        IcsText.Begin(file, "upkeep");
        var stamp = new DateTimeOffset(from.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero);
        foreach (UpkeepDate day in UpkeepCalendar.From(report, plan, from))
        {
            IcsText.Line(file, "BEGIN", "VEVENT");
            IcsText.Line(file, "UID", $"{IcsText.Plain(plan.Name ?? "")}-upkeep-{day.Id}@hoopwright");
            IcsText.Line(file, "DTSTAMP", IcsText.Universal(stamp));
            // A file that is made later goes before: days since a day before any.
            IcsText.Line(file, "SEQUENCE", (from.DayNumber - new DateOnly(2020, 1, 1).DayNumber).ToString(CultureInfo.InvariantCulture));
            IcsText.Line(file, "DTSTART;VALUE=DATE", Date(day.Day));
            // The end of a day without a time is the day after: RFC 5545, 3.6.1.
            IcsText.Line(file, "DTEND;VALUE=DATE", Date((day.Repeat == UpkeepRepeat.Weekly ? day.Day : day.Last).AddDays(1)));
            if (Rule(day) is { } rule) IcsText.Line(file, "RRULE", rule);
            IcsText.Line(file, "SUMMARY", IcsText.Escaped(words.Say(day.Title)));
            if (report.Rounds.FirstOrDefault(round => round.Id == day.RoundId) is { } made)
                IcsText.Line(file, "DESCRIPTION", IcsText.Escaped(string.Join('\n', made.Items.Select(item => words.Say(item.What)))));
            IcsText.Line(file, "TRANSP", "TRANSPARENT");
            IcsText.Line(file, "END", "VEVENT");
        }
        IcsText.Line(file, "END", "VCALENDAR");
        return Encoding.UTF8.GetBytes(file.ToString());
    }

    private static string? Rule(UpkeepDate day) => day.Repeat switch
    {
        UpkeepRepeat.Once => null,
        UpkeepRepeat.Weekly => "FREQ=WEEKLY;UNTIL=" + Date(day.Last),
        UpkeepRepeat.Yearly => "FREQ=YEARLY",
    };

    private static string Date(DateOnly day) => day.ToString("yyyyMMdd", CultureInfo.InvariantCulture);
}
