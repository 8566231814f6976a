namespace Hoopwright.Frames;

/// <summary>What of a material the analysis needs.</summary>
/// <param name="YoungPa">Young's modulus, Pa.</param>
/// <param name="ShearPa">Shear modulus, Pa.</param>
/// <param name="ExpansionPerK">Thermal expansion per kelvin.</param>
/// <param name="DensityKgM3">Density, kg/m³.</param>
internal sealed record FrameMaterial(double YoungPa, double ShearPa, double ExpansionPerK = 0, double DensityKgM3 = 0)
{
    /// <summary>Structural steel: E 200 GPa and G 77.2 GPa (AISC 360: 29 000 and 11 200 ksi), 11.7e-6/K, 7850 kg/m³.</summary>
    internal static FrameMaterial Steel { get; } = new(2.0e11, 7.72e10, 1.17e-5, 7850);
}
