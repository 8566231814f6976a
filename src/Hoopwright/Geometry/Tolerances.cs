namespace Hoopwright.Geometry;

/// <summary>How near counts as equal in geometry, each with its reason.</summary>
internal static class Tolerances
{
    /// <summary>Points nearer than this are one: a hundred thousand times what double arithmetic loses on a site, far below any tape.</summary>
    internal const double SamePointM = 1e-9;

    /// <summary>Directions nearer than this are one: over 10 m it moves a point by a hundredth of a micrometre.</summary>
    internal const double SameDirectionRad = 1e-9;

    /// <summary>An angle brought to more than -π and at most π.</summary>
    internal static double WrapRad(double angleRad) => Math.IEEERemainder(angleRad, Math.Tau);
}
