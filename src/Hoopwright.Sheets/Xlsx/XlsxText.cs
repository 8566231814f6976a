using System.Text.RegularExpressions;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Xlsx;

/// <summary>Words as a cell takes them.</summary>
internal static partial class XlsxText
{
    // A cell holds no more.
    private const int Longest = 32_767;

    /// <summary>
    /// Words without what XML has no place for, no longer than a cell holds; what a reader would take for the number of a character
    /// (_x0041_, ISO/IEC 29500-1, 22.9.2.19) is written so that it shows as it is.
    /// </summary>
    public static string Of(string words)
    {
        string clean = Numbered().Replace(XmlText.Clean(words).Replace(Table.Joiner, ' '), "_x005F$0");
        if (clean.Length <= Longest) return clean;
        int keep = Longest - 1;
        return string.Concat(clean.AsSpan(0, char.IsHighSurrogate(clean[keep - 1]) ? keep - 1 : keep), "…");
    }

    [GeneratedRegex("_x[0-9A-Fa-f]{4}_", RegexOptions.CultureInvariant)]
    private static partial Regex Numbered();
}
