using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Cover;

/// <summary>The outcome of planning the cover.</summary>
/// <param name="Plan">The pieces and how they are held; complete for every tunnel.</param>
/// <param name="Diagnostics">What wants a second look, assumptions apart.</param>
public sealed record CoverOutcome(CoverPlan Plan, ImmutableArray<Diagnostic> Diagnostics);
