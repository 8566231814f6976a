using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Pages;

/// <summary>
/// Sets the pages of a document one after another: cover, chapters with text and tables, drawings. Contents, page numbers
/// and bookmarks follow from what was set.
/// </summary>
public sealed class PacketBook
{
    private const double MarginMm = 18, BodyEmMm = 3.9, LeadMm = 5.2, SmallEmMm = 3.5, SmallLeadMm = 4.6, HeadEmMm = 5.6, TitleEmMm = 10;
    private const double CellPadMm = 1.2;
    private const string Layer = "page";

    private readonly Paper paper;
    private readonly string running;
    private readonly List<Sheet> sheets = [];
    private readonly List<(string Title, int Page, bool IsChapter)> entries = [];
    private double topMm;

    /// <summary>A new document.</summary>
    /// <param name="paper">The paper it is set for.</param>
    /// <param name="running">What stands at the foot of every page, such as the tunnel's name.</param>
    public PacketBook(Paper paper, string running)
    {
        this.paper = paper;
        this.running = running;
    }

    private double FloorMm => paper.LongMm - MarginMm - 8;

    private double TextWidthMm => paper.ShortMm - (2 * MarginMm);

    private Sheet Current => sheets[^1];

    /// <summary>The first page, with the place for the contents.</summary>
    public PacketBook Cover(string title, ImmutableArray<string> lines)
    {
        NewPage();
        topMm = 46;
        foreach (string line in TextSetter.Lines(title, TextWidthMm, TitleEmMm, LetterWeight.Bold)) Line(line, TitleEmMm, 13, LetterWeight.Bold);
        topMm += 3;
        foreach (string line in lines) Paragraph(line);
        topMm += 6;
        Line("Contents", HeadEmMm, 9, LetterWeight.Bold);
        Current.ContentsTopMm = topMm;
        return this;
    }

    /// <summary>Begins a chapter on a new page.</summary>
    public PacketBook Chapter(string title)
    {
        NewPage();
        entries.Add((title, sheets.Count, true));
        Current.Bookmark = title;
        Line(title, 7.4, 11, LetterWeight.Bold);
        return this;
    }

    /// <summary>A heading within a chapter.</summary>
    public PacketBook Heading(string title)
    {
        HeadingOver(title, 12);
        return this;
    }

    /// <summary>A paragraph.</summary>
    public PacketBook Paragraph(string text)
    {
        foreach (string line in TextSetter.Lines(text, TextWidthMm, BodyEmMm, LetterWeight.Regular))
        {
            Need(LeadMm);
            Line(line, BodyEmMm, LeadMm, LetterWeight.Regular);
        }
        topMm += 1.6;
        return this;
    }

    /// <summary>A list of points.</summary>
    public PacketBook Points(IEnumerable<string> points)
    {
        foreach (string point in points)
        {
            ImmutableArray<string> lines = TextSetter.Lines(point, TextWidthMm - 6, BodyEmMm, LetterWeight.Regular);
            Need(lines.Length * LeadMm);
            Pen().Fill(SheetPath.Circle(new SheetPoint(MarginMm + 1.6, topMm + (LeadMm / 2)), 0.6), Ink.Black);
            foreach (string line in lines) Line(line, BodyEmMm, LeadMm, LetterWeight.Regular, 6);
            topMm += 1;
        }
        return this;
    }

    /// <summary>A caution: what can happen, what to do, who decides.</summary>
    public PacketBook Caution(string title, string text)
    {
        ImmutableArray<string> lines = TextSetter.Lines(text, TextWidthMm - 10, BodyEmMm, LetterWeight.Regular);
        double heightMm = (lines.Length * LeadMm) + LeadMm + 5;
        Need(heightMm + 2);
        SheetBox frame = new(MarginMm, topMm, MarginMm + TextWidthMm, topMm + heightMm);
        Pen().Path(SheetPath.Rectangle(frame), LineRole.Dimension).Fill(SheetPath.Rectangle(frame with { RightMm = frame.LeftMm + 1.8 }), Ink.Brick);
        topMm += 2.5;
        Line(title, BodyEmMm, LeadMm, LetterWeight.Bold, 6);
        foreach (string line in lines) Line(line, BodyEmMm, LeadMm, LetterWeight.Regular, 6);
        topMm = frame.BottomMm + 3.5;
        return this;
    }

