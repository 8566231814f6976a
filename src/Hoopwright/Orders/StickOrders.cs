using System.Collections.Immutable;
using Hoopwright.Cuts;
using Hoopwright.Pricing;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>Boards, posts, tubes and channel, by the stock lengths that the cut lists chose.</summary>
internal static class StickOrders
{
    public static IEnumerable<OrderLine> Of(ImmutableArray<MaterialLine> takeoff, CutSheets cuts, PriceBook prices)
    {
        foreach (CutSheet sheet in cuts.Sheets)
        {
            ImmutableArray<MaterialLine> lines =
                [.. takeoff.Where(line => line.Unit == MaterialUnit.CutLengths && line.Item == sheet.Item && line.Size == sheet.Size)];
            ImmutableArray<(BuildStage, decimal)> weights = [.. lines.GroupBy(line => line.Stage)
                .Select(group => (group.Key, group.Sum(line => line.Pieces.Sum(piece => (decimal)piece.Exact.Metres))))];
            foreach (IGrouping<Length, CutBar> bars in sheet.Bars.Where(bar => !bar.IsRest).GroupBy(bar => bar.Stock).OrderBy(group => group.Key))
            {
                PackPrice? price = sheet.Offers.FirstOrDefault(offer => !offer.OnHand && offer.Length == bars.Key)?.Price;
                int onHand = bars.Count(bar => bar.OnHand);
                yield return Line(sheet, lines, weights, bars.Key, bars.Count(), onHand, price ?? new PackPrice(1, bars.Key, null, PriceOrigin.None));
            }
            foreach (IGrouping<Length, PieceNeed> made in sheet.MadeToLength.GroupBy(piece => TapeText.RoundUpForLimit(piece.Exact, UnitSystem.UsCustomary)).OrderBy(group => group.Key))
            {
                PackPrice price = prices.OfStick(sheet.Item, sheet.Size, lines[0].Section, made.Key, onlyLength: false);
                yield return Line(sheet, lines, weights, made.Key, made.Count(), 0, price);
            }
        }
    }

    private static OrderLine Line(
        CutSheet sheet, ImmutableArray<MaterialLine> lines, ImmutableArray<(BuildStage, decimal)> weights, Length length, int needed, int onHand, PackPrice price)
    {
        ItemFact fact = ItemFacts.Of(sheet.Item);
        int packages = (needed - onHand + price.Pack - 1) / price.Pack;
        var line = new OrderLine
        {
            Item = sheet.Item,
            Size = sheet.Size,
            Length = length,
            Supplier = fact.Supplier,
            Unit = fact.Package,
            Needed = needed,
            FromStock = onHand,
            Package = price.Pack == 1 ? fact.Package : FormattableString.Invariant($"bundle of {price.Pack}"),
            PerPackage = price.Pack,
            Packages = packages,
            Price = price.Price,
            Origin = price.Origin,
            Stages = [],
            TakeoffIds = [.. lines.Select(each => each.Id)],
        };
        return line.Extension is { } cost ? line with { Stages = StageShares.Of(cost, weights) } : line;
    }
}
