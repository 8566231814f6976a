namespace Hoopwright.Frames;

/// <summary>Gravity.</summary>
internal static class FrameWeights
{
    /// <summary>Standard gravity, m/s² (NIST SP 330, 2019, 2.2.3).</summary>
    internal const double GravityMps2 = 9.80665;

    /// <summary>Own weight of a member per length, N/m.</summary>
    internal static double NPerM(FrameMember member) => member.Material.DensityKgM3 * member.Section.AreaM2 * GravityMps2;
}
