using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Xlsx;

/// <summary>How worksheets are printed: on which paper, landscape, as wide as a page, with the headings on every page.</summary>
/// <param name="Paper">Letter or A4.</param>
/// <param name="Header">What stands over every page.</param>
internal sealed record XlsxPrint(Paper Paper, string Header)
{
    private const int LongestHeader = 100;

    /// <summary>
    /// The file with its print set-up, which the library that wrote it has no words for, and with one fixed time on all its parts, so that
    /// the same tables give the same bytes.
    /// </summary>
    public byte[] Finish(byte[] file, ImmutableArray<Worksheet> sheets)
    {
        ImmutableArray<PacketFile>.Builder parts = ImmutableArray.CreateBuilder<PacketFile>();
        using ZipArchive zip = new(new MemoryStream(file), ZipArchiveMode.Read);
        foreach (ZipArchiveEntry entry in zip.Entries)
        {
            using MemoryStream read = new();
            using (Stream part = entry.Open()) part.CopyTo(read);
            byte[] bytes = read.ToArray();
            if (entry.FullName == "xl/workbook.xml") bytes = Encoding.UTF8.GetBytes(Titles(Encoding.UTF8.GetString(bytes), sheets));
            else if (entry.FullName.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal)) bytes = Encoding.UTF8.GetBytes(Page(Encoding.UTF8.GetString(bytes)));
            parts.Add(new PacketFile(entry.FullName, [.. bytes]));
        }
        return ZipWriter.Write(parts.ToImmutable());
    }

    /// <summary>Rows to repeat are a name of the workbook (ISO/IEC 29500-1, 18.2.6); all is worked out anew when it is opened (18.2.2).</summary>
    private static string Titles(string workbook, ImmutableArray<Worksheet> sheets) => Put(workbook, "</sheets>", after: true, "<definedNames>" + string.Concat(sheets.Select((sheet, index) =>
        string.Create(CultureInfo.InvariantCulture, $"<definedName name=\"_xlnm.Print_Titles\" localSheetId=\"{index}\">'{sheet.Name.Replace("'", "''", StringComparison.Ordinal)}'!$1:$1</definedName>"))) + "</definedNames><calcPr fullCalcOnLoad=\"1\"/>");

    /// <summary>Page set-up stands at the end of a sheet, and that it fits the page's width at its beginning: ISO/IEC 29500-1, 18.3.1.99.</summary>
    private string Page(string sheet)
    {
        // 1 is letter, 9 is A4; as many pages high as it takes.
        string size = Paper == Paper.A4 ? "9" : "1";
        sheet = Put(sheet, "<sheetViews>", after: false, "<sheetPr><pageSetUpPr fitToPage=\"1\"/></sheetPr>");
        return Put(sheet, "</worksheet>", after: false, "<pageMargins left=\"0.5\" right=\"0.5\" top=\"0.75\" bottom=\"0.6\" header=\"0.3\" footer=\"0.3\"/>"
            + $"<pageSetup paperSize=\"{size}\" orientation=\"landscape\" fitToWidth=\"1\" fitToHeight=\"0\"/>"
            + $"<headerFooter><oddHeader>&amp;L{Said(Header)}&amp;R&amp;A</oddHeader><oddFooter>&amp;RPage &amp;P of &amp;N</oddFooter></headerFooter>");
    }

    // An ampersand begins a code in a header, so it is doubled.
    private static string Said(string header)
    {
        string words = XmlText.Clean(header).Replace('\n', ' ');
        if (words.Length > LongestHeader) words = string.Concat(words.AsSpan(0, char.IsHighSurrogate(words[LongestHeader - 1]) ? LongestHeader - 1 : LongestHeader), "…");
        return XmlText.Escaped(words.Replace("&", "&&", StringComparison.Ordinal));
    }

    private static string Put(string xml, string mark, bool after, string what)
    {
        int at = xml.IndexOf(mark, StringComparison.Ordinal);
        if (at < 0) throw new InvalidOperationException($"The part has no {mark}.");
        return xml.Insert(after ? at + mark.Length : at, what);
    }
}
