namespace Hoopwright.Sheets.Fonts;

/// <summary>How heavy the letters are.</summary>
public enum LetterWeight
{
    /// <summary>For text and dimensions.</summary>
    Regular,

    /// <summary>For headings and what must not be missed.</summary>
    Bold,
}
