namespace Hoopwright.Frames;

/// <summary>How a frame is to be solved.</summary>
internal sealed record FrameAnalysis
{
    /// <summary>The kind.</summary>
    public FrameAnalysisKind Kind { get; init; }

    /// <summary>How many buckling modes are wanted, lowest first.</summary>
    public int Modes { get; init; } = 1;

    /// <summary>True when the model only moves in the x–z plane.</summary>
    public bool Planar { get; init; }

    /// <summary>Out-of-balance force allowed where iterations end, as a share of the greatest force in the model.</summary>
    public double Tolerance { get; init; } = 1e-9;

    /// <summary>For large displacements: how the path is followed.</summary>
    public PathControl Path { get; init; } = new();
}
