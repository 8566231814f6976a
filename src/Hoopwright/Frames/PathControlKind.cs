namespace Hoopwright.Frames;

/// <summary>What a large-displacement run steps.</summary>
internal enum PathControlKind
{
    /// <summary>The load, up to the whole.</summary>
    Load,

    /// <summary>One displacement, with the load that it takes.</summary>
    Displacement,

    /// <summary>A length along the path of loads and displacements, which passes over limits in both.</summary>
    Arc,
}
