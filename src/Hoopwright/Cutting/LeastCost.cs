namespace Hoopwright.Cutting;

/// <summary>What the engine found for a job: a plan, and a bound that no plan can go below.</summary>
internal sealed record LeastCostAnswer(Mixture? Plan, long Bound)
{
    /// <summary>True when the plan meets the bound.</summary>
    public bool Proven => Plan is not null && Plan.Cost == Bound;
}

/// <summary>The engine: a greedy plan, a bound from the best mixture, better plans by rounding, then a search of what is left.</summary>
internal static class LeastCost
{
    private const int MostTypes = 1200;
    private const int FirstDives = 3;
    private const int MostSwerves = 3;
    private const int StepsADive = 400;
    private const int MoreDives = 4;
    private const int Rounds = 8;
    private const int FirstPatterns = 20_000;
    private const int MostPatterns = 1_000_000;

    public static LeastCostAnswer Solve(CutProblem problem, WorkMeter meter)
    {
        if (Greedy.Best(problem, meter) is not { } plan)
            return new LeastCostAnswer(null, 0);
        var bound = MaterialBound(problem);
        // With no work left the bound of the mixture is not sought either: its table alone costs more than a small effort.
        if (plan.Cost <= bound || problem.Types > MostTypes || meter.IsOver)
            return new LeastCostAnswer(plan, Math.Min(bound, plan.Cost));
        if (!FillTable.Fits(problem))
            return CoarseGrain.Solve(problem, plan, Math.Min(bound, plan.Cost), meter);

        var table = new FillTable(problem, meter);
        var costs = PossibleCosts.Of(problem, plan.Cost);
        var root = new Relaxation(problem, new BarFilling(problem, table, meter), plan.Cost, problem.Demand, Greedy.Limits(problem), meter);
        foreach (var (pattern, _) in plan.Parts)
            root.Add(pattern);
        root.Solve(int.MaxValue, enough: plan.Cost);
        var prices = root.Best;
        if (prices is null)
            return new LeastCostAnswer(plan, Math.Min(bound, plan.Cost));
        bound = Math.Min(plan.Cost, costs.AtLeast(Math.Max(bound, prices.Bound)));

        var known = Improved(plan, bound, from: 0, to: FirstDives);
        return known.Cost > bound ? Search() : new LeastCostAnswer(known, bound);

        // Rounds the mixture to whole bars in several ways.
        Mixture Improved(Mixture best, long goal, int from, int to)
        {
            for (var dive = from; dive < to && best.Cost > goal && !meter.IsOver; dive++)
            {
                root.Want(problem.Demand, Greedy.Limits(problem));
                root.Solve(int.MaxValue, enough: long.MaxValue);
                // Turns from the first dive on only where there is work enough for the search after it.
                var swerves = meter.Left > Diving.MuchWork ? MostSwerves : Math.Min(dive, MostSwerves);
                best = Diving.Best(problem, root, best, goal, dive, swerves, StepsADive, meter);
            }

            return best;
        }

        // Searches every pattern within the gap; where they are too many, first those at hand for a plan that narrows it.
        LeastCostAnswer Search()
        {
            for (var round = 0; ; round++)
            {
                // A plan cheaper by one unit cannot use a pattern that costs more than this above its prices.
                var gap = ((Int128)(known.Cost - 1) * prices.Scale) - prices.Scaled;
                var most = Math.Min(MostPatterns, FirstPatterns << Math.Min(round, 8));
                if (PatternPool.Within(problem, table, prices, gap, most, meter) is { } all)
                {
                    var (best, least) = new PoolSearch(problem, all, prices.Scale, costs, meter).Run(known, bound);
                    return new LeastCostAnswer(best, Math.Max(bound, least));
                }

                if (meter.IsOver || round == Rounds)
                    return new LeastCostAnswer(known, bound);
                known = Improved(known, bound, from: FirstDives + (MoreDives * round), to: FirstDives + (MoreDives * (round + 1)));
                var some = root.Patterns.Where(pattern => prices.Excess(pattern) <= gap).ToHashSet(Pattern.Same.Instance);
                for (var part = 2; part <= 64 && some.Count < FirstPatterns; part *= 2)
                {
                    if (PatternPool.Within(problem, table, prices, gap / part, FirstPatterns / 8, meter) is not { } near)
                        continue;
                    some.UnionWith(near);
                    break;
                }

                // A share of the work left, so that a pool without a better plan in it does not use it all up.
                var share = new WorkMeter(meter.Left / 8, () => meter.IsOver);
                if (known.Cost > bound)
                    (known, _) = new PoolSearch(problem, [.. some], prices.Scale, costs, share).Run(known, bound);
                meter.Spend(share.Spent);
                if (known.Cost <= bound)
                    return new LeastCostAnswer(known, bound);
            }
        }
    }

    /// <summary>No plan is cheaper than all the material at the best price per weight that any bar can give.</summary>
    public static long MaterialBound(CutProblem problem)
    {
        if (problem.CanEarn)
            return EarningBound(problem);
        // Least cost per weight over bars, as a fraction: a full bar is the cheapest per weight unless its rest has worth.
        var (price, weight) = (Int128.MaxValue, Int128.One);
        for (var bar = 0; bar < problem.Bars.Length; bar++)
        {
            var capacity = problem.Bars[bar].Capacity;
            // With worth the least cost is at the lightest fill; over the capacity it bounds every fill's cost per weight.
            Int128 least = problem.Worth is null ? problem.Bars[bar].Price : problem.CostOf(bar, problem.Weight[^1]);
            if (price == Int128.MaxValue || least * weight < price * capacity)
                (price, weight) = (least, capacity);
        }

        var total = problem.TotalWeight * price;
        var bound = total / weight;
        return (long)(bound * weight < total ? bound + 1 : bound);
    }

    /// <summary>Where cutting a bar can bring money in: every bar there can be, each at its least cost.</summary>
    private static long EarningBound(CutProblem problem)
    {
        var pieces = problem.PieceCount;
        var least = Enumerable.Range(0, problem.Bars.Length).Min(bar => problem.CostOf(bar, problem.Weight[^1]));
        return Math.Min(0, least) * pieces;
    }
}
