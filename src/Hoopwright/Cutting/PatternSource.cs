namespace Hoopwright.Cutting;

/// <summary>Makes the patterns that a linear programme asks for: the cheapest ones at prices put on the pieces, exactly.</summary>
internal abstract class PatternSource
{
    /// <summary>Works out what a bar can hold at best; asked before the others, and again for every change of prices.</summary>
    /// <param name="pieces">The price of a piece of each length, in scaled units.</param>
    /// <param name="wanted">The most pieces of each length that are of use.</param>
    public abstract void Price(long[] pieces, ReadOnlySpan<int> wanted);

    /// <summary>The least that any pattern of a bar costs above the prices of its pieces, in scaled units; never too high.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="scale">Scaled units to one unit of money.</param>
    public abstract long LeastExcess(int bar, long scale);

    /// <summary>Patterns of a bar that cost less than their pieces and the bar's limit are priced at, best first.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="scale">Scaled units to one unit of money.</param>
    /// <param name="barPrice">The price of the bar's limit, 0 or less.</param>
    public abstract IEnumerable<Pattern> Below(int bar, long scale, long barPrice);
}
