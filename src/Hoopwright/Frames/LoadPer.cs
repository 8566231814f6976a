namespace Hoopwright.Frames;

/// <summary>What a member load is counted along.</summary>
internal enum LoadPer
{
    /// <summary>The member's length.</summary>
    Length,

    /// <summary>The member's length as seen along the load: snow on the plan, wind on the elevation.</summary>
    Projection,
}
