using System.Collections.Immutable;

namespace Hoopwright.Sharing;

/// <summary>What became of pushed entries. What is told here as added, already here or kept twice is on the server's disk.</summary>
/// <param name="Receipts">One for each entry, in the order sent.</param>
/// <param name="ServerTime">The server's clock.</param>
public sealed record EntryPushAnswer(ImmutableArray<EntryReceipt> Receipts, DateTimeOffset ServerTime);
