namespace Hoopwright.Cutting;

/// <summary>Which total costs bars enough for the whole job can have: a bound can be raised to the next of them.</summary>
internal sealed class PossibleCosts
{
    private const int MostCosts = 4_000_000;
    private readonly long[] _mostWeight;
    private readonly Int128 _wanted;

    private PossibleCosts(long[] mostWeight, Int128 wanted) => (_mostWeight, _wanted) = (mostWeight, wanted);

    /// <summary>Works them out up to a known cost. Limits of bars with a price are passed over, which only adds possible costs.</summary>
    public static PossibleCosts Of(CutProblem problem, long ceiling)
    {
        if (problem.Worth is not null || ceiling > MostCosts || problem.TotalWeight > long.MaxValue / 4)
            return new PossibleCosts([], 0);
        // The most weight that bars of exactly each cost can hold; −1 where no bars have that cost.
        var most = new long[ceiling + 1];
        Array.Fill(most, -1);
        var wanted = (long)problem.TotalWeight;
        most[0] = problem.Bars.Where(bar => bar.Price == 0)
            .Aggregate(0L, (sum, bar) => bar.IsLimited && wanted / bar.Capacity > bar.Limit ? sum + (bar.Capacity * bar.Limit) : wanted);
        foreach (var bar in problem.Bars)
        {
            if (bar.Price == 0)
                continue;
            for (var cost = bar.Price; cost <= ceiling; cost++)
            {
                if (most[cost - bar.Price] >= 0)
                    most[cost] = Math.Max(most[cost], Math.Min(wanted, most[cost - bar.Price] + bar.Capacity));
            }
        }

        return new PossibleCosts(most, wanted);
    }

    /// <summary>The least possible cost that is not below a bound; the bound itself when that is not known.</summary>
    public long AtLeast(long bound)
    {
        var cost = Math.Max(0, bound);
        while (cost < _mostWeight.Length && _mostWeight[cost] < _wanted)
            cost++;
        return cost < _mostWeight.Length ? cost : bound;
    }
}
