using Hoopwright.Geometry;

namespace Hoopwright.Frames;

/// <summary>What of a section the analysis needs.</summary>
/// <param name="AreaM2">Area, m².</param>
/// <param name="IyM4">Second moment about the member's local y, for bending in its x–z plane, m⁴.</param>
/// <param name="IzM4">Second moment about the member's local z, for bending in its x–y plane, m⁴.</param>
/// <param name="JM4">Torsion constant, m⁴.</param>
/// <param name="ShearAreaYM2">Area that resists shear along local y, m²; 0 leaves shear flexibility out.</param>
/// <param name="ShearAreaZM2">Area that resists shear along local z, m²; 0 leaves shear flexibility out.</param>
internal sealed record FrameSection(double AreaM2, double IyM4, double IzM4, double JM4, double ShearAreaYM2 = 0, double ShearAreaZM2 = 0)
{
    /// <summary>A round tube.</summary>
    /// <param name="tube">Its size.</param>
    /// <param name="shearFlexible">True to count shear flexibility, with half the area (thin wall: Roark's Formulas, 8th ed., Table 8.10).</param>
    internal static FrameSection Of(RoundTube tube, bool shearFlexible = false)
    {
        double iM4 = tube.SecondMoment.Metres4, areaM2 = tube.Area.SquareMetres, shearM2 = shearFlexible ? areaM2 / 2 : 0;
        return new(areaM2, iM4, iM4, 2 * iM4, shearM2, shearM2);
    }

    /// <summary>A solid rectangle, depth along local z. Torsion by Roark's Formulas, 8th ed., Table 10.7 case 4.</summary>
    internal static FrameSection Rectangle(double widthM, double depthM, bool shearFlexible = false)
    {
        double a = Math.Max(widthM, depthM) / 2, b = Math.Min(widthM, depthM) / 2, b4 = b * b * b * b;
        double jM4 = a * b * b * b * ((16.0 / 3) - (3.36 * b / a * (1 - (b4 / (12 * a * a * a * a)))));
        double shearM2 = shearFlexible ? widthM * depthM * 5 / 6 : 0;
        return new(widthM * depthM, widthM * depthM * depthM * depthM / 12, depthM * widthM * widthM * widthM / 12, jM4, shearM2, shearM2);
    }
}
