namespace Hoopwright.Plans;

/// <summary>What a tube is made of.</summary>
public enum TubeMaterial
{
    /// <summary>Galvanized steel.</summary>
    GalvanizedSteel,

    /// <summary>Plastic pipe. Low strength: common practice is to clear every snow or take the cover off.</summary>
    Pvc,
}
