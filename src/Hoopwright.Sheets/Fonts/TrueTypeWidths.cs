using System.Buffers.Binary;

namespace Hoopwright.Sheets.Fonts;

/// <summary>
/// Reads from a TrueType file how far each character advances. Only the tables that this needs: head, hhea, hmtx and
/// cmap format 4 (OpenType specification 1.9, chapters of those names).
/// </summary>
internal sealed class TrueTypeWidths
{
    private readonly byte[] font;
    private readonly Dictionary<char, double> advanceEm = [];

    internal TrueTypeWidths(byte[] font)
    {
        this.font = font;
        double unitsPerEm = U16(Table("head") + 18);
        int longMetrics = U16(Table("hhea") + 34), hmtx = Table("hmtx");
        foreach ((char character, int glyph) in Characters())
            advanceEm[character] = U16(hmtx + (4 * Math.Min(glyph, longMetrics - 1))) / unitsPerEm;
        MissingEm = U16(hmtx) / unitsPerEm;
    }

    /// <summary>How far the box advances that stands for a character the face lacks, in ems.</summary>
    internal double MissingEm { get; }

    /// <summary>How far a character advances, in ems; null when the face lacks it.</summary>
    internal double? AdvanceEm(char character) => advanceEm.TryGetValue(character, out double em) ? em : null;

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

    private uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(at));
}
