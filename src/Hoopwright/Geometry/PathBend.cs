using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>A stretch of a path that turns at one radius.</summary>
/// <param name="Radius">The radius; above 0.</param>
/// <param name="Turned">How far the direction turns; to the left is positive.</param>
/// <param name="From">Distance from the path's start to where it begins.</param>
/// <param name="To">Distance from the path's start to where it ends.</param>
public readonly record struct PathBend(Length Radius, Angle Turned, Length From, Length To);
