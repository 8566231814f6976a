namespace Hoopwright.Cutting.TwoStage;

/// <summary>
/// Patterns of sheets: one knapsack table says what a level of each length and width is worth at best, and a second one for each
/// width how such levels follow each other along a sheet. Exact, except that pieces wanted less often than levels are alike count in
/// each level anew, which only makes a bound lower.
/// </summary>
internal sealed class SheetFilling : PatternSource
{
    private const long MostCells = 24_000_000;
    private readonly SheetProblem _problem;
    private readonly long _acrossGrain;
    private readonly long _alongGrain;
    private readonly FillTable _across;
    private readonly long[] _classWidths;
    private readonly int[] _classOfSheet;
    private readonly FillTable[] _along;
    private readonly long[][] _worth;
    private readonly int[] _mostLevels;
    private long[] _pieces = [];
    private int[] _wanted = [];

    public SheetFilling(SheetProblem problem, WorkMeter meter)
    {
        _problem = problem;
        _acrossGrain = problem.Lays.Select(lay => lay.Across).Aggregate(0L, WholeSolver.Divisor);
        _alongGrain = problem.LevelLengths.Aggregate(0L, WholeSolver.Divisor);
        _across = new FillTable(TableJob([.. problem.Lays.Select(lay => lay.Across / _acrossGrain)], problem.Widths.Max() / _acrossGrain), meter);
        _classWidths = [.. problem.Widths.Distinct().Order()];
        _classOfSheet = [.. problem.Widths.Select(width => Array.IndexOf(_classWidths, width))];
        long[] steps = [.. problem.LevelLengths.Select(length => length / _alongGrain)];
        var longest = problem.Lengths.Max() / _alongGrain;
        _along = [.. _classWidths.Select(_ => new FillTable(TableJob(steps, longest), meter))];
        _worth = [.. _classWidths.Select(_ => new long[steps.Length])];
        _mostLevels = [.. steps.Select(step => (int)Math.Min(int.MaxValue, longest / step))];
    }

    /// <summary>True when the tables of a job fit in memory.</summary>
    public static bool Fits(SheetProblem problem)
    {
        var across = problem.Widths.Max() / problem.Lays.Select(lay => lay.Across).Aggregate(0L, WholeSolver.Divisor);
        var along = problem.Lengths.Max() / problem.LevelLengths.Aggregate(0L, WholeSolver.Divisor);
        return ((Int128)across * problem.Lays.Length) + ((Int128)along * problem.LevelLengths.Length * problem.Widths.Distinct().Count()) <= MostCells;
    }

    /// <summary>The widths that sheets have.</summary>
    public long[] ClassWidths => _classWidths;

    /// <summary>Which of them a sheet has.</summary>
    public int ClassOf(int sheet) => _classOfSheet[sheet];

    /// <summary>What a level of a width and length is worth at most, at the prices asked last; 0 where nothing fits.</summary>
    public long Worth(int width, int length) => _worth[width][length];

    /// <summary>What the pieces of the lays from one on are worth at most, side by side in a room, at the prices asked last.</summary>
    public long WorthWithin(int firstLay, long room) =>
        _problem.Slit ? _across.Best(firstLay, room / _acrossGrain) : BestAlone(firstLay, room) is var lay and >= 0 ? _pieces[_problem.Lays[lay].Type] : 0;

    /// <summary>What the levels from a length on are worth at most, one after another in a room along a sheet of a width.</summary>
    public long WorthAlong(int width, int firstLength, long room) => _along[width].Best(firstLength, room / _alongGrain);

    public override void Price(long[] pieces, ReadOnlySpan<int> wanted)
    {
        (_pieces, _wanted) = (pieces, wanted.ToArray());
        if (_problem.Slit)
        {
            _across.Fill([.. _problem.Lays.Select(lay => pieces[lay.Type])], [.. _problem.Lays.Select(lay => _wanted[lay.Type])]);
        }

        for (var width = 0; width < _classWidths.Length; width++)
        {
            for (var length = 0; length < _problem.LevelLengths.Length; length++)
                _worth[width][length] = WorthWithin(_problem.FirstLay[length], _classWidths[width]);
            _along[width].Fill(_worth[width], _mostLevels);
        }
    }

    public override long LeastExcess(int bar, long scale) => (_problem.Bars[bar].Price * scale)
        - (bar < _problem.Sheets ? WorthAlong(_classOfSheet[bar], 0, _problem.Lengths[bar]) : _pieces[_problem.LeavesOut[bar]]);

