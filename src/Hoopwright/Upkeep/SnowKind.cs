using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Strength;

namespace Hoopwright.Upkeep;

/// <summary>A kind of snow that a grower tells by looking at it.</summary>
/// <param name="Id">Its name: light, settled, wet or soaked.</param>
/// <param name="Words">What it is, in words.</param>
/// <param name="Density">What it weighs.</param>
/// <param name="Source">Where that comes from.</param>
public sealed record SnowKind(string Id, Phrase Words, Density Density, Citation Source)
{
    private const double SoakedPsfPerFoot = 40;

    /// <summary>Every kind, the lightest first.</summary>
    public static ImmutableArray<SnowKind> All { get; } =
    [
        new("light", Phrase.Of("Light, just fallen"), Density.FromKilogramsPerCubicMetre(100), SnowDepth.Source),
        new("settled", Phrase.Of("Settled for hours or days"), Density.FromKilogramsPerCubicMetre(200), SnowDepth.Source),
        new("wet", Phrase.Of("Wet"), Density.FromKilogramsPerCubicMetre(400), SnowDepth.Source),
        new("soaked", Phrase.Of("Soaked with rain"), Density.FromPoundsPerCubicFoot(SoakedPsfPerFoot), new Citation("common practice, no source", "a foot of wet snow weighs 30 to 40 psf, the high side taken", Standing.CommonPractice)),
    ];

    /// <summary>How deep it lies when it weighs so much, over the plan.</summary>
    /// <param name="weight">Its weight.</param>
    public Length DepthOf(Pressure weight) => Length.FromMetres(weight.Pascals / (Density.KilogramsPerCubicMetre * Frames.FrameWeights.GravityMps2));

    /// <summary>What it weighs when it lies so deep, over the plan.</summary>
    /// <param name="depth">How deep.</param>
    public Pressure WeightOf(Length depth) => Pressure.FromPascals(depth.Metres * Density.KilogramsPerCubicMetre * Frames.FrameWeights.GravityMps2);

    /// <summary>What a depth of water weighs: 1 in is 5.2 psf.</summary>
    /// <param name="depth">How deep.</param>
    internal static Pressure OfWater(Length depth) => Pressure.FromPascals(depth.Metres * 1000 * Frames.FrameWeights.GravityMps2);
}
