namespace Hoopwright.Frames;

/// <summary>The six ways a node can move, as a set.</summary>
[Flags]
internal enum Freedoms
{
    /// <summary>None.</summary>
    None = 0,

    /// <summary>Along x.</summary>
    Ux = 1,

    /// <summary>Along y.</summary>
    Uy = 2,

    /// <summary>Along z.</summary>
    Uz = 4,

    /// <summary>Turning about x.</summary>
    Rx = 8,

    /// <summary>Turning about y.</summary>
    Ry = 16,

    /// <summary>Turning about z.</summary>
    Rz = 32,

    /// <summary>The three shifts: a hinge in all directions holds these.</summary>
    Shifts = Ux | Uy | Uz,

    /// <summary>The three turns.</summary>
    Turns = Rx | Ry | Rz,

    /// <summary>All six: built in.</summary>
    All = Shifts | Turns,
}
