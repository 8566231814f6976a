using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pages;

namespace Hoopwright.Sheets.Figures;

/// <summary>
/// What is said of the parts of a figure: beside them with a leader, or, on a sheet where that would collide, in a column of
/// its own.
/// </summary>
internal sealed class Remarks(DrawingBuilder builder, FigureSheet sheet)
{
    private const double ColumnMm = 66, LeadMm = 4.8;
    private readonly List<string> lines = [];

    /// <summary>The room left for the figure.</summary>
    public SheetBox Room => sheet.InColumn ? builder.Room.Inset(0, 0, ColumnMm, 0) : builder.Room;

    /// <summary>Says something of an edge.</summary>
    public void Edge(Figure figure, PlanePoint target, string text, params ImmutableArray<Angle> towards)
    {
        if (sheet.InColumn) lines.Add(text);
        else figure.Callout(target, text, towards);
    }

    /// <summary>Says something of a surface.</summary>
    public void Surface(Figure figure, PlanePoint target, string text, params ImmutableArray<Angle> towards)
    {
        if (sheet.InColumn) lines.Add(text);
        else figure.SurfaceCallout(target, text, towards);
    }

    /// <summary>Writes the column, where there is one.</summary>
    public void Write()
    {
        double emMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm), atMm = builder.Room.TopMm + 5;
        foreach (string text in lines.Distinct())
        {
            foreach (string line in TextSetter.Lines(text.Replace('\n', ' '), ColumnMm - 5, emMm, LetterWeight.Regular))
            {
                builder.On("remarks").Text(new SheetPoint(builder.Room.RightMm - ColumnMm + 3, atMm), line);
                atMm += LeadMm;
            }
            atMm += 2;
        }
    }
}