    /// <summary>A table. Its headings are repeated on every page; a row is never parted unless it is taller than a page.</summary>
    public PacketBook Table(Table table)
    {
        double[] widthsMm = Widths(table);
        // A heading stays with the head of its table and the first row.
        double firstMm = table.Rows.IsEmpty ? 0 : HeightMm(Wrapped(table.Rows[0], widthsMm));
        HeadingOver(table.Title, HeightMm(Wrapped(Head(table), widthsMm)) + firstMm);
        TableHead(table, widthsMm);
        foreach (TableRow row in table.Rows)
        {
            ImmutableArray<ImmutableArray<string>> cells = Wrapped(row, widthsMm);
            double heightMm = HeightMm(cells);
            if (topMm + heightMm > FloorMm)
            {
                NewPage();
                TableHead(table, widthsMm);
            }
            if (row.IsTotal) Pen().Line(new SheetPoint(MarginMm, topMm), new SheetPoint(MarginMm + TextWidthMm, topMm), LineRole.Outline);
            Row(table, cells, widthsMm, row.IsTotal ? LetterWeight.Bold : LetterWeight.Regular);
            topMm += heightMm;
            Pen().Line(new SheetPoint(MarginMm, topMm), new SheetPoint(MarginMm + TextWidthMm, topMm), LineRole.Texture, Ink.Zinc);
        }
        topMm += 4;
        return this;
    }

    /// <summary>A drawing on a page of its own, the page turned as the drawing lies.</summary>
    public PacketBook Figure(Drawing drawing)
    {
        bool landscape = drawing.WidthMm > drawing.HeightMm;
        (double wide, double high) = landscape ? (paper.LongMm, paper.ShortMm) : (paper.ShortMm, paper.LongMm);
        sheets.Add(new Sheet(wide, high) { Bookmark = drawing.Title, Description = drawing.Description });
        entries.Add((drawing.Title, sheets.Count, false));
        foreach (Mark mark in drawing.Marks) Current.Marks.Add(Moved(mark, (wide - drawing.WidthMm) / 2, Paper.DrawingMarginMm));
        topMm = double.MaxValue;
        return this;
    }

    /// <summary>The finished pages.</summary>
    public ImmutableArray<PdfSheet> Pages()
    {
        ImmutableArray<PdfLink> links = Contents();
        var pages = ImmutableArray.CreateBuilder<PdfSheet>(sheets.Count);
        for (int index = 0; index < sheets.Count; index++)
        {
            Sheet sheet = sheets[index];
            List<Mark> marks = [.. sheet.Marks];
            Pen foot = new("footer", marks);
            double baseMm = sheet.HighMm - 7;
            foot.Text(new SheetPoint(10, baseMm), Shortened(running, 70));
            foot.Text(new SheetPoint(sheet.WideMm / 2, baseMm), "Do not scale from a screen; check the scale bar", TextAlign.Middle);
            foot.Text(new SheetPoint(sheet.WideMm - 10, baseMm), string.Create(CultureInfo.InvariantCulture, $"{index + 1} of {sheets.Count}"), TextAlign.End);
            pages.Add(new PdfSheet(
                new Drawing
                {
                    Title = sheet.Bookmark ?? running,
                    Description = sheet.Description,
                    WidthMm = sheet.WideMm,
                    HeightMm = sheet.HighMm,
                    Marks = [.. marks],
                },
                sheet.Bookmark, index == 0 ? links : []));
        }
        return pages.MoveToImmutable();
    }

