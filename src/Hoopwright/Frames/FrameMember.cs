namespace Hoopwright.Frames;

/// <summary>A straight member between two nodes.</summary>
internal sealed record FrameMember
{
    /// <summary>Its name in the model.</summary>
    public required string Id { get; init; }

    /// <summary>Index of the node it runs from.</summary>
    public required int From { get; init; }

    /// <summary>Index of the node it runs to.</summary>
    public required int To { get; init; }

    /// <summary>Its section.</summary>
    public required FrameSection Section { get; init; }

    /// <summary>Its material.</summary>
    public required FrameMaterial Material { get; init; }

    /// <summary>Turn of local y and z about local x, rad. At 0 local z lies in the vertical plane (global x for a vertical member).</summary>
    public double RollRad { get; init; }

    /// <summary>Local freedoms let go at its start.</summary>
    public Freedoms ReleaseFrom { get; init; }

    /// <summary>Local freedoms let go at its end.</summary>
    public Freedoms ReleaseTo { get; init; }

    /// <summary>True when it slackens instead of taking compression.</summary>
    public bool TensionOnly { get; init; }

    /// <summary>Rigid arm from the node it runs from to its start, global, m.</summary>
    public Vector3 OffsetFromM { get; init; }

    /// <summary>Rigid arm from the node it runs to, to its end, global, m.</summary>
    public Vector3 OffsetToM { get; init; }
}
