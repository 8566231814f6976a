using System.Collections.Immutable;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;

namespace Hoopwright.Sheets.Pdf;

/// <summary>Writes pages as PDF: vectors and embedded lettering, no pictures, no machine fonts, no clock. The same pages give the same bytes.</summary>
public static class PdfWriter
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
        document.Language = details.Language;
        document.ViewerPreferences.DisplayDocTitle = true;
        document.Options.CompressContentStreams = true;
        document.Options.FlateEncodeMode = PdfFlateEncodeMode.BestCompression;
        document.Options.ColorMode = PdfColorMode.Rgb;

        Dictionary<(LetterWeight, double), XFont> fonts = [];
        foreach (PdfSheet sheet in sheets)
            Add(document, sheet, fonts);
        for (int index = 0; index < sheets.Length; index++)
        {
            foreach (PdfLink link in sheets[index].Links.IsDefault ? [] : sheets[index].Links)
            {
                PdfLinkAnnotation annotation = document.Pages[index].AddDocumentLink(Area(link.Area, document.Pages[index]), link.PageNumber);
                // A random name and the machine's own time; both are optional (PDF 1.7, table 164).
                annotation.Elements.Remove("/NM");
                annotation.Elements.Remove("/M");
            }
        }

        using MemoryStream stream = new();
        document.Save(stream, closeStream: false);
        return PdfIdentity.Settle(stream.ToArray());
    }

    private static void Add(PdfDocument document, PdfSheet sheet, Dictionary<(LetterWeight, double), XFont> fonts)
    {
        PdfPage page = document.AddPage();
        page.Width = XUnit.FromPoint(PdfPainter.Points(sheet.Page.WidthMm));
        page.Height = XUnit.FromPoint(PdfPainter.Points(sheet.Page.HeightMm));
        using XGraphics graphics = XGraphics.FromPdfPage(page);
        PdfPainter painter = new(graphics, fonts);
        foreach (Mark mark in sheet.Page.Marks)
            painter.Paint(mark);
        if (sheet.Bookmark is { } bookmark)
            document.Outlines.Add(bookmark, page, opened: true);
    }

    private static PdfRectangle Area(SheetBox box, PdfPage page)
    {
        double heightPt = page.Height.Point;
        return new PdfRectangle(
            new XPoint(PdfPainter.Points(box.LeftMm), heightPt - PdfPainter.Points(box.BottomMm)),
            new XPoint(PdfPainter.Points(box.RightMm), heightPt - PdfPainter.Points(box.TopMm)));
    }
}
