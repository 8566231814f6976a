namespace Hoopwright.Plans;

/// <summary>The kind of a door.</summary>
public enum DoorKind
{
    /// <summary>One leaf hinged at its side.</summary>
    Side,

    /// <summary>Two leaves hinged at the sides, meeting in the middle.</summary>
    Double,

    /// <summary>One leaf that slides along a track over the opening.</summary>
    Sliding,

    /// <summary>A door bought whole that goes up overhead.</summary>
    Overhead,
}
