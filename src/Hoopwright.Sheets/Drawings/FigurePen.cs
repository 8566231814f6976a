using Hoopwright.Geometry;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Fonts;

namespace Hoopwright.Sheets.Drawings;

/// <summary>Draws on one layer of a figure, in the drawn thing's own measures. The scale is settled when the sheet is built.</summary>
public sealed class FigurePen
{
    private readonly string layer;
    private readonly List<Action<ModelView, List<Mark>>> strokes;

    internal FigurePen(string layer, List<Action<ModelView, List<Mark>>> strokes) => (this.layer, this.strokes) = (layer, strokes);

    /// <summary>A straight line.</summary>
    public FigurePen Line(PlanePoint from, PlanePoint to, LineRole role = LineRole.Outline, Ink colour = Ink.Black) =>
        Path(ModelPath.Through(from, to), role, colour);

    /// <summary>A path of lines and arcs.</summary>
    public FigurePen Path(ModelPath path, LineRole role = LineRole.Outline, Ink colour = Ink.Black) =>
        OnPaper((view, pen) => pen.Path(path.On(view), role, colour));

    /// <summary>An upright rectangle between opposite corners.</summary>
    public FigurePen Rectangle(PlanePoint corner, PlanePoint opposite, LineRole role = LineRole.Outline, Ink colour = Ink.Black) =>
        Path(ModelPath.Rectangle(corner, opposite), role, colour);

    /// <summary>A circle.</summary>
    public FigurePen Circle(PlanePoint centre, Length radius, LineRole role = LineRole.Outline, Ink colour = Ink.Black) =>
        Path(ModelPath.Circle(centre, radius), role, colour);

    /// <summary>A filled area.</summary>
    public FigurePen Fill(ModelPath path, Ink colour) => OnPaper((view, pen) => pen.Fill(path.On(view), colour));

    /// <summary>A textured area.</summary>
    public FigurePen Hatch(ModelPath path, Hatch kind) => OnPaper((view, pen) => pen.Hatch(path.On(view), kind));

    /// <summary>A text at a fixed place of the figure.</summary>
    public FigurePen Text(
        PlanePoint anchor, string text, TextAlign align = TextAlign.Middle, double capitalMm = TextMark.LeastCapitalMm,
        LetterWeight weight = LetterWeight.Regular, Angle turn = default, bool clears = false) =>
        OnPaper((view, pen) => pen.Text(view.At(anchor), text, align, capitalMm, weight, turn, Ink.Black, clears));

    /// <summary>Anything whose size is of the paper and not of the thing, such as a symbol: called once the view is known.</summary>
    public FigurePen OnPaper(Action<ModelView, Pen> draw)
    {
        strokes.Add((view, marks) => draw(view, new Pen(layer, marks)));
        return this;
    }
}
