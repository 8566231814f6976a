using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>The heights at which a path meets an upright line: one height, or a stretch where the path itself is upright.</summary>
/// <param name="Lowest">The lowest.</param>
/// <param name="Highest">The highest.</param>
public readonly record struct HeightRange(Length Lowest, Length Highest);
