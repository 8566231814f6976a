namespace Hoopwright.Strength;

/// <summary>How snow lies, or how the tunnel stands in the wind, when a storm is asked after.</summary>
public enum StormState
{
    /// <summary>Snow on the whole roof alike.</summary>
    SnowEven,

    /// <summary>Snow on one side only, or deeper there.</summary>
    SnowOneSide,

    /// <summary>Snow on the roof, and the gap to the next tunnel filled.</summary>
    SnowBetween,

    /// <summary>Wind, with every door and side shut.</summary>
    Shut,

    /// <summary>Wind, with doors or sides open, whichever is worst.</summary>
    Open,

    /// <summary>Wind on the bows without any film.</summary>
    BareFrame,
}
