using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cuts.Progress;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>The cut list of one item and size.</summary>
public sealed record CutSheet
{
    /// <summary>The letter that its piece numbers begin with.</summary>
    public required string Letter { get; init; }

    /// <summary>The item.</summary>
    public required string Item { get; init; }

    /// <summary>Its size.</summary>
    public required string Size { get; init; }

    /// <summary>False for rope: it is cut with a knife at a mark, needs no saw stop, and its reel no drawing.</summary>
    public bool IsSawn => Items.IsSawn(Item);

    /// <summary>Width of the saw cut.</summary>
    public required Length Kerf { get; init; }

    /// <summary>Cut off the end of every stock piece before use.</summary>
    public required Length Trim { get; init; }

    /// <summary>The stock lengths that could be had, those on hand first.</summary>
    public required ImmutableArray<StockOffer> Offers { get; init; }

    /// <summary>The stock pieces in the order they are cut: alike ones together, longest first; those that are cut, bad or spare among them.</summary>
    public required ImmutableArray<CutBar> Bars { get; init; }

    /// <summary>How far it has got; null while nothing is said of it in the site book.</summary>
    public CutSheetProgress? Progress { get; init; }

    /// <summary>The different ways of cutting what is still to be cut, in the order of the bars.</summary>
    public required ImmutableArray<CutSheetPattern> Patterns { get; init; }

    /// <summary>Pieces of equal length, still to be cut, that can be cut against one saw stop, longest first.</summary>
    public required ImmutableArray<SawStop> Stops { get; init; }

    /// <summary>Joints of the runs that are joined from several pieces, run by run from its start.</summary>
    public required ImmutableArray<RunJoint> Joints { get; init; }

    /// <summary>Pieces longer than any stock: to be ordered to length.</summary>
    public required ImmutableArray<PieceNeed> MadeToLength { get; init; }

    /// <summary>By what the stock was chosen.</summary>
    public required CutRank RankedBy { get; init; }

    /// <summary>What the bought stock counts for in the search: money, or metres where ranked by length.</summary>
    public required Money CountsFor { get; init; }

    /// <summary>No way of cutting, with the joints that were considered, counts for less.</summary>
    public required Money LowerBound { get; init; }

    /// <summary>How many ways of placing the joints were considered; 1 when nothing is joined.</summary>
    public required int JoinsCompared { get; init; }

    /// <summary>True when every way of placing the joints was considered, and none left out because there were too many.</summary>
    public required bool AllJoinsCompared { get; init; }

    /// <summary>How sure the result is, in words: "proven least cost", or how far over the least possible it may be.</summary>
    public string Proof
    {
        get
        {
            string sought = RankedBy switch
            {
                CutRank.Price or CutRank.PriceWithGaps => "cost",
                CutRank.Length => "length (no price known)",
            };
            // Nothing can be told as a part of a bound of nothing.
            string sure = Proven ? "proven least " : LowerBound.Amount <= 0 ? "least found, not proven least, " : string.Create(CultureInfo.InvariantCulture, $"at most {Gap.Percent:0.#} % over the least possible ");
            string joints = JoinsCompared == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $" for the joints chosen from {JoinsCompared} ways");
            return sure + sought + joints;
        }
    }

    /// <summary>The same as a sentence, and what was considered.</summary>
    public string Says
    {
        get
        {
            string proof = Proof;
            string gaps = RankedBy switch
            {
                CutRank.Price => "",
                CutRank.PriceWithGaps => " Lengths without a price are counted at the dearest price by length of those that have one.",
                CutRank.Length => " Least length of stock was sought, since none of it has a price.",
            };
            string ways = JoinsCompared == 1 ? "" :
                $" The ways of placing the joints: whole stock pieces first, every choice of lengths or one main length, and equal pieces{(AllJoinsCompared ? "" : "; the least promising were left out")}.";
            return $"{char.ToUpperInvariant(proof[0])}{proof[1..]}.{gaps}{ways}";
        }
    }

    /// <summary>What the bought stock costs; null when no stock has a price, and the least length was sought instead.</summary>
    public Money? Cost => RankedBy == CutRank.Length ? null : CountsFor;

    /// <summary>True when <see cref="CountsFor"/> equals <see cref="LowerBound"/>: among the joints considered nothing is better.</summary>
    public bool Proven => CountsFor <= LowerBound;

    /// <summary>How far it stands over what nothing can beat, as a part of that; 0 when proven.</summary>
    public Ratio Gap => Proven || LowerBound.Amount <= 0 ? Ratio.Zero : Ratio.FromValue((double)((CountsFor.Amount - LowerBound.Amount) / LowerBound.Amount));

    /// <summary>Item and size as people say them together.</summary>
    public string Name => Size.Length == 0 ? Item : $"{Item} {Size}";

    /// <summary>How many stock pieces of one length, bought or on hand.</summary>
    public int BarsOf(Length length, bool onHand) => Bars.Count(bar => bar.Stock == length && bar.OnHand == onHand);
}
