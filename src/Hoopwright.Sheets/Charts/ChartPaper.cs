using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using OxyPlot;

namespace Hoopwright.Sheets.Charts;

/// <summary>
/// What the plotting library draws on: it leaves our own marks, so that a chart goes to paper and screen in the lettering and line
/// weights of every other drawing, and its texts are looked at for collisions like theirs. One unit of the library is a millimetre.
/// </summary>
internal sealed class ChartPaper(Pen pen, SheetPoint corner) : ClippingRenderContext
{
    private OxyRect? clip;

    /// <inheritdoc/>
    public override void DrawLine(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[]? dashArray, LineJoin lineJoin)
    {
        if (ChartInks.InkOf(stroke) is not { } ink || thickness <= 0) return;
        LineRole role = ChartInks.RoleOf(thickness, dashArray is { Length: > 0 });
        foreach (List<ScreenPoint> piece in Clipped(points)) pen.Path(SheetPath.Through(piece.Select(At)), role, ink);
    }

    /// <inheritdoc/>
    public override void DrawPolygon(IList<ScreenPoint> points, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[]? dashArray, LineJoin lineJoin)
    {
        if (ChartInks.InkOf(fill) is { } ink && Within(points) is { Count: > 2 } inside) pen.Fill(SheetPath.Around(inside.Select(At)), ink);
        DrawLine([.. points, points[0]], stroke, thickness, edgeRenderingMode, dashArray, lineJoin);
    }

    /// <inheritdoc/>
    public override void DrawText(
        ScreenPoint p, string text, OxyColor fill, string fontFamily, double fontSize, double fontWeight, double rotation, HorizontalAlignment horizontalAlignment, VerticalAlignment verticalAlignment, OxySize? maxSize)
    {
        if (string.IsNullOrEmpty(text)) return;
        // From the asked-for edge of the text to its baseline, along the way that is down for the reader.
        double down = fontSize * verticalAlignment switch
        {
            VerticalAlignment.Top => Typeface.RiseEm,
            VerticalAlignment.Middle => Typeface.CapitalEm / 2,
            VerticalAlignment.Bottom => -Typeface.FallEm,
        };
        Angle turn = Angle.FromDegrees(-rotation);
        pen.Text(At(p).Away(-down, turn.Radians + (Math.PI / 2)), text,
            horizontalAlignment switch { HorizontalAlignment.Left => TextAlign.Start, HorizontalAlignment.Center => TextAlign.Middle, HorizontalAlignment.Right => TextAlign.End },
            fontSize * Typeface.CapitalEm, fontWeight > FontWeights.Normal ? LetterWeight.Bold : LetterWeight.Regular, turn);
    }

    /// <inheritdoc/>
    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) => string.IsNullOrEmpty(text)
        ? OxySize.Empty
        : new OxySize(Typeface.Of(fontWeight > FontWeights.Normal ? LetterWeight.Bold : LetterWeight.Regular).WidthMm(TapeFractions.Set(text), fontSize), fontSize * (Typeface.RiseEm + Typeface.FallEm));

    /// <inheritdoc/>
    protected override void SetClip(OxyRect clippingRectangle) => clip = clippingRectangle;

    /// <inheritdoc/>
    protected override void ResetClip() => clip = null;

    private SheetPoint At(ScreenPoint point) => corner.Moved(point.X, point.Y);

    /// <summary>The parts of a line inside the clip.</summary>
    private List<List<ScreenPoint>> Clipped(IList<ScreenPoint> points)
    {
        if (clip is not { } box) return points.Count > 1 ? [[.. points]] : [];
        List<List<ScreenPoint>> pieces = [];
        bool isOpen = false;
        for (int index = 1; index < points.Count; index++)
        {
            if (Cut(points[index - 1], points[index], box) is not { } part)
            {
                isOpen = false;
                continue;
            }
            if (!isOpen) pieces.Add([part.From]);
            pieces[^1].Add(part.To);
            isOpen = part.To.Equals(points[index]);
        }
        return pieces;
    }

    // Liang and Barsky: what four half planes leave of a stretch.
    private static (ScreenPoint From, ScreenPoint To)? Cut(ScreenPoint from, ScreenPoint to, OxyRect box)
    {
        double start = 0, end = 1, dx = to.X - from.X, dy = to.Y - from.Y;
        foreach ((double towards, double room) in ((double, double)[])[(-dx, from.X - box.Left), (dx, box.Right - from.X), (-dy, from.Y - box.Top), (dy, box.Bottom - from.Y)])
        {
            if (towards == 0 && room < 0) return null;
            if (towards < 0) start = Math.Max(start, room / towards);
            if (towards > 0) end = Math.Min(end, room / towards);
        }
        if (start > end) return null;
        return (start == 0 ? from : new ScreenPoint(from.X + (start * dx), from.Y + (start * dy)), end == 1 ? to : new ScreenPoint(from.X + (end * dx), from.Y + (end * dy)));
    }

    /// <summary>The part of an area inside the clip, after Sutherland and Hodgman.</summary>
    private List<ScreenPoint> Within(IList<ScreenPoint> points)
    {
        List<ScreenPoint> left = [.. points];
        if (clip is not { } box) return left;
        foreach (Func<ScreenPoint, double> inside in (Func<ScreenPoint, double>[])[p => p.X - box.Left, p => box.Right - p.X, p => p.Y - box.Top, p => box.Bottom - p.Y])
        {
            List<ScreenPoint> kept = [];
            for (int index = 0; index < left.Count; index++)
            {
                ScreenPoint here = left[index], before = left[(index + left.Count - 1) % left.Count];
                double room = inside(here), roomBefore = inside(before);
                if (room >= 0 != roomBefore >= 0)
                {
                    double part = roomBefore / (roomBefore - room);
                    kept.Add(new ScreenPoint(before.X + (part * (here.X - before.X)), before.Y + (part * (here.Y - before.Y))));
                }
                if (room >= 0) kept.Add(here);
            }
            left = kept;
        }
        return left;
    }
}
