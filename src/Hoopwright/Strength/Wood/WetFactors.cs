namespace Hoopwright.Strength.Wood;

/// <summary>CM on each value of wet wood.</summary>
/// <param name="Bending">On Fb.</param>
/// <param name="Tension">On Ft.</param>
/// <param name="Shear">On Fv.</param>
/// <param name="Bearing">On Fc⊥.</param>
/// <param name="Compression">On Fc.</param>
/// <param name="Young">On E and Emin.</param>
internal readonly record struct WetFactors(double Bending, double Tension, double Shear, double Bearing, double Compression, double Young)
{
    /// <summary>Nothing lost.</summary>
    internal static WetFactors None { get; } = new(1, 1, 1, 1, 1, 1);
}
