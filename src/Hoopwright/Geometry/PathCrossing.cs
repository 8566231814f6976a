using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>Where a path meets a straight line.</summary>
/// <param name="Distance">Distance along the path from its start.</param>
/// <param name="Point">The point.</param>
public readonly record struct PathCrossing(Length Distance, PlanePoint Point);
