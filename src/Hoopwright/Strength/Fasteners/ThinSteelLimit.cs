namespace Hoopwright.Strength.Fasteners;

/// <summary>How a screw in thin steel gives way.</summary>
internal enum ThinSteelLimit
{
    /// <summary>The thread tears out of the part behind.</summary>
    PullOut,

    /// <summary>The part in front tears over the head.</summary>
    PullOver,

    /// <summary>The screw tilts, or the steel crushes beside it.</summary>
    Bearing,

    /// <summary>The screw itself breaks.</summary>
    Screw,
}
