using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Layout;

/// <summary>Tubes in the sizes that they are commonly sold in, so that a heavier one can be proposed. Sellers differ: ask.</summary>
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

    /// <summary>Where the sizes come from.</summary>
    internal static Citation Source(UnitSystem units) => units switch { UnitSystem.UsCustomary => SourceInInches, UnitSystem.Metric => SourceInMillimetres };

    /// <summary>The next wider tube; null past the widest.</summary>
    internal static Length? Wider(Length outside, UnitSystem units) => Next(Outsides(units), outside);

    /// <summary>The next thicker wall; null past the thickest.</summary>
    internal static Length? Thicker(Length wall, UnitSystem units) => Next(Walls(units), wall);

    private static Length? Next(ImmutableArray<Length> rising, Length from)
    {
        foreach (Length size in rising)
        {
            if (size > from * Clear) return size;
        }
        return null;
    }
}
