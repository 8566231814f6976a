namespace Hoopwright.Plans;

/// <summary>Species groups whose design values are held.</summary>
public enum WoodSpecies
{
    /// <summary>Southern Pine.</summary>
    SouthernPine,

    /// <summary>Douglas Fir-Larch.</summary>
    DouglasFirLarch,

    /// <summary>Hem-Fir.</summary>
    HemFir,

    /// <summary>Spruce-Pine-Fir.</summary>
    SprucePineFir,
}
