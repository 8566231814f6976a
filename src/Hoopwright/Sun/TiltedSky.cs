using Hoopwright.Sources;

namespace Hoopwright.Sun;

/// <summary>What falls on a plane that is not level: from the ground, and from the sky by three models.</summary>
internal static class TiltedSky
{
    internal static readonly Formula HayDaviesFormula = new(
        "D", "DHI·(A·Rb + (1 - A)·(1 + cos β)/2), A = DNI/E0", "W/m²", Register.HayDavies.At("the model"));

    internal static readonly Formula PerezFormula = new(
        "D", "DHI·((1 - F1)·(1 + cos β)/2 + F1·a/b + F2·sin β)", "W/m²", Register.Perez.At("the model, all-sites composite coefficients"));

    // Upper ends of the bins of clearness; F11, F12, F13, F21, F22, F23 of each.
    private static readonly double[] Clearness = [1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2];

    private static readonly double[][] Coefficients =
    [
        [-0.008, 0.588, -0.062, -0.060, 0.072, -0.022],
        [0.130, 0.683, -0.151, -0.019, 0.066, -0.029],
        [0.330, 0.487, -0.221, 0.055, -0.064, -0.026],
        [0.568, 0.187, -0.295, 0.109, -0.152, -0.014],
        [0.873, -0.392, -0.362, 0.226, -0.462, 0.001],
        [1.132, -1.237, -0.412, 0.288, -0.823, 0.056],
        [1.060, -1.600, -0.359, 0.264, -1.127, 0.131],
        [0.678, -0.327, -0.250, 0.156, -1.377, 0.251],
    ];

    /// <summary>Cosine of the angle between the sun and the line square to a plane; negative behind it.</summary>
    /// <param name="zenithDeg">Of the sun.</param>
    /// <param name="sunAzimuthDeg">Of the sun, clockwise from north.</param>
    /// <param name="tiltDeg">Of the plane against level.</param>
    /// <param name="facingDeg">Which way it slopes down, clockwise from north.</param>
    internal static double CosIncidence(double zenithDeg, double sunAzimuthDeg, double tiltDeg, double facingDeg)
    {
        (double sinZ, double cosZ) = Math.SinCos(GeocentricSun.Rad(zenithDeg));
        (double sinT, double cosT) = Math.SinCos(GeocentricSun.Rad(tiltDeg));
        return (cosZ * cosT) + (sinZ * sinT * Math.Cos(GeocentricSun.Rad(sunAzimuthDeg - facingDeg)));
    }

    /// <summary>From the sun itself, W/m².</summary>
    internal static double BeamWPerM2(double beamNormalWPerM2, double cosIncidence) => beamNormalWPerM2 * Math.Max(0, cosIncidence);

    /// <summary>Thrown back by the ground, W/m².</summary>
    internal static double GroundWPerM2(double globalWPerM2, double albedo, double tiltDeg) => globalWPerM2 * albedo * (1 - Math.Cos(GeocentricSun.Rad(tiltDeg))) / 2;

    /// <summary>From a sky that is equally bright everywhere, W/m².</summary>
    internal static double EvenSkyWPerM2(double diffuseWPerM2, double tiltDeg) => diffuseWPerM2 * (1 + Math.Cos(GeocentricSun.Rad(tiltDeg))) / 2;

    /// <summary>Hay and Davies (1980): some of the sky's light comes from where the sun stands, W/m².</summary>
    /// <param name="light">Sun and sky.</param>
    /// <param name="outsideWPerM2">E0, light outside the air square to the sun.</param>
    /// <param name="zenithDeg">Of the sun.</param>
    /// <param name="cosIncidence">Of the sun on the plane.</param>
    /// <param name="tiltDeg">Of the plane.</param>
    internal static double HayDaviesWPerM2(in SkyLight light, double outsideWPerM2, double zenithDeg, double cosIncidence, double tiltDeg)
    {
        double share = Math.Max(0, light.BeamNormalWPerM2) / outsideWPerM2;
        // With the sun within a degree of the horizon the ratio would run away.
        double ratio = Math.Max(0, cosIncidence) / Math.Max(Math.Cos(GeocentricSun.Rad(zenithDeg)), 0.01745);
        return light.DiffuseWPerM2 * ((share * ratio) + ((1 - share) * (1 + Math.Cos(GeocentricSun.Rad(tiltDeg))) / 2));
    }

    /// <summary>Perez and others (1990): brighter round the sun and at the horizon, by how clear and how bright the sky is, W/m².</summary>
    /// <param name="light">Sun and sky; without light of the sky there is none.</param>
    /// <param name="outsideWPerM2">E0.</param>
    /// <param name="relativeAirMass">m.</param>
    /// <param name="zenithDeg">Of the sun.</param>
    /// <param name="cosIncidence">Of the sun on the plane.</param>
    /// <param name="tiltDeg">Of the plane.</param>
    internal static double PerezWPerM2(in SkyLight light, double outsideWPerM2, double relativeAirMass, double zenithDeg, double cosIncidence, double tiltDeg)
    {
        if (light.DiffuseWPerM2 <= 0) return 0;
        double zenith = GeocentricSun.Rad(zenithDeg), cube = 1.041 * zenith * zenith * zenith;
        double clearness = (((light.DiffuseWPerM2 + light.BeamNormalWPerM2) / light.DiffuseWPerM2) + cube) / (1 + cube);
        double brightness = light.DiffuseWPerM2 * relativeAirMass / outsideWPerM2;
        double[] f = Coefficients[Clearness.Count(end => clearness >= end)];
        double f1 = Math.Max(0, f[0] + (f[1] * brightness) + (f[2] * zenith)), f2 = f[3] + (f[4] * brightness) + (f[5] * zenith);
        double around = Math.Max(0, cosIncidence) / Math.Max(Math.Cos(GeocentricSun.Rad(85)), Math.Cos(zenith));
        (double sinT, double cosT) = Math.SinCos(GeocentricSun.Rad(tiltDeg));
        return Math.Max(0, light.DiffuseWPerM2 * (((1 - f1) * (1 + cosT) / 2) + (f1 * around) + (f2 * sinT)));
    }
}
