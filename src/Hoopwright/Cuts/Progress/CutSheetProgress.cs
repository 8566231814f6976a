using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts.Progress;

/// <summary>How far a cut list has got, and what the rest of it takes.</summary>
public sealed record CutSheetProgress
{
    /// <summary>How many stock pieces are cut.</summary>
    public required int Cut { get; init; }

    /// <summary>How many turned out bad.</summary>
    public required int Bad { get; init; }

    /// <summary>How many are still cut as they were planned.</summary>
    public required int Kept { get; init; }

    /// <summary>How many are cut otherwise than they were planned, or newly.</summary>
    public required int Changed { get; init; }

    /// <summary>What is to be bought beyond what was planned, by length.</summary>
    public required ImmutableArray<Length> Further { get; init; }

    /// <summary>True when no plan of this cost leaves more stock pieces as they were planned.</summary>
    public required bool FewestChanged { get; init; }
}
