using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Calendar;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Packets;

/// <summary>The days of a crew for the wall: a page for each month, then what goes onto the truck on each day.</summary>
public static class WallCalendar
{
    private const int DaysOfWeek = 7;
    private const double HeadMm = 16, NamesMm = 7, LineMm = 4.1, PadMm = 1.2;

    /// <summary>The file, calendar.pdf, or calendar-es.pdf in Spanish.</summary>
    /// <param name="planned">A plan worked out to its end; it must have a tunnel.</param>
    /// <param name="calendar">The calendar.</param>
    /// <param name="paper">Letter or A4.</param>
    /// <param name="date">The day on the sheets.</param>
    /// <param name="language">One of <see cref="CrewWords.Languages"/>.</param>
    public static PacketFile Write(PlannedTunnel planned, CrewCalendar calendar, Paper paper, DateOnly date, string language)
    {
        CrewWords words = CrewWords.Of(language);
        PdfDetails details = new(PacketWriter.Name(planned), words.Say("Days of the crew"), new DateTimeOffset(date.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero), words.Language);
        return new PacketFile(words.Language == "en" ? "calendar.pdf" : $"calendar-{words.Language}.pdf", [.. PdfWriter.Write(Pages(planned, calendar, paper, date, language), details)]);
    }

    /// <summary>The pages alone.</summary>
    /// <param name="planned">A plan worked out to its end; it must have a tunnel.</param>
    /// <param name="calendar">The calendar.</param>
    /// <param name="paper">Letter or A4.</param>
    /// <param name="date">The day on the sheets.</param>
    /// <param name="language">One of <see cref="CrewWords.Languages"/>.</param>
    public static ImmutableArray<PdfSheet> Pages(PlannedTunnel planned, CrewCalendar calendar, Paper paper, DateOnly date, string language)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(paper);
        Tunnel tunnel = PacketWriter.Built(planned);
        CrewWords words = CrewWords.Of(language);
        var book = new PacketBook(paper, $"{PacketWriter.Name(planned)}, {PacketWriter.Written(date)}", words);
        ImmutableArray<(int Year, int Month)> months = [.. calendar.Days.Select(day => (day.Day.Date.Year, day.Day.Date.Month)).Distinct()];
        foreach ((int year, int month) in months) book.Figure(Month(planned, calendar, paper, words, year, month));
        var make = new PacketTableMaker(planned, tunnel, words);
        book.Chapter(words.Say("Onto the truck, day by day"));
        foreach (CrewDay day in calendar.Days)
        {
            book.Heading(words.Fill("{0}: {1} people, {2} to {3}", CrewDayWords.Day(day.Day.Date, words), Number(day.Day.People), CrewDayWords.Clock(day.Day.Begins), CrewDayWords.Clock(day.Day.Ends)));
            book.Points(
            [
                .. day.Shifts.Select(shift => words.Fill("{0} to {1}: {2}, {3} people", CrewDayWords.Clock(TimeOnly.FromDateTime(shift.From)), CrewDayWords.Clock(TimeOnly.FromDateTime(shift.To)), CrewDayWords.Title(calendar[shift.StepId], shift, words), Number(shift.People))),
                .. day.Tools.IsEmpty ? (ImmutableArray<string>)[] : [words.Fill("Tools: {0}.", string.Join(", ", day.Tools.Select(make.ToolOf)))],
                .. day.Materials.IsEmpty ? (ImmutableArray<string>)[] : [words.Fill("Load: {0}", make.Uses(CrewCalendarSheet.Together(day.Materials))) + "."],
            ]);
        }
        return book.Pages();
    }

    private static Drawing Month(PlannedTunnel planned, CrewCalendar calendar, Paper paper, CrewWords words, int year, int month)
    {
        (double wideMm, double highMm) = paper.DrawingSize(landscape: true);
        List<Mark> marks = [];
        var pen = new Pen("calendar", marks);
        string title = string.Create(CultureInfo.InvariantCulture, $"{words.Month(month)} {year}");
        pen.Text(new SheetPoint(0, 10), title, TextAlign.Start, 5, LetterWeight.Bold);
        string end = words.Fill("All done {0}", CrewDayWords.Day(DateOnly.FromDateTime(calendar.End), words));
        pen.Text(new SheetPoint(wideMm, 10), end, TextAlign.End);
        // A week begins as the country of the tape has it.
        DayOfWeek begins = planned.Units == UnitSystem.Metric ? DayOfWeek.Monday : DayOfWeek.Sunday;
        var first = new DateOnly(year, month, 1);
        DateOnly start = first.AddDays(-(((int)first.DayOfWeek - (int)begins + DaysOfWeek) % DaysOfWeek));
        int weeks = (first.AddMonths(1).DayNumber - start.DayNumber + DaysOfWeek - 1) / DaysOfWeek;
        double cellMm = wideMm / DaysOfWeek, topMm = HeadMm + NamesMm, rowMm = (highMm - topMm) / weeks;
        for (int column = 0; column < DaysOfWeek; column++)
        {
            string name = CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedDayName((DayOfWeek)(((int)begins + column) % DaysOfWeek));
            pen.Text(new SheetPoint((column + 0.5) * cellMm, HeadMm + 4.6), words.Say(name), TextAlign.Middle, TextMark.LeastCapitalMm, LetterWeight.Bold);
        }
        Dictionary<DateOnly, CrewDay> days = calendar.Days.ToDictionary(day => day.Day.Date);
        for (int week = 0; week < weeks; week++)
        {
            for (int column = 0; column < DaysOfWeek; column++)
            {
                DateOnly date = start.AddDays((week * DaysOfWeek) + column);
                SheetBox box = new(column * cellMm, topMm + (week * rowMm), (column + 1) * cellMm, topMm + ((week + 1) * rowMm));
                if (date.Month != month) continue;
                days.TryGetValue(date, out CrewDay? day);
                if (day is not null) pen.Fill(SheetPath.Rectangle(box), Ink.ZincTint);
                pen.Path(SheetPath.Rectangle(box), LineRole.Dimension, Ink.Zinc);
                Cell(pen, box, date, day, calendar, words);
            }
        }
        return new Drawing
        {
            Title = title,
            Description = words.Fill("Calendar of {0} with what is done on each day.", title),
            WidthMm = wideMm,
            HeightMm = highMm,
            Marks = [.. marks],
        };
    }

    private static void Cell(Pen pen, SheetBox box, DateOnly date, CrewDay? day, CrewCalendar calendar, CrewWords words)
    {
        double emMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm), downMm = box.TopMm + PadMm + 3.2, widthMm = box.RightMm - box.LeftMm - (2 * PadMm);
        pen.Text(new SheetPoint(box.LeftMm + PadMm, downMm), Number(date.Day), TextAlign.Start, TextMark.LeastCapitalMm, LetterWeight.Bold);
        if (day is null) return;
        pen.Text(new SheetPoint(box.RightMm - PadMm, downMm), words.Fill("{0} people", Number(day.Day.People)), TextAlign.End);
        int room = (int)((box.BottomMm - downMm - PadMm) / LineMm);
        List<string> lines = [];
        int told = 0;
        foreach (StepShift shift in day.Shifts)
        {
            ImmutableArray<string> own = TextSetter.Lines($"{CrewDayWords.Clock(TimeOnly.FromDateTime(shift.From))} {words.Say(calendar[shift.StepId].Step.Title)}", widthMm, emMm, LetterWeight.Regular);
            int left = day.Shifts.Length - told - 1;
            if (lines.Count + own.Length + (left > 0 ? 1 : 0) > room) break;
            lines.AddRange(own);
            told++;
        }
        if (told < day.Shifts.Length) lines.Add(words.Fill("and {0} more", Number(day.Shifts.Length - told)));
        foreach (string line in lines)
        {
            downMm += LineMm;
            pen.Text(new SheetPoint(box.LeftMm + PadMm, downMm), line);
        }
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
