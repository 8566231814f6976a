using System.Collections.Immutable;

namespace Hoopwright.Cutting;

/// <summary>A cutting job in plain numbers: every length in one unit, every price in one unit, as a job file gives them.</summary>
public sealed record UnitlessCutJob
{
    /// <summary>What the pieces can be cut from.</summary>
    public required ImmutableArray<UnitlessCutStock> Stock { get; init; }

    /// <summary>What is wanted.</summary>
    public required ImmutableArray<UnitlessCutPiece> Pieces { get; init; }

    /// <summary>The width of the saw cut; 0 or more.</summary>
    public decimal Kerf { get; init; }

    /// <summary>What is cut off each bar before the first piece; 0 or more.</summary>
    public decimal Trim { get; init; }

    /// <summary>What leftovers are worth; null when nothing.</summary>
    public UnitlessLeftoverRule? Leftover { get; init; }
}
