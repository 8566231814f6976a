namespace Hoopwright.Cutting;

/// <summary>
/// Prices of pieces and of limited bars as whole numbers, <see cref="Scale"/> to one unit of money, and the bound that they
/// give. Whatever the numbers are, the bound holds: it is reckoned from them in whole numbers only.
/// </summary>
internal sealed class SafePrices
{
    /// <param name="wanted">How many pieces of each length are wanted.</param>
    /// <param name="limits">How many bars of each kind there are.</param>
    /// <param name="scale">Whole numbers to one unit of money.</param>
    /// <param name="pieces">The price of a piece of each length.</param>
    /// <param name="bars">The price of each bar's limit; 0 or less, and 0 where there is none.</param>
    /// <param name="shortfall">For each bar, the most by which any pattern is dearer at these prices than it costs; 0 or less.</param>
    /// <param name="most">For each bar, the most that a plan worth having can use.</param>
    public SafePrices(int[] wanted, int[] limits, long scale, long[] pieces, long[] bars, long[] shortfall, long[] most)
    {
        (Scale, Pieces, Bars) = (scale, pieces, bars);
        var sum = Int128.Zero;
        for (var type = 0; type < pieces.Length; type++)
            sum += (Int128)pieces[type] * wanted[type];
        for (var bar = 0; bar < bars.Length; bar++)
        {
            if (bars[bar] != 0)
                sum += (Int128)bars[bar] * limits[bar];
            sum += (Int128)shortfall[bar] * most[bar];
        }

        Scaled = sum;
    }

    public long Scale { get; }

    public long[] Pieces { get; }

    public long[] Bars { get; }

    /// <summary>The bound in scaled units, shortfalls taken off.</summary>
    public Int128 Scaled { get; }

    /// <summary>The bound in whole units of money, rounded up.</summary>
    public long Bound => CeilingOf(Scaled, Scale);

    /// <summary>A price as a whole number, kept small enough that sums over a bar never overflow; the bound holds all the same.</summary>
    public static long Whole(double price, long scale, long largest) => (long)Math.Clamp(Math.Floor(price * scale), -largest, largest);

    /// <summary>The largest whole-number price to reckon with.</summary>
    public static long Largest(CutProblem problem) => (1L << 60) / (2 + (problem.Capacity / problem.Weight[^1]) + MostRows);

    private const int MostRows = 500;

    /// <summary>The quotient rounded towards plus infinity.</summary>
    public static long CeilingOf(Int128 value, long by)
    {
        var quotient = value / by;
        return (long)(quotient * by < value ? quotient + 1 : quotient);
    }

    /// <summary>What a pattern costs above its prices, in scaled units.</summary>
    public long Excess(Pattern pattern)
    {
        var excess = (pattern.Cost * Scale) - Bars[pattern.Bar];
        for (var i = 0; i < pattern.Types.Length; i++)
            excess -= Pieces[pattern.Types[i]] * pattern.Counts[i];
        return excess;
    }
}
