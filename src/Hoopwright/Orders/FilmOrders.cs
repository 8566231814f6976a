using System.Collections.Immutable;
using Hoopwright.Cuts.Film;
using Hoopwright.Pricing;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>Rolls of film as the film cuts chose them.</summary>
internal static class FilmOrders
{
    public static IEnumerable<OrderLine> Of(ImmutableArray<MaterialLine> takeoff, FilmCutPlan film, PriceBook prices)
    {
        ImmutableArray<MaterialLine> lines = [.. takeoff.Where(line => line.Item == Items.Film)];
        if (lines.IsEmpty) yield break;
        foreach (var rolls in film.Rolls.GroupBy(roll => (roll.Offer.Width, roll.Offer.Length, roll.Offer.OnHand, roll.Offer.Price)))
        {
            int count = rolls.Count();
            bool onHand = rolls.Key.OnHand;
            PackPrice price = onHand ? new PackPrice(1, null, null, PriceOrigin.None) : prices.OfFilmRoll(rolls.Key.Price, rolls.First().Offer.Area);
            var line = new OrderLine
            {
                Item = Items.Film,
                Size = lines[0].Size,
                Width = rolls.Key.Width,
                Length = rolls.Key.Length,
                Supplier = ItemFacts.Of(Items.Film).Supplier,
                Unit = "roll",
                Needed = count,
                FromStock = onHand ? count : 0,
                Package = "roll",
                PerPackage = 1,
                Packages = onHand ? 0 : count,
                Price = price.Price,
                Origin = price.Origin,
                Stages = [],
                TakeoffIds = [.. lines.Select(each => each.Id)],
            };
            yield return line.Extension is { } cost ? line with { Stages = StageShares.Of(cost, [(lines[0].Stage, 1)]) } : line;
        }
    }
}
