using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Takeoff;

namespace Hoopwright.Pricing;

/// <summary>What of an item already lies in the barn.</summary>
internal static class StockInBarn
{
    /// <summary>The entries for an item and size. An entry without a size is meant where the tunnel takes one size of the item.</summary>
    public static IEnumerable<StockOnHand> Of(Plan plan, IEnumerable<MaterialLine> takeoff, string item, string size)
    {
        ImmutableArray<StockOnHand> entries = [.. plan.Stock.Where(stock => stock.Count is null or > 0 && string.Equals(stock.Item?.Trim(), item, StringComparison.OrdinalIgnoreCase))];
        if (entries.IsEmpty) return [];
        bool onlySize = SizesOf(takeoff, item).Length <= 1;
        return entries.Where(stock => string.IsNullOrWhiteSpace(stock.Size) ? onlySize : SizeKey.Same(stock.Size, size));
    }

    /// <summary>The sizes that a takeoff has of an item, none counted for an item that has no sizes.</summary>
    public static ImmutableArray<string> SizesOf(IEnumerable<MaterialLine> takeoff, string item) =>
        [.. takeoff.Where(line => line.Item == item && line.Size.Length > 0).Select(line => line.Size).Distinct()];
}
