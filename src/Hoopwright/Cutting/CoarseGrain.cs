namespace Hoopwright.Cutting;

/// <summary>
/// Jobs whose lengths have no common measure worth a table, such as inch lengths under a metric saw cut: solved twice on a
/// coarser measure. With weights rounded down no plan is lost, so the bound holds; with weights rounded up every plan fits.
/// Where the plan of the first fits as it is, or the second costs no more than the bound, that is the least cost.
/// </summary>
internal static class CoarseGrain
{
    // A coarse look first; a finer one only where that leaves a gap.
    private static readonly long[] Positions = [50_000, 400_000];

    /// <summary>Betters a greedy plan and its bound.</summary>
    public static LeastCostAnswer Solve(CutProblem problem, Mixture plan, long bound, WorkMeter meter)
    {
        foreach (var positions in Positions)
        {
            var step = Math.Min((problem.Capacity / positions) + 1, problem.Weight[^1]);
            var below = Rounded(problem, step, up: false);
            if (!FillTable.Fits(below) || meter.IsOver)
                break;
            var share = new WorkMeter(meter.Left / 3, () => meter.IsOver);
            var loose = LeastCost.Solve(below, share);
            meter.Spend(share.Spent);
            bound = Math.Min(plan.Cost, Math.Max(bound, loose.Bound));
            plan = Cheaper(plan, loose.Plan is null ? null : Refitted(problem, below, loose.Plan));
            var above = Rounded(problem, step, up: true);
            if (plan.Cost == bound || above.Bars.Length == 0)
                break;
            share = new WorkMeter(meter.Left / 3, () => meter.IsOver);
            plan = Cheaper(plan, LeastCost.Solve(above, share).Plan is { } tight ? Refitted(problem, above, tight) : null);
            meter.Spend(share.Spent);
        }

        return new LeastCostAnswer(plan, Math.Min(bound, plan.Cost));
    }

    private static Mixture Cheaper(Mixture plan, Mixture? other) => other is not null && other.Cost < plan.Cost ? other : plan;

    private static CutProblem Rounded(CutProblem problem, long step, bool up)
    {
        long[] weight = [.. problem.Weight.Select(exact => (exact + (up ? step - 1 : 0)) / step)];
        return new CutProblem
        {
            Weight = weight,
            Demand = problem.Demand,
            Bars = [.. problem.Bars.Select(bar => bar with { Capacity = bar.Capacity / step }).Where(bar => bar.Capacity >= weight[^1])],
            Grain = problem.Grain * step,
            Worth = problem.Worth,
        };
    }

    /// <summary>The same patterns on the exact bars; null where one does not fit.</summary>
    private static Mixture? Refitted(CutProblem problem, CutProblem rounded, Mixture plan)
    {
        var exact = new Mixture { Method = plan.Method };
        foreach (var (pattern, times) in plan.Parts)
        {
            var coarse = rounded.Bars[pattern.Bar];
            var bar = Array.FindIndex(problem.Bars, bar => bar.Line == coarse.Line && bar.Missing == coarse.Missing);
            var same = new Pattern(problem, bar, pattern.Types, pattern.Counts);
            if (same.Used > problem.Bars[bar].Capacity)
                return null;
            exact.Add(same, times);
        }

        return exact;
    }
}
