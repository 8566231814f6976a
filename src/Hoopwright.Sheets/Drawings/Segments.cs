namespace Hoopwright.Sheets.Drawings;

/// <summary>Straight pieces of drawn lines, found quickly by where they are.</summary>
internal sealed class Segments
{
    private const double CellMm = 10;
    private readonly Dictionary<(int Column, int Row), List<int>> cells = [];
    private readonly List<(SheetPoint From, SheetPoint To, string Layer)> all = [];
    private int[] seenIn = [];
    private int look;

    internal void Add(string layer, IReadOnlyList<SheetPoint> points)
    {
        for (int index = 1; index < points.Count; index++)
        {
            (SheetPoint from, SheetPoint to) = (points[index - 1], points[index]);
            all.Add((from, to, layer));
            int steps = Math.Max(1, (int)Math.Ceiling(from.DistanceMm(to) / (CellMm / 2)));
            for (int step = 0; step < steps; step++)
            {
                SheetBox bounds = SheetBox.AroundAll([from.Towards(to, (double)step / steps), from.Towards(to, (step + 1.0) / steps)]);
                foreach ((int, int) cell in Cells(bounds))
                {
                    if (!cells.TryGetValue(cell, out List<int>? inside))
                        cells[cell] = inside = [];
                    int last = all.Count - 1;
                    if (inside.Count == 0 || inside[^1] != last)
                        inside.Add(last);
                }
            }
        }
    }

    /// <summary>The layer of the first line that runs through a box; null when none does.</summary>
    internal string? Cutting(TurnedBox box)
    {
        int first = int.MaxValue;
        SheetBox bounds = box.Bounds;
        Look();
        foreach ((int, int) cell in Cells(bounds))
        {
            if (!cells.TryGetValue(cell, out List<int>? inside)) continue;
            foreach (int index in inside)
            {
                if (index < first && IsNew(index) && box.IsCutBy(all[index].From, all[index].To)) first = index;
            }
        }

        return first == int.MaxValue ? null : all[first].Layer;
    }

    /// <summary>How many pieces a straight line crosses.</summary>
    internal int Crossings(SheetPoint from, SheetPoint to)
    {
        int crossings = 0;
        Look();
        foreach ((int, int) cell in Cells(SheetBox.AroundAll([from, to])))
        {
            if (!cells.TryGetValue(cell, out List<int>? inside)) continue;
            foreach (int index in inside)
            {
                if (IsNew(index) && Cross(from, to, all[index].From, all[index].To)) crossings++;
            }
        }

        return crossings;
    }

    // A piece that lies in several cells is looked at once a look.
    private void Look()
    {
        if (seenIn.Length < all.Count) Array.Resize(ref seenIn, Math.Max(64, all.Count * 2));
        look++;
    }

    private bool IsNew(int index)
    {
        if (seenIn[index] == look) return false;
        seenIn[index] = look;
        return true;
    }

    private static IEnumerable<(int Column, int Row)> Cells(SheetBox bounds)
    {
        int right = (int)Math.Floor(bounds.RightMm / CellMm), bottom = (int)Math.Floor(bounds.BottomMm / CellMm);
        for (int column = (int)Math.Floor(bounds.LeftMm / CellMm); column <= right; column++)
        {
            for (int row = (int)Math.Floor(bounds.TopMm / CellMm); row <= bottom; row++)
                yield return (column, row);
        }
    }

    internal static bool Cross(SheetPoint a, SheetPoint b, SheetPoint c, SheetPoint d) =>
        Turn(a, b, c) * Turn(a, b, d) < 0 && Turn(c, d, a) * Turn(c, d, b) < 0;

    private static double Turn(SheetPoint a, SheetPoint b, SheetPoint c) =>
        ((b.XMm - a.XMm) * (c.YMm - a.YMm)) - ((b.YMm - a.YMm) * (c.XMm - a.XMm));
}
