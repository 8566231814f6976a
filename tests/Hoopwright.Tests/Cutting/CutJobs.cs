using System.Collections.Immutable;
using CsCheck;
using Hoopwright.Cutting;

namespace Hoopwright.Tests.Cutting;

/// <summary>Random cutting jobs.</summary>
internal static class CutJobs
{
    /// <summary>At most nine pieces, at most one line with a limit: small enough to try everything.</summary>
    public static Gen<UnitlessCutJob> Tiny { get; } = Of(Gen.Int[3, 40], lengths: 4, most: 3, pieces: 9);

    /// <summary>The size of a real order: 8 to 30 lengths, 20 to 200 pieces.</summary>
    public static Gen<UnitlessCutJob> Real { get; } =
        from lengths in Gen.Int[300, 4500].Array[8, 30]
        from counts in Gen.Int[1, 12].Array[lengths.Length]
        from bars in Gen.Select(Among(2000, 2400, 3000, 3600, 4200, 4800, 6000), Gen.Int[60, 120]).Array[1, 4]
        from kerf in Among(0, 2, 3, 5)
        select new UnitlessCutJob
        {
            Stock = [.. bars.Append((5400, 90)).Select((bar, index) => new UnitlessCutStock($"s{index}", bar.Item1, bar.Item1 * bar.Item2 / 100))],
            Pieces = Pieces(lengths, counts),
            Kerf = kerf,
        };

    /// <summary>One of these.</summary>
    public static Gen<T> Among<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(index => choices[index]);

    private static Gen<UnitlessCutJob> Of(Gen<int> length, int lengths, int most, int pieces) =>
        from sizes in length.Array[1, lengths]
        from counts in Gen.Int[0, most].Array[sizes.Length]
        where counts.Sum() <= pieces
        from bars in Gen.Select(Gen.Int[8, 60], Gen.Int[0, 30]).Array[1, 3]
        from limit in Gen.Frequency((3, Gen.Const(-1)), (1, Gen.Int[0, 4]))
        from kerf in Gen.Int[0, 4]
        from trim in Gen.Int[0, 3]
        from leftover in Gen.Frequency(
            (2, Gen.Const((UnitlessLeftoverRule?)null)),
            (1, Gen.Select(Gen.Int[0, 12], Gen.Int[0, 900]).Select(rule => (UnitlessLeftoverRule?)new UnitlessLeftoverRule(rule.Item1, rule.Item2))))
        select new UnitlessCutJob
        {
            // The longest bar holds every piece, so that a job is never refused for its lengths.
            Stock =
            [
                new("long", 60, bars[0].Item2 + 5),
                .. bars.Select((bar, index) => new UnitlessCutStock($"s{index}", bar.Item1, bar.Item2, index == 0 && limit >= 0 ? limit : null)),
            ],
            Pieces = Pieces(sizes, counts),
            Kerf = kerf,
            Trim = trim,
            Leftover = leftover,
        };

    private static ImmutableArray<UnitlessCutPiece> Pieces(int[] lengths, int[] counts) =>
        [.. lengths.Zip(counts).Select((piece, index) => new UnitlessCutPiece($"p{index}", piece.First, piece.Second))];
}
