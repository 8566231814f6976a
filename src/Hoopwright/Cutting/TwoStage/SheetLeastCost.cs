namespace Hoopwright.Cutting.TwoStage;

/// <summary>The engine for sheets: as for bars a greedy plan, a bound from the best mixture, better plans by rounding, a search of what is left.</summary>
internal static class SheetLeastCost
{
    private const int Dives = 6;
    private const int StepsADive = 400;
    private const int MostColumns = 60_000;
    private const int MostRows = 400;
    private const int SmallestPart = 64;

    public static LeastCostAnswer Solve(SheetProblem problem, WorkMeter meter)
    {
        if (SheetGreedy.Best(problem, meter) is not { } plan)
            return new LeastCostAnswer(null, 0);
        var bound = LeastCost.MaterialBound(problem);
        if (plan.Cost <= bound || meter.IsOver || !SheetFilling.Fits(problem))
            return new LeastCostAnswer(plan, Math.Min(bound, plan.Cost));

        var filling = new SheetFilling(problem, meter);
        var costs = PossibleCosts.Of(problem, plan.Cost);
        var root = new Relaxation(problem, filling, plan.Cost, problem.Demand, Greedy.Limits(problem), meter);
        foreach (var (pattern, _) in plan.Parts)
            root.Add(pattern);
        root.Solve(int.MaxValue, enough: plan.Cost);
        if (root.Best is not { } prices)
            return new LeastCostAnswer(plan, Math.Min(bound, plan.Cost));
        bound = Math.Min(plan.Cost, costs.AtLeast(Math.Max(bound, prices.Bound)));

        for (var dive = 0; dive < Dives && plan.Cost > bound && !meter.IsOver; dive++)
        {
            root.Want(problem.Demand, Greedy.Limits(problem));
            root.Solve(int.MaxValue, enough: long.MaxValue);
            plan = Diving.Best(problem, root, plan, bound, dive, Math.Min(dive, 3), StepsADive, meter);
        }

        return plan.Cost > bound ? Search() : new LeastCostAnswer(plan, bound);

        // Searches every stack and level within the gap; where they are too many, first those near the prices for a plan that narrows it.
        LeastCostAnswer Search()
        {
            for (var part = 1; part <= SmallestPart && plan.Cost > bound && !meter.IsOver;)
            {
                var gap = ((Int128)(plan.Cost - 1) * prices.Scale) - prices.Scaled;
                if (LevelPool.Within(problem, filling, prices, gap / part, MostColumns, MostRows, plan.Cost, meter) is not { } pool)
                {
                    part *= 2;
                    continue;
                }

                // A share of the work left, so that a pool without a better plan in it does not use it all up.
                var share = part == 1 ? meter : new WorkMeter(meter.Left / 4, () => meter.IsOver);
                var (best, least) = new PoolSearch(pool.Problem, pool.Columns, prices.Scale, costs, share).Run(plan, bound);
                if (part == 1)
                    return new LeastCostAnswer(best, Math.Min(best.Cost, Math.Max(bound, least)));
                meter.Spend(share.Spent);
                if (best.Cost == plan.Cost)
                    break;
                // The gap is smaller now: perhaps all of it can be searched.
                (plan, part) = (best, 1);
            }

            return new LeastCostAnswer(plan, Math.Min(bound, plan.Cost));
        }
    }
}
