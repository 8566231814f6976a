using System.Runtime.CompilerServices;

namespace Hoopwright.Strength.Steel;

/// <summary>What of a tube's strengths a check divides by: small enough to look through many places for the worst.</summary>
/// <param name="Standard">By which rules.</param>
/// <param name="CompressionN">Design strength in compression.</param>
/// <param name="TensionN">Design strength in tension.</param>
/// <param name="BendingNm">Design strength in bending, about any axis.</param>
/// <param name="ShearN">Design strength in shear.</param>
/// <param name="TorsionNm">Design strength in torsion.</param>
internal readonly record struct TubeLimits(SteelStandard Standard, double CompressionN, double TensionN, double BendingNm, double ShearN, double TorsionNm)
{
    /// <summary>Demand over strength where it is greatest: the utilisation of <see cref="TubeCheck"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal double UseOf(in MemberForces forces)
    {
        (double axial, double bending, double shear, double torsion) = Ratios(forces);
        double use = Standard switch
        {
            SteelStandard.AisiS100Round => Math.Max(axial + bending, MemberForces.Resultant(bending, shear)),
            SteelStandard.Aisc360Round or SteelStandard.Aisc360Square => torsion > TubeCheck.SmallTorsion
                ? axial + bending + ((shear + torsion) * (shear + torsion))
                : TubeCheck.Interaction(axial, bending),
        };
        return Math.Max(use, Math.Max(shear, torsion));
    }

    /// <summary>Each action over its strength. A square tube bends about two axes with a strength each; a round tube has no axes.</summary>
    internal (double Axial, double Bending, double Shear, double Torsion) Ratios(in MemberForces forces)
    {
        bool square = Standard == SteelStandard.Aisc360Square;
        return (
            forces.AxialN < 0 ? SteelCapacity.Ratio(-forces.AxialN, CompressionN) : SteelCapacity.Ratio(forces.AxialN, TensionN),
            SteelCapacity.Ratio(square ? Math.Abs(forces.MomentYNm) + Math.Abs(forces.MomentZNm) : forces.MomentNm, BendingNm),
            SteelCapacity.Ratio(square ? Math.Max(Math.Abs(forces.ShearYN), Math.Abs(forces.ShearZN)) : forces.ShearN, ShearN),
            SteelCapacity.Ratio(Math.Abs(forces.TorsionNm), TorsionNm));
    }
}
