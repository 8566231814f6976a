using System.Collections.Immutable;

namespace Hoopwright.Cuts.Film;

/// <summary>
/// The cheapest rolls for some pieces, exactly, by dynamic programming over sets of pieces: first the shortest stretch of a
/// roll of each width that gives a set, then the offers one after another. Pieces keep their
/// direction along the roll unless they may be turned.
/// </summary>
internal sealed class FilmSearch
{
    private const long Never = long.MaxValue / 4;

    private readonly ImmutableArray<FilmSize> sizes;
    private readonly ImmutableArray<SearchOffer> offers;
    private readonly bool slit;
    private readonly PieceSets sets;
    private readonly ImmutableArray<(long Length, long[] Widths)> stretches;
    private readonly Dictionary<long, Stretches> byWidth = [];

    private FilmSearch(ImmutableArray<FilmSize> sizes, ImmutableArray<SearchOffer> offers, bool slit)
    {
        this.slit = slit;
        this.sizes = sizes;
        this.offers = offers;
        sets = new PieceSets([.. sizes.Select(size => size.Count)]);
        stretches = [.. sizes.SelectMany(size => size.MayTurn ? new[] { size.Along, size.Across } : [size.Along]).Distinct().Order().Select(length => (length, WidthsWithin(length)))];
        foreach (long width in offers.Select(offer => offer.Width).Distinct()) byWidth.Add(width, ShortestFor(width));
    }

    /// <summary>Steps that a search takes, about: what decides whether it is made.</summary>
    internal static double WorkOf(IEnumerable<int> counts, ImmutableArray<SearchOffer> offers)
    {
        int pieces = counts.Sum();
        double passes = offers.Sum(offer => (double)offer.Passes(pieces)) + offers.Select(offer => offer.Width).Distinct().Count();
        return PieceSets.PairsOf(counts) * passes;
    }

    /// <summary>The best rolls, and how many of each size they leave out because no roll is left for them.</summary>
    internal static (ImmutableArray<RollChoice> Rolls, ImmutableArray<int> LeftOut) Best(
        ImmutableArray<FilmSize> sizes, ImmutableArray<SearchOffer> offers, bool slit)
    {
        if (sizes.IsEmpty) return ([], []);
        return new FilmSearch(sizes, offers, slit).Solve();
    }

    /// <summary>The least width that each set takes side by side within a stretch of roll.</summary>
    private long[] WidthsWithin(long length)
    {
        var widths = new long[sets.Count];
        for (int set = 1; set < sets.Count; set++)
        {
            int first = sets.FirstSize(set);
            widths[set] = Math.Min(Never, widths[set - sets.One(first)] + sizes[first].WidthWithin(length, Never));
        }
        return widths;
    }

    /// <summary>The shortest stretch that holds each set side by side on a roll of a width; <see cref="Never"/> where none does.</summary>
    private long[] SideBySideOn(long width)
    {
        var lengths = new long[sets.Count];
        Array.Fill(lengths, Never);
        foreach ((long length, long[] widths) in stretches)
        {
            for (int set = 1; set < sets.Count; set++)
            {
                if (lengths[set] == Never && widths[set] <= width) lengths[set] = length;
            }
        }
        return lengths;
    }

    /// <summary>The shortest stretch of a roll that gives each set, and the level it begins with.</summary>
    private Stretches ShortestFor(long width)
    {
        var shortest = new long[sets.Count];
        var level = new int[sets.Count];
        long[] lengths = SideBySideOn(width);
        for (int set = 1; set < sets.Count; set++)
        {
            shortest[set] = Never;
            int first = sets.FirstSize(set);
            foreach (int part in sets.PartsOf(set))
            {
                // Some level holds a piece of the first size; looking at it first loses nothing.
                if (sets.CountOf(part, first) == 0 || lengths[part] == Never || (!slit && part != sets.One(first))) continue;
                long length = lengths[part] + shortest[set - part];
                if (length >= shortest[set]) continue;
                shortest[set] = length;
                level[set] = part;
            }
        }
        return new Stretches(shortest, level, lengths);
    }

    private (ImmutableArray<RollChoice> Rolls, ImmutableArray<int> LeftOut) Solve()
    {
        var scores = new RollScore[sets.Count];
        Array.Fill(scores, RollScore.None);
        scores[0] = default;
        int pieces = sizes.Sum(size => size.Count);
        List<(int Offer, int[] Taken)> passes = [];
        for (int offer = 0; offer < offers.Length; offer++)
        {
            for (int pass = 0; pass < offers[offer].Passes(pieces); pass++) passes.Add((offer, Take(offers[offer], ref scores)));
        }

        int placed = MostPlaced(scores);
        var rolls = ImmutableArray.CreateBuilder<RollChoice>();
        int left = placed;
        for (int pass = passes.Count - 1; pass >= 0; pass--)
        {
            (int offer, int[] taken) = passes[pass];
            while (taken[left] != 0)
            {
                rolls.Add(new RollChoice(offer, LevelsOf(offers[offer].Width, taken[left])));
                left -= taken[left];
                if (offers[offer].Limit is not null) break;
            }
        }
        int missing = sets.Everything - placed;
        return (rolls.ToImmutable(), [.. Enumerable.Range(0, sizes.Length).Select(size => sets.CountOf(missing, size))]);
    }

    /// <summary>
    /// Lets one more roll of an offer be used, or any number of an unlimited one; gives for every set what that roll takes
    /// of it.
    /// </summary>
    private int[] Take(SearchOffer offer, ref RollScore[] scores)
    {
        long[] shortest = byWidth[offer.Width].Shortest;
        var next = (RollScore[])scores.Clone();
        RollScore[] before = offer.Limit is null ? next : scores;
        var taken = new int[sets.Count];
        for (int set = 1; set < sets.Count; set++)
        {
            foreach (int part in sets.PartsOf(set))
            {
                if (part == 0 || shortest[part] > offer.Length) continue;
                RollScore score = before[set - part].Plus(offer.ScoreOf(shortest[part]));
                if (score.CompareTo(next[set]) >= 0) continue;
                next[set] = score;
                taken[set] = part;
            }
        }
        scores = next;
        return taken;
    }

    /// <summary>The set with the most film that there are rolls for: everything, unless they run out.</summary>
    private int MostPlaced(RollScore[] scores)
    {
        int best = 0;
        Int128 most = 0;
        for (int set = sets.Everything; set > 0; set--)
        {
            if (scores[set].IsNone) continue;
            if (set == sets.Everything) return set;
            Int128 area = 0;
            for (int size = 0; size < sizes.Length; size++) area += (Int128)sets.CountOf(set, size) * sizes[size].Across * sizes[size].Along;
            if (area <= most) continue;
            (best, most) = (set, area);
        }
        return best;
    }

    private ImmutableArray<ImmutableArray<FilmSize>> LevelsOf(long width, int set)
    {
        var levels = ImmutableArray.CreateBuilder<ImmutableArray<FilmSize>>();
        Stretches on = byWidth[width];
        for (int left = set; left != 0; left -= on.Level[left])
        {
            int part = on.Level[left];
            levels.Add([.. sizes.SelectMany((size, index) => Enumerable.Repeat(size.LaidWithin(on.SideBySide[part]), sets.CountOf(part, index)))]);
        }
        return levels.ToImmutable();
    }

    private sealed record Stretches(long[] Shortest, int[] Level, long[] SideBySide);
}
