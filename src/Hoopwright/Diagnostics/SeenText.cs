using System.Globalization;

namespace Hoopwright.Diagnostics;

/// <summary>How a text out of a file is shown in a diagnostic.</summary>
internal static class SeenText
{
    private const int LongestSeen = 60;

    /// <summary>
    /// A text as a diagnostic shows it, whatever was in the file: cut short when long, and without control characters, which
    /// could do anything to a screen.
    /// </summary>
    internal static string Shorten(string text)
    {
        string shown = text.Length <= LongestSeen
            ? text
            : string.Concat(text.AsSpan(0, char.IsHighSurrogate(text[LongestSeen - 1]) ? LongestSeen - 1 : LongestSeen), "…");
        return shown.Any(IsUnseen) ? string.Concat(shown.Select(c => IsUnseen(c) ? '\uFFFD' : c)) : shown;
    }

    // Control and format characters (the latter turn the direction of writing), and line ends that are no control characters.
    private static bool IsUnseen(char c) =>
        char.GetUnicodeCategory(c) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;
}
