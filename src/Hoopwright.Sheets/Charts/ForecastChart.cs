using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Days;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Words;
using Hoopwright.Weather;
using OxyPlot;
using OxyPlot.Axes;

namespace Hoopwright.Sheets.Charts;

/// <summary>The hours of the days looked at: wind and gusts at the bows, air, rain, with the windows marked in the order of their rank.</summary>
public static class ForecastChart
{
    private const double GapPart = 0.05;

    /// <summary>Draws it.</summary>
    /// <param name="report">A report that looked at days.</param>
    /// <param name="record">The weather it looked at.</param>
    /// <param name="sheet">Paper, names, units and language.</param>
    /// <param name="number">Which sheet of how many, as printed.</param>
    public static Drawing Draw(CoverDayReport report, WeatherRecord record, FigureSheet sheet, string number)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(sheet);
        DateOnly first = report.From ?? throw new ArgumentException("Only odds of months were asked for.", nameof(report));
        CrewWords say = sheet.Words;
        bool us = sheet.Units == UnitSystem.UsCustomary;
        DateTime start = first.ToDateTime(TimeOnly.MinValue), end = start.AddDays(CoverDayReport.DaysAhead);
        ImmutableArray<WeatherHour> hours = [.. Enumerable.Range(0, record.Count).Select(row => record[row]).Where(hour => hour.Start.DateTime >= start && hour.Start.DateTime < end)];
        double last = hours.IsEmpty ? 24 : Math.Ceiling(((hours[^1].Start.DateTime - start).TotalHours + 1) / 24) * 24;

