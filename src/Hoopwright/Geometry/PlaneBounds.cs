using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>The smallest upright rectangle that holds a figure.</summary>
/// <param name="Least">Its lower left corner.</param>
/// <param name="Most">Its upper right corner.</param>
public readonly record struct PlaneBounds(PlanePoint Least, PlanePoint Most)
{
    /// <summary>Its width.</summary>
    public Length Width => Most.Across - Least.Across;

    /// <summary>Its height.</summary>
    public Length Height => Most.Up - Least.Up;
}
