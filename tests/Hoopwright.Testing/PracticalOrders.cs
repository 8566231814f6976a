using Hoopwright.Cutting;

namespace Hoopwright.Testing;

/// <summary>
/// Invented orders as a yard sees them: 10 to 40 lengths, 20 to 400 pieces, 2 to 6 stock lengths with prices that scatter, some
/// of them limited, a saw cut, and for some a worth of leftovers. The same ones in every run.
/// </summary>
public static class PracticalOrders
{
    private static readonly int[] Inches = [1152, 1536, 1920, 2304, 2688, 3072, 3840];
    private static readonly int[] Millimetres = [1800, 2400, 3000, 3600, 4200, 4800, 6000];

    /// <summary>One order.</summary>
    public static UnitlessCutJob Of(int seed, bool leftovers)
    {
        var random = new Congruence((ulong)(seed + (leftovers ? 1_000_000 : 0)));
        var tape = random.Next(0, 2) == 0 ? Inches : Millimetres;
        int[] stock = [.. tape.OrderBy(_ => random.Next(0, 1 << 30)).Take(random.Next(2, 7)).Order()];
        var longest = stock[^1];
        // Half of the orders have lengths on a coarse tape, half on the finest.
        var step = random.Next(0, 2) == 0 ? 1 : tape == Inches ? 4 : 5;
        var wanted = random.Next(10, 41);
        var lengths = new HashSet<int>();
        while (lengths.Count < wanted)
            lengths.Add(random.Next(longest / 20, longest * 19 / 20) / step * step);
        var pieces = Math.Max(wanted, random.Next(20, 401));
        var counts = lengths.ToDictionary(length => length, _ => 1);
        int[] each = [.. lengths];
        for (var more = wanted; more < pieces; more++)
            counts[each[random.Next(0, each.Length)]]++;
        var perFoot = random.Next(40, 260);
        return new UnitlessCutJob
        {
            Stock =
            [
                .. stock.Select((length, index) => new UnitlessCutStock(
                    $"s{index}", length, length * perFoot * random.Next(85, 116) / (tape == Inches ? 19200 : 30480),
                    // The longest line has no limit, so that every order can be served.
                    index < stock.Length - 1 && random.Next(0, 4) == 0 ? random.Next(1, 13) : null)),
            ],
            Pieces = [.. each.Select((length, index) => new UnitlessCutPiece($"p{index}", length, counts[length]))],
            Kerf = tape == Inches ? 2 : 3,
            Leftover = leftovers ? new(tape == Inches ? 384 : 600, perFoot * (tape == Inches ? 5m : 3m) / 2) : null,
        };
    }

    /// <summary>A linear congruence (Knuth, TAOCP 2, 3.3.4), so that orders never change.</summary>
    private sealed class Congruence(ulong seed)
    {
        private ulong _state = (seed * 0x9E3779B97F4A7C15UL) + 1;

        public int Next(int from, int to)
        {
            _state = (_state * 6364136223846793005UL) + 1442695040888963407UL;
            return from + (int)((_state >> 33) % (ulong)(to - from));
        }
    }
}
