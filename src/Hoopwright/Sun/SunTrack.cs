namespace Hoopwright.Sun;

/// <summary>
/// The sun over one day of one place. The slow part of the algorithm is done at three instants and curves of second order are
/// laid through them: over a day they are right to 0.000005°, far within what the algorithm itself is good for.
/// </summary>
internal sealed class SunTrack
{
    /// <summary>True elevation of the middle of the sun as it rises and sets, degrees.</summary>
    internal const double RiseElevationDeg = -0.8333;

    // A hundredth of a second.
    private const double TimeTolerance = 1e-7;
    private const int MostSteps = 60;

    private readonly TimeSpan _utcOffset;
    private readonly double _noon;
    private readonly double _latitude, _longitude, _elevation;
    private readonly Curve _rightAscension, _declination, _equinoxes, _radius;

    internal SunTrack(Place place, DateOnly date, TimeSpan utcOffset)
    {
        _utcOffset = utcOffset;
        (_latitude, _longitude, _elevation) = (place.Latitude.Degrees, place.Longitude.Degrees, place.Elevation.Metres);
        _noon = SunAlmanac.JulianDay(new DateTimeOffset(date.ToDateTime(new TimeOnly(12, 0)), TimeSpan.Zero)) - utcOffset.TotalDays;
        GeocentricSun before = At(-0.5), middle = At(0), after = At(0.5);
        _rightAscension = new(Near(before.RightAscensionDeg, middle.RightAscensionDeg), middle.RightAscensionDeg, Near(after.RightAscensionDeg, middle.RightAscensionDeg));
        _declination = new(before.DeclinationDeg, middle.DeclinationDeg, after.DeclinationDeg);
        _equinoxes = new(before.EquinoxesDeg, middle.EquinoxesDeg, after.EquinoxesDeg);
        _radius = new(before.RadiusAu, middle.RadiusAu, after.RadiusAu);

        GeocentricSun At(double days) => GeocentricSun.At(_noon + days, SunAlmanac.DeltaTSeconds);
        static double Near(double angle, double to) => angle + (360 * Math.Round((to - angle) / 360));
    }

    /// <summary>The sun at an instant of the day.</summary>
    /// <param name="days">From 12 by the clock, in days: -0.5 to 0.5, and a little beyond.</param>
    internal TopocentricSun At(double days) => TopocentricSun.Of(
        _latitude, _longitude, _elevation, GeocentricSun.MeanSiderealDeg(_noon + days) + _equinoxes.At(days),
        _rightAscension.At(days), _declination.At(days), _radius.At(days));

    /// <summary>Distance of the sun at 12 by the clock, astronomical units.</summary>
    internal double RadiusAu => _radius.At(0);

    /// <summary>Rise, noon and set.</summary>
    internal SunDay Day()
    {
        // The hour angle runs some 360° a day, so that two steps of Newton's are already exact to the microsecond.
        double noon = 0;
        for (int step = 0; step < 4; step++) noon -= At(noon).HourAngleDeg / 360;
        double rise = noon - 0.5, set = noon + 0.5;
        bool upAtNoon = Over(noon) > 0;
        if (!upAtNoon || (Over(rise) >= 0 && Over(set) >= 0))
            return new(Clock(noon), null, null, upAtNoon ? TimeSpan.FromDays(1) : TimeSpan.Zero);
        // Near the polar day the sun may be up at one midnight only: then that midnight stands for the horizon.
        double up = Over(rise) < 0 ? Root(rise, noon) : rise, down = Over(set) < 0 ? Root(set, noon) : set;
        return new(Clock(noon), Clock(up), Clock(down), TimeSpan.FromDays(down - up));
    }

    /// <summary>Rise and set as hours of the clock from midnight of the day; equal where the sun is never up, a day apart where it never sets.</summary>
    internal (double RiseHours, double SetHours) Daylight()
    {
        SunDay day = Day();
        if (day.Rise is not { } rise || day.Set is not { } set) return day.DayLength == TimeSpan.Zero ? (12, 12) : (0, 24);
        DateTimeOffset midnight = Clock(-0.5);
        return ((rise - midnight).TotalHours, (set - midnight).TotalHours);
    }

    private double Over(double days) => At(days).ElevationDeg - RiseElevationDeg;

    /// <summary>Where the sun crosses the horizon between an instant at which it is down and one at which it is up.</summary>
    private double Root(double down, double up)
    {
        double overDown = Over(down), overUp = Over(up);
        for (int step = 0; step < MostSteps && Math.Abs(up - down) > TimeTolerance; step++)
        {
            // The chord, kept off the ends so that every step gains; halves where it does not help.
            double share = step % 3 == 2 ? 0.5 : Math.Clamp(overDown / (overDown - overUp), 0.001, 0.999);
            double at = down + ((up - down) * share), over = Over(at);
            if (over < 0) (down, overDown) = (at, over);
            else (up, overUp) = (at, over);
            if (Math.Abs(over) < 1e-7) return at;
        }
        return (down + up) / 2;
    }

    private DateTimeOffset Clock(double days)
    {
        // Julian days hold some 40 µs; counted from 12 by the clock nothing of a second is lost.
        var noon = new DateTimeOffset((long)Math.Round((_noon + _utcOffset.TotalDays - 1721425.5) * 2) * (TimeSpan.TicksPerDay / 2), _utcOffset);
        return noon.AddSeconds(Math.Round(days * 86400, 2));
    }

    /// <summary>A curve of second order through the values half a day before, at, and half a day after.</summary>
    private readonly record struct Curve(double Before, double Middle, double After)
    {
        internal double At(double days)
        {
            double halves = days * 2;
            return Middle + (halves * (After - Before) / 2) + (halves * halves * (Before - (2 * Middle) + After) / 2);
        }
    }
}
