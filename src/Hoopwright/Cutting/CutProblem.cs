using System.Numerics;

namespace Hoopwright.Cutting;

/// <summary>
/// A job in whole numbers, as the engine sees it. A piece weighs (length + kerf) / grain and a bar holds
/// (length − trim + kerf) / grain, rounded down, where the grain is the greatest common divisor of all length + kerf.
/// </summary>
internal class CutProblem
{
    /// <summary>How much of a bar's capacity one piece of each length takes; heaviest first.</summary>
    public required long[] Weight { get; init; }

    /// <summary>How many pieces of each length are wanted; each at least 1.</summary>
    public required int[] Demand { get; init; }

    /// <summary>The bars; each holds at least one piece.</summary>
    public required CutBar[] Bars { get; init; }

    /// <summary>Whole length units to one unit of weight.</summary>
    public required long Grain { get; init; }

    /// <summary>What leftovers are worth; null when nothing.</summary>
    public required WholeWorth? Worth { get; init; }

    /// <summary>How many different lengths.</summary>
    public int Types => Weight.Length;

    /// <summary>How many pieces in all.</summary>
    public long PieceCount => Demand.Sum(count => (long)count);

    /// <summary>The weight of everything wanted.</summary>
    public Int128 TotalWeight => Weight.Zip(Demand, (weight, count) => (Int128)weight * count).Aggregate(Int128.Zero, (a, b) => a + b);

    /// <summary>The most that any bar holds.</summary>
    public long Capacity => Bars.Max(bar => bar.Capacity);

    /// <summary>What a bar costs when filled to a weight: its price less the worth of the rest. Never falls as it is filled.</summary>
    public long CostOf(int bar, long used) => Bars[bar].Price - (Worth?.Of(Bars[bar].Usable - (used * Grain)) ?? 0);

    /// <summary>True when many plans differ by a coin, so that a poor branch can hold a search up.</summary>
    public virtual bool HasFineCosts => Worth is not null;

    /// <summary>Serves what is still wanted from the bars still there, without a search; null when they do not suffice.</summary>
    public virtual Mixture? Complete(int[] wanted, int[] limits, CutMethod method, WorkMeter meter) => Greedy.Complete(this, wanted, limits, method, meter);

    /// <summary>The most bars of a pattern that a plan can use: after them all its pieces are served.</summary>
    public virtual int MostTimes(Pattern pattern)
    {
        var most = 0;
        for (var i = 0; i < pattern.Types.Length; i++)
            most = Math.Max(most, (Demand[pattern.Types[i]] + pattern.Counts[i] - 1) / pattern.Counts[i]);
        return Math.Min(most, Bars[pattern.Bar].Limit);
    }

    /// <summary>A whole plan near a mixture over a pool of patterns; null when the bars do not suffice.</summary>
    public virtual Mixture? Rounded(List<Pattern> pool, List<(int Index, double Amount)> solution, WorkMeter meter)
    {
        var builder = new PlanBuilder(this, CutMethod.Search, meter);
        foreach (var (index, amount) in solution)
            builder.Keep(pool[index], (int)Math.Floor(amount + 1e-5));
        foreach (var (index, amount) in solution.OrderByDescending(part => part.Amount - Math.Floor(part.Amount + 1e-5)).ThenBy(part => part.Index))
        {
            if (amount - Math.Floor(amount + 1e-5) > 0.5)
                builder.Keep(pool[index], 1);
        }

        return builder.Finish();
    }

    /// <summary>True when a bar's rest can be worth more than the bar, so that cutting one brings money in.</summary>
    public bool CanEarn => Enumerable.Range(0, Bars.Length).Any(bar => CostOf(bar, Weight[^1]) < 0);
}

/// <summary>One kind of bar in whole numbers.</summary>
/// <param name="Line">The index of the stock line in the job.</param>
/// <param name="Capacity">The weight of pieces that it holds, never more than all the pieces weigh.</param>
/// <param name="Usable">Its length less the trim, in whole length units.</param>
/// <param name="Price">Its price in whole money units.</param>
/// <param name="Limit">The most there are; <see cref="int.MaxValue"/> when as many as wanted.</param>
/// <param name="Missing">True for a bar beyond the limit, reckoned at a price above any plan within the limits.</param>
internal sealed record CutBar(int Line, long Capacity, long Usable, long Price, int Limit, bool Missing)
{
    /// <summary>True when there are only so many.</summary>
    public bool IsLimited => Limit != int.MaxValue;
}

/// <summary>What a rest is worth: floor(rest × numerator / denominator) × quantum from a least length on.</summary>
internal sealed record WholeWorth(long Least, BigInteger Numerator, BigInteger Denominator, long Quantum)
{
    /// <summary>The worth of a rest, both in whole units.</summary>
    public long Of(long rest)
    {
        if (rest < Least || rest <= 0)
            return 0;
        return _isShort
            ? (long)((Int128)rest * _numerator / _denominator) * Quantum
            : (long)(rest * Numerator / Denominator) * Quantum;
    }

    /// <summary>The worth of a rest as a number of any size, for checking that it can be reckoned with.</summary>
    public BigInteger Exact(long rest) => rest * Numerator / Denominator * Quantum;

    private readonly bool _isShort = Numerator < long.MaxValue && Denominator < long.MaxValue;
    private readonly long _numerator = Numerator < long.MaxValue ? (long)Numerator : 0;
    private readonly long _denominator = Denominator < long.MaxValue ? (long)Denominator : 1;
}
