using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Layout;

/// <summary>Tubes in the sizes and lengths that they are commonly sold in, so that one can be taken, or a heavier one proposed. Sellers differ: ask.</summary>
internal static class UsualTubes
{
    /// <summary>Where the sizes in inches come from.</summary>
    internal static Citation SourceInInches { get; } = new("outside diameters of ASME B36.10M pipe, nominal 3/4 to 3; walls of the Birmingham tube gauge 16 to 10", "", Standing.FromMemory);

    /// <summary>Where the sizes in millimetres come from.</summary>
    internal static Citation SourceInMillimetres { get; } = new("outside diameters of ISO 4200 series 1 and walls of EN 10219-2, round hollow sections", "", Standing.FromMemory);

    private static readonly ImmutableArray<double> OutsidesIn = [1.050, 1.315, 1.660, 1.900, 2.375, 2.875, 3.500];
    private static readonly ImmutableArray<int> Gauges = [16, 14, 13, 12, 11, 10];
    private static readonly ImmutableArray<double> OutsidesMm = [26.9, 33.7, 42.4, 48.3, 60.3, 76.1, 88.9];
    private static readonly ImmutableArray<double> WallsMm = [1.5, 2, 2.5, 3, 4];

    // From memory.
    private static readonly ImmutableArray<double> StockFt = [20, 21, 24];
    private static readonly ImmutableArray<double> StockM = [6];

    // A size within a fiftieth of another is that size as another seller rounds it.
    private const double Clear = 1.02;

    /// <summary>Outside diameters, rising.</summary>
    internal static ImmutableArray<Length> Outsides(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => [.. OutsidesIn.Select(Length.FromInches)],
        UnitSystem.Metric => [.. OutsidesMm.Select(Length.FromMillimetres)],
    };

    /// <summary>Walls, rising.</summary>
    internal static ImmutableArray<Length> Walls(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => [.. Gauges.Select(gauge => TubeGauge.Find(gauge)!.Value.Thickness)],
        UnitSystem.Metric => [.. WallsMm.Select(Length.FromMillimetres)],
    };

    /// <summary>Lengths in which tube is sold, shortest first.</summary>
    internal static ImmutableArray<Length> StockLengths(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => [.. StockFt.Select(Length.FromFeet)],
        UnitSystem.Metric => [.. StockM.Select(Length.FromMetres)],
    };

    /// <summary>Where the sizes come from.</summary>
    internal static Citation Source(UnitSystem units) => units switch { UnitSystem.UsCustomary => SourceInInches, UnitSystem.Metric => SourceInMillimetres };

    /// <summary>The first size that is wider than this; null past the widest.</summary>
    internal static Length? OutsideOver(Length outside, UnitSystem units) => Next(Outsides(units), outside);

    /// <summary>The first wall that is thicker than this; null past the thickest.</summary>
    internal static Length? WallOver(Length wall, UnitSystem units) => Next(Walls(units), wall);

    /// <summary>The next wider tube; null past the widest.</summary>
    internal static Length? Wider(Length outside, UnitSystem units) => OutsideOver(outside * Clear, units);

    /// <summary>The next thicker wall; null past the thickest.</summary>
    internal static Length? Thicker(Length wall, UnitSystem units) => WallOver(wall * Clear, units);

    private static Length? Next(ImmutableArray<Length> rising, Length from)
    {
        foreach (Length size in rising)
        {
            if (size > from) return size;
        }
        return null;
    }
}
