using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>What a stage costs in two plans.</summary>
/// <param name="Stage">The stage; null for lines added by hand without one.</param>
/// <param name="Before">In the first plan; nothing where it has no such stage.</param>
/// <param name="After">In the second plan.</param>
public sealed record ComparedStage(BuildStage? Stage, Money Before, Money After);
