using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>
/// Bounds that several fields share. They need one field alone and catch slips of the hand; they say nothing on whether a
/// tunnel so built will stand.
/// </summary>
internal static class PlanRanges
{
    /// <summary>Heights above the ground line.</summary>
    public static QuantityRange<Length> Heights { get; } = PlanQuantities.Length.Within("0 ft", "60 ft", "0 m", "18.2 m").Like("5 ft", "1.5 m");

    /// <summary>Distances across the span.</summary>
    public static QuantityRange<Length> Across { get; } = PlanQuantities.Length.Within("0 ft", "100 ft", "0 m", "30.4 m").Like("13 ft", "4 m");

    /// <summary>Depths below the ground.</summary>
    public static QuantityRange<Length> Depths { get; } = PlanQuantities.Length.Within("0 in", "240 in", "0 mm", "6000 mm").Like("30 in", "750 mm");

    /// <summary>Clear room around the tunnel.</summary>
    public static QuantityRange<Length> Room { get; } = PlanQuantities.Length.Within("0 ft", "1000 ft", "0 m", "304 m").Like("10 ft", "3 m");

    /// <summary>Lengths that tube, boards, channel and wire are sold in.</summary>
    public static QuantityRange<Length> Stick { get; } = PlanQuantities.Length.Within("1 ft", "100 ft", "0.31 m", "30.4 m").Like("12 ft", "3.6 m");

    /// <summary>Directions on the compass.</summary>
    public static QuantityRange<Angle> Bearings { get; } = PlanQuantities.Bearing.Within("0°", "359.999°").Like("S", "S");

    /// <summary>The fall of the ground.</summary>
    public static QuantityRange<Ratio> Fall { get; } = PlanQuantities.Percentage.Within("-20 %", "20 %").Like("1 %", "1 %");

    /// <summary>Height of the bow at the middle.</summary>
    public static QuantityRange<Length> PeakHeight { get; } = PlanQuantities.Length.Within("1 ft", "60 ft", "0.31 m", "18.2 m").Like("12' 6\"", "3.8 m");

    /// <summary>Diameters of holes for posts.</summary>
    public static QuantityRange<Length> Hole { get; } = PlanQuantities.Length.Within("3 in", "48 in", "80 mm", "1200 mm").Like("10 in", "250 mm");

    /// <summary>Film beyond what is covered.</summary>
    public static QuantityRange<Length> Allowance { get; } = PlanQuantities.Length.Within("0 in", "240 in", "0 mm", "6000 mm").Like("18 in", "450 mm");

    /// <summary>Spacings of screws, nails and staples.</summary>
    public static QuantityRange<Length> Fastening { get; } = PlanQuantities.Length.Within("1/2 in", "120 in", "13 mm", "3000 mm").Like("6 in", "150 mm");

    /// <summary>Diameters of screws and nails.</summary>
    public static QuantityRange<Length> FastenerDiameter { get; } = PlanQuantities.Length.Within("0.05 in", "0.5 in", "1.3 mm", "12 mm").Like("0.12 in", "3 mm");

    /// <summary>Lengths of screws, nails and the legs of staples.</summary>
    public static QuantityRange<Length> FastenerLength { get; } = PlanQuantities.Length.Within("1/8 in", "6 in", "4 mm", "150 mm").Like("1-1/2 in", "38 mm");

    /// <summary>What is bought beyond the count.</summary>
    public static QuantityRange<Ratio> Spare { get; } = PlanQuantities.Percentage.Within("0 %", "100 %").Like("10 %", "10 %");

    /// <summary>Prices of one thing.</summary>
    public static QuantityRange<Money> Price { get; } = PlanQuantities.Money.Within("0", "10000000").Like("12.50", "12.50");
}
