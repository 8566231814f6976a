namespace Hoopwright.Plans;

/// <summary>The side at which a door with one leaf is hinged, with its left as the end wall has it.</summary>
public enum HingeSide
{
    /// <summary>At the left jamb.</summary>
    Left,

    /// <summary>At the right jamb.</summary>
    Right,
}
