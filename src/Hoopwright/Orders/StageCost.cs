using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>What a stage costs.</summary>
/// <param name="Stage">The stage; null for lines added by hand without one.</param>
/// <param name="Cost">How much, to the cent.</param>
public sealed record StageCost(BuildStage? Stage, Money Cost);
