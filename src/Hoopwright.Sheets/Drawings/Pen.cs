using Hoopwright.Quantities;
using Hoopwright.Sheets.Fonts;

namespace Hoopwright.Sheets.Drawings;

/// <summary>Draws on one layer of a sheet, in millimetres of paper.</summary>
public sealed class Pen
{
    private readonly string layer;
    private readonly List<Mark> marks;

    internal Pen(string layer, List<Mark> marks) => (this.layer, this.marks) = (layer, marks);

    /// <summary>A straight line.</summary>
    public Pen Line(SheetPoint from, SheetPoint to, LineRole role = LineRole.Outline, Ink colour = Ink.Black) =>
        Path(SheetPath.Through(from, to), role, colour);

    /// <summary>A path of lines and arcs.</summary>
    public Pen Path(SheetPath path, LineRole role = LineRole.Outline, Ink colour = Ink.Black) => Add(new LineMark(layer, path, role, colour));

    /// <summary>A circle.</summary>
    public Pen Circle(SheetPoint centre, double radiusMm, LineRole role = LineRole.Outline, Ink colour = Ink.Black) =>
        Path(SheetPath.Circle(centre, radiusMm), role, colour);

    /// <summary>A filled area.</summary>
    public Pen Fill(SheetPath path, Ink colour) => Add(new FillMark(layer, path, colour));

    /// <summary>A textured area.</summary>
    public Pen Hatch(SheetPath path, Hatch kind) => Add(new HatchMark(layer, path, kind));

    /// <summary>A line of text at a fixed place, capitals so high; never less than 2.5 mm.</summary>
    public Pen Text(
        SheetPoint anchor, string text, TextAlign align = TextAlign.Start, double capitalMm = TextMark.LeastCapitalMm,
        LetterWeight weight = LetterWeight.Regular, Angle turn = default, Ink colour = Ink.Black, bool clears = false) =>
        Add(new TextMark(layer, anchor, TapeFractions.Set(text))
        {
            EmMm = Typeface.EmForCapitalsMm(Math.Max(capitalMm, TextMark.LeastCapitalMm)),
            Weight = weight,
            Align = align,
            Turn = turn,
            Colour = colour,
            Clears = clears,
        });

    private Pen Add(Mark mark)
    {
        marks.Add(mark);
        return this;
    }
}
