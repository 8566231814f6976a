using System.Collections.Immutable;
using Hoopwright.Plans;

namespace Hoopwright.SiteBooks;

/// <summary>An entry of the site book as it stands after its corrections.</summary>
/// <param name="Entry">The entry with the value that stands.</param>
/// <param name="At">Its place in the plan's list, from 0.</param>
/// <param name="AsWritten">The entry as it was first written.</param>
/// <param name="Corrections">What corrected it, in order.</param>
/// <param name="IsTakenBack">True when the last correction takes it back.</param>
public sealed record StandingEntry(SiteBookEntry Entry, int At, SiteBookEntry AsWritten, ImmutableArray<SiteBookEntry> Corrections, bool IsTakenBack);
