namespace Hoopwright.Strength.Steel;

/// <summary>The strength of a member in one kind of action.</summary>
/// <param name="Nominal">As the standard computes it; N, or N·m for moments and torques. 0 outside the standard.</param>
/// <param name="Design">What may be used: divided by Ω or times φ.</param>
/// <param name="LimitState">What ends it.</param>
/// <param name="StressPa">The stress at that limit: Fy, Fcr, Fn or Fc.</param>
internal readonly record struct SteelCapacity(double Nominal, double Design, SteelLimitState LimitState, double StressPa)
{
    /// <summary>Nothing may be counted on.</summary>
    internal static SteelCapacity OutsideStandard { get; } = new(0, 0, SteelLimitState.OutsideStandard, 0);

    /// <summary>Demand over the design strength; 0 for no demand, positive infinity for demand without strength.</summary>
    /// <param name="demand">Not negative, in the unit of the capacity.</param>
    internal double RatioOf(double demand) => Ratio(demand, Design);

    /// <summary>Demand over strength; 0 for no demand, positive infinity for demand without strength.</summary>
    internal static double Ratio(double demand, double strength) => demand <= 0 ? 0 : demand / strength;
}
