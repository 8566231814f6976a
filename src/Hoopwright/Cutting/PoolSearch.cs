namespace Hoopwright.Cutting;

/// <summary>
/// Branch and cut over a pool that holds every pattern a cheaper plan could use. Branches are on whole numbers that any plan
/// has: how many bars of a kind, how many bars with two given lengths together, how many bars of one pattern.
/// </summary>
internal sealed class PoolSearch
{
    private const int CutRounds = 12;
    private const int QuickNodes = 60;
    private const int MostInVain = 16;
    private const int QuickNodesPerLength = 3;
    private const double MuchSmaller = 0.8;
    private const double PenaltyRange = 1e7;
    private readonly CutProblem _problem;
    private readonly long _scale;
    private readonly PossibleCosts _costs;
    private readonly WorkMeter _meter;
    private List<Pattern> _pool;
    private SortedSet<int> _working = [];
    private long _undecided = long.MaxValue;

    public PoolSearch(CutProblem problem, List<Pattern> pool, long scale, PossibleCosts costs, WorkMeter meter)
    {
        (_problem, _scale, _costs, _meter) = (problem, scale, costs, meter);
        _pool = pool;
    }

    /// <summary>Looks for a cheaper plan than a known one: first a little with quick branches, then with strong ones.</summary>
    /// <returns>The cheapest plan known at the end, and a bound on all plans whose patterns are in the pool.</returns>
    public (Mixture Best, long Bound) Run(Mixture known, long floor)
    {
        var (best, bound) = Run(known, floor, QuickNodes + (QuickNodesPerLength * _problem.Types));
        return bound >= best.Cost || _meter.IsOver ? (best, bound) : Run(best, floor, quickNodes: 0);
    }

    private (Mixture Best, long Bound) Run(Mixture known, long floor, int quickNodes)
    {
        var best = known;
        _undecided = long.MaxValue;
        var nodes = 0;
        var open = new OpenNodes(lowestFirst: quickNodes == 0 && _problem.HasFineCosts);
        open.Push(new SearchNode([], [], floor, 0));
        while (open.Count > 0 && best.Cost > floor)
        {
            if (_meter.IsOver)
                return (best, BoundOf(best, open));
            if (quickNodes > 0 && nodes++ == quickNodes)
                break;
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
            if (node.Depth == 0 && Narrowed(programme, best.Cost))
            {
                open.Push(new SearchNode([], [], node.Bound, 0));
                continue;
            }

            var solution = programme.Solution();
            if (Choose(programme, solution) is not { } branch)
            {
                // Whole but not met by the bound, or short of a row by a hair: only slips of rounding.
                _undecided = Math.Min(_undecided, node.Bound);
                continue;
            }

            var basis = programme.Basis();
            open.Push(node with { Rows = [.. node.Rows, branch.Down(_pool)], Basis = basis, Depth = node.Depth + 1 });
            open.Push(node with { Rows = [.. node.Rows, branch.Up(_pool)], Basis = basis, Depth = node.Depth + 1 });
        }

        return (best, BoundOf(best, open));

        BranchChoice? Choose(SearchProgramme programme, List<(int Index, double Amount)> solution) =>
            quickNodes > 0 ? BranchChoices.Quick(_problem, _pool, solution) : Branch(programme, solution, best.Cost);
    }

    /// <summary>
    /// Drops the patterns that cost more above the prices of the whole programme than a cheaper plan has to spare; true when
    /// that makes the pool much smaller, so that it is worth starting again with what is left.
    /// </summary>
    private bool Narrowed(SearchProgramme programme, long ceiling)
    {
        var spare = ((Int128)(ceiling - 1) * programme.Scale) - programme.ScaledBound;
        var left = programme.Excess.Count(excess => excess <= spare);
        if (left > _pool.Count * MuchSmaller)
            return false;
        _working = [];
        _pool = [.. _pool.Where((_, index) => programme.Excess[index] <= spare)];
        return true;
    }

    private double Penalty => 2.0 * (1 + _problem.Bars.Max(bar => bar.Price));

    /// <summary>The finest division of money that leaves room for a penalty.</summary>
    private static long ScaleOf(double penalty) => Math.Max(1, (long)((1L << 50) / penalty));

    private long BoundOf(Mixture best, OpenNodes open) => Math.Min(Math.Min(best.Cost, _undecided), open.Bound);

    /// <summary>Solves a part, with cuts at the root; raises its bound and takes up better plans on the way.</summary>
    private SearchProgramme? Solved(ref SearchNode node, ref Mixture best, bool withCuts)
    {
        var penalty = Penalty;
        var largest = penalty * PenaltyRange;
        for (var round = 0; ; round++)
        {
            var programme = new SearchProgramme(_problem, _pool, _working, node, penalty, Math.Min(_scale, ScaleOf(penalty)), _meter);
            if (!programme.Solve())
                return null;
            node = node with { Bound = Math.Max(node.Bound, _costs.AtLeast(programme.Bound)) };
            if (node.Bound >= best.Cost)
                return programme;
            if (_problem.Rounded(_pool, programme.Solution(), _meter) is { } plan && plan.Cost < best.Cost)
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

    /// <summary>
    /// The branch to take: of the likeliest few, the one whose both sides raise the bound most (strong branching); where
    /// costs are fine the trials end when several in a row are no better. Null when the solution is whole.
    /// </summary>
    private BranchChoice? Branch(SearchProgramme programme, List<(int Index, double Amount)> solution, long ceiling)
    {
        var choices = BranchChoices.Of(_problem, _pool, solution);
        if (choices.Count < 2)
            return choices.FirstOrDefault();
        BranchChoice? best = null;
        var bestScore = -1.0;
        var way = ceiling - programme.Cost;
        var inVain = 0;
        foreach (var choice in choices)
        {
            var (downRise, upRise) = programme.Rises(choice);
            var (down, up) = (Gain(downRise), Gain(upRise));
            var score = Math.Max(down, 1e-4) * Math.Max(up, 1e-4);
            if (score <= bestScore)
            {
                if (++inVain == MostInVain && _problem.HasFineCosts)
                    break;
                continue;
            }

            inVain = 0;
            (best, bestScore) = (choice, score);
            // Both sides beyond the ceiling: nothing can be better.
            if (down >= 1 && up >= 1)
                break;
        }

        return best;

        // How much of the way to the ceiling the cost rises on one side.
        double Gain(double rise) => way <= 0 ? 1 : Math.Clamp(rise / way, 0, 1);
    }
}
