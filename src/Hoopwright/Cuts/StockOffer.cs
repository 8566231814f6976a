using Hoopwright.Pricing;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts;

/// <summary>A stock length that pieces can be cut from.</summary>
/// <param name="Length">The whole length, end trim included.</param>
/// <param name="OnHand">True when it already lies in the barn.</param>
/// <param name="Limit">How many there are; null for any number.</param>
/// <param name="Price">How it is sold; null when it is on hand.</param>
/// <param name="CostInPlan">What one counts for in the search: its price, or its metres where there is none, or nothing when on hand.</param>
public sealed record StockOffer(Length Length, bool OnHand, int? Limit, PackPrice? Price, Money CostInPlan);
