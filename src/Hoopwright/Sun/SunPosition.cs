using Hoopwright.Quantities;

namespace Hoopwright.Sun;

/// <summary>Where the sun stands at one instant.</summary>
/// <param name="TrueElevation">Height of its middle over a level horizon, as if there were no air.</param>
/// <param name="Elevation">The same as seen, lifted by the air.</param>
/// <param name="Azimuth">Direction, clockwise from north, from 0° to 360°.</param>
public readonly record struct SunPosition(Angle TrueElevation, Angle Elevation, Angle Azimuth)
{
    /// <summary>The angle between the sun, as seen, and the line square to a plane: more than 90° when it is behind it.</summary>
    /// <param name="slope">Of the plane against level.</param>
    /// <param name="facing">The direction it slopes down to, clockwise from north.</param>
    public Angle IncidenceOn(Angle slope, Angle facing) => Angle.FromRadians(Math.Acos(Math.Clamp(
        (Math.Sin(Elevation.Radians) * Math.Cos(slope.Radians)) + (Math.Cos(Elevation.Radians) * Math.Sin(slope.Radians) * Math.Cos((Azimuth - facing).Radians)), -1, 1)));
}