    /// <summary>
    /// The best pattern, and the best ones whose longest level is shorter. Where one holds more of a piece than is wanted, it comes
    /// a second time with its levels filled with other pieces instead.
    /// </summary>
    public override IEnumerable<Pattern> Below(int bar, long scale, long barPrice)
    {
        if (bar >= _problem.Sheets)
        {
            yield return _problem.LeftOut(bar);
            yield break;
        }

        var width = _classOfSheet[bar];
        var worthwhile = new List<(long Excess, int First)>();
        for (var first = 0; first < _problem.LevelLengths.Length; first++)
        {
            if (_worth[width][first] <= 0 || _problem.LevelLengths[first] > _problem.Lengths[bar])
                continue;
            var excess = (_problem.Bars[bar].Price * scale) - barPrice - WorthAlong(width, first, _problem.Lengths[bar]);
            if (excess < 0)
                worthwhile.Add((excess, first));
        }

        foreach (var (_, first) in worthwhile.OrderBy(found => found.Excess).ThenBy(found => found.First))
        {
            var levels = Traced(bar, first);
            var pattern = SheetPattern.Of(_problem, bar, levels);
            yield return pattern;
            if (pattern.TimesWithin(_wanted) == 0)
                yield return Refilled(bar, levels);
        }
    }

    private List<Level> Traced(int bar, int first)
    {
        var width = _classOfSheet[bar];
        var times = new int[_problem.LevelLengths.Length];
        _along[width].Trace(first, _problem.Lengths[bar] / _alongGrain, times);
        var levels = new List<Level>();
        for (var length = first; length < times.Length; length++)
        {
            if (times[length] > 0 && BestLevel(_problem.FirstLay[length], _classWidths[width]) is { } level)
                levels.AddRange(Enumerable.Repeat(level, times[length]));
        }

        return levels;
    }

    private Level? BestLevel(int firstLay, long width)
    {
        var counts = new int[_problem.Lays.Length];
        if (_problem.Slit)
            _across.Trace(firstLay, width / _acrossGrain, counts);
        else if (BestAlone(firstLay, width) is var alone and >= 0)
            counts[alone] = 1;
        return Level.Of(counts);
    }

    /// <summary>The lay worth most by itself; −1 when none is worth anything.</summary>
    private int BestAlone(int firstLay, long width)
    {
        var best = -1;
        for (var lay = firstLay; lay < _problem.Lays.Length; lay++)
        {
            var (type, across, _, _) = _problem.Lays[lay];
            if (across <= width && _pieces[type] > 0 && (best < 0 || _pieces[type] > _pieces[_problem.Lays[best].Type]))
                best = lay;
        }

        return best;
    }

    /// <summary>The same levels with nothing more often than it is wanted: what falls out makes room for the next best.</summary>
    private SheetPattern Refilled(int bar, List<Level> levels)
    {
        var left = _wanted.ToArray();
        var width = _problem.Widths[bar];
        var filled = new List<Level>();
        foreach (var level in levels)
        {
            var first = level.Lays[0];
            var kept = level.Take(_problem, left);
            var counts = new int[_problem.Lays.Length];
            for (var i = 0; i < (kept?.Lays.Length ?? 0); i++)
                counts[kept!.Lays[i]] = kept.Counts[i];
            var room = width - (kept?.Across(_problem) ?? 0);
            var others = Enumerable.Range(first, counts.Length - first).Where(lay => _pieces[_problem.Lays[lay].Type] > 0)
                .OrderByDescending(lay => (double)_pieces[_problem.Lays[lay].Type] / _problem.Lays[lay].Across).ThenBy(lay => lay);
            foreach (var lay in others)
            {
                if (!_problem.Slit && kept is not null)
                    break;
                var (type, across, _, _) = _problem.Lays[lay];
                var count = (int)Math.Min(Math.Min(left[type], room / across), _problem.Slit ? int.MaxValue : 1);
                counts[lay] += count;
                left[type] -= count;
                room -= count * across;
                if (!_problem.Slit && count > 0)
                    break;
            }

            if (Level.Of(counts) is { } now)
                filled.Add(now);
        }

        return SheetPattern.Of(_problem, bar, filled);
    }

    /// <summary>As much of a job as a table asks for: what each item takes, and how much room there is.</summary>
    private static CutProblem TableJob(long[] weights, long room) => new()
    {
        Weight = weights,
        Demand = [.. weights.Select(_ => 1)],
        Bars = [new CutBar(0, room, room, 0, int.MaxValue, Missing: false)],
        Grain = 1,
        Worth = null,
    };
}
