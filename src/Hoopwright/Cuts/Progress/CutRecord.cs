using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts.Progress;

/// <summary>What the site book says of a stock piece that was cut or turned out bad.</summary>
/// <param name="EntryId">The entry that says so; null where it has no identity.</param>
/// <param name="Path">Where in the plan it is said.</param>
/// <param name="Name">Item and size, as its cut list is named.</param>
/// <param name="Stock">The length of the stock piece.</param>
/// <param name="Pieces">What was cut from it; none of one that is bad.</param>
/// <param name="Left">What is left of it that can still be used; null where nobody said.</param>
internal sealed record CutRecord(string? EntryId, string Path, string Name, Length Stock, ImmutableArray<CutRecordPiece> Pieces, Length? Left)
{
    /// <summary>True when nothing could be cut from it.</summary>
    public bool IsBad => Pieces.IsEmpty;
}
