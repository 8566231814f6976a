using System.Globalization;
using Hoopwright.Inside;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Words;
using OxyPlot;
using OxyPlot.Axes;

namespace Hoopwright.Sheets.Charts;

/// <summary>Light on the floor across the width, a curve a month.</summary>
public static class InsideLightChart
{
    // Curves nearer to each other than this part of the chart share a name.
    private const double SharedPart = 0.045;

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
        MonthLight darkest = report.Light.MinBy(month => month.Floor)!, brightest = report.Light.MaxBy(month => month.Floor)!;
        string reading = say.Fill("{0} in {1}, {2} in {3}", Moles(darkest.Floor), say.Month(darkest.Month), Moles(brightest.Floor), say.Month(brightest.Month));
        DrawingBuilder builder = sheet.Start(say.Say("Light on the floor"), $"{say.Say("Light for plants across the width, mean day of each month, moles on a square metre.")} {reading}", number);
        builder.On("words").Text(new SheetPoint(builder.Room.LeftMm + 3, builder.Room.TopMm + 5), say.Fill("mean of the floor, mol/m² a day: {0}", reading));
        var chart = new Chart(builder, builder.Room.Inset(2, 10, 3, 2));

        double width = Shown(report.Across[0] + report.Across[^1]), most = report.Light.Max(month => month.Across.Max()).MolesPerSquareMetre;
        double step = Chart.Step(width, 14, us ? [1, 2, 4, 5, 10] : [0.5, 1, 2, 5]), upStep = Chart.Step(most, 10, 1, 2, 5, 10);
        double top = Math.Ceiling((most / upStep) + 0.3) * upStep;
        LinearAxis across = chart.Axis(AxisPosition.Bottom, say.Fill("from the left side, {0}", us ? "ft" : "m"), 0, width, step, Chart.Number);
        LinearAxis up = chart.Axis(AxisPosition.Left, say.Say("light for plants, mol/m² a day"), 0, top, upStep, Chart.Number);
        foreach (MonthLight month in report.Light)
            chart.Line(report.Across.Select((place, point) => new DataPoint(Shown(place), month.Across[point].MolesPerSquareMetre)), month == darkest || month == brightest ? LineRole.Cut : LineRole.Outline);
        chart.Draw();

        int named = report.Across.Length / 2;
        var together = new List<MonthLight>();
        bool left = true;
        foreach (MonthLight month in report.Light.OrderBy(month => month.Across[named]))
        {
            if (together.Count > 0 && (month.Across[named].MolesPerSquareMetre - together[0].Across[named].MolesPerSquareMetre) / top > SharedPart) Label();
            together.Add(month);
        }
        Label();
        return builder.Build();

        double Shown(Length length) => us ? length.Feet : length.Metres;

        // One after another at places from left to right, so that names of neighbours do not meet.
        void Label()
        {
            MonthLight middle = together[together.Count / 2];
            int place = left ? named - 2 : named + 2;
            builder.Callout(
                chart.At(across, Shown(report.Across[place]), up, middle.Across[place].MolesPerSquareMetre), string.Join(", ", together.OrderBy(month => month.Month).Select(month => say.Month(month.Month))), Angle.FromDegrees(left ? 120 : 60));
            left = !left;
            together.Clear();
        }
    }

    private static string Moles(LightSum light) => light.MolesPerSquareMetre.ToString("0.0", CultureInfo.InvariantCulture);
}
