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

    /// <summary>Lines of at most that width. A word too long for a line is broken, so nothing runs over.</summary>
    public static ImmutableArray<string> Lines(string text, double widthMm, double emMm, LetterWeight weight)
    {
        Typeface face = Typeface.Of(weight);
        var lines = ImmutableArray.CreateBuilder<string>();
        foreach (string paragraph in TapeFractions.Set(text.ReplaceLineEndings("\n")).Split('\n'))
        {
            string line = "";
            foreach (string word in Words(paragraph))
            {
                string longer = line.Length == 0 ? word : line + " " + word;
                if (face.WidthMm(longer, emMm) <= widthMm)
                {
                    line = longer;
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
            }
            lines.Add(line);
        }
        return lines.ToImmutable();
    }
}
