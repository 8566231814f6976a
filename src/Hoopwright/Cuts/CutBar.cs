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

    /// <summary>What has become of it.</summary>
    public CutBarState State { get; init; }

    /// <summary>The entry of the site book that says what has become of it; null where none does, or it has no identity.</summary>
    public string? EntryId { get; init; }

    /// <summary>True when it is what was left of another one, so that it need not be bought.</summary>
    public bool IsRest { get; init; }

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
