using System.Collections.Immutable;
using Hoopwright.Inside;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Words;
using OxyPlot;
using OxyPlot.Axes;

namespace Hoopwright.Sheets.Charts;

/// <summary>The hottest and the coldest hour of each day of a year, inside and outside.</summary>
public static class InsideYearChart
{
    private const double GapPart = 0.04;

    /// <summary>Draws it.</summary>
    /// <param name="report">A year inside.</param>
    /// <param name="sheet">Paper, names, units and language.</param>
    /// <param name="number">Which sheet of how many, as printed.</param>
    public static Drawing Draw(InsideReport report, FigureSheet sheet, string number)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(sheet);
        CrewWords say = sheet.Words;
        bool us = sheet.Units == UnitSystem.UsCustomary;
        InsideStats outside = report.Ways.Single(way => way.Way == InsideWay.Outside), kept = report.Ways.Single(way => way.Way == InsideWay.ByHand);
        string reading = say.Fill("outside {0} to {1}, inside {2} to {3}, opened by hand", TapeText.Of(outside.Lowest, sheet.Units), TapeText.Of(outside.Highest, sheet.Units), TapeText.Of(kept.Lowest, sheet.Units), TapeText.Of(kept.Highest, sheet.Units));
        DrawingBuilder builder = sheet.Start(say.Say("Inside and outside over the year"), $"{say.Say("The hottest and the coldest hour of each day.")} {reading}", number);
        Pen words = builder.On("words");
        words.Text(new SheetPoint(builder.Room.LeftMm + 3, builder.Room.TopMm + 5), reading);
        var chart = new Chart(builder, builder.Room.Inset(2, 10, 4, 7));
        ImmutableArray<InsideDay> days = report.Days;
        LinearAxis across = chart.Axis(AxisPosition.Bottom, "", 0, days.Length, 400, _ => "", key: "day");
        LinearAxis hot = Panel("hot", say.Fill("hottest hour, {0}", us ? "°F" : "°C"), 0.5 + (GapPart / 2), 1, [.. days.SelectMany(day => (Temperature[])[day.OutsideHigh, day.High, day.ShutHigh])]);
        LinearAxis cold = Panel("cold", say.Fill("coldest hour, {0}", us ? "°F" : "°C"), 0, 0.5 - (GapPart / 2), [.. days.SelectMany(day => (Temperature[])[day.OutsideLow, day.Low, day.ShutLow])]);
        int[] firsts = [.. Enumerable.Range(0, days.Length).Where(day => day == 0 || days[day].Date.Month != days[day - 1].Date.Month)];
        foreach (LinearAxis panel in (LinearAxis[])[hot, cold])
        {
            foreach (int first in firsts.Skip(1)) chart.Line([new(first, panel.Minimum), new(first, panel.Maximum)], LineRole.Texture, Ink.Zinc, panel.Key);
        }
        chart.Line([new(0, Shown(Temperature.FromCelsius(0))), new(days.Length, Shown(Temperature.FromCelsius(0)))], LineRole.Dimension, key: cold.Key);
        Curve(day => day.ShutHigh, LineRole.Hidden, hot);
        Curve(day => day.OutsideHigh, LineRole.Outline, hot, Ink.Earth);
        Curve(day => day.High, LineRole.Outline, hot);
        Curve(day => day.OutsideLow, LineRole.Outline, cold, Ink.Earth);
        Curve(day => day.Low, LineRole.Outline, cold);
        chart.Draw();

        Pen pen = builder.On("months");
        for (int month = 0; month < firsts.Length; month++)
        {
            int to = month + 1 < firsts.Length ? firsts[month + 1] : days.Length;
            if (to - firsts[month] < 15) continue;
            pen.Text(chart.At(across, (firsts[month] + to) / 2.0, cold, cold.Minimum).Moved(0, 5), say.Month(days[firsts[month]].Date.Month), TextAlign.Middle);
        }
        int place = Farthest(day => day.High.Kelvins - day.OutsideHigh.Kelvins, 0.3), night = Farthest(day => day.Low.Kelvins - day.OutsideLow.Kelvins, 1), shut = Farthest(day => day.ShutHigh.Kelvins - day.High.Kelvins, 1);
        Callout(place, days[place].High, hot, say.Say("inside, opened by hand"), 120);
        Callout(place, days[place].OutsideHigh, hot, say.Say("outside"), 290);
        Callout(shut, days[shut].ShutHigh, hot, say.Say("inside, shut all year"), 100);
        Callout(night, days[night].Low, cold, say.Say("inside, opened by hand"), 80);
        Callout(night, days[night].OutsideLow, cold, say.Say("outside"), 290);
        builder.Callout(chart.At(across, days.Length * 0.5, cold, Shown(Temperature.FromCelsius(0))), say.Say("freezing"), Angle.FromDegrees(300));
        return builder.Build();

        double Shown(Temperature temperature) => us ? temperature.Fahrenheit : temperature.Celsius;

        void Callout(int day, Temperature temperature, LinearAxis panel, string text, double towardsDeg) => builder.Callout(chart.At(across, day + 0.5, panel, Shown(temperature)), text, Angle.FromDegrees(towardsDeg));

        void Curve(Func<InsideDay, Temperature> of, LineRole role, LinearAxis panel, Ink ink = Ink.Black) => chart.Line(days.Select((day, place) => new DataPoint(place + 0.5, Shown(of(day)))), role, ink, panel.Key);

        // Where two curves lie farthest apart, in the first part of the year: there a name is not mistaken.
        int Farthest(Func<InsideDay, double> apart, double part) => Enumerable.Range(0, (int)(days.Length * part)).MaxBy(day => apart(days[day]));

        LinearAxis Panel(string key, string title, double from, double to, Temperature[] all) =>
            chart.Panel(key, title, (from, to), (all.Min(Shown), all.Max(Shown)), 7, us ? [10, 20, 40] : [5, 10, 20]);
    }
}
