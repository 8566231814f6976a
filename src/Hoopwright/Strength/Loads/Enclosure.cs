using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>Classes of enclosure by ASCE 7, section 26.2, from the openings there are.</summary>
internal static class Enclosure
{
    internal static readonly Formula Rule = new(
        "enclosure",
        "partially enclosed where Ao > 1.1·Aoi, Ao > min(4 ft², 0.01·Ag) and Aoi/Agi ≤ 0.2; open where every wall is 80 % open; enclosed where Ao < min(4 ft², 0.01·Ag) and Aoi/Agi ≤ 0.2; else partially open",
        "", LoadSources.Asce7("26.2"));

    // 4 ft².
    private const double SmallOpeningM2 = 4 * 0.09290304;

    /// <summary>The class for wind on one wall.</summary>
    /// <param name="windward">The wall that the wind presses on.</param>
    /// <param name="others">The other walls.</param>
    /// <param name="roofM2">Area of the roof, which has no openings, m².</param>
    internal static EnclosureClass Of(WallOpening windward, IReadOnlyList<WallOpening> others, double roofM2)
    {
        if (IsMostlyOpen(windward) && others.All(IsMostlyOpen)) return EnclosureClass.Open;
        double otherOpenM2 = others.Sum(wall => wall.OpenM2), otherGrossM2 = others.Sum(wall => wall.GrossM2) + roofM2;
        bool closedElsewhere = otherOpenM2 <= 0.2 * otherGrossM2;
        bool opensToWind = windward.OpenM2 > Math.Min(SmallOpeningM2, 0.01 * windward.GrossM2);
        if (opensToWind && windward.OpenM2 > 1.1 * otherOpenM2 && closedElsewhere) return EnclosureClass.PartiallyEnclosed;
        return !opensToWind && closedElsewhere ? EnclosureClass.Enclosed : EnclosureClass.PartiallyOpen;
    }

    private static bool IsMostlyOpen(WallOpening wall) => wall.OpenM2 >= 0.8 * wall.GrossM2;
}

/// <summary>What of a wall is open.</summary>
/// <param name="OpenM2">Ao, area of its openings, m².</param>
/// <param name="GrossM2">Ag, its whole area, m²; above 0.</param>
internal readonly record struct WallOpening(double OpenM2, double GrossM2);
