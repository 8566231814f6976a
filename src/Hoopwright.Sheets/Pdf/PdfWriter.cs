using System.Collections.Immutable;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using Hoopwright.Sheets.Fonts;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace Hoopwright.Sheets.Pdf;

/// <summary>
/// Writes pages as PDF: vectors and embedded lettering, tagged for those who hear it read, no pictures, no machine fonts, no
/// clock. The same pages give the same bytes.
/// </summary>
public static partial class PdfWriter
{
    /// <summary>The file's bytes.</summary>
    /// <param name="sheets">The pages in order; at least one.</param>
    /// <param name="details">What the file says about itself.</param>
    public static byte[] Write(ImmutableArray<PdfSheet> sheets, PdfDetails details)
    {
        EmbeddedFonts.Register();
        using PdfDocument document = new();
        document.Info.Title = details.Title;
        document.Info.Subject = details.Subject;
        document.Info.Creator = "Hoopwright";
        document.Info.CreationDate = details.Created.UtcDateTime;
        document.Info.ModificationDate = details.Created.UtcDateTime;
        document.ViewerPreferences.DisplayDocTitle = true;
        document.Options.CompressContentStreams = false;
        document.Options.FlateEncodeMode = PdfFlateEncodeMode.BestCompression;
        document.Options.ColorMode = PdfColorMode.Rgb;

        PdfStructure structure = new(document);
        document.Language = details.Language;
        Dictionary<(LetterWeight, double), XFont> fonts = [];
        PdfOutline? chapter = null;
        foreach (PdfSheet sheet in sheets)
        {
            PdfPage page = document.AddPage();
            page.Width = XUnit.FromPoint(PdfPainter.Points(sheet.Page.WidthMm));
            page.Height = XUnit.FromPoint(PdfPainter.Points(sheet.Page.HeightMm));
            using (XGraphics graphics = XGraphics.FromPdfPage(page))
                structure.Paint(sheet, page, new PdfPainter(graphics, fonts));
            Compress(page);
            chapter = Bookmarks(document, sheet, page, chapter);
        }
        structure.Finish();
        Labels(document, sheets);

        using MemoryStream stream = new();
        document.Save(stream, closeStream: false);
        return PdfIdentity.Settle(stream.ToArray());
    }

    /// <summary>Compresses a page with the check sum that readers look for and that PDFsharp leaves out (RFC 1950, 2.2).</summary>
    private static void Compress(PdfPage page)
    {
        foreach (PdfContent content in page.Contents)
        {
            using MemoryStream packed = new();
            using (ZLibStream zip = new(packed, CompressionLevel.SmallestSize, leaveOpen: true))
                zip.Write(Encoding.Latin1.GetBytes(FirstPart().Replace(Encoding.Latin1.GetString(content.Stream!.Value), "$2$1", 1)));
            content.Stream.Value = packed.ToArray();
            content.Elements.SetName("/Filter", "/FlateDecode");
        }
    }

    /// <summary>PDFsharp opens a text object before the first part of a page, where it must open within it.</summary>
    [GeneratedRegex(@"(BT\n)(/[A-Za-z0-9]+ ?<<[^>]*>> ?BDC\n)", RegexOptions.CultureInvariant)]
    private static partial Regex FirstPart();

    /// <summary>Adds the bookmarks of a page and returns the chapter that those to come stand under.</summary>
    private static PdfOutline? Bookmarks(PdfDocument document, PdfSheet sheet, PdfPage page, PdfOutline? chapter)
    {
        if (sheet.Bookmark is { } bookmark)
        {
            if (sheet.IsInChapter && chapter is not null) chapter.Outlines.Add(bookmark, page);
            else chapter = document.Outlines.Add(bookmark, page, opened: false);
        }
        foreach (PdfBookmark place in chapter is null ? [] : sheet.Places)
        {
            PdfOutline under = chapter!.Outlines.Add(place.Title, page);
            under.PageDestinationType = PdfPageDestinationType.Xyz;
            under.Left = 0;
            under.Top = page.Height.Point - PdfPainter.Points(place.TopMm);
        }
        return chapter;
    }

    /// <summary>Names of pages that viewers show in place of their number (ISO 32000-1, 12.4.2).</summary>
    private static void Labels(PdfDocument document, ImmutableArray<PdfSheet> sheets)
    {
        if (sheets.All(sheet => sheet.Label is null)) return;
        PdfArray numbers = new(document);
        for (int index = 0; index < sheets.Length; index++)
        {
            // Pages that go on counting stand in one range.
            if (sheets[index].Label is null && index > 0 && sheets[index - 1].Label is null) continue;
            PdfDictionary range = new(document);
            if (sheets[index].Label is { } label)
            {
                range.Elements.SetString("/P", label);
            }
            else
            {
                range.Elements.SetName("/S", "/D");
                range.Elements.SetInteger("/St", index + 1);
            }
            numbers.Elements.Add(new PdfInteger(index));
            numbers.Elements.Add(range);
        }
        PdfDictionary labels = new(document);
        labels.Elements["/Nums"] = numbers;
        document.Internals.Catalog.Elements["/PageLabels"] = labels;
    }
}
