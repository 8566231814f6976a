namespace Hoopwright.Frames;

/// <summary>How a large-displacement run steps along its path. The load grows from nothing in proportion.</summary>
internal sealed record PathControl
{
    /// <summary>What is stepped.</summary>
    public PathControlKind Kind { get; init; }

    /// <summary>Steps to take.</summary>
    public int Steps { get; init; } = 10;

    /// <summary>For displacement steps: index of the node that is led.</summary>
    public int Node { get; init; }

    /// <summary>For displacement steps: which of its six freedoms, 0 to 5.</summary>
    public int Freedom { get; init; }

    /// <summary>For displacement steps: where it is led to, m or rad. For arc steps: the length of one step, m.</summary>
    public double Reach { get; init; }
}
