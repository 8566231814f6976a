using Hoopwright.Quantities;

namespace Hoopwright.Sun;

/// <summary>A place on the earth.</summary>
/// <param name="Latitude">North of the equator, negative south of it; from -90° to 90°.</param>
/// <param name="Longitude">East of Greenwich, negative west of it; from -180° to 180°.</param>
/// <param name="Elevation">Height above the sea.</param>
public sealed record Place(Angle Latitude, Angle Longitude, Length Elevation)
{
    // Mean radius of the earth, m: IUGG, from memory. The earth counts as a ball, which is right to half a per cent.
    private const double EarthRadiusM = 6_371_009;

    /// <summary>How far it is to another place along the ground, by the haversine formula.</summary>
    /// <param name="other">The other place.</param>
    public Length DistanceTo(Place other)
    {
        ArgumentNullException.ThrowIfNull(other);
        double north = Math.Sin((other.Latitude - Latitude).Radians / 2), east = Math.Sin((other.Longitude - Longitude).Radians / 2);
        double share = (north * north) + (Math.Cos(Latitude.Radians) * Math.Cos(other.Latitude.Radians) * east * east);
        return Length.FromMetres(2 * EarthRadiusM * Math.Asin(Math.Min(1, Math.Sqrt(share))));
    }
}
