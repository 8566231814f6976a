using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Pages;

/// <summary>
/// Sets the pages of a document one after another: cover, chapters with text and tables, drawings. Contents, page numbers
/// and bookmarks follow from what was set.
/// </summary>
public sealed partial class PacketBook
{
    private const double SmallEmMm = 3.5, SmallLeadMm = 4.6, TitleEmMm = 10;
    private const int CoverLines = 4;
    private const string Layer = "page";

    private readonly Paper paper;
    private readonly string running;
    private readonly CrewWords words;
    private readonly bool isClose;
    private readonly List<Sheet> sheets = [];
    private readonly List<(string Title, int Page, bool IsChapter)> entries = [];
    private readonly Dictionary<string, int> places = new(StringComparer.Ordinal);
    private double topMm;
    private bool isInChapter;

    /// <summary>A new document.</summary>
    /// <param name="paper">The paper it is set for.</param>
    /// <param name="running">What stands at the foot of every page, such as the tunnel's name.</param>
    /// <param name="words">The language of contents and footers; English when null.</param>
    /// <param name="isClose">True to set a full page as close as a card, for what must stand on one.</param>
    public PacketBook(Paper paper, string running, CrewWords? words = null, bool isClose = false)
    {
        this.isClose = isClose || paper.IsCard;
        this.paper = paper;
        this.running = running;
        this.words = words ?? CrewWords.English;
    }

