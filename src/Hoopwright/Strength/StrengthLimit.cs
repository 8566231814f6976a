using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Strength;

/// <summary>The snow or the wind at which the first bow reaches its limit.</summary>
public sealed record StrengthLimit
{
    /// <summary>What it is measured with.</summary>
    public required StrengthLevel Level { get; init; }

    /// <summary>Ground snow at the limit; null for wind.</summary>
    public required PressureRange? GroundSnow { get; init; }

    /// <summary>Gust speed at the limit; null for snow.</summary>
    public required SpeedRange? Wind { get; init; }

    /// <summary>Snow on the roof at the limit, over the plan, where it lies deepest; null for wind.</summary>
    public required Pressure? RoofSnow { get; init; }

    /// <summary>How deep that snow lies on the roof; none for wind.</summary>
    public ImmutableArray<SnowDepth> Depths => RoofSnow is { } roof ? SnowDepth.Of(roof) : [];

    /// <summary>The load case.</summary>
    public required string CaseCode { get; init; }

    /// <summary>The load case in words.</summary>
    public required string CaseWords { get; init; }

    /// <summary>Number of the bow that reaches it first.</summary>
    public required int Bow { get; init; }

    /// <summary>Place of that limit across, from the left ground line.</summary>
    public required Length Across { get; init; }

    /// <summary>Height of that place over the ground line.</summary>
    public required Length Up { get; init; }

    /// <summary>What governs, in words.</summary>
    public required string Governs { get; init; }
}

/// <summary>A load known between two ends.</summary>
/// <param name="Least">With the weakest steel and feet of the range.</param>
/// <param name="Taken">With the steel and feet that the plan gives or that were taken.</param>
/// <param name="Most">With the strongest of the range.</param>
public sealed record PressureRange(Pressure Least, Pressure Taken, Pressure Most);

/// <summary>A wind speed known between two ends.</summary>
/// <param name="Least">With the weakest steel and feet of the range.</param>
/// <param name="Taken">With the steel and feet that the plan gives or that were taken.</param>
/// <param name="Most">With the strongest of the range.</param>
public sealed record SpeedRange(Speed Least, Speed Taken, Speed Most);
