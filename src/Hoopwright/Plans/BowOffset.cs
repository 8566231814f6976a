using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>One measured height of a bow.</summary>
public sealed record BowOffset : PlanSection
{
    /// <summary>Distance from the left ground line.</summary>
    [Description("Distance from the left ground line.")]
    public Written<Length>? Across { get; init; }

    /// <summary>Height of the outside of the bow above the ground line.</summary>
    [Description("Height of the outside of the bow above the ground line.")]
    public Written<Length>? Height { get; init; }
}
