using System.Globalization;
using System.Text;

namespace Hoopwright.Sheets.Fonts;

/// <summary>
/// The lettering of every drawing and document, with its measures. The figures all have one width and there is no
/// kerning, so a text is exactly as wide as its characters' advances added up, in PDF and in SVG alike.
/// </summary>
public sealed class Typeface
{
    private static readonly Typeface RegularFace = new(LetterWeight.Regular), BoldFace = new(LetterWeight.Bold);

    private Typeface(LetterWeight weight) => Face = new TrueTypeFace(FontFiles.TrueType(weight));

    /// <summary>Glyphs and measures of the file.</summary>
    internal TrueTypeFace Face { get; }

    /// <summary>Height of a capital letter, in ems.</summary>
    public const double CapitalEm = 0.668;

    /// <summary>How far the tallest letter rises above the baseline, in ems.</summary>
    public const double RiseEm = 0.71;

    /// <summary>How far the lowest letter hangs below the baseline, in ems.</summary>
    public const double FallEm = 0.20;

    /// <summary>What stands for a character that the faces lack.</summary>
    public const char Replacement = '☐';

    /// <summary>The face of that weight.</summary>
    public static Typeface Of(LetterWeight weight) => weight switch
    {
        LetterWeight.Regular => RegularFace,
        LetterWeight.Bold => BoldFace,
    };

    /// <summary>The type size, in millimetres, at which capitals are so many millimetres high.</summary>
    public static double EmForCapitalsMm(double capitalMm) => capitalMm / CapitalEm;

    /// <summary>Width of a text, in millimetres, at a type size in millimetres. A character that the face lacks counts as its box.</summary>
    public double WidthMm(string text, double emMm) => Face.Ems(Units(text)) * emMm;

    /// <summary>Width of a text in units of the face, which add up without a rest.</summary>
    internal int Units(string text)
    {
        int units = 0;
        foreach (char character in text)
            units += Face.Advance(character);
        return units;
    }

    /// <summary>How many characters of a text, from its beginning, fit into a width; half of a character that takes two is never kept.</summary>
    internal int Fitting(string text, double emMm, double widthMm)
    {
        int units = 0;
        for (int count = 0; count < text.Length; count++)
        {
            units += Face.Advance(text[count]);
            if (Face.Ems(units) * emMm > widthMm) return count > 0 && char.IsHighSurrogate(text[count - 1]) ? count - 1 : count;
        }
        return text.Length;
    }

    /// <summary>
    /// The text as the lettering can show it: what is not seen (controls, marks of direction, joiners) is left out, ends of lines and odd blanks
    /// become blanks, and each character that a reader takes for one and that the faces lack becomes <see cref="Replacement"/>. Marks over
    /// letters that stand alone are left out.
    /// </summary>
    public static string Shown(string text)
    {
        if (RegularFace.Has(text)) return text;
        StringBuilder shown = new();
        TextElementEnumerator elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            string element = elements.GetTextElement();
            string seen = string.Concat(element.Where(character => CharUnicodeInfo.GetUnicodeCategory(character) is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark)));
            if (RegularFace.Has(seen)) shown.Append(seen.Length > 0 || !char.IsWhiteSpace(element[0]) ? seen : " ");
            else shown.Append(char.IsWhiteSpace(element[0]) ? ' ' : Replacement);
        }
        return shown.ToString();
    }

    /// <summary>True when the face has every character of the text.</summary>
    public bool Has(string text)
    {
        foreach (char character in text)
        {
            if (Face.Glyph(character) == 0) return false;
        }
        return true;
    }
}
