using Hoopwright.Quantities;

namespace Hoopwright.Cuts;

/// <summary>A piece on a stock piece.</summary>
public sealed record CutBarPiece
{
    /// <summary>Its number, unique in all cut lists; carried onto drawings.</summary>
    public required string Number { get; init; }

    /// <summary>The member or run it is for.</summary>
    public required string MemberId { get; init; }

    /// <summary>What to write on it beside its number.</summary>
    public required string Label { get; init; }

    /// <summary>Where it goes, in words.</summary>
    public required string Place { get; init; }

    /// <summary>Length to cut.</summary>
    public required Length Length { get; init; }

    /// <summary>Where it starts, from the end of the stock piece as it is marked out with one tape, trim and kerfs included.</summary>
    public required Length From { get; init; }

    /// <summary>Where it ends: the mark to cut at, on the far side of which the saw runs.</summary>
    public Length To => From + Length;

    /// <summary>For a run joined from several pieces: which of them this is, from the run's start; 1 otherwise.</summary>
    public required int Part { get; init; }

    /// <summary>How many pieces the run is joined from; 1 for a piece of its own.</summary>
    public required int Parts { get; init; }
}
