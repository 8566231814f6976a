using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Hoopwright.Sheets.Pdf;

/// <summary>Paints the marks of one drawing onto a page of its size.</summary>
internal sealed class PdfPainter
{
    private static readonly XPdfFontOptions Unicode = new(PdfFontEncoding.Unicode);
    private readonly Dictionary<(LetterWeight, double), XFont> fonts;
    private readonly XGraphics graphics;

    internal PdfPainter(XGraphics graphics, Dictionary<(LetterWeight, double), XFont> fonts) => (this.graphics, this.fonts) = (graphics, fonts);

    internal static double Points(double mm) => mm * 72 / 25.4;

    internal void Paint(Mark mark)
    {
        switch (mark)
        {
            case LineMark line:
                graphics.DrawPath(Pen(line), Path(line.Path));
                break;
            case FillMark fill:
                graphics.DrawPath(Brush(fill.Colour), Path(fill.Path.Close()));
                break;
            case HatchMark hatch:
                foreach (Mark part in HatchLines.Of(hatch))
                    Paint(part);
                break;
            case TextMark text:
                Paint(text, "");
                break;
        }
    }

    /// <summary>Paints a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="after">What follows it and is not seen, such as a blank before the next line; empty for nothing.</param>
    internal void Paint(TextMark text, string after)
    {
        if (text.Text.Length == 0) return;
        if (text.Clears)
            graphics.DrawPath(Brush(Ink.Paper), Path(SheetPath.Around(text.Box.Grown(0.25).Corners())));
        double backMm = text.Align switch
        {
            TextAlign.Start => 0,
            TextAlign.Middle => text.WidthMm / 2,
            TextAlign.End => text.WidthMm,
        };
        SheetPoint start = text.Anchor.Away(-backMm, text.Turn.Radians);
        XPoint at = Point(start);
        bool isTurned = text.Turn.Radians != 0;
        if (isTurned)
        {
            graphics.Save();
            graphics.RotateAtTransform(-text.Turn.Degrees, at);
        }

        graphics.DrawString(text.Text + after, Font(text.Weight, text.EmMm), Brush(text.Colour), at, XStringFormats.BaseLineLeft);
        if (isTurned)
            graphics.Restore();
    }

    private XFont Font(LetterWeight weight, double emMm)
    {
        if (!fonts.TryGetValue((weight, emMm), out XFont? font))
        {
            XFontStyleEx style = weight == LetterWeight.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular;
            fonts[(weight, emMm)] = font = new XFont(EmbeddedFonts.Family, Points(emMm), style, Unicode);
        }

        return font;
    }

    private static XPen Pen(LineMark line)
    {
        LineStyle style = LineStyle.Of(line.Role);
        XPen pen = new(Colour(line.Colour), Points(style.WeightMm)) { LineJoin = XLineJoin.Round, LineCap = XLineCap.Flat };
        if (!style.DashesMm.IsEmpty)
            pen.DashPattern = [.. style.DashesMm.Select(dash => dash / style.WeightMm)];
        return pen;
    }

    private static XSolidBrush Brush(Ink ink) => new(Colour(ink));

    private static XColor Colour(Ink ink)
    {
        InkColour colour = InkColour.Of(ink);
        return XColor.FromArgb(colour.Red, colour.Green, colour.Blue);
    }

    private static XPoint Point(SheetPoint point) => new(Points(point.XMm), Points(point.YMm));

    private static XGraphicsPath Path(SheetPath path)
    {
        XGraphicsPath drawn = new() { FillMode = XFillMode.Winding };
        SheetPoint at = path.Start;
        foreach (PathPiece piece in path.Pieces)
        {
            if (piece.Centre is { } centre)
            {
                double radius = centre.DistanceMm(at), startDeg = -centre.DirectionRad(at) * 180 / Math.PI;
                drawn.AddArc(
                    Points(centre.XMm - radius), Points(centre.YMm - radius), Points(2 * radius), Points(2 * radius), startDeg, -piece.SweepRad * 180 / Math.PI);
            }
            else
            {
                drawn.AddLine(Point(at), Point(piece.End));
            }

            at = piece.End;
        }

        if (path.Closed)
            drawn.CloseFigure();
        return drawn;
    }
}
