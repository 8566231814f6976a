namespace Hoopwright.Frames;

/// <summary>How a solve of a <see cref="PlanarBow"/> ended.</summary>
internal enum PlanarOutcome
{
    /// <summary>In balance.</summary>
    Balanced,

    /// <summary>It buckles before it carries the load.</summary>
    Buckled,

    /// <summary>Its movements do not settle.</summary>
    Unsettled,
}
