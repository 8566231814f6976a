namespace Hoopwright.Plans;

/// <summary>How post tops run along the length.</summary>
public enum PostTopLine
{
    /// <summary>All tops to one level line; posts stick out more where the ground falls.</summary>
    Level,

    /// <summary>Tops keep one height over the ground along the length, and are level from side to side.</summary>
    FollowGround,
}
