using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>Splits an amount among stages to the cent.</summary>
internal static class StageShares
{
    /// <summary>
    /// Each stage gets its part rounded down to the cent; the cents left over go one by one to the stages that lost most by
    /// rounding, the earlier stage first where they lost alike. Adds up exactly.
    /// </summary>
    /// <param name="amount">The amount, to the cent.</param>
    /// <param name="weights">What each stage needs; 0 or more each. Where all are 0 the first gets the whole.</param>
    public static ImmutableArray<StageCost> Of(Money amount, ImmutableArray<(BuildStage Stage, decimal Weight)> weights)
    {
        ImmutableArray<(BuildStage Stage, decimal Weight)> sorted = [.. weights.OrderBy(weight => weight.Stage)];
        decimal whole = sorted.Sum(weight => weight.Weight);
        if (sorted.IsEmpty) return [];
        if (whole == 0) return [new StageCost(sorted[0].Stage, amount)];

        decimal cents = amount.Amount * 100;
        decimal[] exact = [.. sorted.Select(weight => cents * weight.Weight / whole)];
        decimal[] shares = [.. exact.Select(Math.Floor)];
        int left = (int)(cents - shares.Sum());
        foreach (int index in Enumerable.Range(0, exact.Length).OrderByDescending(index => exact[index] - shares[index]).ThenBy(index => index).Take(left)) shares[index]++;
        return [.. sorted.Zip(shares, (weight, share) => new StageCost(weight.Stage, new Money(share / 100)) { Part = weight.Weight / whole })];
    }
}
