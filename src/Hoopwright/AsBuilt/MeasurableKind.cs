namespace Hoopwright.AsBuilt;

/// <summary>What kind of thing is measured.</summary>
public enum MeasurableKind
{
    /// <summary>Length over the outside of a bow.</summary>
    BowLength,

    /// <summary>Width at the ground at a bow.</summary>
    BowSpan,

    /// <summary>Height of a bow.</summary>
    BowHeight,

    /// <summary>Where a bow stands along the string.</summary>
    BowMark,

    /// <summary>A side of the string rectangle.</summary>
    SquareSide,

    /// <summary>A diagonal of the string rectangle.</summary>
    Diagonal,

    /// <summary>Depth of a post in the ground.</summary>
    PostDepth,

    /// <summary>Clear height at an end-wall post.</summary>
    PostHeight,

    /// <summary>Middle of a post or door from the left string.</summary>
    Place,

    /// <summary>Width of a door.</summary>
    DoorWidth,

    /// <summary>Height of a door.</summary>
    DoorHeight,

    /// <summary>Depth of a hole.</summary>
    HoleDepth,

    /// <summary>Diameter of a hole.</summary>
    HoleDiameter,

    /// <summary>Height of a hip board.</summary>
    HipHeight,
}
