namespace Hoopwright.Cutting.TwoStage;

/// <summary>
/// Every stack and every level that a plan cheaper than the best known one could use. Any plan can be changed, at no cost, into one
/// whose levels are as long as their longest piece, hold no room for another piece that short, and whose sheets hold no room for
/// another level; so only such are collected.
/// </summary>
internal sealed class LevelPool
{
    private readonly SheetProblem _problem;
    private readonly SheetFilling _filling;
    private readonly SafePrices _prices;
    private readonly long _excess;
    private readonly int _most;
    private readonly WorkMeter _meter;
    private readonly List<(int Sheet, (int Length, int Times)[] Levels)> _stacks = [];
    private readonly List<(int Width, int Length, Level Level)> _levels = [];
    private readonly int[][] _mostLevels;

    private LevelPool(SheetProblem problem, SheetFilling filling, SafePrices prices, long excess, int most, WorkMeter meter)
    {
        (_problem, _filling, _prices, _excess, _most, _meter) = (problem, filling, prices, excess, most, meter);
        // A level as long as its longest piece: no more of them than there are pieces so long that the width holds.
        _mostLevels =
        [
            .. filling.ClassWidths.Select(width => problem.LevelLengths.Select(length => problem.Lays.Where(lay => lay.Along == length && lay.Across <= width)
                .Select(lay => lay.Type).Distinct().Sum(type => problem.Demand[type])).ToArray()),
        ];
    }

    /// <summary>The job for the search and its columns; null when there are too many.</summary>
    public static (LevelProblem Problem, List<Pattern> Columns)? Within(
        SheetProblem problem, SheetFilling filling, SafePrices prices, Int128 excess, int most, int mostRows, long ceiling, WorkMeter meter)
    {
        if (excess < 0 || excess > long.MaxValue / 4)
            return null;
        filling.Price(prices.Pieces, problem.Demand);
        var pool = new LevelPool(problem, filling, prices, (long)excess, most, meter);
        return pool.Collect() ? pool.Columns(mostRows, ceiling) : null;
    }

    private (LevelProblem Problem, List<Pattern> Columns)? Columns(int mostRows, long ceiling)
    {
        var slots = _stacks.SelectMany(stack => stack.Levels.Select(level => (Width: _filling.ClassOf(stack.Sheet), level.Length))).Distinct().Order().ToList();
        if (slots.Count + _problem.Types > mostRows)
            return null;
        var job = LevelProblem.Of(_problem, _filling, slots, ceiling);
        var known = slots.ToHashSet();
        var columns = new HashSet<Pattern>(Pattern.Same.Instance);
        columns.UnionWith(_stacks.Select(stack => job.Stack(stack.Sheet, stack.Levels)));
        columns.UnionWith(_levels.Where(level => known.Contains((level.Width, level.Length))).Select(level => job.Filled(level.Width, level.Length, level.Level)));
        columns.UnionWith(Enumerable.Range(_problem.Sheets, _problem.Bars.Length - _problem.Sheets).Select(job.LeftOut));
        return (job, [.. columns]);
    }

    private bool Collect()
    {
        for (var sheet = 0; sheet < _problem.Sheets; sheet++)
        {
            var width = _filling.ClassOf(sheet);
            var needed = (_problem.Bars[sheet].Price * _prices.Scale) - _prices.Bars[sheet] - _excess;
            if (_filling.WorthAlong(width, 0, _problem.Lengths[sheet]) >= needed
                && !ExtendStack(sheet, width, 0, _problem.Lengths[sheet], 0, needed, new int[_problem.LevelLengths.Length]))
                return false;
        }

        foreach (var (width, length) in _stacks.SelectMany(stack => stack.Levels.Select(level => (_filling.ClassOf(stack.Sheet), level.Length))).Distinct().Order())
        {
            var needed = _filling.Worth(width, length) - _excess;
            if (!ExtendLevel(width, length, _problem.FirstLay[length], _filling.ClassWidths[width], 0, needed, new int[_problem.Lays.Length], new int[_problem.Types]))
                return false;
        }

        return true;
    }

    private bool ExtendStack(int sheet, int width, int length, long room, long value, long needed, int[] times)
    {
        if (_meter.IsOver)
            return false;
        _meter.Spend(10);
        if (length == times.Length)
        {
            for (var other = times.Length - 1; other >= 0 && _problem.LevelLengths[other] <= room; other--)
            {
                if (times[other] < _mostLevels[width][other])
                    return true;
            }

            if (Array.TrueForAll(times, count => count == 0))
                return true;
            if (_stacks.Count + _levels.Count >= _most)
                return false;
            _stacks.Add((sheet, [.. Enumerable.Range(0, times.Length).Where(at => times[at] > 0).Select(at => (at, times[at]))]));
            return true;
        }

        var along = _problem.LevelLengths[length];
        for (var count = (int)Math.Min(_mostLevels[width][length], room / along); count >= 0; count--)
        {
            var rest = room - (count * along);
            var sum = value + (count * _filling.Worth(width, length));
            if (sum + (length + 1 < times.Length ? _filling.WorthAlong(width, length + 1, rest) : 0) < needed)
                continue;
            times[length] = count;
            var within = ExtendStack(sheet, width, length + 1, rest, sum, needed, times);
            times[length] = 0;
            if (!within)
                return false;
        }

        return true;
    }

    private bool ExtendLevel(int width, int length, int lay, long room, long value, long needed, int[] counts, int[] ofType)
    {
        if (_meter.IsOver)
            return false;
        _meter.Spend(10);
        var first = _problem.FirstLay[length];
        // Past the lays that are as long as the level, one of them must be in it.
        if (lay > first && (lay == counts.Length || _problem.Lays[lay].Along < _problem.LevelLengths[length]) && _problem.Lays[lay - 1].Along == _problem.LevelLengths[length]
            && Array.TrueForAll(counts, count => count == 0))
            return true;
        if (lay == counts.Length)
            return Keep(width, length, room, counts, ofType);
        var (type, across, _, _) = _problem.Lays[lay];
        var most = (int)Math.Min(_problem.Demand[type] - ofType[type], room / across);
        if (!_problem.Slit)
            most = Math.Min(most, Array.TrueForAll(counts, count => count == 0) ? 1 : 0);
        for (var count = most; count >= 0; count--)
        {
            var rest = room - (count * across);
            var sum = value + (count * _prices.Pieces[type]);
            if (sum + (lay + 1 < counts.Length && (_problem.Slit || count == 0) ? _filling.WorthWithin(lay + 1, rest) : 0) < needed)
                continue;
            (counts[lay], ofType[type]) = (count, ofType[type] + count);
            var within = ExtendLevel(width, length, lay + 1, rest, sum, needed, counts, ofType);
            (counts[lay], ofType[type]) = (0, ofType[type] - count);
            if (!within)
                return false;
        }

        return true;
    }

    private bool Keep(int width, int length, long room, int[] counts, int[] ofType)
    {
        for (var lay = _problem.FirstLay[length]; _problem.Slit && lay < counts.Length; lay++)
        {
            if (_problem.Lays[lay].Across <= room && ofType[_problem.Lays[lay].Type] < _problem.Demand[_problem.Lays[lay].Type])
                return true;
        }

        if (_stacks.Count + _levels.Count >= _most)
            return false;
        _levels.Add((width, length, Level.Of(counts)!));
        return true;
    }
}
