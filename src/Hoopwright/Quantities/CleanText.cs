using System.Globalization;
using System.Text;

namespace Hoopwright.Quantities;

/// <summary>Brings the many ways keyboards write one thing to a single one, and refuses what could be misread.</summary>
internal static class CleanText
{
    /// <summary>The longest text that is looked at, in characters.</summary>
    internal const int LongestText = 100;

    /// <summary>
    /// The text with plain spaces, quotes, hyphens and slashes, fraction characters spelled out, and ends trimmed; or what is
    /// wrong with it.
    /// </summary>
    internal static (string? Clean, string? Problem, string? Accepted) Of(string? text, string examples)
    {
        if (string.IsNullOrWhiteSpace(text)) return (null, "There is nothing to read.", examples);
        if (text.Length > LongestText) return (null, "The text is too long to be a quantity.", examples);

        var clean = new StringBuilder(text.Length + 8);
        foreach (char c in text)
            if (!TryAppend(clean, c))
                return (null, "There is a character that cannot be shown.", examples);
        clean.Replace("''", "\"");
        string plain = clean.ToString().Trim();
        if (plain.Length == 0) return (null, "There is nothing to read.", examples);
        return plain.Contains(',', StringComparison.Ordinal) ? CommaFault(plain, examples) : (plain, null, null);
    }

    private static bool TryAppend(StringBuilder clean, char c)
    {
        string? plain = c switch
        {
            '\t' or '\u00A0' or '\u2007' or '\u2008' or '\u2009' or '\u200A' or '\u202F' => " ",
            '\u2032' or '\u2019' or '\u2018' or '\u00B4' or '`' => "'",
            '\u2033' or '\u201D' or '\u201C' or '\u201F' => "\"",
            '\u2212' or '\u2010' or '\u2011' or '\u2012' or '\u2013' => "-",
            '\u2044' or '\u2215' => "/",
            '\u2236' => ":",
            '\u22C5' or '\u2219' => "·",
            '\u00BA' => "°",
            '\u2103' => "°C",
            '\u2109' => "°F",
            '\u00B5' => "μ",
            '½' => "1/2",
            '¼' => "1/4",
            '¾' => "3/4",
            '⅛' => "1/8",
            '⅜' => "3/8",
            '⅝' => "5/8",
            '⅞' => "7/8",
            _ => null,
        };
        if (plain is null)
        {
            if (char.IsControl(c) || char.IsSurrogate(c) || char.GetUnicodeCategory(c) == UnicodeCategory.Format) return false;
            clean.Append(c);
            return true;
        }

        bool fractionAfterDigit = char.IsAsciiDigit(plain[0]) && clean.Length > 0 && char.IsAsciiDigit(clean[^1]);
        clean.Append(fractionAfterDigit ? " " : "").Append(plain);
        return true;
    }

    /// <summary>A comma is never guessed at: 1,200 is twelve hundred to one reader and a little over one to another.</summary>
    private static (string? Clean, string? Problem, string? Accepted) CommaFault(string plain, string examples)
    {
        const string problem = "A comma can mean thousands or a decimal point.";
        int end = 0;
        while (end < plain.Length && (char.IsAsciiDigit(plain[end]) || plain[end] is ',' or '.' or '-' or '+' or '$' or '€' or '£' or ' '))
            end++;
        string number = plain[..end].Trim(), unit = plain[end..];
        int comma = number.IndexOf(',', StringComparison.Ordinal), lastComma = number.LastIndexOf(',');
        int point = number.LastIndexOf('.');
        string between = end > 0 && end < plain.Length && plain[end - 1] == ' ' ? " " : "";
        if (comma < 0 || number.AsSpan(comma).Contains(' ')) return (null, problem, examples);

        string withoutCommas = number.Replace(",", "", StringComparison.Ordinal) + between + unit;
        bool pointThenComma = point >= 0 && point < comma && comma == lastComma;
        if (pointThenComma)
            return (null, problem, number.Replace(".", "", StringComparison.Ordinal).Replace(',', '.') + between + unit);
        bool inThrees = point < 0 ? (number.Length - lastComma) == 4 : point - lastComma == 4;
        if (comma == lastComma && point < 0)
        {
            string withPoint = number.Replace(',', '.') + between + unit;
            return (null, problem, inThrees ? $"{withoutCommas}; or {withPoint} if the comma stood for a decimal point" : withPoint);
        }

        return (null, problem, inThrees ? withoutCommas : examples);
    }
}
