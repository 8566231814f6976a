using Hoopwright.Quantities;

namespace Hoopwright.Pricing;

/// <summary>How an item is sold and for how much.</summary>
/// <param name="Pack">How many are in one package; 1 when sold singly.</param>
/// <param name="Length">For what is bought by the length: the length of one roll or stick; null for things that are counted.</param>
/// <param name="Price">Price of one package; null when there is none.</param>
/// <param name="Origin">Where the price comes from.</param>
public sealed record PackPrice(int Pack, Length? Length, Money? Price, PriceOrigin Origin)
{
    /// <summary>Price of one of the pack; null when there is no price. Exact, not rounded.</summary>
    public Money? Each => Price is { } price ? new Money(price.Amount / Pack) : null;
}
