using System.Collections.Immutable;

namespace Hoopwright.Cuts;

/// <summary>One way of cutting a stock piece.</summary>
/// <param name="Number">Its number on the sheet, from 1.</param>
/// <param name="Bars">The bars cut so; at least one.</param>
public sealed record CutSheetPattern(int Number, ImmutableArray<CutBar> Bars)
{
    /// <summary>The first bar cut so; the others differ in the numbers of their pieces alone.</summary>
    public CutBar First => Bars[0];

    /// <summary>How many bars are cut so.</summary>
    public int Times => Bars.Length;
}
