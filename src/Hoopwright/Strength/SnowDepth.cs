using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Strength;

/// <summary>How deep a snow lies that weighs as much as a limit.</summary>
/// <param name="Words">The kind of snow.</param>
/// <param name="Density">Its density.</param>
/// <param name="Depth">How deep, over the plan.</param>
public sealed record SnowDepth(string Words, Density Density, Length Depth)
{
    /// <summary>Where the densities come from.</summary>
    public static Citation Source { get; } = new("EN 1991-1-3, Snow loads", "Annex E, mean bulk weight: fresh 1.0, settled 2.0, wet 4.0 kN/m³", Standing.FromMemory);

    private static readonly ImmutableArray<(string Words, double KgM3)> Kinds = [("fresh", 100), ("settled", 200), ("wet", 400)];

    /// <summary>Depths of fresh, settled and wet snow of a weight.</summary>
    /// <param name="weight">Weight over the plan.</param>
    public static ImmutableArray<SnowDepth> Of(Pressure weight) => [.. Kinds.Select(kind => new SnowDepth(
        kind.Words, Density.FromKilogramsPerCubicMetre(kind.KgM3), Length.FromMetres(weight.Pascals / (kind.KgM3 * Frames.FrameWeights.GravityMps2))))];
}
