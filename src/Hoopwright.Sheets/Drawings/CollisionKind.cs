namespace Hoopwright.Sheets.Drawings;

/// <summary>How a drawing fails to be readable.</summary>
public enum CollisionKind
{
    /// <summary>Two texts share paper.</summary>
    TextOnText,

    /// <summary>A text leaves the paper.</summary>
    TextOffPaper,

    /// <summary>A visible or cut edge runs through a text.</summary>
    TextOnOutline,

    /// <summary>A thin line runs through a text that does not clear the paper behind it.</summary>
    TextOnLine,

    /// <summary>The arrowheads of two leaders share paper.</summary>
    ArrowOnArrow,

    /// <summary>The arrowhead of a leader lies on a text.</summary>
    ArrowOnText,

    /// <summary>A drawn line leaves the paper.</summary>
    LineOffPaper,
}
