namespace Hoopwright.Cutting;

/// <summary>
/// Turns the best mixture into whole bars: keeps the whole parts, fixes the part nearest the next whole bar, works the best
/// mixture of the rest out again, and so on. At each step the rest is also finished greedily. Where what is kept and the bound
/// of the rest show that nothing better can come, it goes back to the last choice and fixes another part.
/// </summary>
internal sealed class Diving
{
    /// <summary>From so much work left on, a dive may take more of it and turn more often.</summary>
    public const long MuchWork = 1_000_000_000;

    private const int RoundsAStep = 60;
    private const double FewRows = 0.8;
    private const int ShareOfWork = 8;
    private const int ShareOfMuchWork = 3;
    private readonly CutProblem _problem;
    private readonly WorkMeter _meter;
    private readonly long _goal;
    private readonly int _variant;
    private readonly long _workEnd;
    private Mixture _best;
    private int _steps;

    private Diving(CutProblem problem, Mixture known, long goal, int variant, int steps, WorkMeter meter)
    {
        (_problem, _meter, _goal, _variant, _best, _steps) = (problem, meter, goal, variant, known, steps);
        // A share of the work left, so that enough stays for the search of all patterns; long bars in fine units need a large one.
        _workEnd = meter.Spent + (meter.Left / (meter.Left > MuchWork ? ShareOfMuchWork : ShareOfWork));
    }

    /// <summary>The cheapest plan met on the way, or the known one.</summary>
    /// <param name="problem">The job.</param>
    /// <param name="relaxation">Its best mixture, solved; left changed.</param>
    /// <param name="known">The best plan known.</param>
    /// <param name="goal">Stops at a plan that costs no more.</param>
    /// <param name="variant">0 fixes the part nearest to whole; higher numbers fix another one at the first steps.</param>
    /// <param name="swerves">How often in all it may fix another part than the nearest to whole on going back.</param>
    /// <param name="steps">The most mixtures to work out.</param>
    /// <param name="meter">Counts the work.</param>
    public static Mixture Best(
        CutProblem problem, Relaxation relaxation, Mixture known, long goal, int variant, int swerves, int steps, WorkMeter meter)
    {
        var diving = new Diving(problem, known, goal, variant, steps, meter);
        diving.From(relaxation, new PlanBuilder(problem, CutMethod.Rounding, meter), 0, swerves);
        return diving._best;
    }

    private bool IsOver => _best.Cost <= _goal || _steps <= 0 || _meter.Spent >= _workEnd || _meter.IsOver;

    private void From(Relaxation relaxation, PlanBuilder builder, int depth, int swerves)
    {
        var solution = relaxation.Solution();
        var whole = 0;
        foreach (var (pattern, amount) in solution)
            whole += builder.Keep(pattern, (int)Math.Floor(amount + 1e-6));
        if (builder.Finish() is { } plan && plan.Cost < _best.Cost)
            _best = plan;
        if (IsOver || builder.IsComplete || builder.KeptCost >= _best.Cost)
            return;
        if (whole > 0)
        {
            Follow(relaxation, builder, depth, swerves);
            return;
        }

        var parts = solution.OrderByDescending(part => part.Amount - Math.Floor(part.Amount))
            .ThenBy(part => part.Pattern.Bar).ThenByDescending(part => part.Pattern.Used).ToList();
        var first = Math.Min((_variant >> (2 * Math.Min(depth, 15))) & 3, parts.Count - 1);
        for (var other = 0; other <= swerves && other < parts.Count && !IsOver; other++)
        {
            var child = builder.Copy();
            if (child.Keep(parts[(first + other) % parts.Count].Pattern, 1) > 0)
                Follow(relaxation, child, depth + 1, swerves - other);
        }
    }

    /// <summary>Works out the mixture of the rest and goes on from there, unless its bound shows that nothing better can come.</summary>
    private void Follow(Relaxation relaxation, PlanBuilder builder, int depth, int swerves)
    {
        _steps--;
        var ceiling = _best.Cost - builder.KeptCost;
        if (builder.Wanted.Count(count => count > 0) < relaxation.Rows * FewRows)
            relaxation = relaxation.Rest(builder.Wanted, builder.Limits, _best.Cost);
        else
            relaxation.Want(builder.Wanted, builder.Limits);
        relaxation.Solve(RoundsAStep, enough: ceiling);
        if (relaxation.Best is { } prices && prices.Bound >= ceiling)
            return;
        From(relaxation, builder, depth, swerves);
    }
}
