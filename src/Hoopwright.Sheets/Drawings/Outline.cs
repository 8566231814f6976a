using System.Collections.Immutable;

namespace Hoopwright.Sheets.Drawings;

/// <summary>A closed outline that can tell what lies inside it.</summary>
internal sealed class Outline
{
    private readonly ImmutableArray<SheetPoint> points;

    internal Outline(SheetPath path)
    {
        points = path.Close().Flattened();
        Bounds = SheetBox.AroundAll(points);
    }

    internal SheetBox Bounds { get; }

    /// <summary>True when a point lies inside, by counting the edges to its right.</summary>
    internal bool Holds(SheetPoint point)
    {
        bool inside = false;
        for (int index = 1; index < points.Length; index++)
        {
            (SheetPoint a, SheetPoint b) = (points[index - 1], points[index]);
            if (a.YMm > point.YMm != b.YMm > point.YMm
                && point.XMm < a.XMm + ((point.YMm - a.YMm) / (b.YMm - a.YMm) * (b.XMm - a.XMm)))
                inside = !inside;
        }

        return inside;
    }

    /// <summary>The pieces of a straight line that lie inside.</summary>
    internal IEnumerable<(SheetPoint From, SheetPoint To)> Inside(SheetPoint from, SheetPoint to)
    {
        List<double> cuts = [0, 1];
        double dx = to.XMm - from.XMm, dy = to.YMm - from.YMm;
        for (int index = 1; index < points.Length; index++)
        {
            (SheetPoint a, SheetPoint b) = (points[index - 1], points[index]);
            double ex = b.XMm - a.XMm, ey = b.YMm - a.YMm, cross = (dx * ey) - (dy * ex);
            if (Math.Abs(cross) < 1e-12)
                continue;
            double along = (((a.XMm - from.XMm) * ey) - ((a.YMm - from.YMm) * ex)) / cross;
            double onEdge = (((a.XMm - from.XMm) * dy) - ((a.YMm - from.YMm) * dx)) / cross;
            if (along is > 0 and < 1 && onEdge is >= 0 and <= 1)
                cuts.Add(along);
        }

        cuts.Sort();
        for (int index = 1; index < cuts.Count; index++)
        {
            if (cuts[index] - cuts[index - 1] > 1e-6 && Holds(from.Towards(to, (cuts[index] + cuts[index - 1]) / 2)))
                yield return (from.Towards(to, cuts[index - 1]), from.Towards(to, cuts[index]));
        }
    }

    /// <summary>The cells of a square grid, fixed to the paper, that may meet the outline.</summary>
    internal IEnumerable<(int Column, int Row, SheetPoint Corner)> Cells(double sizeMm)
    {
        int right = (int)Math.Floor(Bounds.RightMm / sizeMm), bottom = (int)Math.Floor(Bounds.BottomMm / sizeMm);
        for (int row = (int)Math.Floor(Bounds.TopMm / sizeMm); row <= bottom; row++)
        {
            for (int column = (int)Math.Floor(Bounds.LeftMm / sizeMm); column <= right; column++)
                yield return (column, row, new SheetPoint(column * sizeMm, row * sizeMm));
        }
    }
}
