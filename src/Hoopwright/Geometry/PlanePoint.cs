using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>A point in an upright plane: across, and up from the datum.</summary>
/// <param name="Across">Distance across.</param>
/// <param name="Up">Height.</param>
public readonly record struct PlanePoint(Length Across, Length Up);
