using System.Collections.Frozen;
using System.Collections.Immutable;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Pages;

/// <summary>Breaks text into lines that fit a width.</summary>
internal static class TextSetter
{
    private static readonly FrozenSet<string> Units = FrozenSet.Create(StringComparer.Ordinal,
        "mm", "m", "m²", "m³", "L", "kg", "g", "N", "kN", "N/m", "kN/m", "N·m", "kN·m", "Pa", "kPa", "MPa", "kg/m", "kg/m²", "kg/m³", "m/s", "km/h", "°C", "K", "%", "h", "min", "W", "kW", "kWh",
        "in", "ft", "ft²", "ft³", "lb", "lb/ft", "lb·ft", "psf", "psi", "ksi", "mph", "mil", "ga", "°F");

    /// <summary>What a line is never broken within: words, words held together, and a number with the unit that follows it.</summary>
    public static IEnumerable<string> Words(string line)
    {
        string[] words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (int at = 0; at < words.Length; at++)
        {
            string word = words[at];
            if (at + 1 < words.Length && IsNumber(word) && Units.Contains(words[at + 1].TrimEnd(',', ';', '.', ':', ')'))) word += " " + words[++at];
            yield return word.Replace(Table.Joiner, ' ');
        }
    }

    // A number ends with a digit or, on a tape of inches, with a fraction; names of parts do so too, but no unit follows them.
    private static bool IsNumber(string word) => char.IsNumber(word[^1]) && !char.IsLetter(word[0]);

    /// <summary>The text, or as much of its start as the width holds, with an ellipsis.</summary>
    public static string Shortened(string text, double widthMm, double emMm, LetterWeight weight)
    {
        var face = Typeface.Of(weight);
        text = Typeface.Shown(text);
        if (face.WidthMm(text, emMm) <= widthMm) return text;
        int keep = 0, tooMany = text.Length;
        while (tooMany - keep > 1)
        {
            int half = (keep + tooMany) / 2;
            if (face.WidthMm(text[..half].TrimEnd() + "…", emMm) <= widthMm) keep = half;
            else tooMany = half;
        }
        return text[..keep].TrimEnd() + "…";
    }

    /// <summary>At most so many lines of that width; the last ends with an ellipsis where there would be more.</summary>
    public static ImmutableArray<string> Lines(string text, double widthMm, double emMm, LetterWeight weight, int most)
    {
        ImmutableArray<string> all = Lines(text, widthMm, emMm, weight);
        return all.Length <= most ? all : [.. all[..(most - 1)], Shortened(all[most - 1] + " " + all[most], widthMm, emMm, weight)];
    }

    /// <summary>Lines of at most that width. A word too long for a line is broken, so nothing runs over. What the lettering lacks is replaced.</summary>
    public static ImmutableArray<string> Lines(string text, double widthMm, double emMm, LetterWeight weight)
    {
        Typeface face = Typeface.Of(weight);
        var lines = ImmutableArray.CreateBuilder<string>();
        foreach (string paragraph in TapeFractions.Set(string.Join('\n', text.ReplaceLineEndings("\n").Split('\n').Select(Typeface.Shown))).Split('\n'))
        {
            // A line that fits is left as it is; blanks at its ends or in a row go.
            string whole = paragraph.Replace(Table.Joiner, ' ');
            if (face.WidthMm(whole, emMm) <= widthMm && !whole.StartsWith(' ') && !whole.EndsWith(' ') && !whole.Contains("  ", StringComparison.Ordinal))
            {
                lines.Add(whole);
                continue;
            }
            string line = "";
            int units = 0;
            foreach (string word in Words(paragraph))
            {
                // What is measured of a line is kept, so that it is not measured anew with each of its words.
                int longer = line.Length == 0 ? face.Units(word) : units + face.Units(" ") + face.Units(word);
                if (face.Face.Ems(longer) * emMm <= widthMm)
                {
                    line = line.Length == 0 ? word : line + " " + word;
                    units = longer;
                    continue;
                }
                if (line.Length > 0) lines.Add(line);
                line = word;
                while (face.WidthMm(line, emMm) > widthMm && line.Length > 1)
                {
                    int keep = Math.Clamp(face.Fitting(line, emMm, widthMm), char.IsHighSurrogate(line[0]) && line.Length > 2 ? 2 : 1, line.Length - 1);
                    lines.Add(line[..keep]);
                    line = line[keep..];
                }
                units = face.Units(line);
            }
            lines.Add(line);
        }
        return lines.ToImmutable();
    }
}
