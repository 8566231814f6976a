namespace Hoopwright.Strength.Wood;

/// <summary>What ends the strength of a piece of wood.</summary>
internal enum WoodLimitState
{
    /// <summary>Compression along the grain, buckling included.</summary>
    Compression,

    /// <summary>Compression with bending.</summary>
    CompressionAndBending,

    /// <summary>Turning sideways under compression and bending on edge.</summary>
    SidewaysBuckling,

    /// <summary>Bending.</summary>
    Bending,

    /// <summary>Tension with bending.</summary>
    TensionAndBending,

    /// <summary>Shear along the grain.</summary>
    Shear,

    /// <summary>Bearing across the grain.</summary>
    Bearing,

    /// <summary>Slenderer than the standard allows.</summary>
    TooSlender,
}
