using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.SiteBooks;

/// <summary>Two copies of a plan put together.</summary>
/// <param name="Document">The bytes of the plan that both make; empty when one of them cannot be read.</param>
/// <param name="Undecided">The fields of which they say different things.</param>
/// <param name="EntriesAlready">How many entries of the site book both had.</param>
/// <param name="EntriesOfFirst">How many only the first had.</param>
/// <param name="EntriesOfSecond">How many only the second had.</param>
/// <param name="FirstDiagnostics">Why the first cannot be read; empty when it can.</param>
/// <param name="SecondDiagnostics">Why the second cannot be read; empty when it can.</param>
public sealed record MergedPlan(
    ReadOnlyMemory<byte> Document, ImmutableArray<UndecidedField> Undecided, int EntriesAlready, int EntriesOfFirst, int EntriesOfSecond,
    ImmutableArray<Diagnostic> FirstDiagnostics, ImmutableArray<Diagnostic> SecondDiagnostics)
{
    /// <summary>True when there is a plan that both make.</summary>
    public bool IsMerged => !Document.IsEmpty;
}
