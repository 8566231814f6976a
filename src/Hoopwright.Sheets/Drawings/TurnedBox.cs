using Hoopwright.Sheets.Fonts;

namespace Hoopwright.Sheets.Drawings;

/// <summary>A rectangle at an angle: what a text takes of the paper.</summary>
/// <param name="Middle">Its middle.</param>
/// <param name="HalfWidthMm">Half its size along the text.</param>
/// <param name="HalfHeightMm">Half its size across the text.</param>
/// <param name="TurnRad">Direction along the text, anticlockwise as seen.</param>
internal readonly record struct TurnedBox(SheetPoint Middle, double HalfWidthMm, double HalfHeightMm, double TurnRad)
{
    internal static TurnedBox OfText(TextMark text)
    {
        double widthMm = text.WidthMm;
        double alongMm = text.Align switch
        {
            TextAlign.Start => widthMm / 2,
            TextAlign.Middle => 0,
            TextAlign.End => -widthMm / 2,
        };
        double upMm = (Typeface.RiseEm - Typeface.FallEm) / 2 * text.EmMm;
        SheetPoint middle = text.Anchor.Away(alongMm, text.Turn.Radians).Away(upMm, text.Turn.Radians + (Math.PI / 2));
        return new TurnedBox(middle, widthMm / 2, (Typeface.RiseEm + Typeface.FallEm) / 2 * text.EmMm, text.Turn.Radians);
    }

    internal static TurnedBox Of(SheetBox box) => new(box.Middle, box.WidthMm / 2, box.HeightMm / 2, 0);

    internal TurnedBox Grown(double byMm) => this with { HalfWidthMm = HalfWidthMm + byMm, HalfHeightMm = HalfHeightMm + byMm };

    internal SheetPoint[] Corners()
    {
        double acrossRad = TurnRad + (Math.PI / 2);
        SheetPoint right = Middle.Away(HalfWidthMm, TurnRad), left = Middle.Away(-HalfWidthMm, TurnRad);
        return [left.Away(-HalfHeightMm, acrossRad), right.Away(-HalfHeightMm, acrossRad), right.Away(HalfHeightMm, acrossRad), left.Away(HalfHeightMm, acrossRad)];
    }

    internal SheetBox Bounds => TurnRad == 0
        ? new SheetBox(Middle.XMm - HalfWidthMm, Middle.YMm - HalfHeightMm, Middle.XMm + HalfWidthMm, Middle.YMm + HalfHeightMm)
        : SheetBox.AroundAll(Corners());

    /// <summary>True when the two share area. By separating axes.</summary>
    internal bool Meets(TurnedBox other) => TurnRad == 0 && other.TurnRad == 0
        ? Math.Abs(Middle.XMm - other.Middle.XMm) < HalfWidthMm + other.HalfWidthMm && Math.Abs(Middle.YMm - other.Middle.YMm) < HalfHeightMm + other.HalfHeightMm
        : !Apart(this, other) && !Apart(other, this);

    /// <summary>True when any of a straight line lies inside.</summary>
    internal bool IsCutBy(SheetPoint from, SheetPoint to)
    {
        (double x1, double y1) = Local(from);
        (double x2, double y2) = Local(to);
        double enter = 0, leave = 1;
        return Clip(x1, x2 - x1, HalfWidthMm, ref enter, ref leave) && Clip(y1, y2 - y1, HalfHeightMm, ref enter, ref leave) && enter < leave;
    }

    private (double AlongMm, double AcrossMm) Local(SheetPoint point)
    {
        double dx = point.XMm - Middle.XMm, dy = Middle.YMm - point.YMm;
        if (TurnRad == 0) return (dx, dy);
        double cos = Math.Cos(TurnRad), sin = Math.Sin(TurnRad);
        return ((dx * cos) + (dy * sin), (dy * cos) - (dx * sin));
    }

    private static bool Clip(double start, double change, double half, ref double enter, ref double leave)
    {
        if (Math.Abs(change) < 1e-12)
            return Math.Abs(start) < half;
        double a = (-half - start) / change, b = (half - start) / change;
        enter = Math.Max(enter, Math.Min(a, b));
        leave = Math.Min(leave, Math.Max(a, b));
        return enter < leave;
    }

    private static bool Apart(TurnedBox one, TurnedBox other)
    {
        double left = double.MaxValue, right = double.MinValue, low = double.MaxValue, high = double.MinValue;
        foreach (SheetPoint corner in other.Corners())
        {
            (double along, double across) = one.Local(corner);
            (left, right) = (Math.Min(left, along), Math.Max(right, along));
            (low, high) = (Math.Min(low, across), Math.Max(high, across));
        }

        return right <= -one.HalfWidthMm || left >= one.HalfWidthMm || high <= -one.HalfHeightMm || low >= one.HalfHeightMm;
    }
}
