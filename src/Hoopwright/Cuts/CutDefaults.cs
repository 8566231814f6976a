using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>What the cut lists take where the plan does not say, each with its source.</summary>
internal static class CutDefaults
{
    internal static Usual<Length> Kerf { get; } = new(Length.FromInches(0.125), "The saw turns this much to dust at each cut.", Citation.CommonPractice);

    internal static Usual<Length> EndTrim { get; } = new(Length.Zero, "Nothing is cut off the end of a stock piece before use.", Citation.CommonPractice);

    internal static Usual<Length> UsefulLeftover { get; } = new(Length.FromFeet(2), "A leftover from this length on is worth keeping.", Citation.CommonPractice);

    /// <summary>Lengths in which an item is usually sold, from memory; shortest first.</summary>
    /// <param name="item">The item of the takeoff.</param>
    /// <param name="units">Whether it is sold by the foot or by the metre.</param>
    public static ImmutableArray<Length> UsualLengths(string item, UnitSystem units) => item == Items.Tube ? UsualTubes.StockLengths(units) : units switch
    {
        UnitSystem.UsCustomary => Each(Length.FromFeet, item switch
        {
            Items.Post => [8, 10, 12, 16],
            Items.PlasticPipe => [10, 20],
            Items.LockChannel => [6.5, 10, 12],
            Items.PullingRope => [50, 100, 200],
            _ => [8, 10, 12, 14, 16],
        }),
        UnitSystem.Metric => Each(Length.FromMetres, item switch
        {
            Items.Post => [2.4, 3, 3.6, 4.8],
            Items.PlasticPipe => [3, 6],
            Items.LockChannel => [2, 3, 4],
            Items.PullingRope => [20, 30, 60],
            _ => [2.4, 3, 3.6, 4.2, 4.8],
        }),
    };

    private static ImmutableArray<Length> Each(Func<double, Length> unit, ImmutableArray<double> lengths) => [.. lengths.Select(unit)];
}
