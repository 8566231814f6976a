using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Cuts;

/// <summary>Saw, leftovers and the lengths in which things are usually sold.</summary>
internal static class CutDefaults
{
    internal static Usual<Length> Kerf { get; } = new(Length.FromInches(0.125), "The saw cut is this wide.", Citation.CommonPractice);

    internal static Usual<Length> EndTrim { get; } = new(Length.Zero, "Nothing is cut off the ends of stock first.", Citation.CommonPractice);

    internal static Usual<Length> UsefulLeftover { get; } = new(Length.FromFeet(2), "Leftovers of this length and more are worth keeping.", Citation.CommonPractice);

    private static ImmutableArray<Length> Boards { get; } = Feet(8, 10, 12, 14, 16);

    private static ImmutableArray<Length> Posts { get; } = Feet(8, 10, 12, 16);

    private static ImmutableArray<Length> Tubes { get; } = Feet(20, 21, 24);

    private static ImmutableArray<Length> Pipes { get; } = Feet(10, 20);

    /// <summary>Lengths in which an item is usually sold; from memory.</summary>
    internal static ImmutableArray<Length> UsualLengths(string item) => item switch
    {
        "board" => Boards,
        "post" => Posts,
        "plastic pipe" => Pipes,
        _ => Tubes,
    };

    private static ImmutableArray<Length> Feet(params int[] feet) => [.. feet.Select(each => Length.FromFeet(each))];
}
