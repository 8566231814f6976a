namespace Hoopwright.Cutting;

/// <summary>
/// Branch and cut over a pool that holds every pattern a cheaper plan could use. Branches are on whole numbers that any plan
/// has: how many bars of a kind, how many bars with two given lengths together, how many bars of one pattern.
/// </summary>
internal sealed class PoolSearch
{
    private const int CutRounds = 12;
    private const double PenaltyRange = 1e7;
    private readonly CutProblem _problem;
    private readonly long _scale;
    private readonly PossibleCosts _costs;
    private readonly WorkMeter _meter;
    private readonly List<Pattern> _pool;
    private SortedSet<int> _working = [];
    private long _undecided = long.MaxValue;

    public PoolSearch(CutProblem problem, List<Pattern> pool, long scale, PossibleCosts costs, WorkMeter meter)
    {
        (_problem, _scale, _costs, _meter) = (problem, scale, costs, meter);
        _pool = pool;
    }

    /// <summary>Looks for a cheaper plan than a known one.</summary>
    /// <returns>The cheapest plan known at the end, and a bound on all plans whose patterns are in the pool.</returns>
    public (Mixture Best, long Bound) Run(Mixture known, long floor)
    {
        var best = known;
        var open = new Stack<SearchNode>();
        open.Push(new SearchNode([], [], floor, 0));
        while (open.Count > 0 && best.Cost > floor)
        {
            if (_meter.IsOver)
                return (best, BoundOf(best, open));
            var node = open.Pop();
            if (node.Bound >= best.Cost)
                continue;
            var programme = Solved(ref node, ref best, withCuts: node.Depth == 0);
            if (programme is null)
            {
                open.Push(node);
                continue;
            }

            if (node.Bound >= best.Cost)
                continue;
            var solution = programme.Solution();
            if (programme.MissesRows || Branch(solution) is not { } branch)
            {
                // Neither served nor shown to be beyond serving, or whole but not met by the bound: only slips of rounding.
                _undecided = Math.Min(_undecided, node.Bound);
                continue;
            }

            var basis = programme.Basis();
            var (row, value) = branch;
            open.Push(node with
            {
                Rows = [.. node.Rows, new SearchRow(row, RowSense.AtMost, (long)Math.Floor(value))],
                Basis = basis,
                Depth = node.Depth + 1,
            });
            open.Push(node with
            {
                Rows = [.. node.Rows, new SearchRow(row, RowSense.AtLeast, (long)Math.Floor(value) + 1)],
                Basis = basis,
                Depth = node.Depth + 1,
            });
        }

        return (best, BoundOf(best, open));
    }

    /// <summary>The finest division of money that leaves room for a penalty.</summary>
    private static long ScaleOf(double penalty) => Math.Max(1, (long)((1L << 50) / penalty));

    private long BoundOf(Mixture best, Stack<SearchNode> open) =>
        Math.Min(Math.Min(best.Cost, _undecided), open.Select(node => node.Bound).DefaultIfEmpty(long.MaxValue).Min());

    /// <summary>Solves a part, with cuts at the root; raises its bound and takes up better plans on the way.</summary>
    private SearchProgramme? Solved(ref SearchNode node, ref Mixture best, bool withCuts)
    {
        var penalty = 2.0 * (1 + _problem.Bars.Max(bar => bar.Price));
        var largest = penalty * PenaltyRange;
        for (var round = 0; ; round++)
        {
            var programme = new SearchProgramme(_problem, _pool, _working, node, penalty, Math.Min(_scale, ScaleOf(penalty)), _meter);
            if (!programme.Solve())
                return null;
            node = node with { Bound = Math.Max(node.Bound, _costs.AtLeast(programme.Bound)) };
            if (node.Bound >= best.Cost)
                return programme;
            if (Rounded(programme.Solution()) is { } plan && plan.Cost < best.Cost)
                best = plan;
            Remember(programme, best.Cost);
            if (programme.MissesRows)
            {
                // Missing a row was cheaper than serving it: ask again with a higher penalty, a few times at most.
                if (penalty > largest)
                    return programme;
                penalty *= 30;
                continue;
            }

            if (!withCuts || round >= CutRounds)
                return programme;
            var cuts = ZeroHalfCuts.Violated(_problem, _pool, programme.Solution());
            if (cuts.Count == 0)
                return programme;
            node = node with { Rows = [.. node.Rows, .. cuts], Basis = programme.Basis() };
        }
    }

