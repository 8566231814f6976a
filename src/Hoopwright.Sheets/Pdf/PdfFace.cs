using System.Globalization;
using System.Text;
using Hoopwright.Sheets.Fonts;

namespace Hoopwright.Sheets.Pdf;

/// <summary>
/// The lettering as PDF holds it: a composite font over the whole TrueType file, whose glyphs are written by number, with what each advances
/// and which character it stands for (ISO 32000-1, 9.7.4, 9.8 and 9.10.3). Each weight is made ready once.
/// </summary>
internal sealed class PdfFace
{
    private static readonly Lazy<PdfFace> Regular = new(() => new PdfFace(LetterWeight.Regular)), Bold = new(() => new PdfFace(LetterWeight.Bold));
    private readonly TrueTypeFace face;
    private readonly byte[] packedFile, packedCharacters, widths;
    private readonly string name, length;
    private readonly LetterWeight weight;

    // The number of each character's glyph, as it is written.
    private readonly uint[] written;

    private PdfFace(LetterWeight weight)
    {
        this.weight = weight;
        face = Typeface.Of(weight).Face;
        byte[] font = FontFiles.TrueType(weight);
        (name, length) = ($"HoopwrightLetters-{weight}", string.Create(CultureInfo.InvariantCulture, $"/Length1 {font.Length}"));
        packedFile = PdfObjects.Pack(font);
        packedCharacters = PdfObjects.Pack(Encoding.ASCII.GetBytes(Characters()));
        written = [.. Enumerable.Range(0, face.Mapped.Max(each => each.Character) + 1).Select(character => PdfBytes.HexWord(face.Glyph((char)character)))];
        widths = Encoding.ASCII.GetBytes(string.Join(' ', face.Advances.Select(face.Per1000)));
    }

    /// <summary>The face of that weight.</summary>
    internal static PdfFace Of(LetterWeight weight) => weight switch
    {
        LetterWeight.Regular => Regular.Value,
        LetterWeight.Bold => Bold.Value,
    };

    /// <summary>Puts a text as the numbers of its glyphs.</summary>
    internal void Put(PdfBytes content, string text, bool blankAfter)
    {
        content.Put("<"u8);
        foreach (char character in text) content.Put(character < written.Length ? written[character] : written[0]);
        if (blankAfter) content.Put(written[' ']);
        content.Put(">"u8);
    }

    /// <summary>Puts the font into a file.</summary>
    /// <returns>The number of its object.</returns>
    internal int Put(PdfObjects objects)
    {
        int font = objects.Next(5);
        objects.Put(font, to => to.Put("<</Type/Font/Subtype/Type0/Encoding/Identity-H/BaseFont/"u8).Put(Name()).Put("/DescendantFonts["u8).Refer(font + 1).Put("]/ToUnicode "u8).Refer(font + 4).Put(">>"u8));
        objects.Put(font + 1, to => to.Put("<</Type/Font/Subtype/CIDFontType2/CIDToGIDMap/Identity/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>/BaseFont/"u8).Put(Name())
            .Put("/FontDescriptor "u8).Refer(font + 2).Put("/W[0["u8).Put(widths).Put("]]>>"u8));
        objects.Put(font + 2, to =>
        {
            // Flags: symbolic, as its glyphs go by number. Stems are from the drawn letters; a reader that has the file does not need them.
            to.Put("<</Type/FontDescriptor/Flags 4/ItalicAngle 0/FontName/"u8).Put(Name()).Put("/FontBBox["u8);
            foreach (int edge in face.Box) to.Put(edge);
            to.Put("]/Ascent "u8).Put(face.Ascent).Put("/Descent "u8).Put(face.Descent).Put("/CapHeight "u8).Put((int)(Typeface.CapitalEm * 1000)).Put("/StemV "u8).Put(weight == LetterWeight.Bold ? 140 : 80)
                .Put("/FontFile2 "u8).Refer(font + 3).Put(">>"u8);
        });
        objects.Packed(font + 3, Encoding.ASCII.GetBytes(length), packedFile);
        objects.Packed(font + 4, default, packedCharacters);
        return font;

        byte[] Name() => Encoding.ASCII.GetBytes(name);
    }

    private string Characters()
    {
        // Where characters share a glyph it stands for the first.
        (char Character, int Glyph)[] all = [.. face.Mapped.DistinctBy(each => each.Glyph).OrderBy(each => each.Glyph)];
        StringBuilder map = new("/CIDInit/ProcSet findresource begin 12 dict begin begincmap/CIDSystemInfo<</Registry(Adobe)/Ordering(UCS)/Supplement 0>>def\n/CMapName/Adobe-Identity-UCS def/CMapType 2 def\n1 begincodespacerange<0000><FFFF>endcodespacerange\n");
        foreach ((char Character, int Glyph)[] some in all.Chunk(100))
        {
            map.Append(CultureInfo.InvariantCulture, $"{some.Length} beginbfchar\n");
            foreach ((char character, int glyph) in some) map.Append(CultureInfo.InvariantCulture, $"<{glyph:X4}><{(int)character:X4}>\n");
            map.Append("endbfchar\n");
        }
        return map.Append("endcmap CMapName currentdict/CMap defineresource pop end end\n").ToString();
    }
}
