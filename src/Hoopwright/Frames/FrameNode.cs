namespace Hoopwright.Frames;

/// <summary>A point where members meet.</summary>
/// <param name="Id">Its name in the model.</param>
/// <param name="PlaceM">Where it is, m.</param>
internal sealed record FrameNode(string Id, Vector3 PlaceM)
{
    /// <summary>Freedoms held by a support.</summary>
    public Freedoms Held { get; init; }

    /// <summary>Stiffness of springs to the ground along x, y, z in N/m and about them in N·m/rad; null for none.</summary>
    public SixValues? Springs { get; init; }
}
