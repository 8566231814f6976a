using System.Globalization;
using System.Text;
using Hoopwright.Sheets.Fonts;

namespace Hoopwright.Sheets.Dxf;

/// <summary>Words as a DXF file takes them.</summary>
internal static class DxfText
{
    /// <summary>
    /// A text of one line. Fractions stand as typed, and × as x, since the plainest of fonts lack them. What a reader would take for
    /// a code of its own (two percent signs, a backslash before U+ or M+) is written so that it shows and does nothing; control and
    /// direction characters become blanks.
    /// </summary>
    public static string Of(string words)
    {
        if (Ascii.IsValid(words) && !words.AsSpan().ContainsAny('%', '\\') && !words.Any(char.IsControl)) return words;
        string plain = TapeFractions.Plain(words).Replace(@"\U+", "\uFF3CU+", StringComparison.OrdinalIgnoreCase).Replace(@"\M+", "\uFF3CM+", StringComparison.OrdinalIgnoreCase);
        bool hasCodes = plain.Contains("%%", StringComparison.Ordinal);
        StringBuilder text = new(plain.Length);
        foreach (Rune rune in plain.EnumerateRunes())
        {
            UnicodeCategory kind = Rune.GetUnicodeCategory(rune);
            if (kind is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator) text.Append(' ');
            else if (rune.Value == '%' && hasCodes) text.Append("%%%");
            else text.Append(rune.Value switch { '×' => "x", '–' or '−' => "-", '′' => "'", '″' => "\"", Tables.Table.Joiner => " ", _ => rune.ToString() });
        }
        return text.ToString();
    }

    /// <summary>A name of a layer: capitals, digits and hyphens.</summary>
    public static string Name(string words) => Tables.FileNames.Of(words).ToUpperInvariant().Replace('.', '-');
}
