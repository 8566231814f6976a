namespace Hoopwright.Plans;

/// <summary>How a leg is held at the ground.</summary>
public enum LegBase
{
    /// <summary>Held in place, free to lean.</summary>
    Pinned,

    /// <summary>Held in place and upright.</summary>
    Fixed,

    /// <summary>Held by the post in its soil, as stiffly as post and soil are.</summary>
    Spring,
}
