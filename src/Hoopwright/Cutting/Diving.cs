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
        var demand = problem.Demand.ToArray();
        var limits = Greedy.Limits(problem);
        var kept = new Mixture { Method = CutMethod.Rounding };
        Mixture? best = null;
        for (var step = 0; !meter.IsOver; step++)
        {
            var solution = relaxation.Solution();
            var whole = 0;
            foreach (var (pattern, amount) in solution)
                whole += Keep(pattern, (int)Math.Floor(amount + 1e-6));

            if (Finish() is { } plan && (best is null || plan.Cost < best.Cost))
                best = plan;
            if (best?.Cost <= goal || demand.All(count => count == 0))
                return best;
            if (whole == 0)
            {
                var parts = solution.OrderByDescending(part => part.Amount - Math.Floor(part.Amount))
                    .ThenBy(part => part.Pattern.Bar).ThenByDescending(part => part.Pattern.Used).ToList();
                var pick = (variant >> (2 * step)) & 3;
                if (parts.Count == 0 || !parts.Skip(Math.Min(pick, parts.Count - 1)).Concat(parts).Any(part => Keep(part.Pattern, 1) > 0))
                    return best;
            }

            relaxation.Want(demand, limits);
            relaxation.Solve(demand, rounds: 60, whole: false, enough: long.MaxValue);
        }

        return best;

        int Keep(Pattern pattern, int times)
        {
            times = Math.Min(times, limits[pattern.Bar]);
            var done = 0;
            while (done < times)
            {
                // A pattern with more than is still wanted is cut without the surplus.
                var counts = new int[problem.Types];
                for (var i = 0; i < pattern.Types.Length; i++)
                    counts[pattern.Types[i]] = Math.Min(pattern.Counts[i], demand[pattern.Types[i]]);
                var trimmed = Pattern.Of(problem, pattern.Bar, counts);
                if (trimmed.Types.Length == 0)
                    break;
                var now = Math.Min(times - done, trimmed.TimesWithin(demand));
                for (var i = 0; i < trimmed.Types.Length; i++)
                    demand[trimmed.Types[i]] -= trimmed.Counts[i] * now;
                if (problem.Bars[pattern.Bar].IsLimited)
                    limits[pattern.Bar] -= now;
                kept.Add(trimmed, now);
                done += now;
            }

            return done;
        }

        Mixture? Finish()
        {
            if (Greedy.Complete(problem, demand, limits, CutMethod.Rounding, meter) is not { } rest)
                return null;
            var plan = new Mixture { Method = CutMethod.Rounding };
            plan.Add(kept);
            plan.Add(rest);
            return plan;
        }
    }
}
