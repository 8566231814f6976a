using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Pdf;

/// <summary>
/// Writes pages as PDF 1.7 (ISO 32000-1): vectors and embedded lettering, tagged for those who hear it read, no pictures, no machine fonts, no
/// clock. The same pages give the same bytes.
/// </summary>
public static class PdfWriter
{
    /// <summary>The file's bytes.</summary>
    /// <param name="sheets">The pages in order; at least one.</param>
    /// <param name="details">What the file says about itself.</param>
    public static byte[] Write(ImmutableArray<PdfSheet> sheets, PdfDetails details)
    {
        PdfObjects objects = new();
        PdfStructure structure = new();
        int root = objects.Next(), info = objects.Next(), tree = objects.Next(), resources = objects.Next();
        int firstPage = objects.Next(sheets.Length), firstContent = objects.Next(sheets.Length);
        ImmutableArray<int> pages = [.. Enumerable.Range(firstPage, sheets.Length)];
        PdfBytes content = new();
        for (int page = 0; page < sheets.Length; page++)
        {
            content.Clear();
            structure.Paint(sheets[page], content);
            objects.Stream(firstContent + page, default, content.Span);
        }

        int firstLink = objects.Next(structure.Links.Count);
        Pages(objects, sheets, structure, tree, firstPage, firstContent, firstLink, resources);
        (int regular, int bold) = (PdfFace.Of(LetterWeight.Regular).Put(objects), PdfFace.Of(LetterWeight.Bold).Put(objects));
        objects.Put(resources, to => to.Put("<</Font<</R "u8).Refer(regular).Put("/B "u8).Refer(bold).Put(">>>>"u8));
        int parts = structure.Put(objects, pages, [.. Enumerable.Range(firstLink, structure.Links.Count)]);
        int outlines = Bookmarks(objects, sheets, pages), metadata = objects.Next();
        objects.Plain(metadata, "/Type/Metadata/Subtype/XML"u8, Encoding.UTF8.GetBytes(Metadata(details)));
        objects.Put(info, to => Info(to, details));
        objects.Put(root, to =>
        {
            to.Put("<</Type/Catalog/Pages "u8).Refer(tree).Put("/MarkInfo<</Marked true>>/ViewerPreferences<</DisplayDocTitle true>>/Lang"u8).Text(details.Language);
            to.Put("/StructTreeRoot "u8).Refer(parts).Put("/Metadata "u8).Refer(metadata);
            if (outlines != 0) to.Put("/PageMode/UseOutlines/Outlines "u8).Refer(outlines);
            Labels(to, sheets);
            to.Put(">>"u8);
        });
        return objects.Finish(root, info);
    }

    private static void Pages(PdfObjects objects, ImmutableArray<PdfSheet> sheets, PdfStructure structure, int tree, int firstPage, int firstContent, int firstLink, int resources)
    {
        objects.Put(tree, to =>
        {
            to.Put("<</Type/Pages/Count "u8).Put(sheets.Length).Put("/Kids["u8);
            for (int page = 0; page < sheets.Length; page++) to.Refer(firstPage + page);
            to.Put("]>>"u8);
        });
        ILookup<int, int> links = Enumerable.Range(0, structure.Links.Count).ToLookup(link => structure.Links[link].Page);
        for (int page = 0; page < sheets.Length; page++)
        {
            int index = page;
            objects.Put(firstPage + index, to =>
            {
                to.Put("<</Type/Page/Parent "u8).Refer(tree).Put("/MediaBox[0 0 "u8).Put(PdfPainter.Points(sheets[index].Page.WidthMm)).Put(PdfPainter.Points(sheets[index].Page.HeightMm));
                to.Put("]/Resources "u8).Refer(resources).Put("/Contents "u8).Refer(firstContent + index).Put("/StructParents "u8).Put(index);
                if (links[index].Any())
                {
                    // Who goes from link to link goes in the order in which they are read.
                    to.Put("/Tabs/S/Annots["u8);
                    foreach (int link in links[index]) to.Refer(firstLink + link);
                    to.Put("]"u8);
                }
                to.Put(">>"u8);
            });
        }
        for (int index = 0; index < structure.Links.Count; index++)
        {
            (_, int page, PdfLink link) = structure.Links[index];
            double heightMm = sheets[page].Page.HeightMm;
            int parent = sheets.Length + index;
            objects.Put(firstLink + index, to =>
            {
                to.Put("<</Type/Annot/Subtype/Link/Border[0 0 0]/F 4/Rect["u8).Put(PdfPainter.Points(link.Area.LeftMm)).Put(PdfPainter.Points(heightMm - link.Area.BottomMm))
                    .Put(PdfPainter.Points(link.Area.RightMm)).Put(PdfPainter.Points(heightMm - link.Area.TopMm)).Put("]/StructParent "u8).Put(parent);
                Destination(to.Put("/Dest"u8), firstPage + link.PageNumber - 1, sheets[link.PageNumber - 1].Page.HeightMm);
                if (link.Says.Length > 0) to.Put("/Contents"u8).Text(link.Says);
                to.Put(">>"u8);
            });
        }
    }

    private static void Destination(PdfBytes to, int page, double upMm) => to.Put("["u8).Refer(page).Put("/XYZ 0 "u8).Put(PdfPainter.Points(upMm)).Put("null]"u8);

