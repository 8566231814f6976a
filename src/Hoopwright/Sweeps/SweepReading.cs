using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Sweeps;

/// <summary>What came of asking for a sweep.</summary>
/// <param name="Sweep">The sweep; null when something is wrong with what was asked.</param>
/// <param name="Diagnostics">What is wrong.</param>
public sealed record SweepReading(Sweep? Sweep, ImmutableArray<Diagnostic> Diagnostics);
