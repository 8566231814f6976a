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
    private const int Dives = 6;

    public static LeastCostAnswer Solve(CutProblem problem, WorkMeter meter)
    {
        if (Greedy.Best(problem, meter) is not { } plan)
            return new LeastCostAnswer(null, 0);
        var bound = MaterialBound(problem);
        if (plan.Cost <= bound || problem.Types > MostTypes || !FillTable.Fits(problem))
            return new LeastCostAnswer(plan, Math.Min(bound, plan.Cost));

        var table = new FillTable(problem, meter);
        var costs = PossibleCosts.Of(problem, plan.Cost);
        var root = new Relaxation(problem, table, plan.Cost, meter);
        foreach (var (pattern, _) in plan.Parts)
            root.Add(pattern);
        root.Solve(problem.Demand, int.MaxValue, whole: true, enough: plan.Cost);
        var prices = root.Best;
        if (prices is null)
            return new LeastCostAnswer(plan, Math.Min(bound, plan.Cost));
        bound = Math.Min(plan.Cost, costs.AtLeast(Math.Max(bound, prices.Bound)));

        var patterns = root.Patterns.ToList();
        for (var dive = 0; dive < Dives && plan.Cost > bound && !meter.IsOver; dive++)
        {
            var relaxation = root;
            if (dive > 0)
            {
                relaxation = new Relaxation(problem, table, plan.Cost, meter);
                patterns.ForEach(pattern => relaxation.Add(pattern));
                relaxation.Solve(problem.Demand, int.MaxValue, whole: false, long.MaxValue);
            }

            if (Diving.Best(problem, relaxation, bound, dive, meter) is { } better && better.Cost < plan.Cost)
                plan = better;
        }

        return new LeastCostAnswer(plan, bound);
    }

    /// <summary>No plan is cheaper than all the material at the best price per weight that any bar can give.</summary>
    private static long MaterialBound(CutProblem problem)
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
