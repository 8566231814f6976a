using System.Text;

namespace Hoopwright.Sheets.Tables;

/// <summary>Words as XML and HTML files take them.</summary>
internal static class XmlText
{
    /// <summary>The words with a blank for each control and a box for each half or forbidden character (XML 1.0, 2.2), so that no file is broken by them.</summary>
    public static string Clean(string words)
    {
        StringBuilder clean = new(words.Length);
        foreach (Rune rune in words.EnumerateRunes())
        {
            if (rune.Value == '\n') clean.Append('\n');
            else if (Rune.IsControl(rune)) clean.Append(' ');
            else clean.Append(rune.Value is 0xFFFE or 0xFFFF ? "\uFFFD" : rune.ToString());
        }
        return clean.ToString();
    }

    /// <summary>The same with what would open a tag or end a value spelled out; values stand between double quotes.</summary>
    public static string Escaped(string words) => Clean(words).Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal).Replace("\"", "&quot;", StringComparison.Ordinal);
}
