using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Cuts.Film;

/// <summary>The outcome of choosing rolls of film and cutting them.</summary>
/// <param name="Plan">The choice and the cuts.</param>
/// <param name="Diagnostics">What was found wrong or had to be assumed.</param>
public sealed record FilmCutOutcome(FilmCutPlan Plan, ImmutableArray<Diagnostic> Diagnostics);
