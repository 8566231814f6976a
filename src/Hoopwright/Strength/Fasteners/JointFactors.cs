using Hoopwright.Sources;
using Hoopwright.Strength.Wood;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Fasteners;

/// <summary>The adjustment factors of joints, NDS-2018 chapter 11 and 12.</summary>
internal static class JointFactors
{
    internal static readonly Formula Adjusted = new("W', Z'", "value·CD·CM·Ct·Ceg·Ctn", "N", Register.Nds2018.At("table 11.3.1; CM table 11.3.3; Ct table 11.3.4; Ceg 12.5.2; Ctn 12.5.4"));

    /// <summary>The greatest CD of a joint.</summary>
    private const double MostDuration = 1.6;

    /// <summary>All factors on withdrawal; 0 where the standard allows none.</summary>
    internal static double OnWithdrawal(FastenerKind kind, JointConditions conditions)
    {
        double wet = kind switch
        {
            // A nail lets go when the wood about it changes from wet to dry or back.
            FastenerKind.Nail => conditions.IsWet == conditions.WasWet ? 1.0 : 0.25,
            FastenerKind.WoodScrew or FastenerKind.LagScrew => conditions.IsWet ? 0.7 : 1.0,
        };
        double endGrain = (conditions.IsEndGrain, kind) switch
        {
            (false, _) => 1.0,
            (true, FastenerKind.LagScrew) => 0.75,
            (true, FastenerKind.Nail or FastenerKind.WoodScrew) => 0,
        };
        return Common(conditions) * wet * endGrain * (conditions.IsToeNailed ? 0.67 : 1);
    }

    /// <summary>All factors on lateral load.</summary>
    internal static double OnLateral(Fastener fastener, JointConditions conditions)
    {
        double wet = (conditions.IsWet, conditions.WasWet) switch
        {
            (true, _) => 0.7,
            // Thick fasteners split wood that dries about them.
            (false, true) => fastener.DiameterM >= 0.25 * InchM ? 0.4 : 1.0,
            (false, false) => 1.0,
        };
        return Common(conditions) * wet * (conditions.IsEndGrain ? 0.67 : 1) * (conditions.IsToeNailed ? 0.83 : 1);
    }

    private static double Common(JointConditions conditions) =>
        Math.Min(MostDuration, WoodFactors.Duration(conditions.Duration)) * WoodFactors.TemperatureOfStrength(conditions.Temperature, conditions.IsWet);
}
