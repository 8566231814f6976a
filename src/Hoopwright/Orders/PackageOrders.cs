using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Pricing;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>What is counted, what is bought by the roll, and concrete.</summary>
internal static class PackageOrders
{
    public static IEnumerable<OrderLine> Of(ImmutableArray<MaterialLine> takeoff, Plan plan, PriceBook prices, Answers answers)
    {
        Ratio spare = answers.Take("orders.fastenerSpare", OrderDefaults.FastenerSpare, plan.Orders.FastenerSpare);
        foreach (var group in takeoff.GroupBy(line => (line.Item, line.Size, line.Unit)))
        {
            ImmutableArray<MaterialLine> lines = [.. group];
            switch (group.Key.Unit)
            {
                case MaterialUnit.Each:
                    yield return Counted(lines, takeoff, plan, prices, spare);
                    break;
                case MaterialUnit.Metres:
                    yield return ByTheRoll(lines, takeoff, plan, prices, answers);
                    break;
                case MaterialUnit.CubicMetres:
                    yield return Concrete(lines, takeoff, plan, prices, answers);
                    break;
                case MaterialUnit.CutLengths or MaterialUnit.SquareMetres:
                    // Boards and tubes are ordered by the cut lists, film by the rolls chosen.
                    break;
            }
        }
    }

    private static OrderLine Counted(ImmutableArray<MaterialLine> lines, ImmutableArray<MaterialLine> takeoff, Plan plan, PriceBook prices, Ratio spare)
    {
        ItemFact fact = ItemFacts.Of(lines[0].Item);
        PackPrice price = prices.OfPackage(lines[0].Item, lines[0].Size, null);
        decimal needed = lines.Sum(line => line.Quantity);
        decimal over = fact.TakesSpare ? Math.Ceiling((needed * (decimal)Math.Max(0, spare.Value)) - 1e-9m) : 0;
        decimal onHand = Math.Min(needed + over, StockInBarn.Of(plan, takeoff, lines[0].Item, lines[0].Size).Sum(stock => stock.Count ?? 1));
        return Made(lines, fact, price, "each", needed, 0, over, onHand, price.Pack, price.Pack == 1 ? "each" : FormattableString.Invariant($"{PackageWord(fact)} of {price.Pack}"));
    }

    private static OrderLine ByTheRoll(ImmutableArray<MaterialLine> lines, ImmutableArray<MaterialLine> takeoff, Plan plan, PriceBook prices, Answers answers)
    {
        ItemFact fact = ItemFacts.Of(lines[0].Item);
        // Spring wire is sold by the piece that it is put in by.
        Length? piece = lines[0].Item == Items.SpringWire
            ? answers.Take("cover.wirePiece", Hoopwright.Cover.CoverDefaults.WirePiece, plan.Cover.WirePiece)
            : null;
        PackPrice price = prices.OfPackage(lines[0].Item, lines[0].Size, piece ?? fact.LengthIn(answers.Units));
        Length roll = price.Length ?? Length.FromMetres(1);
        decimal rollM = (decimal)roll.Metres;
        decimal needed = lines.Sum(line => line.Quantity);
        decimal onHand = Math.Min(needed, StockInBarn.Of(plan, takeoff, lines[0].Item, lines[0].Size).Sum(stock => (stock.Count ?? 1) * (decimal)Math.Max(0, (stock.Length?.Value ?? roll).Metres)));
        return Made(lines, fact, price, "m", needed, 0, 0, onHand, rollM * price.Pack, price.Pack == 1 ? fact.Package : FormattableString.Invariant($"pack of {price.Pack}")) with { Length = roll };
    }

    private static OrderLine Concrete(ImmutableArray<MaterialLine> lines, ImmutableArray<MaterialLine> takeoff, Plan plan, PriceBook prices, Answers answers)
    {
        Mass bag = answers.Take("ground.bagMass", TakeoffDefaults.BagMass(answers.Units), plan.Ground.BagMass);
        Ratio waste = answers.Take("orders.concreteWaste", OrderDefaults.ConcreteWaste, plan.Orders.ConcreteWaste);
        PackPrice price = prices.OfConcrete(lines[0].Item, lines[0].Size, bag);
        decimal needed = (decimal)ConcreteBags.Exactly(Volume.FromCubicMetres((double)lines.Sum(line => line.Quantity)), bag).Value;
        decimal lost = needed * (decimal)Math.Max(0, waste.Value);
        decimal onHand = Math.Min(needed + lost, StockInBarn.Of(plan, takeoff, lines[0].Item, lines[0].Size).Sum(stock => stock.Count ?? 1));
        return Made(lines, ItemFacts.Of(lines[0].Item), price, "bag", needed, lost, 0, onHand, price.Pack, price.Pack == 1 ? "bag" : FormattableString.Invariant($"pallet of {price.Pack}"));
    }

    private static string PackageWord(ItemFact fact) => fact.Package == "each" ? "pack" : fact.Package;

    private static OrderLine Made(
        ImmutableArray<MaterialLine> lines, ItemFact fact, PackPrice price, string measure, decimal needed, decimal waste, decimal spare, decimal onHand, decimal holds, string package)
    {
        decimal toBuy = Math.Max(0, needed + waste + spare - onHand);
        var line = new OrderLine
        {
            Item = lines[0].Item,
            Size = lines[0].Size,
            Supplier = fact.Supplier,
            Unit = measure,
            Needed = needed,
            Waste = waste,
            Spare = spare,
            FromStock = onHand,
            Package = package,
            PerPackage = holds,
            // What is a billionth over a whole package is that package.
            Packages = (int)Math.Ceiling((toBuy / holds) - 1e-9m),
            Price = price.Price,
            Origin = price.Origin,
            Stages = [],
            TakeoffIds = [.. lines.Select(each => each.Id)],
        };
        return line.Extension is { } cost
            ? line with { Stages = StageShares.Of(cost, [.. lines.GroupBy(each => each.Stage).Select(group => (group.Key, group.Sum(each => each.Quantity)))]) }
            : line;
    }
}
