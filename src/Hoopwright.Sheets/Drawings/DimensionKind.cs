namespace Hoopwright.Sheets.Drawings;

/// <summary>How a dimension measures.</summary>
public enum DimensionKind
{
    /// <summary>The distance across the paper between two points.</summary>
    Across,

    /// <summary>The distance up the paper between two points.</summary>
    Up,

    /// <summary>The straight distance between two points.</summary>
    Aligned,

    /// <summary>A running mark: how far across a point lies from where the tape begins.</summary>
    MarkAcross,

    /// <summary>A running mark: how far up a point lies from where the tape begins.</summary>
    MarkUp,
}
