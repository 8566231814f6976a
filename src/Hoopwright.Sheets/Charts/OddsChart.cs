using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Days;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Words;
using Hoopwright.Weather;
using OxyPlot.Axes;

namespace Hoopwright.Sheets.Charts;

/// <summary>How often a month has a day on which film can be pulled.</summary>
public static class OddsChart
{
    private const double Half = 0.38;

    /// <summary>Draws it.</summary>
    /// <param name="report">A report with odds.</param>
    /// <param name="sheet">Paper, names, units and language.</param>
    /// <param name="number">Which sheet of how many, as printed.</param>
    public static Drawing Draw(CoverDayReport report, FigureSheet sheet, string number)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(sheet);
        if (report.Odds.IsEmpty) throw new ArgumentException("A record of less than most of a year has no odds.", nameof(report));
        CrewWords say = sheet.Words;
        ImmutableArray<MonthOdds> months = [.. report.Odds.Where(month => month.Days > 0)];
        MonthOdds best = months.MaxBy(month => month.OnADay.Value)!;
        DrawingBuilder builder = sheet.Start(say.Say("Odds of a covering day"),
            $"{say.Say("How often each month has a day on which the roof film can be pulled.")} {say.Fill("Most in {0}: {1} of {2} days.", say.Month(best.Month), Whole(best.GoodDays), Whole(best.Days))}", number);
        builder.On("words").Text(new SheetPoint(builder.Room.LeftMm + 3, builder.Room.TopMm + 5), ChartNotes.Limits(report, sheet));
        var chart = new Chart(builder, builder.Room.Inset(2, 10, 3, 2));
        LinearAxis across = chart.Axis(AxisPosition.Bottom, "", 0.5, 12.5, 1, month => month is >= 1 and <= 12 ? say.Month((int)month) : "", hasGrid: false);
        double most = Math.Max(10, months.Max(month => Math.Max(month.OnADay.Percent, month.InAWeek.Percent))), step = Chart.Step(most, 8, 2, 5, 10, 20);
        LinearAxis up = chart.Axis(AxisPosition.Left, say.Say("of a hundred"), 0, Math.Ceiling((most * 1.14) / step) * step, step, value => value <= 100 ? Chart.Number(value) : "");
        chart.Bars(months.Select(month => (month.Month - Half, (double)month.Month, month.OnADay.Percent)), Ink.Zinc, LineRole.Outline);
        chart.Bars(months.Select(month => ((double)month.Month, month.Month + Half, month.InAWeek.Percent)), Ink.Paper, LineRole.Outline);
        chart.Draw();

        Pen pen = builder.On("numbers");
        foreach (MonthOdds month in months)
        {
            Over(month.Month - (Half / 2), month.OnADay);
            Over(month.Month + (Half / 2), month.InAWeek);
        }
        if (best.GoodDays > 0)
        {
            builder.Callout(chart.At(across, best.Month - (Half / 2), up, best.OnADay.Percent * 0.6), say.Say("days that are fit"), Angle.FromDegrees(120));
            builder.Callout(chart.At(across, best.Month + (Half / 2), up, best.InAWeek.Percent * 0.7), say.Say("weeks with at least one"), Angle.FromDegrees(60));
        }
        else
        {
            builder.Callout(chart.At(across, 6.5, up, 0), say.Say("no day of the record is fit"), Angle.FromDegrees(90));
        }
        return builder.Build();

        void Over(double place, Ratio part) =>
            pen.Text(chart.At(across, place, up, part.Percent).Moved(0, -1.4), part.Percent.ToString("0", CultureInfo.InvariantCulture), TextAlign.Middle, clears: true);
    }

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);
}
