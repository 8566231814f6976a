using System.Buffers;
using System.Text;

namespace Hoopwright.Sheets.Tables;

/// <summary>Words as XML and HTML files take them.</summary>
internal static class XmlText
{
    // Controls but the end of a line, halves of characters, and what is no character: few texts have any.
    private static readonly SearchValues<char> Odd = SearchValues.Create(
        [.. Between(0, '\n' - 1), .. Between('\n' + 1, 0x1F), .. Between(0x7F, 0x9F), .. Between(0xD800, 0xDFFF), .. Between(0xFFFE, 0xFFFF)]);

    /// <summary>The words with a blank for each control and a box for each half or forbidden character (XML 1.0, 2.2), so that no file is broken by them.</summary>
    public static string Clean(string words)
    {
        if (!words.AsSpan().ContainsAny(Odd)) return words;
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
    public static string Escaped(string words) => !words.AsSpan().ContainsAny('&', '<', '>') && !words.Contains('"', StringComparison.Ordinal) ? Clean(words) : Clean(words).Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal).Replace("\"", "&quot;", StringComparison.Ordinal);

    private static IEnumerable<char> Between(int first, int last) => Enumerable.Range(first, last - first + 1).Select(each => (char)each);
}
