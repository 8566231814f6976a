namespace Hoopwright.Cutting;

/// <summary>
/// Every pattern that a plan cheaper than the best known one could use: a plan that uses a pattern costs at least the bound
/// and what the pattern costs above its prices. All in whole numbers, so that none is missed.
/// </summary>
internal sealed class PatternPool
{
    private readonly CutProblem _problem;
    private readonly FillTable _table;
    private readonly SafePrices _prices;
    private readonly WorkMeter _meter;
    private readonly int _most;
    private readonly List<Pattern> _found = [];
    private readonly int[] _counts;
    private int _bar;
    private long _needed;

    private PatternPool(CutProblem problem, FillTable table, SafePrices prices, int most, WorkMeter meter)
    {
        (_problem, _table, _prices, _most, _meter) = (problem, table, prices, most, meter);
        _counts = new int[problem.Types];
    }

    /// <summary>All patterns that cost at most so much above their prices; null when there are too many.</summary>
    public static List<Pattern>? Within(
        CutProblem problem, FillTable table, SafePrices prices, Int128 excess, int most, WorkMeter meter)
    {
        if (excess < 0)
            return [];
        if (excess > long.MaxValue / 4)
            return null;
        var pool = new PatternPool(problem, table, prices, most, meter);
        return pool.Collect((long)excess) ? pool._found : null;
    }

    private bool Collect(long excess)
    {
        if (_problem.Worth is null)
            _table.Fill(_prices.Pieces, _problem.Demand);
        for (_bar = 0; _bar < _problem.Bars.Length; _bar++)
        {
            var bar = _problem.Bars[_bar];
            if (_problem.Worth is null)
            {
                _needed = (bar.Price * _prices.Scale) - _prices.Bars[_bar] - excess;
            }
            else
            {
                // The cost depends on where a bar's pieces end: it is put at the end of the table.
                var end = new long[_problem.Capacity + 1];
                for (var room = 0L; room <= bar.Capacity; room++)
                    end[room] = -_problem.CostOf(_bar, bar.Capacity - room) * _prices.Scale;
                _table.Fill(_prices.Pieces, _problem.Demand, end);
                _needed = -_prices.Bars[_bar] - excess;
            }

            if (_table.Best(0, bar.Capacity) >= _needed && !Extend(0, bar.Capacity, 0))
                return false;
        }

        return true;
    }

    /// <summary>Tries every count of one length, most first. False when there are too many patterns.</summary>
    private bool Extend(int type, long room, long value)
    {
        if (_meter.IsOver)
            return false;
        // Lengths that do not fit cannot be taken.
        while (type < _counts.Length && _problem.Weight[type] > room)
            type++;
        if (type == _counts.Length)
            return Keep(room);
        _meter.Spend(10);
        var weight = _problem.Weight[type];
        for (var count = (int)Math.Min(_problem.Demand[type], room / weight); count >= 0; count--)
        {
            var rest = room - (count * weight);
            var sum = value + (count * _prices.Pieces[type]);
            if (sum + _table.Best(type + 1, rest) < _needed)
                continue;
            _counts[type] = count;
            var within = Extend(type + 1, rest, sum);
            _counts[type] = 0;
            if (!within)
                return false;
        }

        return true;
    }

    private bool Keep(long room)
    {
        var used = _problem.Bars[_bar].Capacity - room;
        if (used == 0 || IsOutdone(used, room))
            return true;
        if (_found.Count == _most)
            return false;
        _found.Add(Pattern.Of(_problem, _bar, _counts));
        return true;
    }

    /// <summary>True when a further piece fits at no cost: that pattern serves in this one's stead, its surplus left out.</summary>
    private bool IsOutdone(long used, long room)
    {
        if (_problem.CanEarn)
            return false;
        for (var type = _problem.Types - 1; type >= 0 && _problem.Weight[type] <= room; type--)
        {
            if (_counts[type] < _problem.Demand[type]
                && (_problem.Worth is null
                    || _problem.CostOf(_bar, used + _problem.Weight[type]) == _problem.CostOf(_bar, used)))
                return true;
        }

        return false;
    }
}
