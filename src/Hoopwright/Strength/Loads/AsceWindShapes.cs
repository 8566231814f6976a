using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>Cp of the outside by ASCE 7, figures 27.3-1 and 27.3-3; positive pushes inwards.</summary>
internal static class AsceWindShapes
{
    /// <summary>The steepest arch that figure 27.3-3 knows; a steeper one counts as this.</summary>
    internal const double HighestRise = 0.6;

    /// <summary>Cp of the leeward quarter of an arch.</summary>
    internal const double LeewardQuarter = -0.5;

    /// <summary>Cp of a windward wall.</summary>
    internal const double WindwardWall = 0.8;

    /// <summary>Cp of a wall along the wind.</summary>
    internal const double SideWall = -0.7;

    internal static readonly Formula ArchOnGround = new(
        "Cp", "windward quarter 1.4·r, centre half -0.7 - r, leeward quarter -0.5; r is rise over span, springing from the ground", "",
        LoadSources.Asce7("Fig. 27.3-3"));

    internal static readonly Formula ArchOnLegs = new(
        "Cp", "windward quarter -0.9 for r < 0.2, 1.5·r - 0.3 and 6·r - 2.1 to 0.3, 2.75·r - 0.7 above; centre half -0.7 - r, leeward quarter -0.5; r is rise over span, on legs", "",
        LoadSources.Asce7("Fig. 27.3-3"));

    internal static readonly Formula Walls = new(
        "Cp", "windward wall 0.8; leeward wall -0.5, -0.3, -0.2 for length over width along the wind of 1, 2, 4; side wall -0.7", "",
        LoadSources.Asce7("Fig. 27.3-1"));

    internal static readonly Formula Gable = new(
        "Cp", "gable roof across the wind, by slope and h/L, two values windward", "", LoadSources.Asce7("Fig. 27.3-1"));

    internal static readonly Formula Along = new(
        "Cp", "wind along the ridge: -0.9 within h of the windward edge, -0.5 to 2h, -0.3 beyond, for h/L up to 0.5; -1.3 within h/2, then -0.7 for 1 and more", "",
        LoadSources.Asce7("Fig. 27.3-1"));

    // Slopes in degrees; for each h/L of 0.25, 0.5 and 1 the two values of the windward slope.
    private static readonly double[] GableSlopesDeg = [10, 15, 20, 25, 30, 35, 45];
    private static readonly double[] GableDepths = [0.25, 0.5, 1.0];

    private static readonly double[][] GableSuction =
    [
        [-0.7, -0.5, -0.3, -0.2, -0.2, 0.0, 0.4],
        [-0.9, -0.7, -0.4, -0.3, -0.2, -0.2, 0.0],
        [-1.3, -1.0, -0.7, -0.5, -0.3, -0.2, 0.0],
    ];

    private static readonly double[][] GablePressure =
    [
        [-0.18, 0.0, 0.2, 0.3, 0.3, 0.4, 0.4],
        [-0.18, -0.18, 0.0, 0.2, 0.2, 0.3, 0.4],
        [-0.18, -0.18, -0.18, 0.0, 0.2, 0.2, 0.3],
    ];

    private static readonly double[] GableLeewardDeg = [10, 15, 20];
    private static readonly double[][] GableLeeward = [[-0.3, -0.5, -0.6], [-0.5, -0.5, -0.6], [-0.7, -0.6, -0.6]];

    /// <summary>Cp of the windward quarter of an arch that springs from the ground.</summary>
    /// <param name="rise">r, rise over span; over 0, counted to 0.6.</param>
    internal static double WindwardQuarterOnGround(double rise) => 1.4 * Math.Min(rise, HighestRise);

    /// <summary>Cp of the windward quarter of an arch on legs: one value, or two to be tried from r = 0.2 to 0.3.</summary>
    /// <param name="rise">r, rise of the arch over the legs over its span; over 0, counted to 0.6.</param>
    internal static double[] WindwardQuarterOnLegs(double rise)
    {
        double r = Math.Min(rise, HighestRise);
        return r < 0.2 ? [-0.9] : r < 0.3 ? [(1.5 * r) - 0.3, (6 * r) - 2.1] : [(2.75 * r) - 0.7];
    }

    /// <summary>Cp of the centre half of an arch.</summary>
    internal static double CentreHalf(double rise) => -0.7 - Math.Min(rise, HighestRise);

    /// <summary>Cp of a leeward wall.</summary>
    /// <param name="lengthPerWidth">L/B, size along the wind over size across it.</param>
    internal static double LeewardWall(double lengthPerWidth) => Between([1, 2, 4], [-0.5, -0.3, -0.2], lengthPerWidth);

    /// <summary>Cp of the roof for wind along the ridge.</summary>
    /// <param name="heightPerLength">h/L, mean height of the roof over the length along the wind.</param>
    /// <param name="heightsFromEdge">Distance from the windward edge in heights h.</param>
    internal static double RoofAlong(double heightPerLength, double heightsFromEdge)
    {
        (double low, double tall) = heightsFromEdge switch
        {
            < 0.5 => (-0.9, -1.3),
            < 1 => (-0.9, -0.7),
            < 2 => (-0.5, -0.7),
            _ => (-0.3, -0.7),
        };
        return Between([0.5, 1], [low, tall], heightPerLength);
    }

    /// <summary>The two Cp of the windward slope of a gable, the greater suction first.</summary>
    /// <param name="slopeDeg">Slope, degrees; from 10 up. Flatter roofs are not bent as bows.</param>
    /// <param name="heightPerSpan">h/L, mean height of the roof over the span.</param>
    internal static (double Suction, double Pressure) GableWindward(double slopeDeg, double heightPerSpan)
    {
        if (slopeDeg >= 60) return (0.01 * slopeDeg, 0.01 * slopeDeg);
        if (slopeDeg > 45)
        {
            (double atSuction, double atPressure) = GableWindward(45, heightPerSpan);
            return (Between([45, 60], [atSuction, 0.6], slopeDeg), Between([45, 60], [atPressure, 0.6], slopeDeg));
        }
        return (Table(GableSlopesDeg, GableSuction, slopeDeg, heightPerSpan), Table(GableSlopesDeg, GablePressure, slopeDeg, heightPerSpan));
    }

    /// <summary>Cp of the leeward slope of a gable.</summary>
    internal static double GableLeewardSlope(double slopeDeg, double heightPerSpan) => Table(GableLeewardDeg, GableLeeward, slopeDeg, heightPerSpan);

    /// <summary>Straight between the points of a table, level beyond its ends.</summary>
    internal static double Between(double[] at, double[] values, double x)
    {
        if (x <= at[0]) return values[0];
        for (int i = 1; i < at.Length; i++)
            if (x <= at[i])
                return values[i - 1] + ((values[i] - values[i - 1]) * (x - at[i - 1]) / (at[i] - at[i - 1]));
        return values[^1];
    }

    private static double Table(double[] slopesDeg, double[][] rows, double slopeDeg, double depth) =>
        Between(GableDepths, [.. rows.Select(row => Between(slopesDeg, row, slopeDeg))], depth);
}
