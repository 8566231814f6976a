using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cutting;

/// <summary>One way of cutting a bar, and how many bars are cut so.</summary>
/// <param name="StockId">The stock line that the bars are taken from.</param>
/// <param name="Times">How many bars; at least 1.</param>
/// <param name="Pieces">The ids of the pieces of one bar in cutting order, longest first; at least one.</param>
/// <param name="Leftover">What is left of one bar after the last cut; 0 or more.</param>
/// <param name="KerfLost">
/// What the saw turns to dust on one bar: one kerf a piece, less where the last piece ends within a kerf of the bar's end.
/// Bar = trim + pieces + kerf lost + leftover, exactly.
/// </param>
public sealed record CutPattern(
    string StockId, int Times, ImmutableArray<string> Pieces, Length Leftover, Length KerfLost);
