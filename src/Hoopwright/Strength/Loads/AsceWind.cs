using Hoopwright.Plans;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>Wind by ASCE 7, directional procedure: velocity pressure and the pressure inside.</summary>
internal static class AsceWind
{
    /// <summary>Below this height Kz stays what it is there: 15 ft.</summary>
    internal const double LeastHeightM = 4.572;

    /// <summary>Gust factor of a rigid structure.</summary>
    internal const double Gust = 0.85;

    /// <summary>Direction factor of buildings and arched roofs.</summary>
    internal const double Direction = 0.85;

    /// <summary>Least wind on walls, over their upright area, at strength level: 16 psf.</summary>
    internal const double LeastWallPa = 16 * PaPerPsf;

    /// <summary>Least wind on roofs, over their area seen from the side, at strength level: 8 psf.</summary>
    internal const double LeastRoofPa = 8 * PaPerPsf;

    internal const double PaPerPsf = 4.4482216152605 / 0.09290304;

    private const double FootM = 0.3048;

    internal static readonly Formula GustFactor = new("G", "0.85, rigid structure", "", LoadSources.Asce7("26.11.1"));

    internal static readonly Formula DirectionFactor = new("Kd", "0.85, buildings and arched roofs", "", LoadSources.Asce7("Table 26.6-1"));

    internal static readonly Formula ElevationFactor = new("Ke", "exp(-0.000119·z), z in m over the sea", "", LoadSources.Asce7("Table 26.9-1"));

    internal static readonly Formula LeastWall = new("p", "16 psf on walls, 8 psf on roofs, over their area seen from the side", "Pa", LoadSources.Asce7("27.1.5"));

    internal static Formula VelocityPressure(LoadStandard standard) => new(
        "q", standard == LoadStandard.Asce7Of2022 ? "0.613·Kz·Kzt·Ke·V², taken with Kd" : "0.613·Kz·Kzt·Kd·Ke·V²", "Pa",
        LoadSources.Asce7(standard, "Eq. 26.10-1 (SI)"));

    internal static Formula ExposureFactor(LoadStandard standard) => new(
        "Kz", standard == LoadStandard.Asce7Of2022 ? "2.41·(z/zg)^(2/α), z at least 15 ft" : "2.01·(z/zg)^(2/α), z at least 15 ft", "",
        LoadSources.Asce7(standard, "Table 26.10-1"));

    internal static Formula InsidePressure(EnclosureClass enclosure) => new(
        "GCpi", enclosure switch
        {
            EnclosureClass.Enclosed => "±0.18, enclosed",
            EnclosureClass.PartiallyEnclosed => "±0.55, partially enclosed",
            EnclosureClass.PartiallyOpen => "±0.18, partially open",
            EnclosureClass.Open => "0, open",
        }, "", LoadSources.Asce7("Table 26.13-1"));

    /// <summary>Velocity pressure q with the direction factor in it, as 7-16 writes it; 7-22 takes Kd later, to the same end.</summary>
    /// <param name="kz">Kz, exposure factor at the height; above 0.</param>
    /// <param name="kzt">Kzt, hill factor; 1 or more.</param>
    /// <param name="kd">Kd, direction factor; above 0, at most 1.</param>
    /// <param name="ke">Ke, elevation factor; above 0.</param>
    /// <param name="windMps">V, 3-second gust at 10 m in open country, m/s.</param>
    /// <returns>q, Pa.</returns>
    internal static double VelocityPressurePa(double kz, double kzt, double kd, double ke, double windMps) =>
        0.613 * kz * kzt * kd * ke * windMps * windMps;

    /// <summary>Kz, how much of the wind pressure of open country there is at a height.</summary>
    /// <param name="standard">Which edition of ASCE 7.</param>
    /// <param name="exposure">How open the land is.</param>
    /// <param name="heightM">Height over the ground, m; under 15 ft it counts as 15 ft.</param>
    internal static double Kz(LoadStandard standard, Exposure exposure, double heightM)
    {
        bool of2022 = standard == LoadStandard.Asce7Of2022;
        (double alpha, double gradientFt) = exposure switch
        {
            Exposure.B => of2022 ? (7.5, 3280) : (7.0, 1200),
            Exposure.C => of2022 ? (9.8, 2460) : (9.5, 900),
            Exposure.D => of2022 ? (11.5, 1935) : (11.5, 700.0),
        };
        return (of2022 ? 2.41 : 2.01) * Math.Pow(Math.Max(heightM, LeastHeightM) / (gradientFt * FootM), 2 / alpha);
    }

    /// <summary>Hourly mean wind at a height over the 3-second gust at 10 m in open country: b·(z/10)^a, ASCE 7-16, Eq. 26.11-16 and Table 26.11-1, from memory.</summary>
    /// <param name="exposure">How open the land is.</param>
    /// <param name="heightM">Height over the ground, m; under the least height of the exposure it counts as that.</param>
    internal static double MeanOverGust(Exposure exposure, double heightM)
    {
        (double part, double power, double leastM) = exposure switch
        {
            Exposure.B => (0.45, 1 / 4.0, 9.14),
            Exposure.C => (0.65, 1 / 6.5, 4.57),
            Exposure.D => (0.80, 1 / 9.0, 2.13),
        };
        return part * Math.Pow(Math.Max(heightM, leastM) / 10, power);
    }

    /// <summary>Ke, thinner air at a height over the sea.</summary>
    /// <param name="elevationM">Height over the sea, m; 1 below it.</param>
    internal static double Ke(double elevationM) => Math.Exp(-0.000119 * Math.Max(0, elevationM));

    /// <summary>GCpi without its sign.</summary>
    internal static double GCpi(EnclosureClass enclosure) => enclosure switch
    {
        EnclosureClass.Enclosed => 0.18,
        EnclosureClass.PartiallyEnclosed => 0.55,
        EnclosureClass.PartiallyOpen => 0.18,
        EnclosureClass.Open => 0,
    };

    /// <summary>Net pressure on a surface, positive inwards.</summary>
    /// <param name="qPa">Velocity pressure q, Pa.</param>
    /// <param name="cp">Cp of the outside; positive pushes inwards.</param>
    /// <param name="gcpi">GCpi with its sign; positive blows the tunnel up.</param>
    internal static double NetPa(double qPa, double cp, double gcpi) => (qPa * Gust * cp) - (qPa * gcpi);
}
