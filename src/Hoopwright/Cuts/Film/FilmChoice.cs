using System.Collections.Immutable;
using System.Numerics;
using Hoopwright.Cutting;
using Hoopwright.Cutting.TwoStage;

namespace Hoopwright.Cuts.Film;

/// <summary>
/// Which rolls to cut and how: by trying all sets of pieces where there are few, else by the engine that cuts sheets in two stages.
/// </summary>
/// <param name="Rolls">The rolls.</param>
/// <param name="LeftOut">How many of each size no roll is left for.</param>
/// <param name="Bound">What no choice can go below; null when the choice costs just that.</param>
internal sealed record FilmChoice(ImmutableArray<RollChoice> Rolls, ImmutableArray<int> LeftOut, decimal? Bound)
{
    // Finer than any price, and enough for the area of a roll in square feet.
    private const decimal UnitsOfCost = 100_000_000m;

    // A share of the film that is left out counts in so many parts.
    private const int PartsOfFilm = 1000;

    // What a phone does in a few seconds.
    private static readonly CutEffort Effort = new(300_000_000);

    /// <summary>The choice.</summary>
    /// <param name="sizes">What is wanted; each must fit some roll.</param>
    /// <param name="offers">The rolls there are.</param>
    /// <param name="slit">False when film may be cut straight across only.</param>
    /// <param name="mostWork">Up to how many steps all sets are tried.</param>
    internal static FilmChoice Of(ImmutableArray<FilmSize> sizes, ImmutableArray<SearchOffer> offers, bool slit, double mostWork)
    {
        if (FilmSearch.WorkOf(sizes.Select(size => size.Count), offers) > mostWork) return OfMany(sizes, offers, slit);
        (ImmutableArray<RollChoice> rolls, ImmutableArray<int> leftOut) = FilmSearch.Best(sizes, offers, slit);
        return new FilmChoice(rolls, leftOut, Bound: null);
    }

    private static FilmChoice OfMany(ImmutableArray<FilmSize> sizes, ImmutableArray<SearchOffer> offers, bool slit)
    {
        ImmutableArray<BigInteger> exact = [.. offers.Select(offer => new BigInteger(Math.Floor(offer.Cost * UnitsOfCost)))];
        BigInteger coin = BigInteger.Max(1, exact.Aggregate(BigInteger.Zero, BigInteger.GreatestCommonDivisor));
        // Costs without a common measure are rounded down: the bound still holds, and nothing is called proven.
        BigInteger most = BigInteger.One << 36;
        if (exact.Max() / coin > most) coin = (exact.Max() / most) + 1;
        bool whole = offers.Select((offer, index) => offer.Cost * UnitsOfCost == (decimal)exact[index] && exact[index] % coin == 0).All(isWhole => isWhole);

        ImmutableArray<long> costs = [.. exact.Select(cost => (long)(cost / coin))];
        Int128 film = sizes.Aggregate(Int128.Zero, (sum, size) => sum + ((Int128)size.Across * size.Along * size.Count));
        // Leaving a piece out costs more than any rolls do, and a large one more than a small one.
        long above = Math.Min(1 + (costs.Max() * sizes.Sum(size => size.Count)), 1L << 38);
        var job = new TwoStageJob(
            [.. sizes.Select(size => new TwoStagePiece(size.Across, size.Along, size.Count, size.MayTurn, MayRunOut(size) ? above * (1 + (long)((Int128)size.Across * size.Along * PartsOfFilm / film)) : null))],
            [.. offers.Select((offer, index) => new TwoStageStock(offer.Width, offer.Length, costs[index], offer.Limit))],
            slit);
        TwoStagePlan plan = TwoStageCutter.Solve(job, Effort) ?? throw new InvalidOperationException("Rolls ran out where there is no end of them.");
        decimal? bound = plan.Proven && whole ? null : plan.LeftOut.Any(count => count > 0) ? 0 : plan.Bound * (decimal)coin / UnitsOfCost;
        return new FilmChoice([.. plan.Sheets.Select(RollOf)], plan.LeftOut, bound);

        bool MayRunOut(FilmSize size) => !offers.Any(offer => offer.Limit is null && TwoStageCutter.Holds(
            new TwoStageStock(offer.Width, offer.Length, 0), new TwoStagePiece(size.Across, size.Along, 1, size.MayTurn)));

        RollChoice RollOf(TwoStageSheet sheet) => new(
            sheet.Stock, [.. sheet.Levels.Select(level => level.Select(place => place.Turned ? sizes[place.Piece].Turned : sizes[place.Piece]).ToImmutableArray())]);
    }
}
