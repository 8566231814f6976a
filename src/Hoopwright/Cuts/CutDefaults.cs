using System.Collections.Immutable;
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

    private static readonly ImmutableArray<Length> Boards = Feet(8, 10, 12, 14, 16);
    private static readonly ImmutableArray<Length> Posts = Feet(8, 10, 12, 16);
    private static readonly ImmutableArray<Length> Tubes = Feet(20, 21, 24);
    private static readonly ImmutableArray<Length> PlasticPipes = Feet(10, 20);
    private static readonly ImmutableArray<Length> Channels = Feet(6.5, 10, 12);

    private static readonly ImmutableArray<Length> Ropes = Feet(50, 100, 200);

    /// <summary>Lengths in which an item is usually sold, from memory; shortest first.</summary>
    public static ImmutableArray<Length> UsualLengths(string item) => item switch
    {
        Items.Board => Boards,
        Items.Post => Posts,
        Items.Tube => Tubes,
        Items.PlasticPipe => PlasticPipes,
        Items.LockChannel => Channels,
        Items.PullingRope => Ropes,
        _ => Boards,
    };

    private static ImmutableArray<Length> Feet(params ReadOnlySpan<double> feet)
    {
        var lengths = ImmutableArray.CreateBuilder<Length>(feet.Length);
        foreach (double each in feet) lengths.Add(Length.FromFeet(each));
        return lengths.MoveToImmutable();
    }
}
