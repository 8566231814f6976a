using System.Text;
using System.Text.RegularExpressions;

namespace Hoopwright.Sheets.Fonts;

/// <summary>Sets tape fractions as real slashed fractions: 6-11/16 becomes 6¹¹⁄₁₆, still as plain text.</summary>
public static partial class TapeFractions
{
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹", Lowered = "₀₁₂₃₄₅₆₇₈₉";

    /// <summary>
    /// The text with each fraction of halves to sixty-fourths set small about a slash, a hyphen or blank before it
    /// closed up after a whole number. Anything else, such as a scale or a date, stays as it is.
    /// </summary>
    public static string Set(string text) => !text.Contains('/', StringComparison.Ordinal) ? text : Fraction().Replace(text, static match =>
    {
        int top = int.Parse(match.Groups["top"].ValueSpan, System.Globalization.CultureInfo.InvariantCulture);
        int bottom = int.Parse(match.Groups["bottom"].ValueSpan, System.Globalization.CultureInfo.InvariantCulture);
        if (top >= bottom)
            return match.Value;
        StringBuilder set = new();
        if (match.Groups["whole"].Success)
            set.Append(match.Groups["whole"].ValueSpan).Append('\u200A');
        foreach (char figure in match.Groups["top"].ValueSpan)
            set.Append(Raised[figure - '0']);
        set.Append('\u2044');
        foreach (char figure in match.Groups["bottom"].ValueSpan)
            set.Append(Lowered[figure - '0']);
        return set.ToString();
    });

    /// <summary>The text as it is typed: 6¹¹⁄₁₆ becomes 6-11/16, for files whose readers may lack the small figures.</summary>
    public static string Plain(string text)
    {
        StringBuilder plain = new(text.Length);
        foreach (char character in text)
        {
            int raised = Raised.IndexOf(character, StringComparison.Ordinal), lowered = Lowered.IndexOf(character, StringComparison.Ordinal);
            plain.Append(raised >= 0 ? (char)('0' + raised) : lowered >= 0 ? (char)('0' + lowered) : character switch { '\u200A' => '-', '\u2044' => '/', _ => character });
        }
        return plain.ToString();
    }

    [GeneratedRegex(@"(?<![\d/.])(?:(?<whole>\d+)[- ])?(?<top>\d{1,2})/(?<bottom>2|4|8|16|32|64)(?![\d/])", RegexOptions.CultureInvariant)]
    private static partial Regex Fraction();
}
