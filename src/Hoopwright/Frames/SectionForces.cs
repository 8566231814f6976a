namespace Hoopwright.Frames;

/// <summary>
/// What the part of a member beyond a section puts on the part before it, along the member's local axes: the same sign at both ends
/// of an unloaded member.
/// </summary>
/// <param name="NN">Axial force, N; tension positive.</param>
/// <param name="VyN">Shear along local y, N.</param>
/// <param name="VzN">Shear along local z, N.</param>
/// <param name="TNm">Torque about local x, N·m.</param>
/// <param name="MyNm">Moment about local y, N·m.</param>
/// <param name="MzNm">Moment about local z, N·m.</param>
internal readonly record struct SectionForces(double NN, double VyN, double VzN, double TNm, double MyNm, double MzNm)
{
    /// <summary>The one moment that counts in a round section.</summary>
    internal double MomentNm => Math.Sqrt((MyNm * MyNm) + (MzNm * MzNm));

    /// <summary>The one shear that counts in a round section.</summary>
    internal double ShearN => Math.Sqrt((VyN * VyN) + (VzN * VzN));
}
