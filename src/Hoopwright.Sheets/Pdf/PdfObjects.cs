using System.IO.Compression;
using System.Security.Cryptography;

namespace Hoopwright.Sheets.Pdf;

/// <summary>
/// The body of a PDF file: numbered objects, where they lie, and the end that leads to them (ISO 32000-1, 7.5). Objects that are no streams
/// lie packed together in object streams (7.5.7), which makes the thousands that tell the structure small.
/// </summary>
internal sealed class PdfObjects
{
    private const int MostTogether = 400;
    private readonly PdfBytes file = new(), together = new(), one = new();
    private readonly List<(int Number, int Offset)> held = [];

    // Where each object lies: a place in the file, or the number of an object stream and a place in it.
    private readonly List<(bool IsHeld, int Where, int At)> places = [(false, 0, 0)];

    internal PdfObjects() => file.Put("%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n"u8);

    /// <summary>A number for an object to come.</summary>
    internal int Next() => Next(1);

    /// <summary>The first of so many numbers in a row.</summary>
    internal int Next(int count)
    {
        int first = places.Count;
        for (int each = 0; each < count; each++) places.Add(default);
        return first;
    }

    /// <summary>Puts down an object that is no stream.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="write">Writes what it is.</param>
    internal void Put(int number, Action<PdfBytes> write)
    {
        held.Add((number, together.Length));
        write(together);
        together.Put("\n"u8);
        if (held.Count == MostTogether) Close();
    }

    /// <summary>Puts down a stream, packed by zlib with the check sum that readers look for (RFC 1950, 2.2).</summary>
    /// <param name="number">Its number.</param>
    /// <param name="entries">What its dictionary holds besides length and filter.</param>
    /// <param name="content">What it holds.</param>
    internal void Stream(int number, ReadOnlySpan<byte> entries, ReadOnlySpan<byte> content) => Packed(number, entries, Pack(content));

    /// <summary>Puts down a stream that is packed already.</summary>
    internal void Packed(int number, ReadOnlySpan<byte> entries, ReadOnlySpan<byte> packed) => Raw(number, entries, "/Filter/FlateDecode"u8, packed);

    /// <summary>Puts down a stream that is not packed, for those who look into files without reading PDF.</summary>
    internal void Plain(int number, ReadOnlySpan<byte> entries, ReadOnlySpan<byte> content) => Raw(number, entries, default, content);

    /// <summary>Ends the file.</summary>
    /// <param name="root">The number of its catalogue.</param>
    /// <param name="info">The number of what it tells about itself.</param>
    internal byte[] Finish(int root, int info)
    {
        if (held.Count > 0) Close();
        int number = Next(), start = file.Length;
        places[number] = (false, start, 0);
        PdfBytes table = new();
        Span<byte> row = stackalloc byte[7];
        for (int each = 0; each < places.Count; each++)
        {
            (bool isHeld, int where, int at) = places[each];
            row[0] = (byte)(each == 0 ? 0 : isHeld ? 2 : 1);
            for (int figure = 0; figure < 4; figure++) row[1 + figure] = (byte)(where >> (24 - (8 * figure)));
            (row[5], row[6]) = each == 0 ? ((byte)0xFF, (byte)0xFF) : ((byte)(at >> 8), (byte)at);
            table.Put(row);
        }
        // The identity follows from the content, as there is neither clock nor chance.
        ReadOnlySpan<byte> identity = System.Text.Encoding.ASCII.GetBytes(Convert.ToHexString(SHA256.HashData(file.Span))[..32]);
        one.Clear();
        one.Put("/Type/XRef/W[1 4 2]/Size "u8).Put(places.Count).Put("/Root "u8).Refer(root).Put("/Info "u8).Refer(info);
        one.Put("/ID[<"u8).Put(identity).Put("><"u8).Put(identity).Put(">]"u8);
        Stream(number, one.Span, table.Span);
        return file.Put("startxref\n"u8).Put(start).Put("\n%%EOF\n"u8).Span.ToArray();
    }

    /// <summary>The bytes as zlib packs them.</summary>
    internal static byte[] Pack(ReadOnlySpan<byte> content)
    {
        using MemoryStream packed = new();
        using (ZLibStream zip = new(packed, CompressionLevel.Optimal, leaveOpen: true)) zip.Write(content);
        return packed.ToArray();
    }

    private void Close()
    {
        int number = Next();
        one.Clear();
        for (int each = 0; each < held.Count; each++)
        {
            places[held[each].Number] = (true, number, each);
            one.Put(held[each].Number).Put(held[each].Offset);
        }
        (int count, int first) = (held.Count, one.Length);
        byte[] content = [.. one.Span, .. together.Span];
        held.Clear();
        together.Clear();
        one.Clear();
        Stream(number, one.Put("/Type/ObjStm/N "u8).Put(count).Put("/First "u8).Put(first).Span, content);
    }

    private void Raw(int number, ReadOnlySpan<byte> entries, ReadOnlySpan<byte> filter, ReadOnlySpan<byte> content)
    {
        places[number] = (false, file.Length, 0);
        file.Put(number).Put("0 obj\n<<"u8).Put(entries).Put(filter).Put("/Length "u8).Put(content.Length).Put(">>\nstream\n"u8).Put(content).Put("\nendstream\nendobj\n"u8);
    }
}
