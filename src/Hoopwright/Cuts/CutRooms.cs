using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cutting;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts;

/// <summary>
/// The room that pieces are given on stock while it is chosen. It hangs on the exact length alone, not on the tape, so that a plan shown in
/// feet and one shown in metres buy the same. It is the exact length up to the next 1/16 in; or the exact length itself where all pieces and the
/// saw cut are whole millimetres. One grid for all keeps the search exact and short.
/// </summary>
internal sealed class CutRooms
{
    private const double SameLengthM = 1e-7;
    private readonly ImmutableArray<Length> usable;
    private readonly Length trim;
    private readonly bool toTheHair;
    private readonly UnitSystem grid;

    /// <param name="exact">The exact lengths of all pieces.</param>
    /// <param name="offers">The stock.</param>
    /// <param name="kerf">Width of the saw cut.</param>
    /// <param name="trim">Cut off the end of every stock piece.</param>
    /// <param name="toTheHair">
    /// How a piece is taken that is as long as a stock piece and takes the whole of it: true for its exact length, false for the mark of the
    /// grid below.
    /// </param>
    public CutRooms(IEnumerable<Length> exact, ImmutableArray<StockOffer> offers, Length kerf, Length trim, bool toTheHair = false)
    {
        (this.trim, this.toTheHair) = (trim, toTheHair);
        usable = [.. offers.Where(offer => offer.Limit is null or > 0).Select(offer => offer.Length - trim).Distinct().Order()];
        grid = exact.Append(kerf).All(length => JointLayout.GrainsOf(TapeText.RoundToMark(length, UnitSystem.Metric)) == JointLayout.GrainsOf(length)) ? UnitSystem.Metric : UnitSystem.UsCustomary;
        Kerf = TapeText.RoundUpForLimit(kerf, grid);
    }

    /// <summary>The room of a saw cut.</summary>
    public Length Kerf { get; }

    /// <summary>What the room of a piece depends on besides the stock, in one number.</summary>
    public int Key => ((int)grid * 2) + (toTheHair ? 1 : 0);

    /// <summary>The sixteenth of an inch at or below a length: where joints of runs are put, whichever tape they are read on.</summary>
    public static Length Sixteenth(Length length) => TapeText.RoundDownForLimit(length, UnitSystem.UsCustomary);

    /// <summary>The room of a piece.</summary>
    public Length Of(Length exact)
    {
        Length room = TapeText.RoundUpForLimit(exact, grid);
        Length whole = usable.FirstOrDefault(length => exact.Metres <= length.Metres + SameLengthM, room);
        return room <= whole ? room : Whole(whole);
    }

    /// <summary>True when pieces that take a whole stock piece were also put side by side on a longer one that is a hair too short for them.</summary>
    public bool Overfills(CutPlan plan, ImmutableArray<StockOffer> offers)
    {
        if (toTheHair || !plan.Found) return false;
        Dictionary<long, Length> real = [];
        foreach (Length whole in usable) real[JointLayout.GrainsOf(Whole(whole))] = whole;
        return plan.Patterns.Any(pattern =>
        {
            Length[] pieces = [.. pattern.Pieces.Select(id => long.Parse(id, CultureInfo.InvariantCulture)).Select(grains => real.GetValueOrDefault(grains, JointLayout.LengthOf(grains)))];
            double takenM = pieces.Sum(piece => piece.Metres) + (Kerf.Metres * (pieces.Length - 1));
            return takenM > (offers[int.Parse(pattern.StockId, CultureInfo.InvariantCulture)].Length - trim).Metres + SameLengthM;
        });
    }

    private Length Whole(Length length) => toTheHair ? length : TapeText.RoundDownForLimit(length, grid);
}
