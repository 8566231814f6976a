using System.Collections.Immutable;

namespace Hoopwright.Sheets.Drawings;

/// <summary>
/// One dimension of a drawing, for writers that have dimensions of their own. The same dimension is among the marks too, drawn
/// with its neighbours; marks that it stands for have <see cref="Mark.IsDimension"/>.
/// </summary>
/// <param name="Kind">How it measures.</param>
/// <param name="From">The point it measures from.</param>
/// <param name="To">The point it measures to.</param>
/// <param name="Line">A point of its line; of a running mark, where its leader ends.</param>
/// <param name="Text">What it says; without words where a gap of a row is left unwritten.</param>
/// <param name="Drawn">How it looks by itself.</param>
public sealed record Dimension(DimensionKind Kind, SheetPoint From, SheetPoint To, SheetPoint Line, TextMark Text, ImmutableArray<Mark> Drawn)
{
    /// <summary>What it measures, mm of paper.</summary>
    public double MeasuredMm => Kind switch
    {
        DimensionKind.Across or DimensionKind.MarkAcross => Math.Abs(To.XMm - From.XMm),
        DimensionKind.Up or DimensionKind.MarkUp => Math.Abs(To.YMm - From.YMm),
        DimensionKind.Aligned => From.DistanceMm(To),
    };
}
