using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts.Film;

/// <summary>
/// Chooses rolls of film and says where to cut them: straight across at running marks, and slit lengthwise where narrow
/// pieces lie side by side.
/// </summary>
public static class FilmCutter
{
    /// <summary>Up to about this many steps, some tenths of a second, all sets of pieces are tried.</summary>
    private const double MostWork = 4e6;

    /// <summary>Chooses and cuts. Never throws for a plan: what no roll can give is an error among the diagnostics.</summary>
    /// <param name="cover">The pieces.</param>
    /// <param name="plan">The plan: its rolls, their prices, and film on hand.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    public static FilmCutOutcome Cut(CoverPlan cover, Plan plan, Answers answers)
    {
        var found = ImmutableArray.CreateBuilder<Diagnostic>();
        ImmutableArray<RollOffer> offers = RollOffers.Of(plan, answers, found);
        bool turn = answers.Take("cover.turnFilm", CoverDefaults.TurnFilm, plan.Cover.TurnFilm);
        ImmutableArray<CoverPiece> fitting = [.. cover.Pieces.Where(piece => FitsSome(piece, offers, turn))];
        foreach (CoverPiece piece in cover.Pieces.Except(fitting)) found.Add(NoRoll(piece, answers.Units));

        RollRank rank = offers.All(offer => offer.Price is not null) ? RollRank.Price : RollRank.Area;
        if (rank == RollRank.Area)
        {
            found.Add(new Diagnostic("cuts.film.ranked-by-area", Severity.Assumption, "cover.rolls",
                "Not every roll of film has a price, so the rolls with the least area in all are chosen.", null, "a price for each roll"));
        }

        bool slit = answers.Take("cover.slitFilm", CoverDefaults.SlitFilm, plan.Cover.SlitFilm);
        ImmutableArray<SearchOffer> searched = [.. offers.Select(offer => Searched(offer, rank))];
        ImmutableArray<FilmPieceCopy> copies = Copies(fitting);
        ImmutableArray<FilmSize> sizes = SizesOf(copies, turn);
        FilmChoice choice = FilmChoice.Of(sizes, searched, slit, MostWork);
        var placer = new FilmPlacer(copies, offers);
        ImmutableArray<CutRoll> cut = placer.Place(choice.Rolls);
        foreach (FilmPieceCopy copy in placer.Unplaced) found.Add(RunOut(copy));

        ImmutableArray<RollOffer> bought = [.. cut.Select(roll => roll.Offer).Where(offer => !offer.OnHand)];
        decimal cost = bought.Sum(offer => CostOf(offer, rank));
        var result = new FilmCutPlan
        {
            Rolls = cut,
            RankedBy = rank,
            Cost = bought.All(offer => offer.Price is not null) ? bought.Aggregate(Money.Zero, (sum, offer) => sum + (offer.Price ?? Money.Zero)) : null,
            BoughtArea = bought.Aggregate(Area.Zero, (sum, offer) => sum + offer.Area),
            LowerBound = choice.Bound is { } bound ? Math.Min(cost, bound) : cost,
            Proven = choice.Bound is null && choice.LeftOut.All(count => count == 0),
            UnplacedIds = [.. cover.Pieces.Except(fitting).Select(piece => piece.Id).Concat(placer.Unplaced.Select(copy => copy.Piece.Id)).Distinct()],
        };
        return new FilmCutOutcome(result, found.ToImmutable());
    }

    private static bool FitsSome(CoverPiece piece, ImmutableArray<RollOffer> offers, bool turn)
    {
        (long across, long along) = (FilmTicks.Needed(piece.AcrossRoll), FilmTicks.Needed(piece.AlongRoll));
        return offers.Any(offer => Fits(offer, across, along) || (turn && Fits(offer, along, across)));

        static bool Fits(RollOffer offer, long across, long along) => across <= FilmTicks.Given(offer.Width) && along <= FilmTicks.Given(offer.Length);
    }

    private static ImmutableArray<FilmPieceCopy> Copies(ImmutableArray<CoverPiece> pieces) =>
        [.. pieces.SelectMany(piece => Enumerable.Range(1, piece.Count).Select(copy => new FilmPieceCopy(piece, copy)))];

    private static ImmutableArray<FilmSize> SizesOf(ImmutableArray<FilmPieceCopy> copies, bool turn) =>
        [.. copies.Select((copy, order) => (copy, order)).GroupBy(item => (item.copy.Across, item.copy.Along))
            .Select(group => new FilmSize(group.Key.Across, group.Key.Along, group.First().order, group.Count(), turn))];

    private static SearchOffer Searched(RollOffer offer, RollRank rank) => new(
        FilmTicks.Given(offer.Width), FilmTicks.Given(offer.Length), CostOf(offer, rank), offer.OnHand, offer.Limit);

    private static decimal CostOf(RollOffer offer, RollRank rank) => offer.OnHand ? 0 : rank switch
    {
        RollRank.Price => offer.Price?.Amount ?? 0,
        RollRank.Area => (decimal)offer.Area.SquareMetres,
    };

    private static Diagnostic NoRoll(CoverPiece piece, UnitSystem units)
    {
        RollOffer? usual = RollOffers.Usual(units)
            .Where(offer => FitsSome(piece, [offer], turn: false))
            .MinBy(offer => (offer.Width.Metres * offer.Length.Metres, offer.Length.Metres));
        string least = $"a roll at least {TapeText.Of(TapeText.RoundUpForFilm(piece.AcrossRoll, units), units)} wide and {TapeText.Of(TapeText.RoundUpForFilm(piece.AlongRoll, units), units)} long";
        return new Diagnostic("cuts.film.no-roll", Severity.Error, "cover.rolls",
            $"No roll of film is large enough for the {piece.Place}.",
            $"{TapeText.Of(piece.AcrossRoll, units)} across, {TapeText.Of(piece.AlongRoll, units)} along",
            usual is null ? least : $"{least}, such as {usual.Id}");
    }

    private static Diagnostic RunOut(FilmPieceCopy copy) => new(
        "cuts.film.rolls-run-out", Severity.Error, "cover.rolls",
        $"Rolls of film run out before the {copy.Label} is cut.", null, "a higher limit, or another roll");
}
