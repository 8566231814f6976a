using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Fasteners;

/// <summary>A fastener in wood.</summary>
/// <param name="Kind">Nail, wood screw or lag screw.</param>
/// <param name="DiameterM">D: shank of a nail, outside of the thread of a screw.</param>
/// <param name="RootM">Diameter that bends: shank of a nail, root of the thread of a screw.</param>
internal readonly record struct Fastener(FastenerKind Kind, double DiameterM, double RootM)
{
    /// <summary>A nail of one diameter.</summary>
    internal static Fastener Nail(double diameterM) => new(FastenerKind.Nail, diameterM, diameterM);

    /// <summary>Fyb, bending yield strength, by the nominal diameter; NDS-2018 appendix I and footnotes of tables 12J to 12N, from memory.</summary>
    internal double BendingYieldPa => Kind switch
    {
        FastenerKind.Nail or FastenerKind.WoodScrew => DiameterM switch
        {
            <= 0.142 * InchM => 100 * KsiPa,
            <= 0.177 * InchM => 90 * KsiPa,
            <= 0.236 * InchM => 80 * KsiPa,
            <= 0.273 * InchM => 70 * KsiPa,
            _ => 60 * KsiPa,
        },
        FastenerKind.LagScrew => DiameterM switch
        {
            <= 0.25 * InchM => 70 * KsiPa,
            <= 0.3125 * InchM => 60 * KsiPa,
            _ => 45 * KsiPa,
        },
    };
}
