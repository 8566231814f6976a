using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>What a stage costs.</summary>
/// <param name="Stage">The stage; null for lines added by hand without one.</param>
/// <param name="Cost">How much, to the cent.</param>
public sealed record StageCost(BuildStage? Stage, Money Cost)
{
    /// <summary>Which part of an order line it is, above 0 to 1, before it is rounded to the cent; 1 for what is no part of a line.</summary>
    public decimal Part { get; init; } = 1;
}
