using System.Collections.Immutable;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;

namespace Hoopwright.Sheets.Pdf;

/// <summary>Paints the marks of one page as its content stream (ISO 32000-1, 8 and 9), in millimetres from its lower left corner.</summary>
internal sealed class PdfPainter
{
    private readonly PdfBytes content;
    private readonly double heightMm;
    private LineRole? line;
    private Ink? stroke, fill;
    private (LetterWeight Weight, double EmMm)? letters;

    /// <summary>A page of that height.</summary>
    /// <param name="content">Where its stream goes.</param>
    /// <param name="heightMm">How high it is.</param>
    internal PdfPainter(PdfBytes content, double heightMm)
    {
        (this.content, this.heightMm) = (content, heightMm);
        // 72 / 25.4 points a millimetre; round joins, as everywhere.
        content.Put("2.83464567 0 0 2.83464567 0 0 cm 1 j\n"u8);
    }

    internal static double Points(double mm) => mm * 72 / 25.4;

    internal void Paint(Mark mark)
    {
        switch (mark)
        {
            case LineMark drawn:
                Style(drawn.Role);
                if (stroke != drawn.Colour)
                {
                    Colour(drawn.Colour).Put("RG\n"u8);
                    stroke = drawn.Colour;
                }
                Path(drawn.Path);
                content.Put(drawn.Path.Closed ? "s\n"u8 : "S\n"u8);
                break;
            case FillMark area:
                Fill(area.Path, area.Colour);
                break;
            case HatchMark hatch:
                foreach (Mark part in HatchLines.Of(hatch))
                    Paint(part);
                break;
            case TextMark text:
                Paint(text, false);
                break;
        }
    }

    /// <summary>Paints a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="blankAfter">True to let a blank follow, which is not seen, before the next line.</param>
    internal void Paint(TextMark text, bool blankAfter)
    {
        if (text.Text.Length == 0) return;
        if (text.Clears)
            Fill(SheetPath.Around(text.Box.Grown(0.25).Corners()), Ink.Paper);
        double backMm = text.Align switch
        {
            TextAlign.Start => 0,
            TextAlign.Middle => text.WidthMm / 2,
            TextAlign.End => text.WidthMm,
        };
        Filled(text.Colour);
        content.Put("BT "u8);
        if (letters != (text.Weight, text.EmMm))
        {
            content.Put(text.Weight == LetterWeight.Bold ? "/B "u8 : "/R "u8).Put(text.EmMm).Put("Tf "u8);
            letters = (text.Weight, text.EmMm);
        }
        if (text.Turn.Radians == 0)
        {
            Point(text.Anchor.XMm - backMm, text.Anchor.YMm).Put("Td "u8);
        }
        else
        {
            // Three decimals would turn a long text visibly off its line.
            (double sin, double cos) = Math.SinCos(text.Turn.Radians);
            SheetPoint start = text.Anchor.Away(-backMm, text.Turn.Radians);
            content.Fine(cos).Fine(sin).Fine(-sin).Fine(cos);
            Point(start.XMm, start.YMm).Put("Tm "u8);
        }
        PdfFace.Of(text.Weight).Put(content, text.Text, blankAfter);
        content.Put("Tj ET\n"u8);
    }

    private void Style(LineRole role)
    {
        if (line == role) return;
        LineStyle style = LineStyle.Of(role);
        content.Put(style.WeightMm).Put("w "u8);
        ImmutableArray<double> before = line is { } last ? LineStyle.Of(last).DashesMm : [];
        line = role;
        if (style.DashesMm.SequenceEqual(before)) return;
        content.Put("["u8);
        foreach (double dash in style.DashesMm) content.Put(dash);
        content.Put("]0 d\n"u8);
    }

    private void Fill(SheetPath path, Ink colour)
    {
        Filled(colour);
        Path(path);
        content.Put("f\n"u8);
    }

    private void Filled(Ink colour)
    {
        if (fill == colour) return;
        Colour(colour).Put("rg\n"u8);
        fill = colour;
    }

    private PdfBytes Colour(Ink ink)
    {
        InkColour colour = InkColour.Of(ink);
        return content.Put(colour.Red / 255.0).Put(colour.Green / 255.0).Put(colour.Blue / 255.0);
    }

    private PdfBytes Point(double xMm, double yMm) => content.Put(xMm).Put(heightMm - yMm);

    private void Path(SheetPath path)
    {
        Point(path.Start.XMm, path.Start.YMm).Put("m "u8);
        SheetPoint at = path.Start;
        foreach (PathPiece piece in path.Pieces)
        {
            if (piece.Centre is { } centre) Arc(centre, at, piece);
            else Point(piece.End.XMm, piece.End.YMm).Put("l "u8);
            at = piece.End;
        }
    }

    /// <summary>An arc as cubic curves of at most a quarter turn, off by less than 0.03 % of the radius.</summary>
    private void Arc(SheetPoint centre, SheetPoint from, PathPiece piece)
    {
        int parts = Math.Max(1, (int)Math.Ceiling((Math.Abs(piece.SweepRad) / (Math.PI / 2)) - 1e-9));
        double radiusMm = centre.DistanceMm(from), startRad = centre.DirectionRad(from), stepRad = piece.SweepRad / parts;
        // The handles of a curve that keeps to the arc at both ends and in the middle: 4/3 tan(a/4) of the radius.
        double handle = 4.0 / 3 * Math.Tan(stepRad / 4) * radiusMm;
        (double sin, double cos) = Math.SinCos(startRad);
        for (int part = 1; part <= parts; part++)
        {
            (double nextSin, double nextCos) = Math.SinCos(startRad + (part * stepRad));
            SheetPoint end = part == parts ? piece.End : new(centre.XMm + (radiusMm * nextCos), centre.YMm - (radiusMm * nextSin));
            Point(centre.XMm + (radiusMm * cos) - (handle * sin), centre.YMm - (radiusMm * sin) - (handle * cos));
            Point(end.XMm + (handle * nextSin), end.YMm + (handle * nextCos));
            Point(end.XMm, end.YMm).Put("c "u8);
            (sin, cos) = (nextSin, nextCos);
        }
    }
}
