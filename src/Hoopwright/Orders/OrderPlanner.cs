using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cuts;
using Hoopwright.Cuts.Film;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Pricing;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>Turns what is needed into packages to buy, with what is on hand used first.</summary>
public static class OrderPlanner
{
    private const decimal Nothing = 0.000001m;

    /// <summary>The order.</summary>
    /// <param name="takeoff">What is needed.</param>
    /// <param name="cuts">How lengths are cut.</param>
    /// <param name="film">Which rolls of film are cut.</param>
    /// <param name="plan">Prices, stock and extra lines.</param>
    /// <param name="answers">Collects the rules used.</param>
    public static OrderList Plan(TakeoffList takeoff, CutSheets cuts, FilmCutOutcome film, Plan plan, Answers answers)
    {
        var lines = ImmutableArray.CreateBuilder<OrderLine>();
        foreach (CutSheet sheet in cuts.Sheets) lines.AddRange(Bars(sheet, takeoff, plan, answers.Units));
        lines.AddRange(Rolls(film.Plan, answers.Units));
        foreach (IGrouping<(string Item, string Size, MaterialUnit Unit), MaterialLine> group in WithJoints(takeoff, cuts)
            .Where(line => line.Unit != MaterialUnit.CutLengths).GroupBy(line => (line.Item, line.Size, line.Unit)))
            lines.Add(Packaged(group.Key.Item, group.Key.Size, group.Key.Unit, [.. group], plan, answers));
        for (int index = 0; index < plan.Orders.Extras.Length; index++) lines.Add(Extra(plan.Orders.Extras[index]));

        ImmutableArray<OrderLine> sorted =
            [.. lines.OrderBy(line => line.Supplier).ThenBy(line => line.Item, StringComparer.Ordinal).ThenBy(line => line.Size, StringComparer.Ordinal).ThenBy(line => line.PerPackage)];
        bool invented = PriceBook.IsInvented(plan.Prices);
        Money total = sorted.Aggregate(Money.Zero, (sum, line) => sum + (line.Extension ?? Money.Zero));
        return new OrderList
        {
            Lines = sorted,
            Currency = invented ? ExamplePrices.Currency : plan.Prices.Currency ?? "",
            PriceNote = invented ? ExamplePrices.Note : plan.Prices.Note ?? "",
            Total = total,
            Stages = Stages(sorted, total),
            Diagnostics = Found(sorted, invented),
        };
    }

    private static ImmutableArray<Diagnostic> Found(ImmutableArray<OrderLine> lines, bool invented)
    {
        var found = ImmutableArray.CreateBuilder<Diagnostic>();
        if (invented) found.Add(new Diagnostic("assumed.prices", Severity.Assumption, "prices.items", ExamplePrices.Note, null, "invented example prices"));
        ImmutableArray<string> without = [.. lines.Where(line => line.Packages > 0 && line.Extension is null).Select(line => line.Size.Length == 0 ? line.Item : $"{line.Item} {line.Size}").Distinct()];
        if (!without.IsEmpty)
        {
            string names = string.Join(", ", without.Take(6)) + (without.Length > 6 ? string.Create(CultureInfo.InvariantCulture, $" and {without.Length - 6} more") : "");
            found.Add(new Diagnostic("orders.no-price", Severity.Warning, "prices.items", "The total is without the lines that have no price.", names, "a price for each"));
        }
        return found.ToImmutable();
    }

    /// <summary>Joints of long runs take hardware of their own.</summary>
    private static IEnumerable<MaterialLine> WithJoints(TakeoffList takeoff, CutSheets cuts)
    {
        foreach (MaterialLine line in takeoff.Lines) yield return line;
        Dictionary<string, (PieceNeed Need, BuildStage Stage)> runs = takeoff.Lines.SelectMany(line => line.Pieces.Where(piece => piece.Joining is not null).Select(piece => (piece, line.Stage)))
            .ToDictionary(each => each.piece.MemberId, each => each, StringComparer.Ordinal);
        foreach (RunJoint joint in cuts.Sheets.SelectMany(sheet => sheet.Joints))
        {
            if (!runs.TryGetValue(joint.MemberId, out (PieceNeed Need, BuildStage Stage) run)) continue;
            foreach (JointHardware hardware in run.Need.Joining!.Hardware)
            {
                yield return new MaterialLine
                {
                    Id = $"joints/{hardware.Item}/{joint.MemberId}",
                    Item = hardware.Item,
                    Size = hardware.Size,
                    Stage = run.Stage,
                    Unit = MaterialUnit.Each,
                    Quantity = hardware.PerJoint,
                    Parts = [new QuantityPart(hardware.PerJoint, hardware.Rule, hardware.Source, [joint.MemberId])],
                    TraceIds = [joint.MemberId],
                    Rule = hardware.Rule,
                    Source = hardware.Source,
                };
            }
        }
    }

