using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Days;

/// <summary>What came of looking for a covering day.</summary>
/// <param name="Report">When the film can be pulled; null where it cannot be said.</param>
/// <param name="Diagnostics">Why not, or what to look at again.</param>
public sealed record CoverDayOutcome(CoverDayReport? Report, ImmutableArray<Diagnostic> Diagnostics);
