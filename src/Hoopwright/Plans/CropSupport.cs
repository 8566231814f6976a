namespace Hoopwright.Plans;

/// <summary>What carries crops that are hung up.</summary>
public enum CropSupport
{
    /// <summary>The bows, over the width of the tunnel.</summary>
    Bows,

    /// <summary>The crosswise ties.</summary>
    Ties,
}