    private static IEnumerable<OrderLine> Bars(CutSheet sheet, TakeoffList takeoff, Plan plan, UnitSystem units)
    {
        ImmutableArray<PriceLine> book = PriceBook.LinesFor(plan.Prices, sheet.Item, sheet.Size);
        Dictionary<string, BuildStage> stages = takeoff.Lines.Where(line => line.Item == sheet.Item && line.Size == sheet.Size).SelectMany(line => line.Pieces.Select(piece => (piece.MemberId, line.Stage)))
            .DistinctBy(each => each.MemberId).ToDictionary(each => each.MemberId, each => each.Stage, StringComparer.Ordinal);
        foreach (IGrouping<Length, CutBar> bars in sheet.Bars.GroupBy(bar => bar.Stock).OrderBy(group => group.Key))
        {
            int bought = bars.Count(bar => !bar.OnHand);
            yield return new OrderLine
            {
                Supplier = OrderDefaults.SupplierOf(sheet.Item),
                Item = sheet.Item,
                Size = sheet.Size,
                Package = TapeText.Of(bars.Key, units),
                Needed = bars.Count(),
                Spare = 0,
                PerPackage = 1,
                Unit = "each",
                FromStock = bars.Count() - bought,
                Packages = bought,
                Price = PriceBook.PriceOf(book, bars.Key),
                Shares =
                [
                    .. bars.Where(bar => !bar.OnHand).SelectMany(bar => bar.Pieces).GroupBy(piece => stages.GetValueOrDefault(piece.MemberId, BuildStage.Frame)).OrderBy(group => group.Key)
                        .Select(group => new StageShare(group.Key, group.Sum(piece => decimal.Round((decimal)piece.Length.Metres, 6)))),
                ],
            };
        }
    }

    private static IEnumerable<OrderLine> Rolls(FilmCutPlan film, UnitSystem units) =>
        film.Rolls.GroupBy(roll => (roll.Offer.Width, roll.Offer.Length)).Select(group => new OrderLine
        {
            Supplier = Supplier.FilmSupplier,
            Item = Items.Film,
            Size = $"{TapeText.Of(group.Key.Width, units)} × {TapeText.Of(group.Key.Length, units)}",
            Package = "roll",
            Needed = group.Count(),
            Spare = 0,
            PerPackage = 1,
            Unit = "roll",
            FromStock = group.Count(roll => roll.Offer.OnHand),
            Packages = group.Count(roll => !roll.Offer.OnHand),
            Price = group.FirstOrDefault(roll => !roll.Offer.OnHand)?.Offer.Price,
            Shares = [new StageShare(BuildStage.Cover, group.Count())],
        });

    private static OrderLine Packaged(string item, string size, MaterialUnit unit, ImmutableArray<MaterialLine> lines, Plan plan, Answers answers)
    {
        ImmutableArray<PriceLine> book = PriceBook.LinesFor(plan.Prices, item, size);
        PriceLine? line = book.FirstOrDefault(each => unit != MaterialUnit.Metres || each.Length is not null) ?? book.FirstOrDefault();
        decimal needed = lines.Sum(each => each.Quantity);
        (decimal perPackage, string package, string word) = Package(item, size, unit, line, plan, answers);
        decimal spare = unit switch
        {
            MaterialUnit.CubicMetres => needed * (decimal)answers.Take("orders.concreteWaste", OrderDefaults.ConcreteWaste, plan.Orders.ConcreteWaste).Value,
            MaterialUnit.Each when OrderDefaults.IsFastener(item) => decimal.Ceiling(needed * (decimal)answers.Take("orders.fastenerSpare", OrderDefaults.FastenerSpare, plan.Orders.FastenerSpare).Value),
            _ => 0,
        };
        int packages = (int)decimal.Ceiling(((needed + spare) / perPackage) - Nothing);
        int onHand = plan.Stock.Where(hand => string.Equals(hand.Item, item, StringComparison.OrdinalIgnoreCase) && (hand.Size is null || hand.Size == size)).Sum(hand => hand.Count ?? 0);
        // What is on hand counts single things, or whole lengths of what is sold by length.
        int fromStock = Math.Min(packages, unit == MaterialUnit.Each ? (int)(Math.Min(onHand, needed + spare) / perPackage) : onHand);
        return new OrderLine
        {
            Supplier = OrderDefaults.SupplierOf(item),
            Item = item,
            Size = size,
            Package = package,
            Needed = needed,
            Spare = spare,
            PerPackage = perPackage,
            Unit = word,
            FromStock = fromStock,
            Packages = packages - fromStock,
            Price = line?.Price?.Value,
            Shares = [.. lines.GroupBy(each => each.Stage).OrderBy(group => group.Key).Select(group => new StageShare(group.Key, group.Sum(each => each.Quantity)))],
        };
    }