        string windows = report.Windows.IsEmpty ? say.Say("No hours meet all limits.") : say.Fill("{0} windows, the best {1} to {2}.",
            Whole(report.Windows.Length), report.Windows[0].Begin.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), report.Windows[0].End.ToString("HH:mm", CultureInfo.InvariantCulture));
        DrawingBuilder builder = sheet.Start(say.Say("Hours for covering"), $"{say.Say("Wind, gusts, air and rain hour by hour, with the hours in which the roof film can be pulled.")} {windows}", number);
        Pen words = builder.On("words");
        words.Text(new SheetPoint(builder.Room.LeftMm + 3, builder.Room.TopMm + 5), ChartNotes.Limits(report, sheet));
        words.Text(new SheetPoint(builder.Room.LeftMm + 3, builder.Room.TopMm + 9.8), windows);
        var chart = new Chart(builder, builder.Room.Inset(2, 17, 4, 2));

        Series wind = Of(hours, start, hour => hour.Wind is { } mean ? Shown(mean) * report.SiteWind.Mean.Value : null);
        Series gust = Of(hours, start, hour => (hour.Gust is { } known ? Shown(known) : hour.Wind is { } mean ? Shown(mean) * report.Limits.GustFactor.Value : (double?)null) * report.SiteWind.Gust.Value);
        Series air = Of(hours, start, hour => hour.AirTemperature is { } temperature ? us ? temperature.Fahrenheit : temperature.Celsius : null);
        bool hasChance = hours.Any(hour => hour.PrecipitationChance is not null);
        Series rain = Of(hours, start, hour => hasChance ? hour.PrecipitationChance?.Percent : hour.Precipitation is { } depth ? us ? depth.Inches : depth.Millimetres : null);

        LinearAxis across = chart.Axis(AxisPosition.Bottom, "", 0, last, 24, hour => "", key: "time");
        (double limitWind, double limitGust) = (Shown(report.Limits.Wind), report.Limits.Gust is { } most ? Shown(most) : double.NaN);
        LinearAxis winds = Panel("wind", us ? say.Fill("wind, {0}", "mph") : say.Fill("wind, {0}", "m/s"), 0.58, 1, 0, Math.Max(gust.Most(0), Math.Max(limitGust, limitWind)) * 1.12, us ? [5, 10, 20, 40] : [2, 5, 10, 20]);
        (double coldest, double warmest) = us ? (report.Limits.Coldest.Fahrenheit, report.Limits.Warmest.Fahrenheit) : (report.Limits.Coldest.Celsius, report.Limits.Warmest.Celsius);
        LinearAxis airs = Panel("air", say.Fill("air, {0}", us ? "°F" : "°C"), 0.27, 0.58 - GapPart, Math.Min(air.Least(coldest), coldest) - 4, Math.Max(air.Most(warmest), warmest) + 4, us ? [10, 20, 40] : [5, 10, 20]);
        LinearAxis rains = hasChance || rain.IsEmpty
            ? Panel("rain", say.Say("chance of rain, %"), 0, 0.27 - GapPart, 0, 100, [50])
            : Panel("rain", say.Fill("rain, {0} an hour", us ? "in" : "mm"), 0, 0.27 - GapPart, 0, Math.Max(rain.Most(0) * 1.1, us ? 0.1 : 2), us ? [0.05, 0.1, 0.2, 0.5, 1] : [1, 2, 5, 10, 25]);

        foreach (WeatherWindow window in report.Windows)
        {
            (double from, double to) = (Hour(window.Begin), Hour(window.End));
            foreach (LinearAxis panel in (LinearAxis[])[winds, airs, rains])
            {
                chart.Band([new(from, panel.Minimum), new(to, panel.Minimum)], [new(from, panel.Maximum), new(to, panel.Maximum)], Ink.FilmTint, panel.Key);
                chart.Line([new(from, panel.Minimum), new(from, panel.Maximum)], LineRole.Hidden, key: panel.Key);
                chart.Line([new(to, panel.Minimum), new(to, panel.Maximum)], LineRole.Hidden, key: panel.Key);
            }
        }
        Level(limitWind, winds, LineRole.Dimension);
        if (!double.IsNaN(limitGust)) Level(limitGust, winds, LineRole.Dimension);
        Level(coldest, airs, LineRole.Dimension);
        Level(warmest, airs, LineRole.Dimension);
        foreach (DataPoint[] piece in gust.Pieces) chart.Line(piece, LineRole.Hidden, key: winds.Key);
        foreach (DataPoint[] piece in wind.Pieces) chart.Line(piece, LineRole.Cut, key: winds.Key);
        foreach (DataPoint[] piece in air.Pieces) chart.Line(piece, LineRole.Cut, key: airs.Key);
        chart.Bars(rain.Pieces.SelectMany(piece => piece).Where(point => point.Y > 0).Select(point => (point.X, point.X + 1, point.Y)), Ink.Zinc, key: rains.Key);
        chart.Draw();

        Pen pen = builder.On("days");
        for (double day = 0; day < last; day += 24)
            pen.Text(chart.At(across, day + 12, rains, rains.Minimum).Moved(0, 5), Day(start.AddHours(day), say), TextAlign.Middle);
        double midMm = chart.At(across, 0, winds, winds.Maximum).YMm;
        for (int rank = 0; rank < report.Windows.Length; rank++)
        {
            WeatherWindow window = report.Windows[rank];
            double middleMm = chart.At(across, (Hour(window.Begin) + Hour(window.End)) / 2, winds, winds.Maximum).XMm;
            // The number of the rank over the window; two on one day would meet.
            pen.Text(new SheetPoint(middleMm, midMm - 1.6), Whole(rank + 1), TextAlign.Middle, weight: LetterWeight.Bold);
        }
        Name(wind, winds, say.Say("mean wind"), 250, 0.3);
        Name(gust, winds, report.GustsKnown ? say.Say("gusts") : say.Say("gusts, estimated"), 60, 0.55);
        builder.Callout(chart.At(across, last * 0.97, winds, limitWind), say.Say("most wind"), Angle.FromDegrees(200));
        if (!double.IsNaN(limitGust)) builder.Callout(chart.At(across, last * 0.97, winds, limitGust), say.Say("highest gust"), Angle.FromDegrees(160));
        builder.Callout(chart.At(across, last * 0.03, airs, coldest), say.Say("coldest"), Angle.FromDegrees(300));
        builder.Callout(chart.At(across, last * 0.03, airs, warmest), say.Say("warmest"), Angle.FromDegrees(60));
        return builder.Build();

        double Shown(Speed speed) => us ? speed.MilesPerHour : speed.MetresPerSecond;

        double Hour(DateTimeOffset time) => (time.DateTime - start).TotalHours;

        void Level(double value, LinearAxis panel, LineRole role) => chart.Line([new(0, value), new(last, value)], role, key: panel.Key);

        LinearAxis Panel(string key, string title, double from, double to, double low, double high, double[] steps) => chart.Panel(key, title, (from, to), (low, high), 5, steps);

        void Name(Series of, LinearAxis panel, string text, double towardsDeg, double part)
        {
            DataPoint[] all = [.. of.Pieces.SelectMany(piece => piece)];
            if (all.Length == 0) return;
            DataPoint at = all[(int)(part * (all.Length - 1))];
            builder.Callout(chart.At(across, at.X, panel, at.Y), text, Angle.FromDegrees(towardsDeg));
        }
    }

    private static string Day(DateTime day, CrewWords say) => $"{say.Say(day.ToString("ddd", CultureInfo.InvariantCulture))} {day.ToString("MM-dd", CultureInfo.InvariantCulture)}";

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static Series Of(ImmutableArray<WeatherHour> hours, DateTime start, Func<WeatherHour, double?> value)
    {
        List<List<DataPoint>> pieces = [];
        double before = double.NaN;
        foreach (WeatherHour hour in hours)
        {
            double at = (hour.Start.DateTime - start).TotalHours;
            if (value(hour) is not { } known)
            {
                before = double.NaN;
                continue;
            }
            if (!(at - before <= 1.5)) pieces.Add([]);
            pieces[^1].Add(new DataPoint(at, known));
            before = at;
        }
        return new Series([.. pieces.Select(piece => piece.ToArray())]);
    }

    /// <summary>A curve in pieces, broken where nothing is known.</summary>
    private sealed record Series(ImmutableArray<DataPoint[]> Pieces)
    {
        public bool IsEmpty => Pieces.IsEmpty;

        public double Most(double otherwise) => IsEmpty ? otherwise : Pieces.Max(piece => piece.Max(point => point.Y));

        public double Least(double otherwise) => IsEmpty ? otherwise : Pieces.Min(piece => piece.Min(point => point.Y));
    }
}
