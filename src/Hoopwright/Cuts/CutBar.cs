using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts;

/// <summary>One stock piece and how it is cut. Its length is trim, pieces, kerf and leftover, exactly.</summary>
public sealed record CutBar
{
    /// <summary>Its number on the sheet, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The pattern of the sheet it is cut by, from 1.</summary>
    public required int Pattern { get; init; }

    /// <summary>The stock length.</summary>
    public required Length Stock { get; init; }

    /// <summary>True when it already lies in the barn.</summary>
    public required bool OnHand { get; init; }

    /// <summary>What is cut off its end first.</summary>
    public required Length Trim { get; init; }

    /// <summary>Its pieces in cutting order, longest first.</summary>
    public required ImmutableArray<CutBarPiece> Pieces { get; init; }

    /// <summary>What the saw turns to dust.</summary>
    public required Length KerfLost { get; init; }

    /// <summary>What is left after the last cut.</summary>
    public required Length Leftover { get; init; }

    /// <summary>True when the leftover is worth keeping.</summary>
    public required bool LeftoverUseful { get; init; }
}

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
