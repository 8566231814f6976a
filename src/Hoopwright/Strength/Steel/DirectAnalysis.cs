using Hoopwright.Sources;

namespace Hoopwright.Strength.Steel;

/// <summary>
/// What an analysis of a steel frame must have in it before its forces meet the strengths: weaker members, and either notional
/// loads or a frame that is out of true. With them the effective length of a member is its own length.
/// </summary>
internal static class DirectAnalysis
{
    internal static readonly Formula ReducedStiffness = new("EI*, EA*", "0.8·τb·EI, 0.8·EA; τb = 1 to α·Pr = 0.5·Pns, then 4·(α·Pr/Pns)·(1 − α·Pr/Pns)", "",
        Register.Aisc360.At("section C2.3, Eq. C2-2a, C2-2b"));

    internal static readonly Formula NotionalLoad = new("Ni", "0.002·α·Yi, sideways, where the vertical load Yi acts; 0.003 where τb is taken as 1 throughout", "N",
        Register.Aisc360.At("section C2.2b, Eq. C2-1, and C2.3(c)"));

    /// <summary>Factor on EI and EA of every member that the stability rests on.</summary>
    internal const double StiffnessFactor = 0.8;

    /// <summary>Sideways load as a part of the vertical load there.</summary>
    internal const double NotionalLoadPart = 0.002;

    /// <summary>What is added to it when τb is taken as 1 although members carry more than half their yield load.</summary>
    internal const double NotionalLoadPartInsteadOfTau = 0.001;

    /// <summary>Sideways load as a part of the vertical load there, where τb is taken as 1 throughout.</summary>
    internal const double NotionalLoadPartWithoutTau = NotionalLoadPart + NotionalLoadPartInsteadOfTau;

    /// <summary>α: with allowable strength the analysis runs under 1.6 times the loads, and its forces are divided by 1.6.</summary>
    internal static double LoadLevel(DesignMethod method) => method switch
    {
        DesignMethod.Asd => 1.6,
        DesignMethod.Lrfd => 1.0,
    };

    /// <summary>τb, the further reduction of EI for residual stress.</summary>
    /// <param name="axialPart">α Pr over the yield load of the cross-section; 0 to 1, above it 0 comes back.</param>
    internal static double Tau(double axialPart) => axialPart switch
    {
        <= 0.5 => 1,
        < 1 => 4 * axialPart * (1 - axialPart),
        _ => 0,
    };

    /// <summary>Sway of a frame out of plumb in the European method: 1/200 before the reductions for height and number of columns.</summary>
    internal const double EuropeanSway = 1.0 / 200;

    /// <summary>Where that sway stands.</summary>
    internal static readonly Citation EuropeanSwaySource = Register.En1993.At("section 5.3.2(3)");
}
