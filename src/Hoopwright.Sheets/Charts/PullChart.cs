using Hoopwright.Cover.Pull;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Words;
using OxyPlot;
using OxyPlot.Axes;

namespace Hoopwright.Sheets.Charts;

/// <summary>How far to pull the roof film by its temperature, between what it bears in the cold and how far it may hang in the heat.</summary>
public static class PullChart
{
    private const int Places = 80;

    /// <summary>Draws it, with one day read off.</summary>
    /// <param name="pull">How tight the film is pulled.</param>
    /// <param name="today">The day read off; null for that of the plan.</param>
    /// <param name="sheet">Paper, names, units and language.</param>
    /// <param name="number">Which sheet of how many, as printed.</param>
    public static Drawing Draw(PullPlan pull, PullRow? today, FigureSheet sheet, string number)
    {
        ArgumentNullException.ThrowIfNull(pull);
        ArgumentNullException.ThrowIfNull(sheet);
        CrewWords say = sheet.Words;
        PullRow day = today ?? pull.Planned;
        bool us = sheet.Units == UnitSystem.UsCustomary;
        DrawingBuilder builder = sheet.Start(say.Say("Pull chart"), $"{say.Say("How far past snug the roof film is pulled, by its temperature.")} {Reading(pull, day, sheet)}", number);
        var chart = new Chart(builder, builder.Room.Inset(2, 2, 2, 2));

        double step = us ? 10 : 5;
        (double coldest, double hottest) = Chart.Whole([.. pull.Rows.Select(row => Degrees(row.Film)), Degrees(day.Film)], step);
        PullRow[] rows = [.. Enumerable.Range(0, Places + 1).Select(place => pull.At(Of(coldest + ((hottest - coldest) * place / Places))))];
        double perBay = us ? pull.Bay.Inches : pull.Bay.Millimetres, perArc = us ? pull.Arc.Inches : pull.Arc.Millimetres;
        double reach = rows.Max(row => Math.Abs(row.Target.Value)) * 2.2;
        double bayStep = Chart.Step(2 * reach * perBay, 10, us ? [1 / 16.0, 1 / 8.0, 1 / 4.0, 1 / 2.0, 1] : [1, 2, 5, 10, 20]);
        (double low, double high) = Chart.Whole([-reach * perBay, reach * perBay], bayStep);
        double arcStep = Chart.Step((high - low) * perArc / perBay, 12, us ? [1 / 4.0, 1 / 2.0, 1, 2, 4] : [5, 10, 20, 50, 100]);
        LinearAxis across = chart.Axis(AxisPosition.Bottom, say.Fill("temperature of the film, {0}", us ? "°F" : "°C"), coldest, hottest, step, value => Chart.Number(value));
        LinearAxis bays = chart.Axis(AxisPosition.Left, say.Fill("past snug in a bay of {0}", Label(pull.Bay, sheet)), low, high, bayStep, Mark);
        // The same strain over the whole bow.
        chart.Axis(AxisPosition.Right, say.Fill("past snug over a bow of {0}", Label(pull.Arc, sheet)), low * perArc / perBay, high * perArc / perBay, arcStep, Mark, hasGrid: false, key: "bow");

        if (pull.HasRoom) chart.Band(Curve(row => row.Least), Curve(row => row.Most), Ink.FilmTint);
        chart.Line([new(coldest, 0), new(hottest, 0)], LineRole.Dimension);
        chart.Line(Curve(row => row.Most), LineRole.Outline);
        chart.Line(Curve(row => row.Least), LineRole.Outline);
        chart.Line(Curve(row => row.ByHand), LineRole.Hidden);
        chart.Line(Curve(_ => pull.Loosest), LineRole.Hidden);
        chart.Line(Curve(row => row.Target), LineRole.Cut);
        double at = Degrees(day.Film), aim = day.Target.Value * perBay;
        chart.Line([new(at, low), new(at, aim)], LineRole.Centre);
        chart.Line([new(coldest, aim), new(hottest, aim)], LineRole.Centre);
        chart.Draw();

        SheetPoint read = chart.At(across, at, bays, aim);
        builder.On("reading").Circle(read, 1.3, LineRole.Outline);
        builder.Callout(read, Reading(pull, day, sheet), Angle.FromDegrees(day.Film > pull.Best ? 75 : 35), Angle.FromDegrees(215));
        Name(0.2, row => row.Most, say.Say("coldest day: no tighter"), 60);
        Name(0.2, row => row.Least, say.Say("hottest day: no looser"), 240);
        Name(0.62, row => row.Target, say.Say("pull to this line"), 50);
        Name(0.8, row => row.ByHand, say.Fill("as tight as {0} people pull", Chart.Number(pull.Hands)), 70);
        Name(0.1, _ => pull.Loosest, say.Say("as loose as film can be laid evenly"), 290);
        double best = Degrees(pull.Best);
        if (best > coldest && best < hottest) builder.Callout(chart.At(across, best, bays, 0), say.Fill("best: just snug at {0}", TapeText.Of(pull.Best, sheet.Units)), Angle.FromDegrees(250));
        return builder.Build();

        double Degrees(Temperature temperature) => us ? temperature.Fahrenheit : temperature.Celsius;

        Temperature Of(double degrees) => us ? Temperature.FromFahrenheit(degrees) : Temperature.FromCelsius(degrees);

        string Mark(double value) => us ? Chart.Inches(value) : Chart.Number(value);

        IEnumerable<DataPoint> Curve(Func<PullRow, Ratio> strain) => rows.Select(row => new DataPoint(Degrees(row.Film), strain(row).Value * perBay));

        // A curve is named where it runs inside the chart, as near to a place as may be.
        void Name(double part, Func<PullRow, Ratio> strain, string text, double towardsDeg)
        {
            PullRow? row = rows.Where(row => Math.Abs(strain(row).Value * perBay) < high * 0.97).MinBy(row => Math.Abs(Degrees(row.Film) - (coldest + ((hottest - coldest) * part))));
            if (row is not null) builder.Callout(chart.At(across, Degrees(row.Film), bays, strain(row).Value * perBay), text, Angle.FromDegrees(towardsDeg));
        }
    }

