using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Cover;

/// <summary>One piece of film, as it is cut.</summary>
public sealed record CoverPiece
{
    /// <summary>Its name.</summary>
    public required string Id { get; init; }

    /// <summary>What it covers.</summary>
    public required CoverRole Role { get; init; }

    /// <summary>Where, in words.</summary>
    public required string Place { get; init; }

    /// <summary>Length to cut along the roll, already rounded up to the cutting step.</summary>
    public required Length AlongRoll { get; init; }

    /// <summary>Least width of roll that serves, exact.</summary>
    public required Length AcrossRoll { get; init; }

    /// <summary>What <see cref="AlongRoll"/> is made of, before rounding, in order.</summary>
    public required ImmutableArray<PiecePart> AlongParts { get; init; }

    /// <summary>What <see cref="AcrossRoll"/> is made of, in order.</summary>
    public required ImmutableArray<PiecePart> AcrossParts { get; init; }

    /// <summary>
    /// The outline it has when finished and trimmed, in its own flat plane: across the piece, and up or along it.
    /// </summary>
    public required PlanePath Finished { get; init; }

    /// <summary>Area of the finished outline.</summary>
    public required Area FinishedArea { get; init; }

    /// <summary>How many layers of it.</summary>
    public required int Count { get; init; }
}

/// <summary>A part of a cut size.</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="Length">How much.</param>
/// <param name="RulePath">The place in the plan where it can be changed; null when it comes from the geometry.</param>
public sealed record PiecePart(string Name, Length Length, string? RulePath);
