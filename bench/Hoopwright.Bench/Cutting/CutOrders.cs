using Hoopwright.Cutting;

namespace Hoopwright.Bench.Cutting;

/// <summary>Invented orders of a real order's size, the same ones in every run.</summary>
internal static class CutOrders
{
    /// <summary>An order of so many lengths, in sixteenths of an inch or in millimetres, with prices that scatter per length.</summary>
    public static UnitlessCutJob Of(int lengths, int seed)
    {
        // The benchmarks' own generator: a linear congruence (Knuth, TAOCP 2, 3.3.4), so that orders never change.
        var state = (ulong)((seed * 7919) + lengths);
        int Next(int from, int to)
        {
            state = (state * 6364136223846793005UL) + 1442695040888963407UL;
            return from + (int)((state >> 33) % (ulong)(to - from));
        }

        var inches = Next(0, 2) == 0;
        int[] all = inches ? [1536, 1920, 2304, 2688, 3072, 3840] : [2400, 3000, 3600, 4200, 4800, 6000];
        var stock = Enumerable.Range(0, 2 + Next(0, 4)).Select(_ => all[Next(0, all.Length)]).Append(all[^1]).Distinct().ToArray();
        var sizes = Enumerable.Range(0, lengths).Select(_ => Next(all[^1] / 16, all[^1] * 9 / 10) / 4 * 4).Distinct();
        return new UnitlessCutJob
        {
            Stock = [.. stock.Select((length, index) => new UnitlessCutStock($"s{index}", length, length * Next(90, 110) / 300))],
            Pieces = [.. sizes.ToArray().Select((length, index) => new UnitlessCutPiece($"p{index}", length, Next(1, 20)))],
            Kerf = inches ? 2 : 3,
        };
    }
}
