namespace Hoopwright.Sun;

/// <summary>The sun as seen from a place on the ground, NREL/TP-560-34302 (rev. 2008), 3.12 to 3.14. All angles in degrees.</summary>
/// <param name="RightAscensionDeg">α', right ascension.</param>
/// <param name="DeclinationDeg">δ', declination.</param>
/// <param name="HourAngleDeg">H', hour angle, from -180 to 180, positive after noon.</param>
/// <param name="ElevationDeg">e0, height of the middle of the sun over the horizon, without refraction.</param>
/// <param name="AzimuthDeg">Φ, clockwise from north, from 0 to 360.</param>
internal readonly record struct TopocentricSun(double RightAscensionDeg, double DeclinationDeg, double HourAngleDeg, double ElevationDeg, double AzimuthDeg)
{
    /// <summary>Half the width of the sun.</summary>
    internal const double SunRadiusDeg = 0.26667;

    /// <summary>By how much the air lifts the sun at the horizon, as the report takes it.</summary>
    internal const double HorizonRefractionDeg = 0.5667;

    /// <summary>From the geocentric sun.</summary>
    /// <param name="latitudeDeg">φ, degrees north.</param>
    /// <param name="longitudeDeg">σ, degrees east.</param>
    /// <param name="elevationM">E, height above the sea, m.</param>
    /// <param name="siderealDeg">ν, apparent sidereal time at Greenwich.</param>
    /// <param name="rightAscensionDeg">α, geocentric.</param>
    /// <param name="declinationDeg">δ, geocentric.</param>
    /// <param name="radiusAu">R, distance of the sun.</param>
    internal static TopocentricSun Of(double latitudeDeg, double longitudeDeg, double elevationM, double siderealDeg, double rightAscensionDeg, double declinationDeg, double radiusAu)
    {
        double hourDeg = siderealDeg + longitudeDeg - rightAscensionDeg;
        (double sinH, double cosH) = Math.SinCos(GeocentricSun.Rad(hourDeg));
        (double sinLat, double cosLat) = Math.SinCos(GeocentricSun.Rad(latitudeDeg));
        (double sinD, double cosD) = Math.SinCos(GeocentricSun.Rad(declinationDeg));
        double sinParallax = Math.Sin(GeocentricSun.Rad(8.794 / (3600 * radiusAu)));
        double u = Math.Atan2(0.99664719 * sinLat, cosLat);
        double x = Math.Cos(u) + (elevationM / 6_378_140 * cosLat), y = (0.99664719 * Math.Sin(u)) + (elevationM / 6_378_140 * sinLat);
        double across = cosD - (x * sinParallax * cosH);
        double shift = Math.Atan2(-x * sinParallax * sinH, across);
        double declination = Math.Atan2((sinD - (y * sinParallax)) * Math.Cos(shift), across);
        double shiftDeg = GeocentricSun.Deg(shift), localDeg = hourDeg - shiftDeg;
        localDeg -= 360 * Math.Round(localDeg / 360);
        (double sinLocal, double cosLocal) = Math.SinCos(GeocentricSun.Rad(localDeg));
        (double sinDec, double cosDec) = Math.SinCos(declination);
        double elevation = Math.Asin(Math.Clamp((sinLat * sinDec) + (cosLat * cosDec * cosLocal), -1, 1));
        double fromSouth = Math.Atan2(sinLocal * cosDec, (cosLocal * sinLat * cosDec) - (sinDec * cosLat));
        return new(
            rightAscensionDeg + shiftDeg, GeocentricSun.Deg(declination), localDeg, GeocentricSun.Deg(elevation), GeocentricSun.Wrapped(GeocentricSun.Deg(fromSouth) + 180));
    }

    /// <summary>Δe, by how much the air lifts the sun; 0 where it is wholly below the horizon.</summary>
    /// <param name="elevationDeg">e0, without refraction.</param>
    /// <param name="pressurePa">Pressure of the air, Pa.</param>
    /// <param name="airC">Temperature of the air, °C.</param>
    internal static double RefractionDeg(double elevationDeg, double pressurePa, double airC) =>
        elevationDeg < -(SunRadiusDeg + HorizonRefractionDeg)
            ? 0
            : pressurePa / 101_000 * (283 / (273 + airC)) * 1.02 / (60 * Math.Tan(GeocentricSun.Rad(elevationDeg + (10.3 / (elevationDeg + 5.11)))));
}
