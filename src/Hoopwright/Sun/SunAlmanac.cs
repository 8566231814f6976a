using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Sun;

/// <summary>Where the sun stands, when it rises and sets. Good to 0.0003° from the year -2000 to 6000, as the report says.</summary>
public static class SunAlmanac
{
    /// <summary>The algorithm: NREL's solar position algorithm.</summary>
    public static Formula Position { get; } = new(
        "e, Φ", "solar position algorithm: periodic terms of the earth's orbit, nutation, aberration, parallax, refraction", "deg",
        Register.SolarPosition.At("section 3, tables A4.2 and A4.3", Standing.Published));

    /// <summary>When it rises and sets: its middle 34' of refraction and 16' of radius below the horizon.</summary>
    public static Formula RiseAndSet { get; } = new(
        "t", "the instants at which the true elevation is -0.8333°, found as roots", "",
        Register.SolarPosition.At("3.14 and A.2, elevation; roots instead of the report's days in universal time", Standing.Published));

    /// <summary>ΔT, terrestrial less universal time, s: about right for 2025 to 2030, from memory. 10 s are 0.0001° of the sun.</summary>
    internal const double DeltaTSeconds = 69;

    // Of the air where only the refraction asks for it, °C.
    private const double AirC = 12;

    /// <summary>Where the sun stands, with the air pressure usual for the height and 12 °C.</summary>
    /// <param name="place">Seen from where.</param>
    /// <param name="instant">When.</param>
    public static SunPosition At(Place place, DateTimeOffset instant)
    {
        ArgumentNullException.ThrowIfNull(place);
        return At(place, instant, UsualPressure(place.Elevation), Temperature.FromCelsius(AirC));
    }

    /// <summary>Where the sun stands.</summary>
    /// <param name="place">Seen from where.</param>
    /// <param name="instant">When.</param>
    /// <param name="air">Pressure of the air at the place.</param>
    /// <param name="airTemperature">Its temperature.</param>
    public static SunPosition At(Place place, DateTimeOffset instant, Pressure air, Temperature airTemperature)
    {
        ArgumentNullException.ThrowIfNull(place);
        double day = JulianDay(instant);
        var sun = GeocentricSun.At(day, DeltaTSeconds);
        return Seen(Topocentric(place, day, sun), air.Pascals, airTemperature.Celsius);
    }

    /// <summary>By how much a sundial is ahead of mean time, from -17 to 17 minutes.</summary>
    /// <param name="instant">When.</param>
    public static TimeSpan EquationOfTime(DateTimeOffset instant) => TimeSpan.FromMinutes(GeocentricSun.At(JulianDay(instant), DeltaTSeconds).EquationOfTimeMinutes);

    /// <summary>The sun of one day of a place.</summary>
    /// <param name="place">Seen from where.</param>
    /// <param name="date">The day, by the clock there.</param>
    /// <param name="utcOffset">By how much that clock is ahead of universal time.</param>
    public static SunDay Day(Place place, DateOnly date, TimeSpan utcOffset)
    {
        ArgumentNullException.ThrowIfNull(place);
        return new SunTrack(place, date, utcOffset).Day();
    }

    /// <summary>Pressure of the standard atmosphere at a height: ISO 2533, as the general form 101325·(1 - 2.25577e-5·h)^5.25588, from memory.</summary>
    /// <param name="elevation">Height above the sea.</param>
    public static Pressure UsualPressure(Length elevation) => Pressure.FromPascals(101_325 * Math.Pow(1 - (2.25577e-5 * Math.Clamp(elevation.Metres, -500, 11_000)), 5.25588));

    /// <summary>Days since noon of 1 January 4713 BC, universal time.</summary>
    internal static double JulianDay(DateTimeOffset instant) => (instant.UtcTicks / (double)TimeSpan.TicksPerDay) + 1721425.5;

    internal static TopocentricSun Topocentric(Place place, double julianDay, in GeocentricSun sun) => TopocentricSun.Of(
        place.Latitude.Degrees, place.Longitude.Degrees, place.Elevation.Metres,
        GeocentricSun.MeanSiderealDeg(julianDay) + sun.EquinoxesDeg, sun.RightAscensionDeg, sun.DeclinationDeg, sun.RadiusAu);

    internal static SunPosition Seen(in TopocentricSun sun, double pressurePa, double airC) => new(
        Angle.FromDegrees(sun.ElevationDeg),
        Angle.FromDegrees(sun.ElevationDeg + TopocentricSun.RefractionDeg(sun.ElevationDeg, pressurePa, airC)),
        Angle.FromDegrees(sun.AzimuthDeg));
}