    private static (decimal PerPackage, string Package, string Word) Package(string item, string size, MaterialUnit unit, PriceLine? line, Plan plan, Answers answers)
    {
        switch (unit)
        {
            case MaterialUnit.Metres:
                Length roll = line?.Length?.Value ?? OrderDefaults.UsualRoll(item);
                return ((decimal)roll.Metres, "length of " + TapeText.Of(roll, answers.Units), "m");
            case MaterialUnit.CubicMetres:
                Mass bag = answers.Take("ground.bagMass", TakeoffDefaults.BagMass, plan.Ground.BagMass);
                return ((decimal)OrderDefaults.Yield(bag).CubicMetres, size, "m³");
            case MaterialUnit.SquareMetres:
                return ((decimal)Area.FromSquareFeet(32).SquareMetres, "sheet", "m²");
            case MaterialUnit.Each:
            case MaterialUnit.CutLengths:
                int pack = Math.Max(1, line?.Pack ?? OrderDefaults.UsualPack(item));
                return (pack, pack == 1 ? "single" : string.Create(CultureInfo.InvariantCulture, $"box of {pack}"), "each");
        }
        throw new InvalidOperationException($"A unit {unit} that orders do not know.");
    }

    private static OrderLine Extra(ExtraLine extra)
    {
        decimal quantity = (decimal)(extra.Quantity?.Value.Value ?? 1);
        return new OrderLine
        {
            Supplier = Supplier.HardwareShop,
            Item = extra.Item ?? "",
            Size = "",
            Package = extra.Unit ?? "each",
            Needed = quantity,
            Spare = 0,
            PerPackage = 1,
            Unit = extra.Unit ?? "each",
            FromStock = 0,
            Packages = (int)decimal.Ceiling(quantity),
            Price = extra.Price?.Value,
            Shares = [new StageShare(Stage(extra.Stage), quantity)],
        };
    }

    private static BuildStage Stage(string? word) => word switch
    {
        "site" => BuildStage.Site,
        "ground" => BuildStage.Ground,
        "ends" => BuildStage.Ends,
        "cover" => BuildStage.Cover,
        _ => BuildStage.Frame,
    };

    private static ImmutableArray<StageCost> Stages(ImmutableArray<OrderLine> lines, Money total)
    {
        Dictionary<BuildStage, decimal> sums = Enum.GetValues<BuildStage>().ToDictionary(stage => stage, _ => 0m);
        foreach (OrderLine line in lines)
        {
            if (line.Extension is not { } cost) continue;
            decimal whole = line.Shares.Sum(share => share.Share), left = cost.Amount;
            for (int index = 0; index < line.Shares.Length; index++)
            {
                // The last share takes what rounding left, so that the parts make the whole.
                decimal part = index == line.Shares.Length - 1 || whole == 0 ? left : decimal.Round(cost.Amount * line.Shares[index].Share / whole, 2);
                sums[line.Shares[index].Stage] += part;
                left -= part;
                if (whole == 0) break;
            }
        }
        ImmutableArray<StageCost> stages = [.. sums.OrderBy(each => each.Key).Select(each => new StageCost(each.Key, new Money(each.Value)))];
        // A line without shares belongs to the frame.
        decimal missing = total.Amount - stages.Sum(stage => stage.Cost.Amount);
        return missing == 0 ? stages : [.. stages.Select(stage => stage.Stage == BuildStage.Frame ? stage with { Cost = new Money(stage.Cost.Amount + missing) } : stage)];
    }
}
