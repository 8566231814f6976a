namespace Hoopwright.Cutting.TwoStage;

/// <summary>
/// A two-stage job for the search: a column is either the stack of levels of one sheet, without what is in them, or what one
/// level holds. A row for each length of level on a width says that no more levels are filled than the stacks give.
/// </summary>
internal sealed class LevelProblem : CutProblem
{
    private readonly SheetProblem _sheets;
    private readonly SheetFilling _filling;
    private readonly Dictionary<(int Width, int Length), int> _rowOf = [];
    private readonly List<(int Width, int Length)> _slots = [];
    private readonly Dictionary<Pattern, Level> _levelOf = new(Pattern.Same.Instance);
    private readonly long _ceiling;

    private LevelProblem(SheetProblem sheets, SheetFilling filling, long ceiling) => (_sheets, _filling, _ceiling) = (sheets, filling, ceiling);

    /// <summary>The bar that stands for levels.</summary>
    private int LevelBar => _sheets.Bars.Length;

    /// <summary>Rows for the slots that some stack has.</summary>
    /// <param name="sheets">The job.</param>
    /// <param name="filling">Its tables.</param>
    /// <param name="slots">The widths and lengths of levels that are of use.</param>
    /// <param name="ceiling">The cost of a known plan.</param>
    public static LevelProblem Of(SheetProblem sheets, SheetFilling filling, IReadOnlyList<(int Width, int Length)> slots, long ceiling)
    {
        var types = sheets.Types + slots.Count;
        // Weights are there for the engine's limit on prices only: no column has more entries than a sheet has pieces.
        var most = sheets.Bars.Max(bar => bar.Capacity) / sheets.Weight[^1];
        var problem = new LevelProblem(sheets, filling, ceiling)
        {
            Weight = [.. Enumerable.Repeat(1L, types)],
            Demand = [.. sheets.Demand, .. slots.Select(_ => 0)],
            Bars = [.. sheets.Bars.Select(bar => bar with { Capacity = most }), new CutBar(-1, most, most, 0, int.MaxValue, Missing: false)],
            Grain = 1,
            Worth = null,
        };
        foreach (var slot in slots)
        {
            problem._rowOf[slot] = sheets.Types + problem._slots.Count;
            problem._slots.Add(slot);
        }

        return problem;
    }

    /// <summary>The column of a sheet with so many levels of each length.</summary>
    public Pattern Stack(int sheet, IEnumerable<(int Length, int Times)> levels)
    {
        var width = _filling.ClassOf(sheet);
        (int Row, int Times)[] rows = [.. levels.Select(level => (_rowOf[(width, level.Length)], level.Times)).OrderBy(level => level.Item1)];
        return new Pattern(this, sheet, [.. rows.Select(row => row.Row)], [.. rows.Select(row => row.Times)]);
    }

    /// <summary>The column of what one level of a width and length holds.</summary>
    public Pattern Filled(int width, int length, Level level)
    {
        var countOfType = new int[Types];
        for (var i = 0; i < level.Lays.Length; i++)
            countOfType[_sheets.Lays[level.Lays[i]].Type] += level.Counts[i];
        countOfType[_rowOf[(width, length)]] = -1;
        var column = Pattern.Of(this, LevelBar, countOfType);
        _levelOf.TryAdd(column, level);
        return column;
    }

    /// <summary>The column that leaves a piece out.</summary>
    public Pattern LeftOut(int bar) => new(this, bar, [_sheets.LeavesOut[bar]], [1]);

    public override bool HasFineCosts => true;

    public override int MostTimes(Pattern pattern)
    {
        if (pattern.Bar == LevelBar)
        {
            var most = 1;
            for (var i = 0; i < pattern.Types.Length; i++)
            {
                if (pattern.Counts[i] > 0)
                    most = Math.Max(most, (Demand[pattern.Types[i]] + pattern.Counts[i] - 1) / pattern.Counts[i]);
            }

            return most;
        }

        // Every sheet of a plan worth having serves a piece, and all of them together cost less than the known plan.
        var pieces = Math.Min(_sheets.PieceCount, Bars[pattern.Bar].Limit);
        return (int)Math.Min(int.MaxValue, pattern.Cost > 0 ? Math.Min(pieces, _ceiling / pattern.Cost) : pieces);
    }

