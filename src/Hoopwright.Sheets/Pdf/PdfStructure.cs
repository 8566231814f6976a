using Hoopwright.Sheets.Drawings;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;
using PdfSharp.UniversalAccessibility;

namespace Hoopwright.Sheets.Pdf;

/// <summary>
/// Paints pages part by part, so that each mark is known as a piece of a heading, a cell, a drawing, or as nothing to be
/// read out (ISO 32000-1, 14.7 and 14.8). Parts that go on over a page stay open between the pages.
/// </summary>
internal sealed class PdfStructure(PdfDocument document)
{
    private readonly UAManager manager = UAManager.ForDocument(document);
    private readonly StructureBuilder builder = UAManager.ForDocument(document).StructureBuilder;
    private readonly Stack<PdfRole> open = new();
    private readonly List<PdfItem> parents = [];

    private bool IsWhole => open.TryPeek(out PdfRole role) && role is PdfRole.Figure or PdfRole.Artifact;

    /// <summary>Paints the marks of a page.</summary>
    internal void Paint(PdfSheet sheet, PdfPage page, PdfPainter painter)
    {
        PaintAll(sheet, page, painter);
        // PDFsharp looks through the whole tree of parents for every part; what earlier pages put there waits aside.
        PdfArray numbers = Numbers();
        parents.AddRange(numbers.Elements);
        numbers.Elements.Clear();
    }

    /// <summary>Ends the structure once all pages are painted.</summary>
    internal void Finish()
    {
        PdfArray numbers = Numbers();
        foreach (PdfItem item in parents) numbers.Elements.Add(item);
    }

    private PdfArray Numbers()
    {
        PdfDictionary tree = manager.StructureTreeRoot.Elements.GetDictionary("/ParentTree")!;
        if (tree.Elements.GetArray("/Nums") is { } numbers) return numbers;
        tree.Elements["/Nums"] = new PdfArray(document);
        return tree.Elements.GetArray("/Nums")!;
    }

    private void PaintAll(PdfSheet sheet, PdfPage page, PdfPainter painter)
    {
        if (sheet.Tags.IsEmpty)
        {
            Begin(new PdfTag(0, PdfRole.Figure, sheet.Page.Description), sheet, page);
            foreach (Mark mark in sheet.Page.Marks) painter.Paint(mark);
            End();
            // Links of a page that is one drawing have no text of their own.
            for (int link = 0; !sheet.Links.IsDefault && link < sheet.Links.Length; link++)
            {
                Begin(new PdfTag(0, PdfRole.Link, null, link), sheet, page);
                End();
            }
            return;
        }

        int next = 0;
        for (int at = 0; at < sheet.Page.Marks.Length; at++)
        {
            for (; next < sheet.Tags.Length && sheet.Tags[next].Mark <= at; next++) Apply(sheet.Tags[next], sheet, page);
            bool ends = next < sheet.Tags.Length && sheet.Tags[next] is { Opens: null } tag && tag.Mark == at + 1;
            Paint(sheet.Page.Marks[at], painter, ends);
        }
        for (; next < sheet.Tags.Length; next++) Apply(sheet.Tags[next], sheet, page);
    }

    /// <summary>Paints a mark into the part that is open.</summary>
    private void Paint(Mark mark, PdfPainter painter, bool isLast)
    {
        if (mark is TextMark text && open.Count > 0)
        {
            // Lines that follow each other in a part are read out as one text: a blank parts their words.
            painter.Paint(text, isLast || IsWhole ? "" : " ");
            return;
        }
        if (IsWhole)
        {
            painter.Paint(mark);
            return;
        }
        // Rules and tints of a page of text say nothing; a text that is in no part is a paragraph.
        Begin(new PdfTag(0, mark is TextMark ? PdfRole.Paragraph : PdfRole.Artifact), null, null);
        painter.Paint(mark);
        End();
    }

    private void Apply(PdfTag tag, PdfSheet sheet, PdfPage page)
    {
        if (tag.Opens is null) End();
        else Begin(tag, sheet, page);
    }

    private void Begin(PdfTag tag, PdfSheet? sheet, PdfPage? page)
    {
        PdfRole role = tag.Opens!.Value;
        open.Push(role);
        // A part holds its text objects whole: none may be open where it begins or ends (14.6.1).
        manager.BeginGraphicMode();
        switch (role)
        {
            case PdfRole.Section: builder.BeginElement(PdfGroupingElementTag.Section); break;
            case PdfRole.Heading1: builder.BeginElement(PdfBlockLevelElementTag.Heading1); break;
            case PdfRole.Heading2: builder.BeginElement(PdfBlockLevelElementTag.Heading2); break;
            case PdfRole.Paragraph: builder.BeginElement(PdfBlockLevelElementTag.Paragraph); break;
            case PdfRole.List: builder.BeginElement(PdfBlockLevelElementTag.List); break;
            case PdfRole.ListItem: builder.BeginElement(PdfBlockLevelElementTag.ListItem); break;
            case PdfRole.ListBody: builder.BeginElement(PdfBlockLevelElementTag.ListBody); break;
            case PdfRole.Table: builder.BeginElement(PdfBlockLevelElementTag.Table); break;
            case PdfRole.TableRow: builder.BeginElement(PdfBlockLevelElementTag.TableRow); break;
            case PdfRole.TableHeading: Heading(); break;
            case PdfRole.TableCell: builder.BeginElement(PdfBlockLevelElementTag.TableDataCell); break;
            case PdfRole.Contents: builder.BeginElement(PdfGroupingElementTag.TableOfContents); break;
            case PdfRole.ContentsItem: builder.BeginElement(PdfGroupingElementTag.TableOfContentsItem); break;
            case PdfRole.Link: Link(sheet!.Links[tag.Link], page!); break;
            case PdfRole.Figure: Figure(tag.Says ?? "", sheet!.Page); break;
            case PdfRole.Artifact: builder.BeginArtifact(); break;
        }
    }

    private void End()
    {
        open.Pop();
        manager.BeginGraphicMode();
        builder.End();
    }

    private void Heading()
    {
        builder.BeginElement(PdfBlockLevelElementTag.TableHeaderCell);
        PdfDictionary attributes = new();
        attributes.Elements.SetName("/O", "/Table");
        attributes.Elements.SetName("/Scope", "/Column");
        builder.CurrentStructureElement.Elements["/A"] = attributes;
    }

    private void Figure(string says, Drawing page) =>
        builder.BeginElement(PdfIllustrationElementTag.Figure, says, new XRect(0, 0, PdfPainter.Points(page.WidthMm), PdfPainter.Points(page.HeightMm)));

    private void Link(PdfLink link, PdfPage page)
    {
        double heightPt = page.Height.Point;
        PdfRectangle area = new(
            new XPoint(PdfPainter.Points(link.Area.LeftMm), heightPt - PdfPainter.Points(link.Area.BottomMm)),
            new XPoint(PdfPainter.Points(link.Area.RightMm), heightPt - PdfPainter.Points(link.Area.TopMm)));
        var annotation = PdfLinkAnnotation.CreateDocumentLink(area, link.PageNumber);
        builder.BeginElement(annotation, link.Says);
        // A random name and the machine's own time; both are optional (PDF 1.7, table 164).
        annotation.Elements.Remove("/NM");
        annotation.Elements.Remove("/M");
    }
}
