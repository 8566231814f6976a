using System.Collections.Immutable;

namespace Hoopwright.BeforeCuts;

/// <summary>The checks before film, posts, channel, boards and concrete, in the order of <see cref="CutCheckKind"/>; what is not in the plan has none.</summary>
/// <param name="All">The checks.</param>
public sealed record CutChecks(ImmutableArray<CutCheck> All)
{
    /// <summary>The check before something; null when the tunnel has none of it.</summary>
    /// <param name="kind">What is about to be cut.</param>
    public CutCheck? Of(CutCheckKind kind) => All.FirstOrDefault(check => check.Kind == kind);
}
