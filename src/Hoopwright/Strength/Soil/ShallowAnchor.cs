using Hoopwright.Sources;

namespace Hoopwright.Strength.Soil;

/// <summary>
/// A plate or collar pulled out of soil above it: Meyerhof and Adams. Ultimate loads, the weight of the soil right above
/// included, the weight of the plate not. Deeper than the critical depth only that height of soil takes part in friction.
/// </summary>
internal static class ShallowAnchor
{
    internal static readonly Formula Circle = new("Q", "π·c·B·H + s·(π/2)·γ·B·H²·Ku·tan φ + γ·(π/4)·B²·H; s = 1 + m·H/B; Ku = 0.95", "N",
        Register.MeyerhofAdams.At("shallow circular anchor"));

    internal static readonly Formula Rectangle = new("Q", "2·c·H·(B + L) + γ·H²·(2·s·B + L − B)·Ku·tan φ + γ·B·L·H; s = 1 + m·H/B; Ku = 0.95", "N",
        Register.MeyerhofAdams.At("shallow rectangular anchor, L at least B"));

    internal static readonly Formula Deep = new("Q", "π·c·B·Hc + s·(π/2)·γ·B·(2·H − Hc)·Hc·Ku·tan φ + γ·(π/4)·B²·Hc; Hc/B by φ", "N",
        Register.MeyerhofAdams.At("deep circular anchor"));

    internal static readonly Formula ConeWeight = new("W", "γ·π·H/3·(R² + R·r + r²); r = B/2, R = r + H·tan ψ", "N", Citation.Geometry);

    /// <summary>Ku, nominal uplift coefficient of earth pressure.</summary>
    private const double UpliftCoefficient = 0.95;

    // φ in degrees; m; the greatest H/B for which the shallow formula holds.
    private static readonly (double AngleDeg, double Shape, double CriticalDepth)[] Shapes =
        [(20, 0.05, 2.5), (25, 0.10, 3), (30, 0.15, 4), (35, 0.25, 5), (40, 0.35, 7), (45, 0.50, 9)];

    /// <summary>m, by the angle of friction; between the printed angles on a straight line, below 20° that of 20°.</summary>
    internal static double ShapeCoefficient(double frictionRad) => Between(frictionRad, row => row.Shape);

    /// <summary>The greatest H/B of a shallow anchor.</summary>
    internal static double CriticalDepthRatio(double frictionRad) => Between(frictionRad, row => row.CriticalDepth);

    /// <summary>Ultimate uplift of a circular plate.</summary>
    /// <param name="widthM">B; above 0.</param>
    /// <param name="depthM">H, from the ground to the top of the plate; 0 or more.</param>
    /// <param name="cohesionPa">c.</param>
    /// <param name="unitWeightNPerM3">γ.</param>
    /// <param name="frictionRad">φ; 0 for clay loaded quickly.</param>
    internal static double CircleN(double widthM, double depthM, double cohesionPa, double unitWeightNPerM3, double frictionRad)
    {
        double activeM = Math.Min(depthM, CriticalDepthRatio(frictionRad) * widthM);
        double shape = 1 + (ShapeCoefficient(frictionRad) * activeM / widthM);
        // (2H − Hc)·Hc is H² when the whole depth takes part.
        double friction = shape * Math.PI / 2 * unitWeightNPerM3 * widthM * ((2 * depthM) - activeM) * activeM * UpliftCoefficient * Math.Tan(frictionRad);
        return (Math.PI * cohesionPa * widthM * activeM) + friction + PrismN(widthM, activeM, unitWeightNPerM3);
    }

    /// <summary>Ultimate uplift of a shallow rectangular plate.</summary>
    /// <param name="widthM">B, the smaller side; above 0.</param>
    /// <param name="lengthM">L; at least <paramref name="widthM"/>.</param>
    /// <param name="depthM">H; what is deeper than the critical depth is left out.</param>
    /// <param name="cohesionPa">c.</param>
    /// <param name="unitWeightNPerM3">γ.</param>
    /// <param name="frictionRad">φ.</param>
    internal static double RectangleN(double widthM, double lengthM, double depthM, double cohesionPa, double unitWeightNPerM3, double frictionRad) =>
        RectangleN(widthM, lengthM, Math.Min(depthM, CriticalDepthRatio(frictionRad) * widthM), cohesionPa, unitWeightNPerM3,
            UpliftCoefficient * Math.Tan(frictionRad), ShapeCoefficient(frictionRad));

    /// <summary>The same with Ku tan φ and m given, as published tests give them.</summary>
    internal static double RectangleN(
        double widthM, double lengthM, double depthM, double cohesionPa, double unitWeightNPerM3, double upliftFriction, double shapeCoefficient)
    {
        double shape = 1 + (shapeCoefficient * depthM / widthM);
        return (2 * cohesionPa * depthM * (widthM + lengthM))
            + (unitWeightNPerM3 * depthM * depthM * ((2 * shape * widthM) + lengthM - widthM) * upliftFriction)
            + (unitWeightNPerM3 * widthM * lengthM * depthM);
    }

    /// <summary>Weight of the soil right above a circular plate.</summary>
    internal static double PrismN(double widthM, double depthM, double unitWeightNPerM3) => unitWeightNPerM3 * Math.PI / 4 * widthM * widthM * depthM;

    /// <summary>Weight of the soil in a cone that widens from a circular plate up to the ground.</summary>
    /// <param name="widthM">B.</param>
    /// <param name="depthM">H.</param>
    /// <param name="halfAngleRad">ψ, of the side from upright; 0 gives the prism.</param>
    /// <param name="unitWeightNPerM3">γ.</param>
    internal static double ConeWeightN(double widthM, double depthM, double halfAngleRad, double unitWeightNPerM3)
    {
        double low = widthM / 2, high = low + (depthM * Math.Tan(halfAngleRad));
        return unitWeightNPerM3 * Math.PI * depthM / 3 * ((high * high) + (high * low) + (low * low));
    }

    private static double Between(double frictionRad, Func<(double AngleDeg, double Shape, double CriticalDepth), double> value)
    {
        double angleDeg = Math.Clamp(frictionRad * 180 / Math.PI, Shapes[0].AngleDeg, Shapes[^1].AngleDeg);
        int upper = Math.Max(1, Array.FindIndex(Shapes, row => row.AngleDeg >= angleDeg));
        double part = (angleDeg - Shapes[upper - 1].AngleDeg) / (Shapes[upper].AngleDeg - Shapes[upper - 1].AngleDeg);
        return double.Lerp(value(Shapes[upper - 1]), value(Shapes[upper]), part);
    }
}
