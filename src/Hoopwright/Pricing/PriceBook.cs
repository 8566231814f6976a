using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Pricing;

/// <summary>Looks prices up: the plan's own first. A plan without any price is reckoned with invented example prices, and says so.</summary>
public static class PriceBook
{
    /// <summary>True when the plan gives no price at all, so that the invented ones stand in.</summary>
    public static bool IsInvented(Prices prices) => prices.Items.IsEmpty;

    /// <summary>The lines of the book for an item and size, first found first. A line without size serves every size.</summary>
    public static ImmutableArray<PriceLine> LinesFor(Prices prices, string item, string size)
    {
        ImmutableArray<PriceLine> book = IsInvented(prices) ? ExamplePrices.Items : prices.Items;
        return [.. book.Where(line => Same(line.Item, item) && (line.Size is null || Same(line.Size, size))).OrderBy(line => line.Size is null ? 1 : 0)];
    }

    /// <summary>The price of one stock length; null when the book has none.</summary>
    public static Money? PriceOf(ImmutableArray<PriceLine> lines, Length length) =>
        lines.FirstOrDefault(line => line.Length is { } each && (each.Value - length).Abs().Metres < 1e-6 && line.Price is not null)?.Price?.Value;

    private static bool Same(string? one, string other) => string.Equals(one?.Trim(), other, StringComparison.OrdinalIgnoreCase);
}
