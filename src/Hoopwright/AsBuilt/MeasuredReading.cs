using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.AsBuilt;

/// <summary>One reading of the tape, as the site book has it.</summary>
/// <param name="EntryId">The entry's id; null where it has none.</param>
/// <param name="At">The entry's place in the site book, from 0.</param>
/// <param name="Text">The reading as typed, after corrections.</param>
/// <param name="Value">The reading; null when it cannot be read.</param>
/// <param name="By">Who wrote it.</param>
/// <param name="Corrections">What corrected it, in order.</param>
/// <param name="Standing">Whether it counts.</param>
public sealed record MeasuredReading(
    string? EntryId, int At, string? Text, Length? Value, string? By, ImmutableArray<SiteBookEntry> Corrections, ReadingStanding Standing);
