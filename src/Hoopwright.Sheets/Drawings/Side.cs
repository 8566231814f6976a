namespace Hoopwright.Sheets.Drawings;

/// <summary>A side of a figure, where rows of dimensions go.</summary>
public enum Side
{
    /// <summary>Over it.</summary>
    Above,

    /// <summary>Under it.</summary>
    Below,

    /// <summary>To the left.</summary>
    Left,

    /// <summary>To the right.</summary>
    Right,
}