    public override Mixture? Rounded(List<Pattern> pool, List<(int Index, double Amount)> solution, WorkMeter meter)
    {
        var wanted = _sheets.Demand.ToArray();
        var limits = Greedy.Limits(_sheets);
        var parts = solution.Select(part => (Column: pool[part.Index], part.Amount, Whole: (int)Math.Floor(part.Amount + 1e-5), part.Index))
            .OrderByDescending(part => part.Amount - part.Whole).ThenBy(part => part.Index).ToList();
        var stacks = new List<Pattern>();
        foreach (var (column, amount, whole, _) in parts)
        {
            if (column.Bar == LevelBar)
                continue;
            var times = Math.Min(amount - whole > 0.5 ? whole + 1 : whole, limits[column.Bar]);
            if (Bars[column.Bar].IsLimited)
                limits[column.Bar] -= times;
            stacks.AddRange(Enumerable.Repeat(column, times));
        }

        var levels = new Dictionary<int, List<Pattern>>();
        foreach (var (column, _, whole, _) in parts.Where(part => part.Column.Bar == LevelBar))
            AddTo(column, whole);
        foreach (var (column, amount, whole, _) in parts.Where(part => part.Column.Bar == LevelBar && part.Amount - part.Whole > 0.01))
            AddTo(column, 1);

        var plan = new Mixture { Method = CutMethod.Search };
        foreach (var sheet in Assembled(stacks, levels, wanted))
            plan.Add(sheet, 1);
        if (_sheets.Complete(wanted, limits, CutMethod.Search, meter) is not { } rest)
            return null;
        plan.Add(rest);
        return plan;

        void AddTo(Pattern column, int times)
        {
            if (!levels.TryGetValue(SlotRowOf(column), out var list))
                levels[SlotRowOf(column)] = list = [];
            list.AddRange(Enumerable.Repeat(column, times));
        }
    }

    /// <summary>Puts levels into stacks; a slot without one is filled with what is still wanted.</summary>
    private IEnumerable<SheetPattern> Assembled(List<Pattern> stacks, Dictionary<int, List<Pattern>> levels, int[] wanted)
    {
        var taken = new Dictionary<int, int>();
        var open = new List<(int Sheet, List<Level> Levels, List<int> Empty)>();
        foreach (var stack in stacks)
        {
            var filled = new List<Level>();
            var empty = new List<int>();
            for (var i = 0; i < stack.Types.Length; i++)
            {
                for (var copy = 0; copy < stack.Counts[i]; copy++)
                {
                    if (Next(stack.Types[i]) is { } level)
                        filled.Add(level);
                    else if (stack.Types[i] >= _sheets.Types)
                        empty.Add(stack.Types[i]);
                }
            }

            open.Add((stack.Bar, filled, empty));
        }

        foreach (var (sheet, filled, empty) in open)
        {
            if (_sheets.LeavesOut[sheet] >= 0)
            {
                if (wanted[_sheets.LeavesOut[sheet]]-- > 0)
                    yield return _sheets.LeftOut(sheet);
                else
                    wanted[_sheets.LeavesOut[sheet]]++;
                continue;
            }

            foreach (var row in empty)
            {
                var (width, length) = _slots[row - _sheets.Types];
                if (SheetGreedy.Filled(_sheets, _sheets.FirstLay[length], _filling.ClassWidths[width], wanted, turned: false) is { } level)
                    filled.Add(level);
            }

            if (filled.Count > 0)
                yield return SheetPattern.Of(_sheets, sheet, filled);
        }

        Level? Next(int row)
        {
            if (!levels.TryGetValue(row, out var list))
                return null;
            for (var at = taken.GetValueOrDefault(row); at < list.Count; at++)
            {
                taken[row] = at + 1;
                if (_levelOf[list[at]].Take(_sheets, wanted) is { } level)
                    return level;
            }

            return null;
        }
    }

    private static int SlotRowOf(Pattern column) => column.Types[Array.IndexOf(column.Counts, -1)];
}
