namespace Hoopwright.Sheets.Drawings;

/// <summary>Convex outlines of the paper, such as arrowheads, by their corners in order.</summary>
internal static class ConvexOutline
{
    /// <summary>True when two convex outlines share paper, by separating axes.</summary>
    internal static bool Meet(SheetPoint[] one, SheetPoint[] other) => !IsApart(one, other) && !IsApart(other, one);

    private static bool IsApart(SheetPoint[] one, SheetPoint[] other)
    {
        for (int side = 0; side < one.Length; side++)
        {
            (SheetPoint from, SheetPoint to) = (one[side], one[(side + 1) % one.Length]);
            double nx = to.YMm - from.YMm, ny = from.XMm - to.XMm;
            (double low1, double high1) = Shadow(one, nx, ny);
            (double low2, double high2) = Shadow(other, nx, ny);
            if (high1 <= low2 + 1e-9 || high2 <= low1 + 1e-9) return true;
        }
        return false;
    }

    private static (double Low, double High) Shadow(SheetPoint[] outline, double nx, double ny)
    {
        double low = double.MaxValue, high = double.MinValue;
        foreach (SheetPoint point in outline)
        {
            double at = (point.XMm * nx) + (point.YMm * ny);
            (low, high) = (Math.Min(low, at), Math.Max(high, at));
        }
        return (low, high);
    }

    /// <summary>An arrowhead but for its edges, so that arrows may meet in the point they show.</summary>
    internal static SheetPoint[] BodyOf(SheetPath head)
    {
        SheetPoint[] corners = [head.Start, .. head.Pieces.Select(piece => piece.End)];
        SheetPoint middle = new(corners.Average(corner => corner.XMm), corners.Average(corner => corner.YMm));
        return [.. corners.Select(corner => middle.Towards(corner, 0.8))];
    }
}