    /// <summary>The viewer's list of bookmarks: chapters, and under each its drawings and places.</summary>
    /// <returns>The number of its root; 0 when there is none.</returns>
    private static int Bookmarks(PdfObjects objects, ImmutableArray<PdfSheet> sheets, ImmutableArray<int> pages)
    {
        List<(string Title, int Page, double UpMm, List<(string Title, int Page, double UpMm)> Under)> chapters = [];
        for (int page = 0; page < sheets.Length; page++)
        {
            PdfSheet sheet = sheets[page];
            double heightMm = sheet.Page.HeightMm;
            if (sheet.Bookmark is { } bookmark)
            {
                if (sheet.IsInChapter && chapters.Count > 0) chapters[^1].Under.Add((bookmark, pages[page], heightMm));
                else chapters.Add((bookmark, pages[page], heightMm, []));
            }
            if (chapters.Count > 0) chapters[^1].Under.AddRange(sheet.Places.Select(place => (place.Title, pages[page], heightMm - place.TopMm)));
        }
        if (chapters.Count == 0) return 0;

        int root = objects.Next(), first = objects.Next(chapters.Count);
        objects.Put(root, to => to.Put("<</Type/Outlines/First "u8).Refer(first).Put("/Last "u8).Refer(first + chapters.Count - 1).Put("/Count "u8).Put(chapters.Count).Put(">>"u8));
        for (int index = 0; index < chapters.Count; index++)
        {
            (string title, int page, double upMm, List<(string Title, int Page, double UpMm)> under) = chapters[index];
            int under0 = objects.Next(under.Count), number = first + index;
            objects.Put(number, to =>
            {
                Item(to, title, page, upMm, root, number, first, first + chapters.Count - 1);
                // Below 0: those under it are not shown until it is opened.
                if (under.Count > 0) to.Put("/First "u8).Refer(under0).Put("/Last "u8).Refer(under0 + under.Count - 1).Put("/Count "u8).Put(-under.Count);
                to.Put(">>"u8);
            });
            for (int each = 0; each < under.Count; each++)
            {
                (string place, int on, double atMm) = under[each];
                int child = under0 + each;
                objects.Put(child, to =>
                {
                    Item(to, place, on, atMm, number, child, under0, under0 + under.Count - 1);
                    to.Put(">>"u8);
                });
            }
        }
        return root;
    }

    private static void Item(PdfBytes to, string title, int page, double upMm, int parent, int number, int first, int last)
    {
        to.Put("<</Title"u8).Text(title).Put("/Parent "u8).Refer(parent);
        if (number > first) to.Put("/Prev "u8).Refer(number - 1);
        if (number < last) to.Put("/Next "u8).Refer(number + 1);
        Destination(to.Put("/Dest"u8), page, upMm);
    }

    /// <summary>Names of pages that viewers show in place of their number (ISO 32000-1, 12.4.2).</summary>
    private static void Labels(PdfBytes to, ImmutableArray<PdfSheet> sheets)
    {
        if (sheets.All(sheet => sheet.Label is null)) return;
        to.Put("/PageLabels<</Nums["u8);
        for (int index = 0; index < sheets.Length; index++)
        {
            // Pages that go on counting stand in one range.
            if (sheets[index].Label is null && index > 0 && sheets[index - 1].Label is null) continue;
            to.Put(index).Put("<<"u8);
            if (sheets[index].Label is { } label) to.Put("/P"u8).Text(label);
            else to.Put("/S/D/St "u8).Put(index + 1);
            to.Put(">>"u8);
        }
        to.Put("]>>"u8);
    }

    private static void Info(PdfBytes to, PdfDetails details)
    {
        string moment = details.Created.UtcDateTime.ToString("'D:'yyyyMMddHHmmss'Z'", CultureInfo.InvariantCulture);
        to.Put("<</Title"u8).Text(details.Title);
        if (details.Subject.Length > 0) to.Put("/Subject"u8).Text(details.Subject);
        to.Put("/Creator"u8).Text("Hoopwright").Put("/Producer"u8).Text("Hoopwright").Put("/CreationDate"u8).Text(moment).Put("/ModDate"u8).Text(moment).Put(">>"u8);
    }

    /// <summary>The same once more as XMP (ISO 16684-1), which catalogues look for.</summary>
    private static string Metadata(PdfDetails details)
    {
        string moment = details.Created.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
        return $"""
            <?xpacket begin="{'\uFEFF'}" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
            <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
            <dc:format>application/pdf</dc:format>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{XmlText.Escaped(details.Title)}</rdf:li></rdf:Alt></dc:title>
            <dc:description><rdf:Alt><rdf:li xml:lang="x-default">{XmlText.Escaped(details.Subject)}</rdf:li></rdf:Alt></dc:description>
            <dc:language><rdf:Bag><rdf:li>{XmlText.Escaped(details.Language)}</rdf:li></rdf:Bag></dc:language>
            <xmp:CreatorTool>Hoopwright</xmp:CreatorTool>
            <xmp:CreateDate>{moment}</xmp:CreateDate>
            <xmp:ModifyDate>{moment}</xmp:ModifyDate>
            <pdf:Producer>Hoopwright</pdf:Producer>
            </rdf:Description>
            </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="r"?>
            """.ReplaceLineEndings("\n");
    }
}
