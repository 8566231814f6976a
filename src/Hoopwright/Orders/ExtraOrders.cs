using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Pricing;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>Lines that the plan adds by hand, as they stand.</summary>
internal static class ExtraOrders
{
    public static ImmutableArray<OrderLine> Of(Plan plan, ImmutableArray<Diagnostic>.Builder found)
    {
        var lines = ImmutableArray.CreateBuilder<OrderLine>();
        for (int index = 0; index < plan.Orders.Extras.Length; index++)
        {
            ExtraLine extra = plan.Orders.Extras[index];
            string path = FormattableString.Invariant($"orders.extras[{index}]");
            if (string.IsNullOrWhiteSpace(extra.Item))
            {
                found.Add(new Diagnostic("orders.extras.item-missing", Severity.Warning, path + ".item", "This line does not say what it is, so it is left out.", null, "a name, such as wire"));
                continue;
            }
            decimal quantity = extra.Quantity is { } given ? (decimal)given.Value.Value : 1;
            if (quantity <= 0 || quantity > int.MaxValue)
            {
                found.Add(new Diagnostic("orders.extras.quantity", Severity.Warning, path + ".quantity", "This line asks for nothing, so it is left out.", extra.Quantity?.Text, "1 or more"));
                continue;
            }
            BuildStage? stage = StageOf(extra, path, found);
            int packages = (int)Math.Ceiling(quantity);
            string unit = string.IsNullOrWhiteSpace(extra.Unit) ? "each" : extra.Unit.Trim();
            var line = new OrderLine
            {
                Item = extra.Item.Trim(),
                Size = "",
                Supplier = Supplier.AddedByHand,
                Unit = unit,
                Needed = quantity,
                Package = unit,
                PerPackage = 1,
                Packages = packages,
                Price = extra.Price?.Value,
                Origin = extra.Price is null ? PriceOrigin.None : PriceOrigin.Plan,
                Stages = [],
                TakeoffIds = [],
                IsExtra = true,
            };
            lines.Add(line.Extension is { } cost ? line with { Stages = [new StageCost(stage, cost)] } : line);
        }
        return lines.ToImmutable();
    }

    private static BuildStage? StageOf(ExtraLine extra, string path, ImmutableArray<Diagnostic>.Builder found)
    {
        if (string.IsNullOrWhiteSpace(extra.Stage)) return null;
        if (!extra.Stage.Trim().All(char.IsAsciiDigit) && Enum.TryParse(extra.Stage.Trim(), ignoreCase: true, out BuildStage stage)) return stage;
        found.Add(new Diagnostic("orders.extras.stage", Severity.Warning, path + ".stage", "There is no stage of this name, so the line is counted under none.",
            extra.Stage, "site, ground, frame, ends or cover"));
        return null;
    }
}