    /// <summary>Drawings that the document will have, each by its name with its number as in the title block: rows of tables lead to them.</summary>
    internal ImmutableDictionary<string, string> Drawings { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>The paper of its drawings; that of the pages when null.</summary>
    internal Paper? DrawingPaper { get; init; }

    private double MarginMm => paper.MarginMm;

    private double FloorMm => paper.LongMm - (paper.IsCard ? 13 : MarginMm + 8);

    // A card is read at arm's length and must hold a step.
    private double BodyEmMm => isClose ? 3.5 : 3.9;

    private double LeadMm => isClose ? 4.4 : 5.2;

    private double HeadEmMm => isClose ? 4.4 : 5.6;

    private double HeadingLeadMm => isClose ? 6 : 8;

    private double HeadingGapMm => isClose ? 1.6 : 3;

    private double TextWidthMm => paper.ShortMm - (2 * MarginMm);

    private Sheet Current => sheets[^1];

    /// <summary>The first page, with the place for the contents.</summary>
    public PacketBook Cover(string title, ImmutableArray<string> lines)
    {
        NewPage();
        topMm = 46;
        Open(PdfRole.Heading1);
        foreach (string line in TextSetter.Lines(title, TextWidthMm, TitleEmMm, LetterWeight.Bold, CoverLines)) Line(line, TitleEmMm, 13, LetterWeight.Bold);
        Close();
        topMm += 3;
        // The cover holds the contents too, so none of its texts may fill it.
        foreach (string line in lines) Paragraph(string.Join('\n', TextSetter.Lines(line, TextWidthMm, BodyEmMm, LetterWeight.Regular, CoverLines)));
        topMm += 6;
        Open(PdfRole.Heading2);
        Line(words.Say("Contents"), HeadEmMm, 9, LetterWeight.Bold);
        Close();
        Current.ContentsTopMm = topMm;
        return this;
    }

    /// <summary>Begins a chapter on a new page.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="name">By what name rows of tables lead to it; null for none.</param>
    public PacketBook Chapter(string title, string? name = null)
    {
        if (isInChapter) Close();
        NewPage();
        Open(PdfRole.Section);
        isInChapter = true;
        entries.Add((title, sheets.Count, true));
        if (name is not null) places.TryAdd(name, sheets.Count);
        Current.Bookmark = title;
        (double emMm, double leadMm) = isClose ? (5.8, 8) : (7.4, 11);
        Open(PdfRole.Heading1);
        foreach (string line in TextSetter.Lines(title, TextWidthMm, emMm, LetterWeight.Bold)) Line(line, emMm, leadMm, LetterWeight.Bold);
        Close();
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
        ImmutableArray<string> lines = TextSetter.Lines(text, TextWidthMm, BodyEmMm, LetterWeight.Regular);
        Open(PdfRole.Paragraph);
        for (int line = 0; line < lines.Length; line++)
        {
            // No line of a paragraph stands alone at the foot or the head of a page.
            int together = line == 0 ? (lines.Length <= 3 ? lines.Length : 2) : line == lines.Length - 2 ? 2 : 1;
            Need(together * LeadMm);
            Line(lines[line], BodyEmMm, LeadMm, LetterWeight.Regular);
        }

        Close();
        topMm += 1.6;
        return this;
    }

    /// <summary>A short title over a list of points, which stays with the first of them.</summary>
    /// <param name="title">The title.</param>
    /// <param name="first">The first point.</param>
    public PacketBook Lead(string title, string first)
    {
        ImmutableArray<string> lines = TextSetter.Lines(title, TextWidthMm, BodyEmMm, LetterWeight.Bold);
        Need((lines.Length + TextSetter.Lines(first, TextWidthMm - 6, BodyEmMm, LetterWeight.Regular).Length) * LeadMm);
        Open(PdfRole.Paragraph);
        foreach (string line in lines) Line(line, BodyEmMm, LeadMm, LetterWeight.Bold);
        Close();
        return this;
    }

    /// <summary>A list of points.</summary>
    public PacketBook Points(IEnumerable<string> points)
    {
        ImmutableArray<ImmutableArray<string>> all = [.. points.Select(point => TextSetter.Lines(point, TextWidthMm - 6, BodyEmMm, LetterWeight.Regular))];
        Open(PdfRole.List);
        for (int point = 0; point < all.Length; point++)
        {
            ImmutableArray<string> lines = all[point];
            // The last two points stay together, so that none begins a page alone.
            double nextMm = point == all.Length - 2 ? (all[point + 1].Length * LeadMm) + 1 : 0;
            Need((lines.Length * LeadMm) + nextMm);
            Pen().Fill(SheetPath.Circle(new SheetPoint(MarginMm + 1.6, topMm + (LeadMm / 2)), 0.6), Ink.Black);
            Open(PdfRole.ListItem);
            Open(PdfRole.ListBody);
            foreach (string line in lines) Line(line, BodyEmMm, LeadMm, LetterWeight.Regular, 6);
            Close();
            Close();
            topMm += 1;
        }
        Close();
        return this;
    }

    /// <summary>A caution: what can happen, what to do, who decides.</summary>
    public PacketBook Caution(string title, string text)
    {
        ImmutableArray<string> lines = TextSetter.Lines(text, TextWidthMm - 10, BodyEmMm, LetterWeight.Regular);
        double heightMm = (lines.Length * LeadMm) + LeadMm + (isClose ? 4 : 5);
        Need(heightMm + 2);
        SheetBox frame = new(MarginMm, topMm, MarginMm + TextWidthMm, topMm + heightMm);
        Pen().Path(SheetPath.Rectangle(frame), LineRole.Dimension).Fill(SheetPath.Rectangle(frame with { RightMm = frame.LeftMm + 1.8 }), Ink.Brick);
        topMm += 2.5;
        Open(PdfRole.Section);
        Open(PdfRole.Paragraph);
        Line(title, BodyEmMm, LeadMm, LetterWeight.Bold, 6);
        Close();
        Open(PdfRole.Paragraph);
        foreach (string line in lines) Line(line, BodyEmMm, LeadMm, LetterWeight.Regular, 6);
        Close();
        Close();
        topMm = frame.BottomMm + (isClose ? 2 : 3.5);
        return this;
    }

    /// <summary>A line to be signed, with a box to tick.</summary>
    /// <param name="what">What is signed for.</param>
    /// <param name="by">The word before the name.</param>
    public PacketBook Signature(string what, string by)
    {
        ImmutableArray<string> lines = TextSetter.Lines(what, TextWidthMm - 12, BodyEmMm, LetterWeight.Bold);
        double heightMm = (lines.Length * LeadMm) + 14;
        Need(heightMm + 3);
        SheetBox frame = new(MarginMm, topMm, MarginMm + TextWidthMm, topMm + heightMm);
        Pen().Path(SheetPath.Rectangle(frame), LineRole.Outline).Path(SheetPath.Rectangle(new SheetBox(MarginMm + 3, topMm + 3, MarginMm + 7, topMm + 7)), LineRole.Outline);
        topMm += 2;
        Open(PdfRole.Paragraph);
        foreach (string line in lines) Line(line, BodyEmMm, LeadMm, LetterWeight.Bold, 10);
        double lineMm = frame.BottomMm - 4;
        Write(by, new SheetPoint(MarginMm + 3, lineMm - 1), SmallEmMm, LetterWeight.Regular, TextAlign.Start);
        Close();
        Pen().Line(new SheetPoint(MarginMm + 3 + Typeface.Of(LetterWeight.Regular).WidthMm(by, SmallEmMm) + 2, lineMm), new SheetPoint(frame.RightMm - 3, lineMm), LineRole.Dimension);
        topMm = frame.BottomMm + 3;
        return this;
    }

    /// <summary>A drawing on a page of its own, the page turned as the drawing lies.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="name">By what name rows of tables lead to it; null for none.</param>
    public PacketBook Figure(Drawing drawing, string? name = null)
    {
        bool landscape = drawing.WidthMm > drawing.HeightMm;
        Paper on = DrawingPaper ?? paper;
        (double wide, double high) = landscape ? (on.LongMm, on.ShortMm) : (on.ShortMm, on.LongMm);
        sheets.Add(new Sheet(wide, high) { Bookmark = drawing.Title, Description = drawing.Description, IsInChapter = isInChapter, Label = drawing.Sheet is { } number ? words.Fill("Sheet {0}", number) : null });
        if (name is not null) places.TryAdd(name, sheets.Count);
        // Of drawings in a row the contents name the first.
        Match row = Row().Match(drawing.Title);
        if (!row.Success || row.Groups["first"].Value == "1") entries.Add((row.Success ? words.Fill("{0}, {1} sheets", row.Groups["name"].Value, row.Groups["all"].Value) : drawing.Title, sheets.Count, false));
        double rightMm = (wide - drawing.WidthMm) / 2;
        // The lines are one figure told in words; its texts follow and are read out as they stand.
        Open(PdfRole.Figure, $"{drawing.Title}. {drawing.Description}");
        foreach (Mark mark in drawing.Marks.Where(mark => mark is not TextMark)) Current.Marks.Add(Moved(mark, rightMm, Paper.DrawingMarginMm));
        Close();
        TextMark? above = null;
        foreach (TextMark text in drawing.Marks.OfType<TextMark>().Where(text => text.Text.Length > 0))
        {
            if (above is null || !GoesOn(above, text))
            {
                if (above is not null) Close();
                Open(PdfRole.Paragraph);
            }
            Current.Marks.Add(Moved(text, rightMm, Paper.DrawingMarginMm));
            above = text;
        }
        if (above is not null) Close();
        topMm = double.MaxValue;
        return this;
    }

    /// <summary>Whether a text of a drawing is the next line of the one before it.</summary>
    private static bool GoesOn(TextMark above, TextMark text) =>
        text.Turn.Radians == 0 && above.Turn.Radians == 0 && text.Layer == above.Layer && text.Align == above.Align && text.Weight == above.Weight && text.EmMm == above.EmMm
        && Math.Abs(text.Anchor.XMm - above.Anchor.XMm) < 1e-6 && text.Anchor.YMm - above.Anchor.YMm is var down && down > 0 && down < 1.8 * text.EmMm;

    [GeneratedRegex("^(?<name>.+), (?<first>[0-9]+) (?:of|de) (?<all>[0-9]+)$", RegexOptions.CultureInvariant)]
    private static partial Regex Row();

    private static string Shortened(string text, double widthMm) => TextSetter.Shortened(text, widthMm, Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm), LetterWeight.Regular);

