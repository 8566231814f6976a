using Hoopwright.Sun;

namespace Hoopwright.Inside.Light;

/// <summary>How the tunnel lies: turns a direction of the compass into one across, along and up.</summary>
internal readonly record struct Heading
{
    private readonly double _rightRad, _backRad;

    /// <param name="frontFacesDeg">Where one looks walking out by the front end, clockwise from north.</param>
    internal Heading(double frontFacesDeg)
    {
        FrontFacesDeg = frontFacesDeg;
        // Walking in by the front one looks to the back, and has the right side at the right hand.
        (_backRad, _rightRad) = (GeocentricSun.Rad(frontFacesDeg + 180), GeocentricSun.Rad(frontFacesDeg - 90));
    }

    internal double FrontFacesDeg { get; }

    /// <summary>Direction in which the right side faces, clockwise from north, from 0 to 360.</summary>
    internal double RightFacesDeg => GeocentricSun.Wrapped(FrontFacesDeg - 90);

    /// <summary>Direction in which the left side faces, clockwise from north, from 0 to 360.</summary>
    internal double LeftFacesDeg => GeocentricSun.Wrapped(FrontFacesDeg + 90);

    /// <summary>A unit vector towards a place in the sky: right, back, up.</summary>
    /// <param name="azimuthRad">Clockwise from north.</param>
    /// <param name="elevationRad">Over the level.</param>
    internal Ray Towards(double azimuthRad, double elevationRad)
    {
        double level = Math.Cos(elevationRad);
        return new(level * Math.Cos(azimuthRad - _rightRad), level * Math.Cos(azimuthRad - _backRad), Math.Sin(elevationRad), azimuthRad);
    }
}

/// <summary>A direction.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">To the back.</param>
/// <param name="Z">Up.</param>
/// <param name="AzimuthRad">Clockwise from north.</param>
internal readonly record struct Ray(double X, double Y, double Z, double AzimuthRad);
