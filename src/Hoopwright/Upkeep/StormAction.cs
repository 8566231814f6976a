namespace Hoopwright.Upkeep;

/// <summary>What a storm calls for.</summary>
public enum StormAction
{
    /// <summary>Shut doors, sides and vents.</summary>
    Close,

    /// <summary>Go over wire, ropes and latches.</summary>
    Tighten,

    /// <summary>Nobody in it or near it.</summary>
    StayOut,

    /// <summary>Past what the tunnel stands.</summary>
    WindLimit,

    /// <summary>Clear the roof of snow.</summary>
    ClearSnow,

    /// <summary>More snow than the tunnel stands.</summary>
    SnowLimit,
}
