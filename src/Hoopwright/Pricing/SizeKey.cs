using System.Globalization;
using System.Text;

namespace Hoopwright.Pricing;

/// <summary>Sizes are compared as people mean them: <c>1.9 × 0.083</c> is <c>1.900 x 0.083 in</c>.</summary>
internal static class SizeKey
{
    /// <summary>True when two sizes say the same.</summary>
    public static bool Same(string one, string other) => string.Equals(Of(one), Of(other), StringComparison.Ordinal);

    /// <summary>Lower case, no spaces, × as x, no trailing "in", no zeros that a number does not need.</summary>
    public static string Of(string size)
    {
        var key = new StringBuilder(size.Length);
        for (int at = 0; at < size.Length;)
        {
            char c = size[at];
            int end = at;
            while (end < size.Length && (char.IsAsciiDigit(size[end]) || size[end] == '.')) end++;
            if (end > at && decimal.TryParse(size.AsSpan(at, end - at), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number))
                key.Append(number.ToString("0.##########", CultureInfo.InvariantCulture));
            else if (c is '×')
                key.Append('x');
            else if (c is not (' ' or '\t' or '"' or '″' or '”'))
                key.Append(char.ToLowerInvariant(c));
            at = Math.Max(end, at + 1);
        }
        if (key.Length > 2 && key[^2] == 'i' && key[^1] == 'n') key.Length -= 2;
        return key.ToString();
    }
}