    private static Mark Moved(Mark mark, double rightMm, double downMm) => mark switch
    {
        LineMark line => line with { Path = line.Path.Moved(rightMm, downMm) },
        FillMark fill => fill with { Path = fill.Path.Moved(rightMm, downMm) },
        HatchMark hatch => hatch with { Path = hatch.Path.Moved(rightMm, downMm) },
        TextMark text => text with { Anchor = text.Anchor.Moved(rightMm, downMm) },
        _ => mark,
    };

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

    /// <summary>Begins a part of the document before whatever is set next.</summary>
    private void Open(PdfRole role, string? says = null) => Current.Tags.Add(new PdfTag(Current.Marks.Count, role, says));

    /// <summary>Ends the part that was begun last.</summary>
    private void Close() => Current.Tags.Add(new PdfTag(Current.Marks.Count, null));

    private void HeadingOver(string title, double followingMm, string? beside = null)
    {
        Need(HeadingMm(title) + followingMm);
        topMm += HeadingGapMm;
        Current.Places.Add(new PdfBookmark(title, topMm));
        Open(PdfRole.Heading2);
        double firstMm = topMm;
        foreach (string line in HeadingLines(title)) Line(line, HeadEmMm, HeadingLeadMm, LetterWeight.Bold);
        Close();
        if (beside is not null && Typeface.Of(LetterWeight.Bold).WidthMm(HeadingLines(title)[0], HeadEmMm) + Typeface.Of(LetterWeight.Regular).WidthMm(beside, SmallEmMm) + 6 < TextWidthMm)
        {
            Open(PdfRole.Paragraph);
            Write(beside, new SheetPoint(MarginMm + TextWidthMm, firstMm + (HeadingLeadMm * 0.72)), SmallEmMm, LetterWeight.Regular, TextAlign.End);
            Close();
        }
    }

    private double HeadingMm(string title) => (HeadingLines(title).Length * HeadingLeadMm) + HeadingGapMm;

    private ImmutableArray<string> HeadingLines(string title) => TextSetter.Lines(title, TextWidthMm, HeadEmMm, LetterWeight.Bold);

    /// <summary>A page being set.</summary>
    private sealed class Sheet(double wideMm, double highMm)
    {
        public double WideMm { get; } = wideMm;

        public double HighMm { get; } = highMm;

        public List<Mark> Marks { get; } = [];

        public List<PdfTag> Tags { get; } = [];

        public List<PdfBookmark> Places { get; } = [];

        public List<(SheetBox Area, string To, int? PageMark)> Leads { get; } = [];

        public string? Bookmark { get; set; }

        public bool IsInChapter { get; init; }

        public string? Label { get; init; }

        public string Description { get; set; } = "";

        public double? ContentsTopMm { get; set; }

        public Sheet Copy()
        {
            Sheet copy = new(WideMm, HighMm) { Bookmark = Bookmark, Description = Description, ContentsTopMm = ContentsTopMm, IsInChapter = IsInChapter, Label = Label };
            copy.Marks.AddRange(Marks);
            copy.Tags.AddRange(Tags);
            copy.Places.AddRange(Places);
            copy.Leads.AddRange(Leads);
            return copy;
        }
    }
}
