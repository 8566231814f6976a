using System.Globalization;
using System.Text;
using Hoopwright.BuildSteps;
using Hoopwright.Calendar;
using Hoopwright.CoverSteps;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Words;
using Hoopwright.Takeoff;

namespace Hoopwright.Sheets.Ics;

/// <summary>
/// The days of a crew as an iCalendar file (RFC 5545, IETF, 2009): one event for each step and day, by the clock of whoever reads it. Events
/// keep their names from one file to the next, so that reading a changed file in again moves them and makes no doubles.
/// </summary>
public static class CrewIcs
{
    private const int EveningHour = 18;

    /// <summary>The file.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="name">What the tunnel is called; its events are named after it, so it must stay the same.</param>
    /// <param name="words">The language.</param>
    /// <param name="units">The units of amounts.</param>
    /// <param name="stamp">When the file is made.</param>
    /// <param name="before">The events of the file before: those that are no more are cancelled, those that changed get the next revision.</param>
    public static byte[] Write(CrewCalendar calendar, string name, CrewWords words, UnitSystem units, DateTimeOffset stamp, KeptEvents before)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(before);
        var file = new StringBuilder();
        IcsText.Begin(file, "crew calendar");
        HashSet<string> written = [];
        foreach (CrewDay day in calendar.Days)
        {
            foreach (StepShift shift in day.Shifts)
            {
                PlannedStep step = calendar[shift.StepId];
                string uid = Uid(name, calendar.Job, shift);
                List<(string Name, string Value)> lines =
                [
                    ("DTSTART", IcsText.Floating(shift.From)),
                    ("DTEND", IcsText.Floating(shift.To)),
                    ("SUMMARY", IcsText.Escaped(CrewDayWords.Title(step, shift, words))),
                    ("DESCRIPTION", IcsText.Escaped(string.Join('\n', Description(calendar, day, step, shift, words, units)))),
                    ("STATUS", step.Weather is WeatherLook.NotLookedAt or WeatherLook.PartlyFit ? "TENTATIVE" : "CONFIRMED"),
                ];
                if (shift == day.Shifts[0]) lines.AddRange(Alarm(shift, CrewDayWords.Title(step, shift, words)));
                Event(file, uid, stamp, before.SequenceOf(uid, lines.Select(line => $"{line.Name}:{line.Value}"), stamp), lines);
                written.Add(uid);
            }
        }
        // What is done stays where it was.
        foreach (string uid in before.Uids.Where(uid => !written.Contains(uid) && uid.StartsWith(Beginning(name, calendar.Job), StringComparison.Ordinal)
            && !calendar.Done.Any(id => uid.StartsWith($"{Beginning(name, calendar.Job)}{id}-", StringComparison.Ordinal))))
        {
            // Cancelled as it last stood, without its alarm.
            (string Name, string Value)[] lines = [.. before.LinesOf(uid).TakeWhile(line => line != "BEGIN:VALARM").Select(line => line.Split(':', 2)).Where(line => line[0] != "STATUS").Select(line => (line[0], line[1])), ("STATUS", "CANCELLED")];
            Event(file, uid, stamp, before.SequenceOf(uid, lines.Select(line => $"{line.Name}:{line.Value}"), stamp), lines);
        }
        IcsText.Line(file, "END", "VCALENDAR");
        return Encoding.UTF8.GetBytes(file.ToString());
    }

    private static void Event(StringBuilder file, string uid, DateTimeOffset stamp, int sequence, IEnumerable<(string Name, string Value)> lines)
    {
        IcsText.Line(file, "BEGIN", "VEVENT");
        IcsText.Line(file, "UID", uid);
        IcsText.Line(file, "DTSTAMP", IcsText.Universal(stamp));
        IcsText.Line(file, "SEQUENCE", sequence.ToString(CultureInfo.InvariantCulture));
        foreach ((string name, string value) in lines) IcsText.Line(file, name, value);
        IcsText.Line(file, "END", "VEVENT");
    }

    // On the evening before, by the first event of each day.
    private static IEnumerable<(string Name, string Value)> Alarm(StepShift shift, string title)
    {
        TimeSpan ahead = shift.From - shift.From.Date.AddDays(-1).AddHours(EveningHour);
        return
        [
            ("BEGIN", "VALARM"), ("ACTION", "DISPLAY"), ("DESCRIPTION", IcsText.Escaped(title)),
            ("TRIGGER", string.Create(CultureInfo.InvariantCulture, $"-PT{(int)ahead.TotalHours}H{(ahead.Minutes > 0 ? string.Create(CultureInfo.InvariantCulture, $"{ahead.Minutes}M") : "")}")), ("END", "VALARM"),
        ];
    }

    private static IEnumerable<string> Description(CrewCalendar calendar, CrewDay day, PlannedStep step, StepShift shift, CrewWords words, UnitSystem units)
    {
        yield return words.Say(step.Step.Purpose);
        yield return words.Fill("People: {0}", Text(shift.People));
        if (CrewCalendarSheet.Look(calendar, step) is { Length: > 0 } look) yield return words.Say(look);
        if (shift.Number == 1 && !step.Step.Materials.IsEmpty)
            yield return words.Fill("Load: {0}", string.Join("; ", CrewCalendarSheet.Together(step.Step.Materials).Select(line => $"{MaterialText.Load(line, units)} {words.Say(line.Name)}")));
        if (!step.Step.Tools.IsEmpty) yield return words.Fill("Tools: {0}", string.Join("; ", step.Step.Tools.Select(tool => $"{Text(tool.Count)} {words.Say(tool.Name)}")));
        if (step.Step.Hold is { } hold && shift.IsLast) yield return words.Fill("Sign before going on: {0}", words.Say(hold));
        foreach (StepCaution caution in step.Step.Cautions) yield return words.Say(caution.Text);
        if (shift == day.Shifts[0]) yield return words.Fill("{0} people come, {1} to {2}.", Text(day.Day.People), CrewDayWords.Clock(day.Day.Begins), CrewDayWords.Clock(day.Day.Ends));
    }

    private static string Uid(string name, BuildJob job, StepShift shift) => string.Create(CultureInfo.InvariantCulture, $"{Beginning(name, job)}{shift.StepId}-{shift.Number}@hoopwright");

    private static string Beginning(string name, BuildJob job) => $"{IcsText.Plain(name)}-{job.ToString().ToLowerInvariant()}-";

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);
}
