using System.Buffers.Binary;
using System.Collections.Immutable;

namespace Hoopwright.Sheets.Fonts;

/// <summary>
/// Reads from a TrueType file which glyph stands for each character and how far it advances. Only the tables that this needs: head, hhea,
/// hmtx, maxp and cmap format 4 (OpenType specification 1.9, chapters of those names).
/// </summary>
internal sealed class TrueTypeFace
{
    private readonly byte[] font;
    private readonly int unitsPerEm;

    // By character, up to the last that the face has. A table is looked up many times faster than a dictionary where code is interpreted.
    private readonly ushort[] glyphs, advances;

    internal TrueTypeFace(byte[] font)
    {
        this.font = font;
        int head = Table("head"), hhea = Table("hhea");
        unitsPerEm = U16(head + 18);
        Box = [.. Enumerable.Range(0, 4).Select(corner => Per1000(I16(head + 36 + (2 * corner))))];
        (Ascent, Descent) = (Per1000(I16(hhea + 4)), Per1000(I16(hhea + 6)));
        int longMetrics = U16(hhea + 34), hmtx = Table("hmtx");
        Advances = [.. Enumerable.Range(0, U16(Table("maxp") + 4)).Select(glyph => U16(hmtx + (4 * Math.Min(glyph, longMetrics - 1))))];
        (char Character, int Glyph)[] characters = [.. Characters()];
        glyphs = new ushort[characters.Max(each => each.Character) + 1];
        advances = new ushort[glyphs.Length];
        Array.Fill(advances, (ushort)Advances[0]);
        foreach ((char character, int glyph) in characters) (glyphs[character], advances[character]) = ((ushort)glyph, (ushort)Advances[glyph]);
    }

    /// <summary>What each glyph advances, by number, in units of the face.</summary>
    internal ImmutableArray<int> Advances { get; }

    /// <summary>What holds every glyph: left, bottom, right, top, thousandths of an em.</summary>
    internal ImmutableArray<int> Box { get; }

    /// <summary>How far lines rise above the baseline, thousandths of an em.</summary>
    internal int Ascent { get; }

    /// <summary>How far they hang below it, thousandths of an em; below 0.</summary>
    internal int Descent { get; }

    /// <summary>Every character that the face has, with its glyph.</summary>
    internal IEnumerable<(char Character, int Glyph)> Mapped =>
        Enumerable.Range(0, glyphs.Length).Where(character => glyphs[character] != 0).Select(character => ((char)character, (int)glyphs[character]));

    /// <summary>The glyph of a character; 0, the box, when the face lacks it.</summary>
    internal int Glyph(char character) => character < glyphs.Length ? glyphs[character] : 0;

    /// <summary>How far a character advances, or the box in its place, in units of the face.</summary>
    internal int Advance(char character) => character < advances.Length ? advances[character] : Advances[0];

    /// <summary>Units of the face as ems.</summary>
    internal double Ems(int units) => units / (double)unitsPerEm;

    /// <summary>Units of the face as thousandths of an em.</summary>
    internal int Per1000(int units) => (int)Math.Round(units * 1000.0 / unitsPerEm);

    private IEnumerable<(char Character, int Glyph)> Characters()
    {
        int table = Format4(), segments = U16(table + 6) / 2;
        int ends = table + 14, starts = ends + (2 * segments) + 2, deltas = starts + (2 * segments), offsets = deltas + (2 * segments);
        for (int segment = 0; segment < segments; segment++)
        {
            int start = U16(starts + (2 * segment)), end = U16(ends + (2 * segment));
            int delta = U16(deltas + (2 * segment)), offset = U16(offsets + (2 * segment));
            for (int code = start; code <= end && code != 0xFFFF; code++)
            {
                int glyph = code;
                if (offset != 0)
                    glyph = U16(offsets + (2 * segment) + offset + (2 * (code - start)));
                if (offset == 0 || glyph != 0)
                    glyph = (glyph + delta) & 0xFFFF;
                if (glyph != 0)
                    yield return ((char)code, glyph);
            }
        }
    }

    private int Format4()
    {
        int cmap = Table("cmap"), count = U16(cmap + 2);
        for (int index = 0; index < count; index++)
        {
            int subtable = cmap + (int)U32(cmap + 4 + (8 * index) + 4);
            if (U16(subtable) == 4)
                return subtable;
        }

        throw new InvalidOperationException("The font has no character map of format 4.");
    }

    private int Table(string tag)
    {
        int count = U16(4);
        for (int index = 0; index < count; index++)
        {
            int record = 12 + (16 * index);
            if (font[record] == tag[0] && font[record + 1] == tag[1] && font[record + 2] == tag[2] && font[record + 3] == tag[3])
                return (int)U32(record + 8);
        }

        throw new InvalidOperationException($"The font has no table {tag}.");
    }

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(at));

    private int I16(int at) => BinaryPrimitives.ReadInt16BigEndian(font.AsSpan(at));

    private uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(at));
}