    /// <summary>Keeps the columns that are near the prices for the parts to come.</summary>
    private void Remember(SearchProgramme programme, long ceiling)
    {
        if (_working.Count < 600)
        {
            _working.UnionWith(programme.Working);
            return;
        }

        var gap = ((Int128)ceiling * programme.Scale) - programme.ScaledBound;
        _working = [.. programme.Working.Where(index => programme.Excess[index] < gap / 2)];
    }

    private Mixture? Rounded(List<(int Index, double Amount)> solution)
    {
        var builder = new PlanBuilder(_problem, CutMethod.Search, _meter);
        foreach (var (index, amount) in solution)
            builder.Keep(_pool[index], (int)Math.Floor(amount + 1e-5));
        foreach (var (index, amount) in solution.OrderByDescending(part => part.Amount - Math.Floor(part.Amount + 1e-5)).ThenBy(part => part.Index))
        {
            if (amount - Math.Floor(amount + 1e-5) > 0.5)
                builder.Keep(_pool[index], 1);
        }

        return builder.Finish();
    }

    private (short[] Row, double Value)? Branch(List<(int Index, double Amount)> solution)
    {
        if (BarCounts(solution) is { } byBar)
            return byBar;
        if (Pairs(solution) is { } byPair)
            return byPair;
        var chosen = -1;
        var best = 1e-5;
        foreach (var (index, amount) in solution)
        {
            var part = amount - Math.Floor(amount);
            if (Math.Min(part, 1 - part) > 1e-5 && part > best)
                (chosen, best) = (index, part);
        }

        if (chosen < 0)
            return null;
        var single = new short[_pool.Count];
        single[chosen] = 1;
        return (single, solution.Find(part => part.Index == chosen).Amount);
    }

    private (short[] Row, double Value)? BarCounts(List<(int Index, double Amount)> solution)
    {
        if (_problem.Bars.Length < 2)
            return null;
        var counts = new double[_problem.Bars.Length];
        foreach (var (index, amount) in solution)
            counts[_pool[index].Bar] += amount;
        var chosen = -1;
        var best = 1e-4;
        for (var bar = 0; bar < counts.Length; bar++)
        {
            var part = Fraction(counts[bar]);
            if (part > best)
                (chosen, best) = (bar, part);
        }

        return chosen < 0 ? null : ([.. _pool.Select(pattern => (short)(pattern.Bar == chosen ? 1 : 0))], counts[chosen]);
    }

    private (short[] Row, double Value)? Pairs(List<(int Index, double Amount)> solution)
    {
        var sums = new SortedDictionary<(int One, int Other), double>();
        foreach (var (index, amount) in solution)
        {
            var pattern = _pool[index];
            for (var i = 0; i < pattern.Types.Length; i++)
            {
                for (var j = pattern.Counts[i] > 1 ? i : i + 1; j < pattern.Types.Length; j++)
                {
                    var pair = (pattern.Types[i], pattern.Types[j]);
                    sums[pair] = sums.GetValueOrDefault(pair) + amount;
                }
            }
        }

        (int One, int Other)? chosen = null;
        var best = 1e-4;
        foreach (var (pair, sum) in sums)
        {
            if (Fraction(sum) > best + 1e-6)
                (chosen, best) = (pair, Fraction(sum));
        }

        if (chosen is not { } both)
            return null;
        return ([.. _pool.Select(pattern => (short)(Together(pattern, both) ? 1 : 0))], sums[both]);
    }

    private static bool Together(Pattern pattern, (int One, int Other) pair) => pair.One == pair.Other
        ? pattern.CountOf(pair.One) > 1
        : pattern.CountOf(pair.One) > 0 && pattern.CountOf(pair.Other) > 0;

    /// <summary>How far a number is from the nearest whole one.</summary>
    private static double Fraction(double value) => Math.Min(value - Math.Floor(value), Math.Ceiling(value) - value);
}
