using System.Collections.Immutable;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Pages;

/// <summary>Breaks text into lines that fit a width.</summary>
internal static class TextSetter
{
    /// <summary>What a line is never broken within: words, and words held together.</summary>
    public static IEnumerable<string> Words(string line) =>
        line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => word.Replace(Table.Joiner, ' '));

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
