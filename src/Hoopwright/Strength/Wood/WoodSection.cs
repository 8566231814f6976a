using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Wood;

/// <summary>A sawn section by its dressed size.</summary>
/// <param name="ThicknessM">b, the smaller side.</param>
/// <param name="WidthM">d, the larger side; at least <paramref name="ThicknessM"/>.</param>
internal readonly record struct WoodSection(double ThicknessM, double WidthM)
{
    /// <summary>Area.</summary>
    internal double AreaM2 => ThicknessM * WidthM;

    /// <summary>Section modulus bent on edge, about the strong axis.</summary>
    internal double EdgewiseM3 => ThicknessM * WidthM * WidthM / 6;

    /// <summary>Section modulus bent flat, about the weak axis.</summary>
    internal double FlatwiseM3 => WidthM * ThicknessM * ThicknessM / 6;

    /// <summary>Timbers are 5 in and more both ways, 4.5 in dressed; the rest is dimension lumber.</summary>
    internal bool IsTimber => ThicknessM >= 4.5 * InchM - Hair;

    /// <summary>A timber at most 2 in wider than thick is a post; wider ones are beams and stringers, with values of their own.</summary>
    internal bool IsPost => IsTimber && WidthM - ThicknessM <= (2 * InchM) + Hair;

    /// <summary>True when a side is at most so many inches, a hair allowed.</summary>
    internal static bool AtMost(double sideM, double inches) => sideM <= (inches * InchM) + Hair;

    // Sizes come from whole sixteenths or millimetres; a tenth of a millimetre decides nothing.
    private const double Hair = 1e-4;
}
