using System.Collections.Immutable;

namespace Hoopwright.Cuts.Film;

/// <summary>Searches all pieces at once where that is quick, else lot after lot in the cutting order.</summary>
internal static class FilmLots
{
    /// <summary>The rolls, the sizes left out with how many, and whether all pieces were searched at once.</summary>
    internal static (ImmutableArray<RollChoice> Rolls, ImmutableArray<FilmSize> LeftOut, bool Whole) Best(
        ImmutableArray<FilmSize> sizes, ImmutableArray<SearchOffer> offers, bool slit, double mostWork)
    {
        var rolls = ImmutableArray.CreateBuilder<RollChoice>();
        var leftOut = ImmutableArray.CreateBuilder<FilmSize>();
        int lots = 0;
        foreach (ImmutableArray<FilmSize> lot in Lots(sizes, offers, mostWork))
        {
            lots++;
            (ImmutableArray<RollChoice> chosen, ImmutableArray<int> missing) = FilmSearch.Best(lot, offers, slit);
            rolls.AddRange(chosen);
            leftOut.AddRange(lot.Select((size, index) => size with { Count = missing[index] }).Where(size => size.Count > 0));
            offers = [.. offers.Select((offer, index) => offer with { Limit = offer.Limit - chosen.Count(roll => roll.Offer == index) })];
        }
        return (rolls.ToImmutable(), leftOut.ToImmutable(), lots <= 1);
    }

    /// <summary>Pieces in order, as many to a lot as the work allows, at least one.</summary>
    private static IEnumerable<ImmutableArray<FilmSize>> Lots(ImmutableArray<FilmSize> sizes, ImmutableArray<SearchOffer> offers, double mostWork)
    {
        List<FilmSize> lot = [];
        foreach (FilmSize size in sizes)
        {
            int left = size.Count;
            while (left > 0)
            {
                int taken = left;
                while (taken > 0 && FilmSearch.WorkOf([.. lot.Select(other => other.Count), taken], offers) > mostWork) taken--;
                if (taken == 0 && lot.Count == 0) taken = 1;
                if (taken > 0) lot.Add(size with { Count = taken });
                left -= taken;
                if (left == 0) break;
                yield return [.. lot];
                lot.Clear();
            }
        }
        if (lot.Count > 0) yield return [.. lot];
    }
}
