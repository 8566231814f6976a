namespace Hoopwright.Geometry;

/// <summary>A side of a path, as seen when walking along it.</summary>
public enum PathSide
{
    /// <summary>To the left of travel.</summary>
    Left,

    /// <summary>To the right of travel.</summary>
    Right,
}
