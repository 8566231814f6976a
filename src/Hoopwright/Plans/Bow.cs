using System.Collections.Immutable;
using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>The shape of a bow.</summary>
public sealed record Bow : PlanSection
{
    /// <summary>round, gothic, peaked or offsets.</summary>
    [Description("round, gothic, peaked or offsets.")]
    public BowKind? Shape { get; init; }

    /// <summary>Height of the straight, upright legs above the ground line; zero for none.</summary>
    [Description("Height of the straight, upright legs above the ground line; zero for none.")]
    public Written<Length>? SideHeight { get; init; }

    /// <summary>Height of the outside of the bow at the middle above the ground line.</summary>
    [Description("Height of the outside of the bow at the middle above the ground line.")]
    public Written<Length>? PeakHeight { get; init; }

    /// <summary>Outside radius of the bend between leg and roof.</summary>
    [Description("Outside radius of the bend between leg and roof.")]
    public Written<Length>? ShoulderRadius { get; init; }

    /// <summary>Outside radius of the two long arcs of a gothic bow.</summary>
    [Description("Outside radius of the two long arcs of a gothic bow.")]
    public Written<Length>? ArchRadius { get; init; }

    /// <summary>For shape offsets: measured heights of the outside of the bow across the span.</summary>
    [Description("For shape offsets: measured heights of the outside of the bow across the span.")]
    public ImmutableArray<BowOffset> Offsets { get; init; } = [];
}
