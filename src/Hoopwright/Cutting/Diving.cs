namespace Hoopwright.Cutting;

/// <summary>
/// Turns the best mixture into whole bars: keeps the whole parts, fixes the part nearest the next whole bar, works the best
/// mixture of the rest out again, and so on. At each step the rest is also finished greedily.
/// </summary>
internal static class Diving
{
    /// <summary>The cheapest plan met on the way down; null when none within the limits was met.</summary>
    /// <param name="problem">The job.</param>
    /// <param name="relaxation">Its best mixture, solved; left changed.</param>
    /// <param name="goal">Stops at a plan that costs no more.</param>
    /// <param name="variant">0 fixes the part nearest to whole; higher numbers fix another one at the first steps.</param>
    /// <param name="meter">Counts the work.</param>
    public static Mixture? Best(CutProblem problem, Relaxation relaxation, long goal, int variant, WorkMeter meter)
    {
        var builder = new PlanBuilder(problem, CutMethod.Rounding, meter);
        Mixture? best = null;
        for (var step = 0; !meter.IsOver; step++)
        {
            var solution = relaxation.Solution();
            var whole = 0;
            foreach (var (pattern, amount) in solution)
                whole += builder.Keep(pattern, (int)Math.Floor(amount + 1e-6));

            if (builder.Finish() is { } plan && (best is null || plan.Cost < best.Cost))
                best = plan;
            if (best?.Cost <= goal || builder.IsComplete)
                return best;
            if (whole == 0)
            {
                var parts = solution.OrderByDescending(part => part.Amount - Math.Floor(part.Amount))
                    .ThenBy(part => part.Pattern.Bar).ThenByDescending(part => part.Pattern.Used).ToList();
                var pick = Math.Min((variant >> (2 * Math.Min(step, 15))) & 3, parts.Count - 1);
                if (parts.Count == 0 || !parts.Skip(pick).Concat(parts).Any(part => builder.Keep(part.Pattern, 1) > 0))
                    return best;
            }

            relaxation.Want(builder.Wanted, builder.Limits);
            relaxation.Solve(builder.Wanted, rounds: 60, whole: false, enough: long.MaxValue);
        }

        return best;
    }
}
