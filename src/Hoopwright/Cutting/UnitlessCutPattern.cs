using System.Collections.Immutable;

namespace Hoopwright.Cutting;

/// <summary>One way of cutting a bar in plain numbers, and how many bars are cut so.</summary>
/// <param name="StockId">The stock line that the bars are taken from.</param>
/// <param name="Times">How many bars; at least 1.</param>
/// <param name="Pieces">The ids of the pieces of one bar in cutting order, longest first.</param>
/// <param name="Leftover">What is left of one bar after the last cut; 0 or more.</param>
/// <param name="KerfLost">Bar = trim + pieces + kerf lost + leftover, exactly.</param>
public sealed record UnitlessCutPattern(
    string StockId, int Times, ImmutableArray<string> Pieces, decimal Leftover, decimal KerfLost);
