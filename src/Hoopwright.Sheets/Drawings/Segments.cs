namespace Hoopwright.Sheets.Drawings;

/// <summary>Straight pieces of drawn lines, found quickly by where they are.</summary>
internal sealed class Segments
{
    private const double CellMm = 10;
    private readonly Dictionary<int, List<int>> cells = [];
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
                CellSpan span = new(SheetBox.Between(from.Towards(to, (double)step / steps), from.Towards(to, (step + 1.0) / steps)));
                for (int column = span.Left; column <= span.Right; column++)
                {
                    for (int row = span.Top; row <= span.Bottom; row++)
                    {
                        if (!cells.TryGetValue(CellSpan.Key(column, row), out List<int>? inside))
                            cells[CellSpan.Key(column, row)] = inside = [];
                        int last = all.Count - 1;
                        if (inside.Count == 0 || inside[^1] != last)
                            inside.Add(last);
                    }
                }
            }
        }
    }

    /// <summary>The layer of the first line that runs through a box; null when none does.</summary>
    internal string? Cutting(TurnedBox box) => FirstIn(box, isAnyEnough: false) is { } first ? all[first].Layer : null;

    /// <summary>True when any line runs through a box.</summary>
    internal bool AnyCutting(TurnedBox box) => FirstIn(box, isAnyEnough: true) is not null;

    /// <summary>How many pieces a straight line crosses.</summary>
    internal int Crossings(SheetPoint from, SheetPoint to)
    {
        int crossings = 0;
        CellSpan span = new(SheetBox.Between(from, to));
        Look();
        for (int column = span.Left; column <= span.Right; column++)
        {
            for (int row = span.Top; row <= span.Bottom; row++)
            {
                if (!cells.TryGetValue(CellSpan.Key(column, row), out List<int>? inside)) continue;
                foreach (int index in inside)
                {
                    if (IsNew(index) && Cross(from, to, all[index].From, all[index].To)) crossings++;
                }
            }
        }

        return crossings;
    }

    private int? FirstIn(TurnedBox box, bool isAnyEnough)
    {
        int first = int.MaxValue;
        CellSpan span = new(box.Bounds);
        Look();
        for (int column = span.Left; column <= span.Right; column++)
        {
            for (int row = span.Top; row <= span.Bottom; row++)
            {
                if (!cells.TryGetValue(CellSpan.Key(column, row), out List<int>? inside)) continue;
                foreach (int index in inside)
                {
                    if (index >= first || !IsNew(index) || !box.IsCutBy(all[index].From, all[index].To)) continue;
                    if (isAnyEnough) return index;
                    first = index;
                }
            }
        }

        return first == int.MaxValue ? null : first;
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

    /// <summary>The cells that a box touches.</summary>
    private readonly struct CellSpan(SheetBox bounds)
    {
        internal readonly int Left = Cell(bounds.LeftMm), Top = Cell(bounds.TopMm), Right = Cell(bounds.RightMm), Bottom = Cell(bounds.BottomMm);

        internal static int Key(int column, int row) => (column * 65536) + row;

        private static int Cell(double mm) => (int)Math.Floor(mm / CellMm);
    }

    internal static bool Cross(SheetPoint a, SheetPoint b, SheetPoint c, SheetPoint d) =>
        Turn(a, b, c) * Turn(a, b, d) < 0 && Turn(c, d, a) * Turn(c, d, b) < 0;

    private static double Turn(SheetPoint a, SheetPoint b, SheetPoint c) =>
        ((b.XMm - a.XMm) * (c.YMm - a.YMm)) - ((b.YMm - a.YMm) * (c.XMm - a.XMm));
}
