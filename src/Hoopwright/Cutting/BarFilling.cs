namespace Hoopwright.Cutting;

/// <summary>Patterns of bars, from the exact knapsack table.</summary>
internal sealed class BarFilling : PatternSource
{
    private readonly CutProblem _problem;
    private readonly FillTable _table;
    private readonly WorkMeter _meter;
    private readonly long[][]? _costs;
    private readonly long[] _room;
    private long[] _pieces = [];
    private int[] _wanted = [];

    public BarFilling(CutProblem problem, FillTable table, WorkMeter meter)
    {
        (_problem, _table, _meter) = (problem, table, meter);
        _room = [.. problem.Bars.Select(bar => bar.Capacity)];
        if (problem.Worth is not null)
            _costs = [.. Enumerable.Range(0, problem.Bars.Length).Select(CostsByFill)];
    }

    public override void Price(long[] pieces, ReadOnlySpan<int> wanted)
    {
        (_pieces, _wanted) = (pieces, wanted.ToArray());
        _table.Fill(pieces, wanted);
    }

    public override long LeastExcess(int bar, long scale)
    {
        var capacity = _problem.Bars[bar].Capacity;
        if (_costs is null)
            return (_problem.Bars[bar].Price * scale) - _table.Best(0, capacity);
        var (least, room) = (long.MaxValue, capacity);
        for (var used = _problem.Weight[^1]; used <= capacity; used++)
        {
            var excess = (_costs[bar][used] * scale) - _table.Best(0, used);
            if (excess < least)
                (least, room) = (excess, used);
        }

        _meter.Spend(capacity);
        _room[bar] = room;
        return least;
    }

    /// <summary>The best pattern within the room at which the bar costs least, and the best ones that begin with a shorter piece.</summary>
    public override IEnumerable<Pattern> Below(int bar, long scale, long barPrice)
    {
        var room = _room[bar];
        var worthwhile = new List<(long Excess, int First)>();
        for (var first = 0; first < _problem.Types; first++)
        {
            if (_pieces[first] <= 0 || _problem.Weight[first] > room || _wanted[first] == 0)
                continue;
            var excess = (_problem.Bars[bar].Price * scale) - barPrice - _table.Best(first, room);
            if (_costs is not null || excess < 0)
                worthwhile.Add((excess, first));
        }

        var counts = new int[_problem.Types];
        foreach (var (_, first) in worthwhile.OrderBy(found => found.Excess).ThenBy(found => found.First))
        {
            Array.Clear(counts);
            _table.Trace(first, room, counts);
            yield return Pattern.Of(_problem, bar, counts);
        }
    }

    private long[] CostsByFill(int bar)
    {
        var costs = new long[_problem.Bars[bar].Capacity + 1];
        for (var used = 0; used < costs.Length; used++)
            costs[used] = _problem.CostOf(bar, used);
        return costs;
    }
}
