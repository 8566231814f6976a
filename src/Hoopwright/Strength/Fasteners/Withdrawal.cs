using Hoopwright.Sources;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Fasteners;

/// <summary>Fasteners pulled straight out of the side grain of wood.</summary>
internal static class Withdrawal
{
    internal static readonly Formula Nail = new("W", "1380·G^2.5·D, lb for each inch of shank in the member that holds; D in inches", "N/m", Register.Nds2018.At("Eq. 12.2-3"));

    internal static readonly Formula WoodScrew = new("W", "2850·G²·D, lb for each inch of thread in the member that holds; D in inches", "N/m", Register.Nds2018.At("Eq. 12.2-2"));

    internal static readonly Formula LagScrew = new("W", "1800·G^1.5·D^0.75, lb for each inch of thread without its tip; D in inches", "N/m", Register.Nds2018.At("Eq. 12.2-1"));

    /// <summary>The formula of a kind.</summary>
    internal static Formula FormulaOf(FastenerKind kind) => kind switch
    {
        FastenerKind.Nail => Nail,
        FastenerKind.WoodScrew => WoodScrew,
        FastenerKind.LagScrew => LagScrew,
    };

    /// <summary>Reference withdrawal value for each metre of penetration.</summary>
    /// <param name="kind">Fastener.</param>
    /// <param name="specificGravity">G of the wood that holds.</param>
    /// <param name="diameterM">D.</param>
    internal static double ReferenceNPerM(FastenerKind kind, double specificGravity, double diameterM)
    {
        double diameterIn = diameterM / InchM;
        double poundsPerInch = kind switch
        {
            FastenerKind.Nail => 1380 * Math.Pow(specificGravity, 2.5) * diameterIn,
            FastenerKind.WoodScrew => 2850 * specificGravity * specificGravity * diameterIn,
            FastenerKind.LagScrew => 1800 * Math.Pow(specificGravity, 1.5) * Math.Pow(diameterIn, 0.75),
        };
        return poundsPerInch * PoundPerInchNPerM;
    }
}
