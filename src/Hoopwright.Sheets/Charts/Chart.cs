using System.Globalization;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;
using LineStyle = OxyPlot.LineStyle;

namespace Hoopwright.Sheets.Charts;

/// <summary>
/// A chart in a part of a sheet: axes and curves come from the plotting library, in our line weights, and are read without colour.
/// Names of curves are callouts of the sheet, which find clear places by themselves.
/// </summary>
internal sealed class Chart
{
    private const double TickMm = 1.6, TitleMm = 6;
    private readonly DrawingBuilder builder;
    private readonly SheetBox outer;
    private readonly PlotModel model;
    private readonly List<(Axis Axis, string Title)> titles = [];

    public Chart(DrawingBuilder builder, SheetBox box)
    {
        (this.builder, outer) = (builder, box);
        model = new PlotModel
        {
            Culture = CultureInfo.InvariantCulture,
            DefaultFontSize = EmMm,
            TextColor = ChartInks.Of(Ink.Black),
            PlotAreaBorderColor = ChartInks.Of(Ink.Black),
            PlotAreaBorderThickness = new OxyThickness(ChartInks.WeightMm(LineRole.Dimension)),
            Padding = new OxyThickness(0.5),
            AxisTierDistance = 2,
        };
    }

    /// <summary>Type size of all its texts, mm.</summary>
    public static double EmMm { get; } = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm);

    /// <summary>An axis with marks at whole steps.</summary>
    /// <param name="position">On which side.</param>
    /// <param name="title">What it measures, with its unit; empty for none.</param>
    /// <param name="from">Its low end.</param>
    /// <param name="to">Its high end.</param>
    /// <param name="step">Between two marks with numbers.</param>
    /// <param name="write">Writes a mark; an empty text leaves it unwritten.</param>
    /// <param name="hasGrid">True where thin lines run across the chart from its marks.</param>
    /// <param name="key">Its name, where a side has more than one.</param>
    public LinearAxis Axis(AxisPosition position, string title, double from, double to, double step, Func<double, string> write, bool hasGrid = true, string? key = null)
    {
        var axis = new LinearAxis
        {
            Position = position,
            Minimum = from,
            Maximum = to,
            MajorStep = step,
            MinorStep = step,
            LabelFormatter = value => write(Math.Round(value, 9)),
            TickStyle = TickStyle.Outside,
            MajorTickSize = TickMm,
            MinorTickSize = 0,
            AxisTickToLabelDistance = 0.9,
            TicklineColor = ChartInks.Of(Ink.Black),
            AxislineThickness = ChartInks.WeightMm(LineRole.Dimension),
            MajorGridlineStyle = hasGrid ? LineStyle.Solid : LineStyle.None,
            MajorGridlineThickness = ChartInks.WeightMm(LineRole.Texture),
            MajorGridlineColor = ChartInks.Of(Ink.Zinc),
            Key = key,
            MaximumMajorIntervalCount = 500,
        };
        model.Axes.Add(axis);
        if (title.Length > 0) titles.Add((axis, title));
        return axis;
    }

    /// <summary>An upright axis that takes a part of the height only, so that several stand one over another.</summary>
    /// <param name="key">Its name.</param>
    /// <param name="title">What it measures, with its unit.</param>
    /// <param name="height">From where to where it stands, as parts of the height from below.</param>
    /// <param name="range">The least and the greatest value.</param>
    /// <param name="most">The most steps over the range.</param>
    /// <param name="steps">Steps to choose from, small ones first.</param>
    public LinearAxis Panel(string key, string title, (double From, double To) height, (double Low, double High) range, int most, params ReadOnlySpan<double> steps)
    {
        double step = Step(range.High - range.Low, most, steps);
        (double least, double top) = Whole([range.Low, range.High], step);
        LinearAxis axis = Axis(AxisPosition.Left, title, least, top, step, Number, key: key);
        (axis.StartPosition, axis.EndPosition) = (height.From, height.To);
        return axis;
    }

    /// <summary>A curve.</summary>
    public void Line(IEnumerable<DataPoint> points, LineRole role, Ink ink = Ink.Black, string? key = null)
    {
        var series = new LineSeries
        {
            Color = ChartInks.Of(ink),
            StrokeThickness = ChartInks.WeightMm(role),
            LineStyle = role is LineRole.Hidden or LineRole.Centre ? LineStyle.Dash : LineStyle.Solid,
            // The library leaves out points that are near each other by its own measure, which is not of paper.
            MinimumSegmentLength = 0.05,
            YAxisKey = key,
        };
        series.Points.AddRange(points);
        model.Series.Add(series);
    }

    /// <summary>The area between two curves over the same places.</summary>
    public void Band(IEnumerable<DataPoint> low, IEnumerable<DataPoint> high, Ink ink, string? key = null)
    {
        var series = new AreaSeries { Fill = ChartInks.Of(ink), Color = OxyColors.Transparent, StrokeThickness = 0, MinimumSegmentLength = 0.05, YAxisKey = key };
        series.Points.AddRange(low);
        series.Points2.AddRange(high);
        model.Series.Add(series);
    }

    /// <summary>Upright bars, with an edge where a role is given.</summary>
    public void Bars(IEnumerable<(double From, double To, double Value)> bars, Ink fill, LineRole? role = null, string? key = null)
    {
        var series = new RectangleBarSeries { FillColor = ChartInks.Of(fill), StrokeColor = ChartInks.Of(Ink.Black), StrokeThickness = role is { } edge ? ChartInks.WeightMm(edge) : 0, YAxisKey = key };
        foreach ((double from, double to, double value) in bars) series.Items.Add(new RectangleBarItem(from, 0, to, value));
        model.Series.Add(series);
    }

    /// <summary>Draws it onto the sheet; afterwards <see cref="At"/> knows where a value lies.</summary>
    public void Draw()
    {
        IPlotModel plot = model;
        plot.Update(updateData: true);
        if (model.GetLastPlotException() is { } fault) throw new InvalidOperationException("The chart could not be made.", fault);
        plot.Render(new ChartPaper(builder.On("chart"), new SheetPoint(Inner.LeftMm, Inner.TopMm)), new OxyRect(0, 0, Inner.WidthMm, Inner.HeightMm));
        foreach ((Axis axis, string title) in titles) Title(axis, title);
    }

    /// <summary>Where a value lies on the sheet.</summary>
    public SheetPoint At(Axis across, double x, Axis up, double y) => new(Inner.LeftMm + across.Transform(x), Inner.TopMm + up.Transform(y));

    /// <summary>What the titles leave, which stand at the outer edges: the library sets its own too near to the numbers.</summary>
    private SheetBox Inner => outer.Inset(Room(AxisPosition.Left), Room(AxisPosition.Top), Room(AxisPosition.Right), Room(AxisPosition.Bottom));

    private double Room(AxisPosition side) => titles.Any(each => each.Axis.Position == side) ? TitleMm : 0;

    private void Title(Axis axis, string title)
    {
        double middle = (axis.Transform(axis.ActualMinimum) + axis.Transform(axis.ActualMaximum)) / 2;
        (SheetPoint at, double turnDeg) = axis.Position switch
        {
            AxisPosition.Left => (new SheetPoint(outer.LeftMm + 3.4, Inner.TopMm + middle), 90),
            AxisPosition.Right => (new SheetPoint(outer.RightMm - 1.2, Inner.TopMm + middle), 90),
            _ => (new SheetPoint(Inner.LeftMm + middle, outer.BottomMm - 1.2), 0),
        };
        builder.On("chart").Text(at, title, TextAlign.Middle, turn: Quantities.Angle.FromDegrees(turnDeg));
    }

    /// <summary>A plain number.</summary>
    public static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture).Replace('-', '−');

    /// <summary>Inches in sixteenths, with their mark.</summary>
    public static string Inches(double value)
    {
        int sixteenths = (int)Math.Round(Math.Abs(value) * 16), whole = sixteenths / 16, rest = sixteenths % 16, over = 16;
        while (rest > 0 && rest % 2 == 0) (rest, over) = (rest / 2, over / 2);
        string text = rest == 0 ? string.Create(CultureInfo.InvariantCulture, $"{whole}\"") : whole == 0 ? string.Create(CultureInfo.InvariantCulture, $"{rest}/{over}\"") : string.Create(CultureInfo.InvariantCulture, $"{whole}-{rest}/{over}\"");
        return value < 0 && sixteenths > 0 ? "−" + text : text;
    }

    /// <summary>A range around values, out to whole steps.</summary>
    public static (double From, double To) Whole(IEnumerable<double> values, double step)
    {
        (double least, double most) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (double value in values) (least, most) = (Math.Min(least, value), Math.Max(most, value));
        return (Math.Floor((least / step) + 1e-9) * step, Math.Ceiling((most / step) - 1e-9) * step);
    }

    /// <summary>The smallest of some steps that needs no more than so many over a range; the largest where none does.</summary>
    public static double Step(double range, int most, params ReadOnlySpan<double> steps)
    {
        foreach (double step in steps)
        {
            if (range / step <= most) return step;
        }
        return steps[^1];
    }
}
