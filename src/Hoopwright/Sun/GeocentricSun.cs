namespace Hoopwright.Sun;

/// <summary>
/// The sun as seen from the middle of the earth, by the solar position algorithm of NREL/TP-560-34302 (rev. 2008); section 3 of
/// the report in its order. All angles in degrees.
/// </summary>
internal readonly record struct GeocentricSun
{
    /// <summary>L, heliocentric longitude.</summary>
    internal required double HelioLongitudeDeg { get; init; }

    /// <summary>B, heliocentric latitude.</summary>
    internal required double HelioLatitudeDeg { get; init; }

    /// <summary>R, distance, astronomical units.</summary>
    internal required double RadiusAu { get; init; }

    /// <summary>Δψ, nutation in longitude.</summary>
    internal required double NutationLongitudeDeg { get; init; }

    /// <summary>Δε, nutation in obliquity.</summary>
    internal required double NutationObliquityDeg { get; init; }

    /// <summary>ε0, mean obliquity of the ecliptic, arc seconds.</summary>
    internal required double MeanObliquityArcSeconds { get; init; }

    /// <summary>ε, true obliquity.</summary>
    internal required double ObliquityDeg { get; init; }

    /// <summary>λ, apparent longitude.</summary>
    internal required double ApparentLongitudeDeg { get; init; }

    /// <summary>α, right ascension, from 0 to 360.</summary>
    internal required double RightAscensionDeg { get; init; }

    /// <summary>δ, declination.</summary>
    internal required double DeclinationDeg { get; init; }

    /// <summary>M, mean longitude of the sun, from 0 to 360.</summary>
    internal required double MeanLongitudeDeg { get; init; }

    /// <summary>Δψ·cos ε, by which apparent sidereal time is ahead of mean.</summary>
    internal double EquinoxesDeg => NutationLongitudeDeg * Math.Cos(Rad(ObliquityDeg));

    /// <summary>Equation of time, minutes, from -20 to 20.</summary>
    internal double EquationOfTimeMinutes
    {
        get
        {
            double minutes = 4 * (MeanLongitudeDeg - 0.0057183 - RightAscensionDeg + EquinoxesDeg);
            return minutes switch { > 20 => minutes - 1440, < -20 => minutes + 1440, _ => minutes };
        }
    }

    /// <summary>The sun at one instant.</summary>
    /// <param name="julianDay">Julian day of the instant, universal time.</param>
    /// <param name="deltaTSeconds">ΔT, terrestrial less universal time, s.</param>
    internal static GeocentricSun At(double julianDay, double deltaTSeconds)
    {
        double century = (julianDay + (deltaTSeconds / 86400) - 2451545) / 36525, millennium = century / 10;
        double longitude = Wrapped(Deg(Series(SunTerms.Longitude, millennium))), latitude = Deg(Series(SunTerms.Latitude, millennium));
        double radius = Series(SunTerms.Radius, millennium);
        (double nutationLongitude, double nutationObliquity) = Nutation(century);
        double mean = MeanObliquity(millennium / 10), obliquity = (mean / 3600) + nutationObliquity;
        double apparent = longitude + 180 + nutationLongitude - (20.4898 / (3600 * radius));
        (double sinE, double cosE) = Math.SinCos(Rad(obliquity));
        (double sinL, double cosL) = Math.SinCos(Rad(apparent));
        // The geocentric latitude is that of the earth with its sign turned.
        (double sinB, double cosB) = Math.SinCos(Rad(-latitude));
        return new()
        {
            HelioLongitudeDeg = longitude,
            HelioLatitudeDeg = latitude,
            RadiusAu = radius,
            NutationLongitudeDeg = nutationLongitude,
            NutationObliquityDeg = nutationObliquity,
            MeanObliquityArcSeconds = mean,
            ObliquityDeg = obliquity,
            ApparentLongitudeDeg = Wrapped(apparent),
            RightAscensionDeg = Wrapped(Deg(Math.Atan2((sinL * cosE) - (sinB / cosB * sinE), cosL))),
            DeclinationDeg = Deg(Math.Asin((sinB * cosE) + (cosB * sinE * sinL))),
            MeanLongitudeDeg = Wrapped(Polynomial(millennium, 280.4664567, 360007.6982779, 0.03032028, 1.0 / 49931, -1.0 / 15300, -1.0 / 2000000)),
        };
    }

    /// <summary>ν0, mean sidereal time at Greenwich, from 0 to 360.</summary>
    /// <param name="julianDay">Julian day, universal time.</param>
    internal static double MeanSiderealDeg(double julianDay)
    {
        double days = julianDay - 2451545, century = days / 36525;
        return Wrapped(280.46061837 + (360.98564736629 * days) + (century * century * (0.000387933 - (century / 38710000))));
    }

    internal static double Wrapped(double degrees) => degrees - (360 * Math.Floor(degrees / 360));

    internal static double Rad(double degrees) => degrees * (Math.PI / 180);

    internal static double Deg(double radians) => radians * (180 / Math.PI);

    private static double Series(double[][] powers, double millennium)
    {
        double sum = 0;
        for (int power = powers.Length - 1; power >= 0; power--)
        {
            double[] terms = powers[power];
            double here = 0;
            for (int term = 0; term < terms.Length; term += 3) here += terms[term] * Math.Cos(terms[term + 1] + (terms[term + 2] * millennium));
            sum = (sum * millennium) + here;
        }
        return sum / 1e8;
    }

    private static (double LongitudeDeg, double ObliquityDeg) Nutation(double century)
    {
        // Elongation of the moon, anomalies of sun and moon, the moon's argument of latitude, its ascending node.
        double x0 = Rad(Polynomial(century, 297.85036, 445267.111480, -0.0019142, 1.0 / 189474)), x1 = Rad(Polynomial(century, 357.52772, 35999.050340, -0.0001603, -1.0 / 300000));
        double x2 = Rad(Polynomial(century, 134.96298, 477198.867398, 0.0086972, 1.0 / 56250)), x3 = Rad(Polynomial(century, 93.27191, 483202.017538, -0.0036825, 1.0 / 327270));
        double x4 = Rad(Polynomial(century, 125.04452, -1934.136261, 0.0020708, 1.0 / 450000));
        double longitude = 0, obliquity = 0;
        foreach (double[] term in SunTerms.Nutation)
        {
            (double sine, double cosine) = Math.SinCos((term[0] * x0) + (term[1] * x1) + (term[2] * x2) + (term[3] * x3) + (term[4] * x4));
            longitude += (term[5] + (term[6] * century)) * sine;
            obliquity += (term[7] + (term[8] * century)) * cosine;
        }
        return (longitude / 36_000_000, obliquity / 36_000_000);
    }

    private static double MeanObliquity(double u) =>
        Polynomial(u, 84381.448, -4680.93, -1.55, 1999.25, -51.38, -249.67, -39.05, 7.12, 27.87, 5.79, 2.45);

    private static double Polynomial(double x, params ReadOnlySpan<double> coefficients)
    {
        double value = 0;
        for (int power = coefficients.Length - 1; power >= 0; power--) value = (value * x) + coefficients[power];
        return value;
    }
}
