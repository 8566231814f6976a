using System.Collections.Immutable;

namespace Hoopwright.Cutting;

/// <summary>Bars of an earlier plan that were to be cut alike, and how far the work has got with them.</summary>
/// <param name="StockId">The stock line that the bars were taken from.</param>
/// <param name="Times">How many bars; all of them have been bought or taken.</param>
/// <param name="Pieces">The ids of the pieces of one bar.</param>
/// <param name="Done">How many of the bars have been cut; 0 or more.</param>
/// <param name="Bad">How many more of them turned out to be of no use; 0 or more, and with <paramref name="Done"/> at most <paramref name="Times"/>.</param>
public sealed record CutProgress(string StockId, int Times, ImmutableArray<string> Pieces, int Done, int Bad)
{
    /// <summary>How many bars lie there uncut and sound.</summary>
    public int Left => Times - Done - Bad;
}
