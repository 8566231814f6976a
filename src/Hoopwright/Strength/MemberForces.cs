namespace Hoopwright.Strength;

/// <summary>The forces at one place of a member, from an analysis that has the second order in it.</summary>
/// <param name="AxialN">Along the member; tension positive.</param>
/// <param name="ShearYN">Shear along local y.</param>
/// <param name="ShearZN">Shear along local z.</param>
/// <param name="TorsionNm">Torque.</param>
/// <param name="MomentYNm">Moment about local y.</param>
/// <param name="MomentZNm">Moment about local z.</param>
internal readonly record struct MemberForces(double AxialN, double ShearYN, double ShearZN, double TorsionNm, double MomentYNm, double MomentZNm)
{
    /// <summary>Resultant moment, for sections that have no weak axis.</summary>
    internal double MomentNm => Resultant(MomentYNm, MomentZNm);

    /// <summary>Resultant shear.</summary>
    internal double ShearN => Resultant(ShearYN, ShearZN);

    /// <summary>Two parts at right angles to each other, together. Forces and moments are nowhere near what overflows when squared.</summary>
    internal static double Resultant(double one, double other) => Math.Sqrt((one * one) + (other * other));

    /// <summary>Compression, 0 under tension.</summary>
    internal double CompressionN => Math.Max(0, -AxialN);

    /// <summary>Tension, 0 under compression.</summary>
    internal double TensionN => Math.Max(0, AxialN);
}
