using Hoopwright.Quantities;

namespace Hoopwright.Sheets.GeoJson;

/// <summary>
/// Places a few hundred metres about a point of the earth: metres east and north are laid off along the parallel and the meridian of that point,
/// by the two radii of curvature of the ellipsoid there. Within 100 m the distances are right to a millimetre.
/// </summary>
internal sealed class LocalGround
{
    // WGS 84 (NIMA TR8350.2): half the long axis, and flattening.
    private const double LongHalfM = 6_378_137, Flattening = 1 / 298.257223563;
    private readonly double latitudeRad, longitudeRad, northRadiusM, eastRadiusM;

    public LocalGround(Angle latitude, Angle longitude)
    {
        (latitudeRad, longitudeRad) = (latitude.Radians, longitude.Radians);
        const double Eccentricity2 = Flattening * (2 - Flattening);
        double sin = Math.Sin(latitudeRad), root = Math.Sqrt(1 - (Eccentricity2 * sin * sin));
        northRadiusM = LongHalfM * (1 - Eccentricity2) / (root * root * root);
        eastRadiusM = LongHalfM / root * Math.Cos(latitudeRad);
    }

    /// <summary>Longitude and latitude, degrees, of a point so far east and north.</summary>
    public (double LongitudeDeg, double LatitudeDeg) At(double eastM, double northM) =>
        ((longitudeRad + (eastM / eastRadiusM)) * 180 / Math.PI, (latitudeRad + (northM / northRadiusM)) * 180 / Math.PI);
}
