namespace Hoopwright.Inside.Air;

/// <summary>How far everything that opens stands open.</summary>
public enum OpenWide
{
    /// <summary>All is shut; air passes through cracks only.</summary>
    Shut,

    /// <summary>Sides half up or half down, one leaf of each pair of doors, vents half open.</summary>
    Half,

    /// <summary>All that opens is wide open.</summary>
    Full,
}
