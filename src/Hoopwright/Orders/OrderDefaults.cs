using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Orders;

/// <summary>What the order takes where the plan does not say.</summary>
internal static class OrderDefaults
{
    internal static Usual<Ratio> ConcreteWaste { get; } = new(Ratio.FromPercent(10), "So much concrete is bought beyond the computed volume: holes are seldom dug to size.", Citation.CommonPractice);

    internal static Usual<Ratio> FastenerSpare { get; } = new(Ratio.FromPercent(5), "So many screws, nails, staples and bolts are bought beyond the count: some are lost.", Citation.CommonPractice);
}
