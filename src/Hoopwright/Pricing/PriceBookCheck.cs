using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Takeoff;

namespace Hoopwright.Pricing;

/// <summary>Finds lines of the price book and of the stock on hand that name nothing the takeoff knows.</summary>
internal static class PriceBookCheck
{
    /// <summary>What is odd about them.</summary>
    /// <param name="plan">The plan, with the lines of a price book file after its own.</param>
    /// <param name="takeoff">What the tunnel takes.</param>
    /// <param name="ownLines">How many lines of the price book are the plan's own.</param>
    public static ImmutableArray<Diagnostic> Of(Plan plan, TakeoffList takeoff, int ownLines)
    {
        var found = ImmutableArray.CreateBuilder<Diagnostic>();
        for (int index = 0; index < plan.Prices.Items.Length; index++)
        {
            PriceLine line = plan.Prices.Items[index];
            // A price book file is for many tunnels, so that sizes which one of them does not take are nothing odd.
            if (index < ownLines) Check(found, takeoff, FormattableString.Invariant($"prices.items[{index}]"), "orders.prices", line.Item, line.Size);
            else Check(found, takeoff, FormattableString.Invariant($"prices file: items[{index - ownLines}]"), "orders.prices", line.Item, null);
        }
        for (int index = 0; index < plan.Stock.Length; index++)
        {
            string path = FormattableString.Invariant($"stock[{index}]");
            StockOnHand stock = plan.Stock[index];
            bool film = string.Equals(stock.Item?.Trim(), Items.Film, StringComparison.OrdinalIgnoreCase);
            Check(found, takeoff, path, "orders.stock", stock.Item, film ? null : stock.Size);
            if (!film && string.IsNullOrWhiteSpace(stock.Size) && ItemFacts.Find(stock.Item ?? "") is { } fact
                && StockInBarn.SizesOf(takeoff.Lines, fact.Item) is { Length: > 1 } sizes)
            {
                found.Add(new Diagnostic("orders.stock.size-missing", Severity.Warning, path + ".size",
                    $"This tunnel takes several sizes of {fact.Item} and this line does not say which, so it is not used.", null, string.Join(", ", sizes)));
            }
            if (stock.Length is null && takeoff.Lines.Any(line => line.Unit == MaterialUnit.CutLengths && string.Equals(line.Item, stock.Item?.Trim(), StringComparison.OrdinalIgnoreCase)))
            {
                found.Add(new Diagnostic("orders.stock.length-missing", Severity.Warning, path + ".length",
                    "How long each of these is was not given, so they are not used.", null, "a length, such as 12 ft"));
            }
        }
        return found.ToImmutable();
    }

    private static void Check(ImmutableArray<Diagnostic>.Builder found, TakeoffList takeoff, string path, string code, string? item, string? size)
    {
        if (string.IsNullOrWhiteSpace(item))
        {
            found.Add(new Diagnostic(code + ".item-missing", Severity.Warning, path + ".item", "This line names no item, so it is not used.", null, "an item of the takeoff, such as board"));
            return;
        }
        if (ItemFacts.Find(item) is not { } fact)
        {
            found.Add(new Diagnostic(code + ".unknown-item", Severity.Warning, path + ".item",
                "No takeoff has an item of this name, so the line is not used.", item, NearestWord.Of(item, ItemFacts.Names) ?? "an item of the takeoff, such as board"));
            return;
        }
        ImmutableArray<string> sizes = StockInBarn.SizesOf(takeoff.Lines, fact.Item);
        if (!string.IsNullOrWhiteSpace(size) && sizes.Length > 0 && !sizes.Any(name => SizeKey.Same(name, size)))
        {
            found.Add(new Diagnostic(code + ".unknown-size", Severity.Warning, path + ".size",
                $"This tunnel takes no {fact.Item} of this size, so the line is not used.", size, string.Join(", ", sizes)));
        }
    }
}
