using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Inside;

/// <summary>What came of working out a year inside.</summary>
/// <param name="Report">The year; null where it cannot be said.</param>
/// <param name="Diagnostics">Why not, or what to look at again.</param>
public sealed record InsideOutcome(InsideReport? Report, ImmutableArray<Diagnostic> Diagnostics);
