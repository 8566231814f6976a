using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cutting;

/// <summary>
/// Pieces to be cut from bars at the least cost. A bar serves pieces while
/// sum(length + kerf) ≤ bar length − trim + kerf: every piece costs one saw cut, except that the last one may end with the bar.
/// </summary>
public sealed record CutJob
{
    /// <summary>What the pieces can be cut from.</summary>
    public required ImmutableArray<CutStock> Stock { get; init; }

    /// <summary>What is wanted; all of it, and nothing more, is cut.</summary>
    public required ImmutableArray<CutPiece> Pieces { get; init; }

    /// <summary>The width of the saw cut; 0 or more. Snips and knives have none.</summary>
    public Length Kerf { get; init; }

    /// <summary>What is cut off each bar before the first piece, to be square and sound; 0 or more.</summary>
    public Length Trim { get; init; }

    /// <summary>What leftovers are worth; null when nothing.</summary>
    public LeftoverRule? Leftover { get; init; }
}
