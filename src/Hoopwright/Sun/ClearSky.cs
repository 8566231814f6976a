using Hoopwright.Sources;

namespace Hoopwright.Sun;

/// <summary>Light under a sky without clouds, by three models of different needs.</summary>
internal static class ClearSky
{
    internal static readonly Formula AirMassFormula = new(
        "m", "1/(cos z + 0.50572·(96.07995 - z)^-1.6364), z in degrees", "", Register.KastenYoung.At("the formula"));

    internal static readonly Formula IneichenFormula = new(
        "G", "cg1·E0·cos z·exp(-cg2·m·(fh1 + fh2·(TL - 1))), with heights and Linke turbidity", "W/m²", Register.IneichenPerez.At("the model"));

    internal static readonly Formula HandbookFormula = new(
        "Eb, Ed", "E0·exp(-τb·m^ab), E0·exp(-τd·m^ad)", "W/m²", Register.AshraeFundamentals.At("2009 and 2013, chapter 14, clear-sky solar radiation"));

    internal static readonly Formula HaurwitzFormula = new(
        "G", "1098·cos z·exp(-0.059/cos z)", "W/m²", Register.Haurwitz.At("the formula"));

    /// <summary>m, how many times the air straight above the light comes through, at sea level; Kasten and Young (1989).</summary>
    /// <param name="zenithDeg">Apparent angle of the sun from straight above; from 0 to 90, and no light beyond.</param>
    internal static double AirMass(double zenithDeg) =>
        1 / (Math.Cos(GeocentricSun.Rad(zenithDeg)) + (0.50572 * Math.Pow(96.07995 - Math.Min(zenithDeg, 90), -1.6364)));

    /// <summary>Ineichen and Perez (2002), without their enhancement of very thin air.</summary>
    /// <param name="zenithDeg">Apparent angle of the sun from straight above; from 90 there is no light.</param>
    /// <param name="absoluteAirMass">m at the place: relative air mass by the pressure over that of sea level.</param>
    /// <param name="linkeTurbidity">TL: 2 clear mountain air, 3 country, 4 to 5 humid summer; 1 or more.</param>
    /// <param name="elevationM">Height above the sea, m.</param>
    /// <param name="outsideWPerM2">E0, light outside the air, square to the sun, W/m².</param>
    internal static SkyLight Ineichen(double zenithDeg, double absoluteAirMass, double linkeTurbidity, double elevationM, double outsideWPerM2)
    {
        double cosZ = Math.Max(0, Math.Cos(GeocentricSun.Rad(zenithDeg)));
        if (cosZ == 0) return default;
        double fh1 = Math.Exp(-elevationM / 8000), fh2 = Math.Exp(-elevationM / 1250);
        double cg1 = (5.09e-5 * elevationM) + 0.868, cg2 = (3.92e-5 * elevationM) + 0.0387;
        double global = cg1 * outsideWPerM2 * cosZ * Math.Exp(-cg2 * absoluteAirMass * (fh1 + (fh2 * (linkeTurbidity - 1))));
        double beam = outsideWPerM2 * (0.664 + (0.163 / fh1)) * Math.Exp(-0.09 * absoluteAirMass * (linkeTurbidity - 1));
        double most = global * Math.Max(0, (1 - ((0.1 - (0.2 * Math.Exp(-linkeTurbidity))) / (0.1 + (0.882 / fh1)))) / cosZ);
        beam = Math.Min(beam, most);
        return new(beam, global - (beam * cosZ), global);
    }

    /// <summary>The handbook's model with the two depths that its climate tables give for each month.</summary>
    /// <param name="elevationDeg">Height of the sun; from 0 down there is no light.</param>
    /// <param name="beamDepth">τb.</param>
    /// <param name="diffuseDepth">τd.</param>
    /// <param name="outsideWPerM2">E0, W/m².</param>
    /// <param name="of2013">True for depths of the 2013 tables and later, false for those of 2009.</param>
    internal static SkyLight Handbook(double elevationDeg, double beamDepth, double diffuseDepth, double outsideWPerM2, bool of2013)
    {
        if (elevationDeg <= 0) return default;
        double airMass = AirMass(90 - elevationDeg), both = beamDepth * diffuseDepth;
        (double ab, double ad) = of2013
            ? (1.454 - (0.406 * beamDepth) - (0.268 * diffuseDepth) + (0.021 * both), 0.507 + (0.205 * beamDepth) - (0.080 * diffuseDepth) - (0.190 * both))
            : (1.219 - (0.043 * beamDepth) - (0.151 * diffuseDepth) - (0.204 * both), 0.202 + (0.852 * beamDepth) - (0.007 * diffuseDepth) - (0.357 * both));
        double beam = outsideWPerM2 * Math.Exp(-beamDepth * Math.Pow(airMass, ab)), diffuse = outsideWPerM2 * Math.Exp(-diffuseDepth * Math.Pow(airMass, ad));
        return new(beam, diffuse, (beam * Math.Sin(GeocentricSun.Rad(elevationDeg))) + diffuse);
    }

    /// <summary>Haurwitz (1945): global light from the height of the sun alone, W/m².</summary>
    /// <param name="zenithDeg">Apparent angle of the sun from straight above.</param>
    internal static double HaurwitzWPerM2(double zenithDeg)
    {
        double cosZ = Math.Cos(GeocentricSun.Rad(zenithDeg));
        return cosZ > 0 ? 1098 * cosZ * Math.Exp(-0.059 / cosZ) : 0;
    }
}
