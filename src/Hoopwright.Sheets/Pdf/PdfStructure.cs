using System.Collections.Immutable;
using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Pdf;

/// <summary>
/// Paints pages part by part, so that each mark is known as a piece of a heading, a cell, a drawing, or as nothing to be
/// read out (ISO 32000-1, 14.7 and 14.8). Parts that go on over a page stay open between the pages.
/// </summary>
internal sealed class PdfStructure
{
    private readonly Element root;
    private readonly List<Element> elements = [];
    private readonly Stack<Element> open = new();

    // By page, the element of each piece of marked content; then those of the links, in order.
    private readonly List<ImmutableArray<Element>> pieces = [];
    private readonly List<(Element Element, int Page, PdfLink Link)> links = [];
    private readonly List<Element> onPage = [];
    private Element? current;

    internal PdfStructure()
    {
        root = new Element(null, null);
        elements.Add(root);
    }

    /// <summary>Links of all pages so far, each with its page from 0.</summary>
    internal IReadOnlyList<(Element Element, int Page, PdfLink Link)> Links => links;

    private bool IsWhole => open.TryPeek(out Element? top) && top.Role is PdfRole.Figure or PdfRole.Artifact;

    /// <summary>Paints the marks of the next page.</summary>
    internal void Paint(PdfSheet sheet, PdfBytes content)
    {
        PdfPainter painter = new(content, sheet.Page.HeightMm);
        current = null;
        onPage.Clear();
        PaintAll(sheet, content, painter);
        Into(null, content);
        pieces.Add([.. onPage]);
    }

    /// <summary>Puts the whole structure into the file.</summary>
    /// <param name="objects">The file.</param>
    /// <param name="pages">The number of each page's object.</param>
    /// <param name="linkObjects">The number of each link's object, in the order of <see cref="Links"/>.</param>
    /// <returns>The number of the root of the structure.</returns>
    internal int Put(PdfObjects objects, ImmutableArray<int> pages, ImmutableArray<int> linkObjects)
    {
        int tree = objects.Next(2), first = objects.Next(elements.Count);
        for (int index = 0; index < elements.Count; index++) elements[index].Number = first + index;
        foreach (Element element in elements) objects.Put(element.Number, to => Put(to, element, tree, pages, linkObjects));
        objects.Put(tree, to => to.Put("<</Type/StructTreeRoot/K "u8).Refer(root.Number).Put("/ParentTree "u8).Refer(tree + 1).Put("/ParentTreeNextKey "u8).Put(pieces.Count + links.Count).Put(">>"u8));
        objects.Put(tree + 1, to =>
        {
            to.Put("<</Nums["u8);
            for (int page = 0; page < pieces.Count; page++)
            {
                to.Put(page).Put("["u8);
                foreach (Element element in pieces[page]) to.Refer(element.Number);
                to.Put("]"u8);
            }
            for (int link = 0; link < links.Count; link++) to.Put(pieces.Count + link).Refer(links[link].Element.Number);
            to.Put("]>>"u8);
        });
        return tree;
    }

    private static void Put(PdfBytes to, Element element, int tree, ImmutableArray<int> pages, ImmutableArray<int> linkObjects)
    {
        to.Put("<</S/"u8).Put(Name(element.Role)).Put("/P "u8).Refer(element.Parent?.Number ?? tree);
        // The page of its first piece; a piece on another page says so itself.
        int page = element.Kids.FindIndex(kid => kid.Page >= 0) is var at && at >= 0 ? element.Kids[at].Page : -1;
        if (page >= 0) to.Put("/Pg "u8).Refer(pages[page]);
        if (element.Role == PdfRole.TableHeading) to.Put("/A<</O/Table/Scope/Column>>"u8);
        if (element.Role == PdfRole.Figure)
            to.Put("/A<</O/Layout/BBox[0 0 "u8).Put(PdfPainter.Points(element.WidthMm)).Put(PdfPainter.Points(element.HeightMm)).Put("]>>"u8);
        if (element.Says.Length > 0) to.Put("/Alt"u8).Text(element.Says);
        if (element.Kids.Count == 0)
        {
            to.Put(">>"u8);
            return;
        }
        to.Put("/K["u8);
        foreach ((int onPage, int number, Element? child) in element.Kids)
        {
            if (child is not null) to.Refer(child.Number);
            else if (element.Role == PdfRole.Link && number < 0) to.Put("<</Type/OBJR/Pg "u8).Refer(pages[onPage]).Put("/Obj "u8).Refer(linkObjects[~number]).Put(">>"u8);
            else if (onPage == page) to.Put(number);
            else to.Put("<</Type/MCR/Pg "u8).Refer(pages[onPage]).Put("/MCID "u8).Put(number).Put(">>"u8);
        }
        to.Put("]>>"u8);
    }

