using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Pricing;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>The stock lengths that an item and size can be cut from, and by what they rank.</summary>
/// <param name="Offers">Those on hand first, then those to be bought; each kind shortest first.</param>
/// <param name="Rank">By what they rank.</param>
internal sealed record StockOffers(ImmutableArray<StockOffer> Offers, CutRank Rank)
{
    /// <summary>Lengths of the plan; else those its price book lists; else the usual ones. Stock on hand comes on top.</summary>
    public static StockOffers Of(
        ImmutableArray<MaterialLine> lines, TakeoffList takeoff, Plan plan, PriceBook prices, UnitSystem units, ImmutableArray<Diagnostic>.Builder found)
    {
        MaterialLine first = lines[0];
        ImmutableArray<Length> lengths = [.. lines.SelectMany(line => line.StockLengths).Where(length => length > Length.Zero).Distinct().Order()];
        if (lengths.IsEmpty) lengths = prices.LengthsOf(first.Item, first.Size);
        if (lengths.IsEmpty)
        {
            lengths = CutDefaults.UsualLengths(first.Item, units);
            found.Add(new Diagnostic("cuts.usual-lengths", Severity.Assumption, "prices.items",
                $"Which lengths of {first.Name} can be had was not given; these are taken, from memory.", null,
                string.Join(", ", lengths.Select(length => TapeText.Of(length, units)))));
        }

        ImmutableArray<(Length Length, PackPrice Price)> bought =
            [.. lengths.Select(length => (length, prices.OfStick(first.Item, first.Size, first.Section, length, lengths.Length == 1)))];
        decimal? dearest = bought.Max(offer => offer.Price.Each is { } each ? each.Amount / (decimal)offer.Length.Metres : (decimal?)null);
        CutRank rank = dearest is null ? CutRank.Length : bought.All(offer => offer.Price.Each is not null) ? CutRank.Price : CutRank.PriceWithGaps;
        return new StockOffers(
        [
            .. OnHand(plan, takeoff, first.Item, first.Size),
            .. bought.Select(offer => new StockOffer(offer.Length, OnHand: false, null, offer.Price,
                offer.Price.Each ?? new Money(decimal.Round((dearest ?? 1) * (decimal)offer.Length.Metres, 4)))),
        ], rank);
    }

    private static IEnumerable<StockOffer> OnHand(Plan plan, TakeoffList takeoff, string item, string size) => StockInBarn
        .Of(plan, takeoff.Lines, item, size)
        .Where(stock => stock.Length is { } length && length.Value > Length.Zero)
        .GroupBy(stock => stock.Length!.Value.Value)
        .OrderBy(group => group.Key)
        .Select(group => new StockOffer(group.Key, OnHand: true, group.Sum(stock => stock.Count ?? 1), null, Money.Zero));
}
