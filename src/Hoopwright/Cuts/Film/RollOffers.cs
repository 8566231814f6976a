using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Cuts.Film;

/// <summary>The rolls to choose from: those on hand, then those of the plan, or else the usual sizes.</summary>
internal static class RollOffers
{
    private static Usual<string> UsualSizes(UnitSystem units) => new(
        units switch
        {
            UnitSystem.UsCustomary => "16 ft to 56 ft wide by even feet, 50, 100, 110, 150 or 200 ft long",
            UnitSystem.Metric => "5 m to 17 m wide by half metres, 15, 30, 35, 50 or 60 m long",
        },
        "Film is taken to come in these rolls; no seller was asked, so list the rolls you can get.", Citation.FromMemory, Matters: true);

    private static readonly ImmutableArray<int> UsualLengthsFt = [50, 100, 110, 150, 200];
    private static readonly ImmutableArray<int> UsualLengthsM = [15, 30, 35, 50, 60];

    internal static ImmutableArray<RollOffer> Usual(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary =>
        [
            .. from step in Enumerable.Range(8, 21)
               from lengthFt in UsualLengthsFt
               select new RollOffer(FormattableString.Invariant($"{2 * step} ft x {lengthFt} ft"),
                   Length.FromFeet(2 * step), Length.FromFeet(lengthFt), Price: null, Limit: null, OnHand: false),
        ],
        UnitSystem.Metric =>
        [
            .. from half in Enumerable.Range(10, 25)
               from lengthM in UsualLengthsM
               select new RollOffer(FormattableString.Invariant($"{half / 2.0:0.#} m x {lengthM} m"),
                   Length.FromMetres(half / 2.0), Length.FromMetres(lengthM), Price: null, Limit: null, OnHand: false),
        ],
    };

    internal static ImmutableArray<RollOffer> Of(Plan plan, Answers answers, ImmutableArray<Diagnostic>.Builder found)
    {
        var offers = ImmutableArray.CreateBuilder<RollOffer>();
        for (int index = 0; index < plan.Stock.Length; index++)
        {
            StockOnHand stock = plan.Stock[index];
            if (!string.Equals(stock.Item, "film", StringComparison.OrdinalIgnoreCase)) continue;
            Add(FormattableString.Invariant($"stock[{index}]"), stock.Width, stock.Length, Money.Zero, stock.Count ?? 1, onHand: true);
        }
        for (int index = 0; index < plan.Cover.Rolls.Length; index++)
        {
            FilmRoll roll = plan.Cover.Rolls[index];
            Add(FormattableString.Invariant($"cover.rolls[{index}]"), roll.Width, roll.Length, roll.Price?.Value, roll.Limit, onHand: false);
        }
        if (plan.Cover.Rolls.IsEmpty)
        {
            answers.Take("cover.rolls", UsualSizes(answers.Units), (string?)null);
            offers.AddRange(Usual(answers.Units));
        }
        return offers.ToImmutable();

        void Add(string path, Written<Length>? width, Written<Length>? length, Money? price, int? limit, bool onHand)
        {
            if (width is not { } wide || length is not { } along || wide.Value <= Length.Zero || along.Value <= Length.Zero)
            {
                found.Add(new Diagnostic("cuts.film.roll-without-size", Severity.Error, path,
                    "A roll of film needs its width, unfolded, and its length.", null, "width: 40 ft, length: 100 ft"));
                return;
            }
            if (limit is null or > 0) offers.Add(new RollOffer(path, wide.Value, along.Value, price, limit, onHand));
        }
    }
}
