namespace Hoopwright.Sheets.Drawings;

/// <summary>An upright rectangle of the paper, in millimetres.</summary>
/// <param name="LeftMm">Left edge.</param>
/// <param name="TopMm">Upper edge.</param>
/// <param name="RightMm">Right edge; not less than left.</param>
/// <param name="BottomMm">Lower edge; not less than top.</param>
public readonly record struct SheetBox(double LeftMm, double TopMm, double RightMm, double BottomMm)
{
    /// <summary>Width, mm.</summary>
    public double WidthMm => RightMm - LeftMm;

    /// <summary>Height, mm.</summary>
    public double HeightMm => BottomMm - TopMm;

    /// <summary>Its middle.</summary>
    public SheetPoint Middle => new((LeftMm + RightMm) / 2, (TopMm + BottomMm) / 2);

    /// <summary>Smaller by so much on each side; negative makes it larger.</summary>
    public SheetBox Inset(double leftMm, double topMm, double rightMm, double bottomMm) =>
        new(LeftMm + leftMm, TopMm + topMm, RightMm - rightMm, BottomMm - bottomMm);

    /// <summary>Smaller by so much all round; negative makes it larger.</summary>
    public SheetBox Inset(double allMm) => Inset(allMm, allMm, allMm, allMm);

    /// <summary>The smallest box around both.</summary>
    public SheetBox Around(SheetBox other) => new(
        Math.Min(LeftMm, other.LeftMm), Math.Min(TopMm, other.TopMm), Math.Max(RightMm, other.RightMm), Math.Max(BottomMm, other.BottomMm));

    /// <summary>True when the other box lies wholly inside, edges counted in.</summary>
    public bool Holds(SheetBox other) =>
        other.LeftMm >= LeftMm && other.TopMm >= TopMm && other.RightMm <= RightMm && other.BottomMm <= BottomMm;

    /// <summary>True when the two share more than an edge.</summary>
    public bool Meets(SheetBox other) =>
        other.LeftMm < RightMm && other.RightMm > LeftMm && other.TopMm < BottomMm && other.BottomMm > TopMm;

    /// <summary>The box with these two points in opposite corners.</summary>
    internal static SheetBox Between(SheetPoint one, SheetPoint other) => new(
        Math.Min(one.XMm, other.XMm), Math.Min(one.YMm, other.YMm), Math.Max(one.XMm, other.XMm), Math.Max(one.YMm, other.YMm));

    /// <summary>The smallest box around some points; an empty box at the corner when there are none.</summary>
    internal static SheetBox AroundAll(IEnumerable<SheetPoint> points)
    {
        double left = double.MaxValue, top = double.MaxValue, right = double.MinValue, bottom = double.MinValue;
        foreach (SheetPoint point in points)
        {
            (left, right) = (Math.Min(left, point.XMm), Math.Max(right, point.XMm));
            (top, bottom) = (Math.Min(top, point.YMm), Math.Max(bottom, point.YMm));
        }

        return left > right ? default : new SheetBox(left, top, right, bottom);
    }
}
