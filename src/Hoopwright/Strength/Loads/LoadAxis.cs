namespace Hoopwright.Strength.Loads;

/// <summary>A direction in the tunnel.</summary>
public enum LoadAxis
{
    /// <summary>Across, from left to right (x).</summary>
    Across,

    /// <summary>Along, from front to back (y).</summary>
    Along,

    /// <summary>Up (z).</summary>
    Up,
}
