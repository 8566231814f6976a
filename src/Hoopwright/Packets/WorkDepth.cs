namespace Hoopwright.Packets;

/// <summary>How far a plan is worked out.</summary>
public enum WorkDepth
{
    /// <summary>The exact tunnel and nothing that rests on it.</summary>
    Layout,

    /// <summary>Cover, takeoff, cuts and orders too, without what the tunnel stands, which takes most of the time.</summary>
    Orders,

    /// <summary>Everything.</summary>
    Whole,
}
