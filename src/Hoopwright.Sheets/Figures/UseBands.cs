using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Strength;

namespace Hoopwright.Sheets.Figures;

/// <summary>How far a bow uses its strength, as bands along it: told apart by width and edge as well as by colour.</summary>
internal static class UseBands
{
    private static readonly ImmutableArray<(double UpTo, double HalfMm, Ink Colour, string Words)> Classes =
    [
        (0.5, 0.2, Ink.Leaf, "to 0.5"), (0.8, 0.5, Ink.Film, "to 0.8"), (1, 0.9, Ink.Amber, "to 1"), (double.PositiveInfinity, 1.5, Ink.Brick, "over 1, edged"),
    ];

    /// <summary>Bands along a bow under load, chord by chord.</summary>
    public static void Draw(Figure figure, ImmutableArray<BowDiagramPoint> points)
    {
        for (int chord = 0; chord + 1 < points.Length; chord++)
            Band(figure, points[chord].Place, points[chord + 1].Place, Math.Max(points[chord].Utilisation.Value, points[chord + 1].Utilisation.Value));
    }

    /// <summary>What the bands mean, along the foot of a panel.</summary>
    public static void Legend(DrawingBuilder builder, SheetBox panel)
    {
        Pen pen = builder.On("legend");
        double atMm = panel.LeftMm + 3, baseMm = panel.BottomMm - 2;
        pen.Text(new SheetPoint(atMm, baseMm), "used:");
        atMm += 13;
        foreach ((double upTo, double halfMm, Ink colour, string words) in Classes)
        {
            Bar(pen, new SheetPoint(atMm, baseMm - 1.2), new SheetPoint(atMm + 7, baseMm - 1.2), halfMm, colour, double.IsPositiveInfinity(upTo));
            pen.Text(new SheetPoint(atMm + 9, baseMm), words);
            atMm += 25;
        }
    }

    private static void Band(Figure figure, PlanePoint from, PlanePoint to, double used)
    {
        (double upTo, double halfMm, Ink colour, _) = Classes.First(each => used <= each.UpTo);
        figure.On("use").OnPaper((view, pen) => Bar(pen, view.At(from), view.At(to), halfMm, colour, double.IsPositiveInfinity(upTo)));
    }

    private static void Bar(Pen pen, SheetPoint from, SheetPoint to, double halfMm, Ink colour, bool isEdged)
    {
        double across = from.DirectionRad(to) + (Math.PI / 2);
        SheetPath band = SheetPath.Around(from.Away(halfMm, across), to.Away(halfMm, across), to.Away(-halfMm, across), from.Away(-halfMm, across));
        pen.Fill(band, colour);
        if (isEdged) pen.Path(band, LineRole.Dimension);
    }
}