    /// <summary>What the chart says of a day, in words.</summary>
    internal static string Reading(PullPlan pull, PullRow day, FigureSheet sheet)
    {
        CrewWords say = sheet.Words;
        string film = TapeText.Of(day.Film, sheet.Units), bay = Label(day.PastSnugPerBay.Abs(), sheet), bow = Label(day.PastSnugOverBow.Abs(), sheet);
        return day.Advice switch
        {
            PullAdvice.TooCold => say.Fill("film at {0}: too cold, do not pull", film),
            // Less in a bay than a mark of the tape is nothing that anybody can measure.
            PullAdvice.PastSnug when IsNone(day.PastSnugPerBay) => say.Fill("film at {0}: past snug by {1} over a bow", film, bow),
            PullAdvice.Loose when IsNone(day.PastSnugPerBay) => say.Fill("film at {0}: longer than snug by {1} over a bow", film, bow),
            PullAdvice.PastSnug => say.Fill("film at {0}: past snug by {1} a bay,\n{2} over a bow", film, bay, bow),
            PullAdvice.Snug => say.Fill("film at {0}: just snug", film),
            PullAdvice.Loose => say.Fill("film at {0}: longer than snug by {1} a bay,\n{2} over a bow", film, bay, bow),
            PullAdvice.TooHot => say.Fill("film at {0}: too hot, do not pull", film),
        };

        bool IsNone(Length length) => TapeText.RoundToMark(length.Abs(), sheet.Units) == Length.Zero;
    }

    private static string Label(Length length, FigureSheet sheet) => sheet.Tape(TapeText.RoundToMark(length, sheet.Units));
}
