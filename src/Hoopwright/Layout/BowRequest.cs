using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>What a bow is asked to be. Lengths are to the outside of the tube, where the film lies.</summary>
public sealed record BowRequest
{
    /// <summary>The shape.</summary>
    public required BowKind Kind { get; init; }

    /// <summary>Width at the ground.</summary>
    public required Length Span { get; init; }

    /// <summary>Height of the straight, upright legs; 0 for none.</summary>
    public required Length SideHeight { get; init; }

    /// <summary>Height at the middle; not needed for <see cref="BowKind.Offsets"/>.</summary>
    public Length? PeakHeight { get; init; }

    /// <summary>Outside radius of the shoulder bend; null for the usual one.</summary>
    public Length? ShoulderRadius { get; init; }

    /// <summary>Outside radius of the two long arcs of a gothic bow; null for the usual one.</summary>
    public Length? ArchRadius { get; init; }

    /// <summary>Measured heights, left to right, for <see cref="BowKind.Offsets"/>.</summary>
    public ImmutableArray<PlanePoint> Offsets { get; init; } = [];

    /// <summary>Outside diameter of the tube.</summary>
    public required Length TubeOutside { get; init; }

    /// <summary>True for a bow that stands already: arcs too tight to reach its ridge are taken as wide as they must be.</summary>
    internal bool TakesLeastArch { get; init; }
}
