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

    /// <summary>A drawn line leaves the paper.</summary>
    LineOffPaper,
}
