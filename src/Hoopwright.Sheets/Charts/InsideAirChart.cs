using System.Globalization;
using Hoopwright.Inside;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Words;
using OxyPlot.Axes;

namespace Hoopwright.Sheets.Charts;

/// <summary>How often an hour the air is changed, shut, half and wide open.</summary>
public static class InsideAirChart
{
    private const double Width = 0.27;

    /// <summary>Draws it.</summary>
    /// <param name="report">A year inside.</param>
    /// <param name="sheet">Paper, names, units and language.</param>
    /// <param name="number">Which sheet of how many, as printed.</param>
    public static Drawing Draw(InsideReport report, FigureSheet sheet, string number)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(sheet);
        CrewWords say = sheet.Words;
        AirChange full = report.Air[^1];
        string reading = say.Fill("wide open {0}: {1} in a calm, {2} in usual wind", TapeText.Of(full.Free, sheet.Units), TapeText.Of(full.ByWarmth, sheet.Units), TapeText.Of(full.Usual, sheet.Units));
        DrawingBuilder builder = sheet.Start(say.Say("Air through what opens"), $"{say.Say("How often an hour the air is changed, 9 °F (5 K) warmer inside than outside.")} {reading}", number);
        builder.On("words").Text(new SheetPoint(builder.Room.LeftMm + 3, builder.Room.TopMm + 5), reading);
        var chart = new Chart(builder, builder.Room.Inset(2, 10, 3, 2));
        LinearAxis across = chart.Axis(AxisPosition.Bottom, "", 0.5, report.Air.Length + 0.5, 1, place => place >= 1 && place <= report.Air.Length && place % 1 == 0 ? say.Say(InsideSheet.Name(report.Air[(int)place - 1].Wide)) : "", hasGrid: false);
        double most = report.Air.Max(air => Changes(air.Most)), step = Chart.Step(most, 10, 1, 2, 5, 10, 20, 50, 100);
        LinearAxis up = chart.Axis(AxisPosition.Left, say.Say("changes of air an hour"), 0, Math.Ceiling((most / step) + 0.5) * step, step, Chart.Number);
        Bars(0, air => air.ByWarmth, Ink.Zinc);
        Bars(1, air => air.Usual, Ink.FilmTint);
        Bars(2, air => air.Most, Ink.Paper);
        chart.Draw();

        Pen pen = builder.On("numbers");
        for (int place = 1; place <= report.Air.Length; place++)
        {
            AirChange air = report.Air[place - 1];
            Over(place, 0, air.ByWarmth);
            Over(place, 1, air.Usual);
            Over(place, 2, air.Most);
        }
        Name(0, full.ByWarmth, say.Say("in a calm"), 140);
        Name(1, full.Usual, say.Say("in usual wind, as measured in film houses"), 140);
        Name(2, full.Most, say.Say("wind square through, by the rule"), 140);
        return builder.Build();

        double Changes(AirFlow flow) => flow.CubicMetresPerSecond * 3600 / report.Volume.CubicMetres;

        double Left(int place, int bar) => place - (1.5 * Width) + (bar * Width);

        void Bars(int bar, Func<AirChange, AirFlow> of, Ink ink) => chart.Bars(report.Air.Select((air, index) => (Left(index + 1, bar), Left(index + 1, bar) + Width, Changes(of(air)))), ink, LineRole.Outline);

        void Over(int place, int bar, AirFlow flow) => pen.Text(
            chart.At(across, Left(place, bar) + (Width / 2), up, Changes(flow)).Moved(0, -1.4), Changes(flow).ToString(Changes(flow) < 10 ? "0.#" : "0", CultureInfo.InvariantCulture), TextAlign.Middle, clears: true);

        void Name(int bar, AirFlow flow, string text, double towardsDeg) => builder.Callout(chart.At(across, Left(report.Air.Length, bar) + (Width * 0.2), up, Changes(flow) * 0.85), text, Angle.FromDegrees(towardsDeg));
    }
}
