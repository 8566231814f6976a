using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts;

/// <summary>How everything that comes in lengths is cut.</summary>
/// <param name="Sheets">One an item and size.</param>
/// <param name="Diagnostics">What cannot be cut, and what would do.</param>
public sealed record CutSheets(ImmutableArray<CutSheet> Sheets, ImmutableArray<Diagnostic> Diagnostics);

/// <summary>How one item of one size is cut.</summary>
public sealed record CutSheet
{
    /// <summary>The item.</summary>
    public required string Item { get; init; }

    /// <summary>The size; empty where there is only one.</summary>
    public required string Size { get; init; }

    /// <summary>Width of the saw cut.</summary>
    public required Length Kerf { get; init; }

    /// <summary>Cut off the end of every bar before use.</summary>
    public required Length Trim { get; init; }

    /// <summary>The bars in the order they are cut: longest first piece first, so that long stock is kept for long pieces.</summary>
    public required ImmutableArray<CutBar> Bars { get; init; }

    /// <summary>What the bars cost; null when there is no price and the least length was sought instead.</summary>
    public required Money? Cost { get; init; }

    /// <summary>True when no other way of cutting these pieces costs less (or, without prices, takes less length).</summary>
    public required bool Proven { get; init; }

    /// <summary>How far the cost is over what no way of cutting can beat; 0 when proven.</summary>
    public required Ratio Gap { get; init; }

    /// <summary>How many ways of joining the long runs were compared; 0 when none may be joined.</summary>
    public required int JoinsCompared { get; init; }

    /// <summary>Joints of the runs, with where they fall, from the start of the run.</summary>
    public required ImmutableArray<RunJoint> Joints { get; init; }

    /// <summary>Item and size as people say them together.</summary>
    public string Name => Size.Length == 0 ? Item : $"{Item} {Size}";

    /// <summary>Bars that are cut alike, with how many.</summary>
    public ImmutableArray<(CutBar First, int Times)> Patterns =>
    [
        .. Bars.GroupBy(bar => (bar.Stock, bar.OnHand, string.Join('|', bar.Pieces.Select(piece => piece.Length.Metres.ToString("R", System.Globalization.CultureInfo.InvariantCulture)))))
            .Select(group => (group.First(), group.Count())),
    ];
}

/// <summary>A bar, board or stick and the pieces cut from it.</summary>
/// <param name="Number">1 for the first of the sheet.</param>
/// <param name="Stock">Its whole length.</param>
/// <param name="OnHand">True when it lies in the barn already.</param>
/// <param name="Pieces">Pieces in cutting order, longest first.</param>
/// <param name="Leftover">What stays of it.</param>
/// <param name="KerfLost">What the saw turns to dust.</param>
/// <param name="LeftoverUseful">True when the leftover is worth keeping.</param>
public sealed record CutBar(int Number, Length Stock, bool OnHand, ImmutableArray<BarPiece> Pieces, Length Leftover, Length KerfLost, bool LeftoverUseful);

/// <summary>A piece on a bar.</summary>
/// <param name="Number">Number of the piece in its sheet; written on it.</param>
/// <param name="Length">Length to cut.</param>
/// <param name="MemberId">The member or run it is for.</param>
/// <param name="Place">Where it goes, in words.</param>
public sealed record BarPiece(int Number, Length Length, string MemberId, string Place);

/// <summary>A joint of a run that is made of several pieces.</summary>
/// <param name="MemberId">The member or run.</param>
/// <param name="At">Distance of the joint from the start of the run.</param>
public sealed record RunJoint(string MemberId, Length At);
