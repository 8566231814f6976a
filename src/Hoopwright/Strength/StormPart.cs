using Hoopwright.Quantities;

namespace Hoopwright.Strength;

/// <summary>
/// The wind or snow at which a part besides the bows reaches what is allowed, the load once. It is read off a line through the use of the part
/// under a few sizes of the load, so it is known to a few per cent, far closer than soil and wood are.
/// </summary>
public sealed record StormPart
{
    /// <summary>How snow lies, or how the tunnel stands in the wind.</summary>
    public required StormState State { get; init; }

    /// <summary>What it is.</summary>
    public required PartKind Kind { get; init; }

    /// <summary>Its stable name, as in <see cref="PartStrength.Code"/>.</summary>
    public required string Code { get; init; }

    /// <summary>What is looked at, in words.</summary>
    public required string Words { get; init; }

    /// <summary>What governs at the lower end of what is known, in words.</summary>
    public required string Governs { get; init; }

    /// <summary>False where nothing can be counted on at the lower end of what is known: then there is no least.</summary>
    public required bool IsKnown { get; init; }

    /// <summary>Wind at the lower end; null for snow, where nothing can be counted on, or where no wind in reach does it.</summary>
    public Speed? LeastWind { get; init; }

    /// <summary>Wind at the upper end; null for snow or where no wind in reach does it.</summary>
    public Speed? MostWind { get; init; }

    /// <summary>Snow on the ground at the lower end; null for wind, where nothing can be counted on, or where no snow in reach does it.</summary>
    public Pressure? LeastSnow { get; init; }

    /// <summary>Snow on the ground at the upper end; null for wind or where no snow in reach does it.</summary>
    public Pressure? MostSnow { get; init; }
}
