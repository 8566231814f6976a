using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Layout;

/// <summary>The outcome of shaping a bow.</summary>
/// <param name="Shape">The bow; null when it cannot be bent so.</param>
/// <param name="Diagnostics">What is wrong or was assumed; paths are relative to the bow.</param>
public sealed record BowOutcome(BowShape? Shape, ImmutableArray<Diagnostic> Diagnostics);
