using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts.Film;

/// <summary>Turns chosen rolls into marks and pieces, in the order the pieces are wanted.</summary>
internal sealed class FilmPlacer
{
    private readonly ImmutableArray<RollOffer> offers;
    private readonly Dictionary<(long Across, long Along), Queue<FilmPieceCopy>> waiting;

    internal FilmPlacer(ImmutableArray<FilmPieceCopy> copies, ImmutableArray<RollOffer> offers)
    {
        this.offers = offers;
        waiting = copies.GroupBy(copy => (copy.Across, copy.Along)).ToDictionary(group => group.Key, group => new Queue<FilmPieceCopy>(group));
        InOrder = copies;
    }

    /// <summary>What no roll was left for, in the cutting order.</summary>
    internal IEnumerable<FilmPieceCopy> Unplaced
    {
        get
        {
            HashSet<FilmPieceCopy> left = [.. waiting.Values.SelectMany(queue => queue)];
            return InOrder.Where(left.Contains);
        }
    }

    private ImmutableArray<FilmPieceCopy> InOrder { get; }

    internal ImmutableArray<CutRoll> Place(ImmutableArray<RollChoice> rolls) =>
        [.. rolls.OrderBy(roll => roll.Levels.Min(OrderOf)).ThenBy(roll => roll.Offer).Select(Place)];

    private static int OrderOf(ImmutableArray<FilmSize> level) => level.Min(size => size.Order);

    private CutRoll Place(RollChoice roll)
    {
        RollOffer offer = offers[roll.Offer];
        var levels = ImmutableArray.CreateBuilder<FilmLevel>(roll.Levels.Length);
        long from = 0;
        foreach (ImmutableArray<FilmSize> sizes in roll.Levels.OrderBy(OrderOf))
        {
            long length = sizes.Max(size => size.Along);
            levels.Add(Level(offer, from, length, sizes));
            from += length;
        }
        return new CutRoll(offer, levels.ToImmutable());
    }

    private FilmLevel Level(RollOffer offer, long from, long length, ImmutableArray<FilmSize> sizes)
    {
        var pieces = ImmutableArray.CreateBuilder<PlacedPiece>();
        var offcuts = ImmutableArray.CreateBuilder<FilmOffcut>();
        long offset = 0;
        foreach (FilmSize size in sizes.OrderBy(size => size.Order))
        {
            FilmPieceCopy copy = (size.IsTurned ? waiting[(size.Along, size.Across)] : waiting[(size.Across, size.Along)]).Dequeue();
            // A piece alone keeps the whole width of the roll: what is over is pulled past the edge and trimmed there.
            Length across = sizes.Length == 1 ? offer.Width : Of(size.Across);
            pieces.Add(new PlacedPiece(copy.Piece.Id, copy.Copy, size.IsTurned ? copy.Label + ", turned" : copy.Label, Of(offset), across, Of(size.Along)));
            if (size.Along < length) offcuts.Add(new FilmOffcut(across, Of(length - size.Along)));
            offset += size.Across;
        }
        if (sizes.Length > 1 && offset < FilmTicks.Given(offer.Width)) offcuts.Add(new FilmOffcut(offer.Width - Of(offset), Of(length)));
        return new FilmLevel(Of(from), Of(from + length), pieces.ToImmutable(), offcuts.ToImmutable());
    }

    private static Length Of(long ticks) => Length.FromMetres(ticks / FilmTicks.PerMetre);
}
