namespace Hoopwright.Cutting;

/// <summary>A plan in the making: what is kept so far, what is still wanted and which bars are still there.</summary>
internal sealed class PlanBuilder
{
    private readonly CutProblem _problem;
    private readonly WorkMeter _meter;
    private readonly CutMethod _method;
    private readonly Mixture _kept;

    public PlanBuilder(CutProblem problem, CutMethod method, WorkMeter meter)
    {
        (_problem, _method, _meter) = (problem, method, meter);
        Wanted = problem.Demand.ToArray();
        Limits = Greedy.Limits(problem);
        _kept = new Mixture { Method = method };
    }

    private PlanBuilder(PlanBuilder other)
    {
        (_problem, _method, _meter) = (other._problem, other._method, other._meter);
        (Wanted, Limits) = ([.. other.Wanted], [.. other.Limits]);
        _kept = new Mixture { Method = _method };
        _kept.Add(other._kept);
    }

    /// <summary>What is kept so far costs this.</summary>
    public long KeptCost => _kept.Cost;

    /// <summary>The pieces of each length still wanted.</summary>
    public int[] Wanted { get; }

    /// <summary>The bars of each kind still there.</summary>
    public int[] Limits { get; }

    /// <summary>True when every piece is served.</summary>
    public bool IsComplete => Array.TrueForAll(Wanted, count => count == 0);

    /// <summary>One that goes on from here on its own.</summary>
    public PlanBuilder Copy() => new(this);

    /// <summary>Keeps bars of a pattern; what is no longer wanted is left out of them. Returns how many were of use.</summary>
    public int Keep(Pattern pattern, int times)
    {
        times = Math.Min(times, Limits[pattern.Bar]);
        var done = 0;
        while (done < times)
        {
            var trimmed = pattern;
            if (pattern.TimesWithin(Wanted) == 0)
            {
                trimmed = pattern.CutDownTo(_problem, Wanted);
                if (trimmed.Types.Length == 0)
                    break;
            }

            var now = Math.Min(times - done, trimmed.TimesWithin(Wanted));
            for (var i = 0; i < trimmed.Types.Length; i++)
                Wanted[trimmed.Types[i]] -= trimmed.Counts[i] * now;
            if (_problem.Bars[pattern.Bar].IsLimited)
                Limits[pattern.Bar] -= now;
            _kept.Add(trimmed, now);
            done += now;
        }

        return done;
    }

    /// <summary>What is kept, with the rest served greedily; null when the bars do not suffice.</summary>
    public Mixture? Finish()
    {
        if (_problem.Complete(Wanted, Limits, _method, _meter) is not { } rest)
            return null;
        var plan = new Mixture { Method = _method };
        plan.Add(_kept);
        plan.Add(rest);
        return plan;
    }
}
