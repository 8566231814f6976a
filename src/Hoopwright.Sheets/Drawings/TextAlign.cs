namespace Hoopwright.Sheets.Drawings;

/// <summary>Where a text lies about its anchor.</summary>
public enum TextAlign
{
    /// <summary>It begins there.</summary>
    Start,

    /// <summary>Its middle is there.</summary>
    Middle,

    /// <summary>It ends there.</summary>
    End,
}