    private void PaintAll(PdfSheet sheet, PdfBytes content, PdfPainter painter)
    {
        if (sheet.Tags.IsEmpty)
        {
            Begin(new PdfTag(0, PdfRole.Figure, sheet.Page.Description), sheet);
            Into(open.Peek(), content);
            foreach (Mark mark in sheet.Page.Marks) painter.Paint(mark);
            open.Pop();
            // Links of a page that is one drawing have no text of their own.
            for (int link = 0; !sheet.Links.IsDefault && link < sheet.Links.Length; link++)
            {
                Begin(new PdfTag(0, PdfRole.Link, null, link), sheet);
                open.Pop();
            }
            return;
        }

        int next = 0;
        for (int at = 0; at < sheet.Page.Marks.Length; at++)
        {
            for (; next < sheet.Tags.Length && sheet.Tags[next].Mark <= at; next++) Apply(sheet.Tags[next], sheet);
            bool ends = next < sheet.Tags.Length && sheet.Tags[next] is { Opens: null } tag && tag.Mark == at + 1;
            Paint(sheet.Page.Marks[at], content, painter, ends);
        }
        for (; next < sheet.Tags.Length; next++) Apply(sheet.Tags[next], sheet);
    }

    /// <summary>Paints a mark into the part that is open.</summary>
    private void Paint(Mark mark, PdfBytes content, PdfPainter painter, bool isLast)
    {
        if (mark is TextMark text && open.Count > 0)
        {
            // Lines that follow each other in a part are read out as one text: a blank parts their words.
            if (text.Text.Length == 0) return;
            Into(open.Peek(), content);
            painter.Paint(text, !isLast && !IsWhole);
            return;
        }
        // Rules and tints of a page of text say nothing; a text that is in no part is a paragraph.
        Element part = IsWhole ? open.Peek() : mark is TextMark ? New(PdfRole.Paragraph) : Nothing;
        Into(part, content);
        painter.Paint(mark);
    }

    /// <summary>Ends the piece of content that is open and begins one of another part; none for null.</summary>
    private void Into(Element? part, PdfBytes content)
    {
        if (part == current) return;
        if (current is not null) content.Put("EMC\n"u8);
        current = part;
        if (part is null) return;
        if (part.Role == PdfRole.Artifact)
        {
            content.Put("/Artifact BMC\n"u8);
            return;
        }
        content.Put("/"u8).Put(Name(part.Role)).Put("<</MCID "u8).Put(onPage.Count).Put(">>BDC\n"u8);
        part.Kids.Add((pieces.Count, onPage.Count, null));
        onPage.Add(part);
    }

    private void Apply(PdfTag tag, PdfSheet sheet)
    {
        if (tag.Opens is null) open.Pop();
        else Begin(tag, sheet);
    }

    private void Begin(PdfTag tag, PdfSheet sheet)
    {
        PdfRole role = tag.Opens!.Value;
        Element element = role == PdfRole.Artifact ? Nothing : New(role);
        open.Push(element);
        if (role == PdfRole.Figure) (element.Says, element.WidthMm, element.HeightMm) = (tag.Says ?? "", sheet.Page.WidthMm, sheet.Page.HeightMm);
        if (role != PdfRole.Link) return;
        PdfLink link = sheet.Links[tag.Link];
        element.Says = link.Says;
        element.Kids.Add((pieces.Count, ~links.Count, null));
        links.Add((element, pieces.Count, link));
    }

    private Element New(PdfRole role)
    {
        Element parent = open.TryPeek(out Element? top) && top.Role != PdfRole.Artifact ? top : root, element = new(role, parent);
        parent.Kids.Add((-1, 0, element));
        elements.Add(element);
        return element;
    }

    private static Element Nothing { get; } = new(PdfRole.Artifact, null);

    /// <summary>Structure types (ISO 32000-1, 14.8.4).</summary>
    private static ReadOnlySpan<byte> Name(PdfRole? role) => role is not { } known ? "Document"u8 : known switch
    {
        PdfRole.Section => "Sect"u8,
        PdfRole.Heading1 => "H1"u8,
        PdfRole.Heading2 => "H2"u8,
        PdfRole.Paragraph => "P"u8,
        PdfRole.List => "L"u8,
        PdfRole.ListItem => "LI"u8,
        PdfRole.ListBody => "LBody"u8,
        PdfRole.Table => "Table"u8,
        PdfRole.TableRow => "TR"u8,
        PdfRole.TableHeading => "TH"u8,
        PdfRole.TableCell => "TD"u8,
        PdfRole.Contents => "TOC"u8,
        PdfRole.ContentsItem => "TOCI"u8,
        PdfRole.Link => "Link"u8,
        PdfRole.Figure => "Figure"u8,
        PdfRole.Artifact => "Artifact"u8,
    };

    /// <summary>A part of the document; the whole when it has no role.</summary>
    internal sealed class Element(PdfRole? role, Element? parent)
    {
        public PdfRole? Role { get; } = role;

        public Element? Parent { get; } = parent;

        /// <summary>What it holds, in order: a child; or on a page, from 0, a piece of content by its number there or, below 0, a link by its complement.</summary>
        public List<(int Page, int Number, Element? Child)> Kids { get; } = [];

        public string Says { get; set; } = "";

        public double WidthMm { get; set; }

        public double HeightMm { get; set; }

        public int Number { get; set; }
    }
}