    private static string Shortened(string text, double widthMm)
    {
        Typeface face = Typeface.Of(LetterWeight.Regular);
        double emMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm);
        if (face.WidthMm(text, emMm) <= widthMm) return text;
        int keep = text.Length;
        while (keep > 0 && face.WidthMm(text[..keep] + "…", emMm) > widthMm) keep--;
        return text[..keep].TrimEnd() + "…";
    }

    private static Mark Moved(Mark mark, double rightMm, double downMm) => mark switch
    {
        LineMark line => line with { Path = line.Path.Moved(rightMm, downMm) },
        FillMark fill => fill with { Path = fill.Path.Moved(rightMm, downMm) },
        HatchMark hatch => hatch with { Path = hatch.Path.Moved(rightMm, downMm) },
        TextMark text => text with { Anchor = text.Anchor.Moved(rightMm, downMm) },
        _ => mark,
    };

    private ImmutableArray<PdfLink> Contents()
    {
        if (sheets.Count == 0 || sheets[0].ContentsTopMm is not { } atMm) return [];
        List<Mark> marks = sheets[0].Marks;
        Pen pen = new("contents", marks);
        var links = ImmutableArray.CreateBuilder<PdfLink>();
        // Many drawings run in two columns so that the list stays on the cover.
        double lead = Math.Min(LeadMm + 0.6, (FloorMm - atMm) / Math.Max(1, entries.Count));
        foreach ((string title, int page, bool isChapter) in entries)
        {
            double indent = isChapter ? 0 : 6;
            LetterWeight weight = isChapter ? LetterWeight.Bold : LetterWeight.Regular;
            pen.Text(new SheetPoint(MarginMm + indent, atMm + 4), Shortened(title, TextWidthMm - 26), TextAlign.Start, 2.6, weight);
            pen.Text(new SheetPoint(MarginMm + TextWidthMm, atMm + 4), page.ToString(CultureInfo.InvariantCulture), TextAlign.End, 2.6, weight);
            links.Add(new PdfLink(new SheetBox(MarginMm, atMm, MarginMm + TextWidthMm, atMm + lead), page));
            atMm += lead;
        }
        return links.ToImmutable();
    }

    private void NewPage()
    {
        sheets.Add(new Sheet(paper.ShortMm, paper.LongMm));
        topMm = MarginMm;
    }

    private void Need(double heightMm)
    {
        if (sheets.Count == 0 || topMm + heightMm > FloorMm) NewPage();
    }

    private Pen Pen() => new(Layer, Current.Marks);

    private void Line(string text, double emMm, double leadMm, LetterWeight weight, double indentMm = 0)
    {
        Write(text, new SheetPoint(MarginMm + indentMm, topMm + (leadMm * 0.72)), emMm, weight, TextAlign.Start);
        topMm += leadMm;
    }

    private void Write(string text, SheetPoint anchor, double emMm, LetterWeight weight, TextAlign align)
    {
        if (text.Length > 0) Current.Marks.Add(new TextMark(Layer, anchor, text) { EmMm = emMm, Weight = weight, Align = align });
    }

    private double[] Widths(Table table)
    {
        double sum = table.Columns.Sum(column => column.Share);
        return [.. table.Columns.Select(column => TextWidthMm * column.Share / sum)];
    }

    private static ImmutableArray<ImmutableArray<string>> Wrapped(TableRow row, double[] widthsMm) =>
        [.. row.Cells.Select((cell, index) => TextSetter.Lines(cell, widthsMm[index] - (2 * CellPadMm), SmallEmMm, row.IsTotal ? LetterWeight.Bold : LetterWeight.Regular))];

    private static TableRow Head(Table table) => new([.. table.Columns.Select(column => column.Name)], true);

    private static double HeightMm(ImmutableArray<ImmutableArray<string>> cells) => (cells.Max(cell => cell.Length) * SmallLeadMm) + (2 * CellPadMm) - 0.6;

    private void HeadingOver(string title, double followingMm)
    {
        const double LeadMm = 8;
        ImmutableArray<string> lines = TextSetter.Lines(title, TextWidthMm, HeadEmMm, LetterWeight.Bold);
        Need((lines.Length * LeadMm) + 3 + followingMm);
        topMm += 3;
        foreach (string line in lines) Line(line, HeadEmMm, LeadMm, LetterWeight.Bold);
    }

    private void TableHead(Table table, double[] widthsMm)
    {
        ImmutableArray<ImmutableArray<string>> cells = Wrapped(Head(table), widthsMm);
        double heightMm = HeightMm(cells);
        Pen().Fill(SheetPath.Rectangle(new SheetBox(MarginMm, topMm, MarginMm + TextWidthMm, topMm + heightMm)), Ink.ZincTint);
        Row(table, cells, widthsMm, LetterWeight.Bold);
        topMm += heightMm;
        Pen().Line(new SheetPoint(MarginMm, topMm), new SheetPoint(MarginMm + TextWidthMm, topMm), LineRole.Outline);
    }

    private void Row(Table table, ImmutableArray<ImmutableArray<string>> cells, double[] widthsMm, LetterWeight weight)
    {
        double leftMm = MarginMm;
        for (int column = 0; column < cells.Length; column++)
        {
            TextAlign align = table.Columns[column].Align;
            double anchorMm = align switch
            {
                TextAlign.Start => leftMm + CellPadMm,
                TextAlign.Middle => leftMm + (widthsMm[column] / 2),
                TextAlign.End => leftMm + widthsMm[column] - CellPadMm,
            };
            double lineMm = topMm + CellPadMm;
            foreach (string line in cells[column])
            {
                Write(line, new SheetPoint(anchorMm, lineMm + (SmallLeadMm * 0.68)), SmallEmMm, weight, align);
                lineMm += SmallLeadMm;
            }
            leftMm += widthsMm[column];
        }
    }

    /// <summary>A page being set.</summary>
    private sealed class Sheet(double wideMm, double highMm)
    {
        public double WideMm { get; } = wideMm;

        public double HighMm { get; } = highMm;

        public List<Mark> Marks { get; } = [];

        public string? Bookmark { get; set; }

        public string Description { get; set; } = "";

        public double? ContentsTopMm { get; set; }
    }
}
