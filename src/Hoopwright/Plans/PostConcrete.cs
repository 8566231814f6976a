namespace Hoopwright.Plans;

/// <summary>Which ground posts stand in concrete.</summary>
public enum PostConcrete
{
    /// <summary>None; all are driven.</summary>
    None,

    /// <summary>The four corner posts.</summary>
    Corners,

    /// <summary>The four corner posts and the middle post of each side.</summary>
    CornersAndMiddle,

    /// <summary>Every one.</summary>
    All,
}
