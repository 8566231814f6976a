using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Layout;

/// <summary>The outcome of laying a plan out.</summary>
/// <param name="Tunnel">The tunnel; null when the plan has an error that leaves none.</param>
/// <param name="Diagnostics">Everything found, assumptions apart.</param>
public sealed record LayoutOutcome(Tunnel? Tunnel, ImmutableArray<Diagnostic> Diagnostics);
