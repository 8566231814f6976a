namespace Hoopwright.Strength.Soil;

/// <summary>What holds a post at the ground.</summary>
internal enum PostHold
{
    /// <summary>Soil alone.</summary>
    Free,

    /// <summary>A rigid floor or pavement that the post cannot push aside. Bare soil, gravel and a baseboard are not one.</summary>
    RigidFloor,
}
