using System.Globalization;
using System.Text;

namespace Hoopwright.Sheets.Ics;

/// <summary>Lines of an iCalendar file: escaped, folded, ended as RFC 5545 (IETF, 2009) says.</summary>
internal static class IcsText
{
    // RFC 5545, 3.1: no line is longer than 75 octets, its end not counted.
    private const int MostOctets = 75;

    /// <summary>Begins a calendar: RFC 5545, 3.4 and 3.7.</summary>
    /// <param name="file">The file so far.</param>
    /// <param name="what">What the calendar is, for the mark of its maker.</param>
    internal static void Begin(StringBuilder file, string what)
    {
        Line(file, "BEGIN", "VCALENDAR");
        Line(file, "VERSION", "2.0");
        Line(file, "PRODID", $"-//hoopwright//{what}//EN");
        Line(file, "CALSCALE", "GREGORIAN");
    }

    /// <summary>Adds a line.</summary>
    /// <param name="file">The file so far.</param>
    /// <param name="name">The property, with its parameters.</param>
    /// <param name="value">Its value, escaped where it is a text.</param>
    internal static void Line(StringBuilder file, string name, string value)
    {
        int octets = 0;
        foreach (Rune rune in $"{name}:{value}".EnumerateRunes())
        {
            // What goes on in the next line begins there with a space, which is one of its octets.
            if (octets + rune.Utf8SequenceLength > MostOctets)
            {
                file.Append("\r\n ");
                octets = 1;
            }
            file.Append(rune);
            octets += rune.Utf8SequenceLength;
        }
        file.Append("\r\n");
    }

    /// <summary>A text with what has a meaning of its own escaped: RFC 5545, 3.3.11.</summary>
    internal static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (char c in text.ReplaceLineEndings("\n"))
        {
            if (c is '\\' or ';' or ',') escaped.Append('\\').Append(c);
            else if (c == '\n') escaped.Append("\\n");
            // Other control characters have no place in a text.
            else if (c == '\t' || !char.IsControl(c)) escaped.Append(c);
        }
        return escaped.ToString();
    }

    /// <summary>The name of a tunnel as part of the names of its events.</summary>
    internal static string Plain(string name)
    {
        string plain = string.Concat(name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
        return plain.Length == 0 ? "tunnel" : plain;
    }

    /// <summary>A time by the clock of whoever reads it: RFC 5545, 3.3.5, form 1.</summary>
    internal static string Floating(DateTime time) => time.ToString("yyyyMMdd'T'HHmmss", CultureInfo.InvariantCulture);

    /// <summary>An instant: RFC 5545, 3.3.5, form 2.</summary>
    internal static string Universal(DateTimeOffset time) => time.UtcDateTime.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);

    /// <summary>The lines of a file, unfolded.</summary>
    internal static IEnumerable<string> Unfolded(string file)
    {
        string? line = null;
        foreach (string part in file.ReplaceLineEndings("\n").Split('\n'))
        {
            if (part.Length > 0 && part[0] is ' ' or '\t' && line is not null)
            {
                line += part[1..];
                continue;
            }
            if (line is not null) yield return line;
            line = part;
        }
        if (line is not null) yield return line;
    }
}
