using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Tables;
using Hoopwright.Sheets.Tests.Drawings;

namespace Hoopwright.Sheets.Tests.Pages;

public sealed class PacketBookTests
{
    private static readonly Gen<string> Words = Gen.Int[1, 14].Array[0, 12].Select(lengths => string.Join(' ', lengths.Select(length => new string('m', length))));

    [Fact]
    public void Random_tables_keep_every_cell_on_the_page_and_clear_of_others() =>
        Gen.Int[1, 7].SelectMany(columns => Gen.Select(Words.Array[columns], Words.Array[columns].Array[0, 60])).Sample((names, rows) =>
        {
            Table table = new("t", "Trial", [.. names.Select((name, index) => new Column(name, 1 + index, index % 2 == 0 ? TextAlign.Start : TextAlign.End))], [.. rows.Select(row => TableRow.Of([.. row]))]);
            foreach (Paper paper in (Paper[])[Paper.Letter, Paper.A4])
            {
                ImmutableArray<PdfSheet> pages = new PacketBook(paper, "test").Chapter("One").Table(table).Pages();
                foreach (PdfSheet page in pages) Assert.Equal([], Collisions.In(page.Page));
                int written = rows.Sum(row => row.Sum(cell => cell.Count(letter => letter == 'm')));
                int heads = names.Sum(name => name.Count(letter => letter == 'm')) * pages.Length;
                Assert.Equal(written + heads, pages.Sum(page => page.Page.Marks.OfType<TextMark>().Where(text => text.Layer == "page").Sum(text => text.Text.Count(letter => letter == 'm'))));
            }
        }, iter: 100);

    [Fact]
    public void A_row_is_not_parted_by_the_end_of_a_page() =>
        Gen.Int[1, 30].Array[1, 40].Sample(heights =>
        {
            Table table = new("t", "Trial", [new Column("Row", 1), new Column("Lines", 1)],
                [.. heights.Select((height, row) => TableRow.Of("R" + row.ToString(CultureInfo.InvariantCulture), string.Join('\n', Enumerable.Range(0, height).Select(line => string.Create(CultureInfo.InvariantCulture, $"r{row} l{line}")))))]);
            ImmutableArray<PdfSheet> pages = new PacketBook(Paper.A4, "test").Chapter("One").Table(table).Pages();
            for (int row = 0; row < heights.Length; row++)
                Assert.Single(pages, page => page.Page.Marks.OfType<TextMark>().Any(text => text.Text.StartsWith(string.Create(CultureInfo.InvariantCulture, $"r{row} "), StringComparison.Ordinal)));
        }, iter: 60);

    [Fact]
    public void Contents_too_long_for_the_cover_go_on_after_it_and_still_name_the_right_pages()
    {
        PacketBook book = new PacketBook(Paper.Letter, "test").Cover("Many chapters", ["One line."]);
        for (int chapter = 1; chapter <= 120; chapter++) book.Chapter(Title(chapter)).Paragraph("Text.");
        ImmutableArray<PdfSheet> pages = book.Pages();
        int before = pages.TakeWhile(page => page.Bookmark is null).Count();
        Assert.True(before > 2);
        Assert.Equal(before + 120, pages.Length);
        (int Page, int Chapter)[] links = [.. pages.SelectMany(page => page.Links.IsDefault ? [] : page.Links).Select((link, index) => (link.PageNumber, index + 1))];
        Assert.Equal(120, links.Length);
        Assert.All(links, link => Assert.Equal(Title(link.Chapter), pages[link.Page - 1].Bookmark));
        foreach (PdfSheet page in pages) Assert.Equal([], Collisions.In(page.Page));

        static string Title(int chapter) => "Chapter " + chapter.ToString(CultureInfo.InvariantCulture);
    }

    [Fact]
    public void No_page_of_the_contents_has_but_a_few_lines()
    {
        bool isSetCloser = false;
        for (int chapters = 20; chapters <= 100; chapters++)
        {
            PacketBook book = new PacketBook(Paper.Letter, "test").Cover("Many chapters", ["One line."]);
            for (int chapter = 1; chapter <= chapters; chapter++) book.Chapter("Chapter").Paragraph("Text.");
            PdfSheet[] contents = [.. book.Pages().TakeWhile(page => page.Bookmark is null)];
            Assert.Equal(chapters, contents.Sum(page => page.Links.Length));
            Assert.All(contents, page => Assert.True(page.Links.Length >= 8, $"{chapters} lines leave {page.Links.Length} on a page"));
            Assert.All(contents, page => Assert.Equal([], Collisions.In(page.Page)));
            isSetCloser |= contents is [{ Links: [var line, ..] }] && line.Area.HeightMm < 5.7;
        }
        Assert.True(isSetCloser);
    }

    [Fact]
    public void No_line_of_a_paragraph_stands_alone_on_a_page() =>
        Gen.Select(Gen.Int[30, 52], Gen.Int[2, 12]).Sample((before, length) =>
        {
            PacketBook book = new PacketBook(Paper.Letter, "test").Chapter("One");
            for (int line = 0; line < before; line++) book.Paragraph("x");
            book.Paragraph(string.Join('\n', Enumerable.Repeat("line", length)));
            foreach (PdfSheet page in book.Pages())
                Assert.NotEqual(1, page.Page.Marks.OfType<TextMark>().Count(text => text.Text == "line"));
        }, iter: 200);

    [Fact]
    public void Building_the_pages_twice_gives_the_same() =>
        Assert.Equal(Pdf(Book(), 1), Pdf(Book(), 2));

    [Fact]
    public void A_drawing_has_a_page_of_its_own_turned_as_it_lies_and_at_its_own_size()
    {
        ImmutableArray<PdfSheet> pages = Book().Pages();
        Drawing drawing = SampleSheets.EndWall(Paper.Letter);
        PdfSheet page = Assert.Single(pages, page => page.Bookmark == drawing.Title);
        Assert.Equal((279.4, 215.9), (page.Page.WidthMm, page.Page.HeightMm));
        SheetBox Bow(Drawing on) => SheetBox.AroundAll(on.Marks.OfType<LineMark>().Where(mark => mark.Layer == "bow").SelectMany(mark => mark.Path.Flattened()));
        Assert.Equal(Bow(drawing).WidthMm, Bow(page.Page).WidthMm, 1e-9);
    }

    [Theory]
    [InlineData("wind up to 5.4 m/s, gusts up to 8.9 m/s, air from 4 °C, dry; 18000 mm and 0.402 m³ of concrete (6.14 kN·m)")]
    [InlineData("wind up to 12 mph, gusts up to 20 mph, air from 40 °F, dry; 12 ft and 14.2 ft³ of concrete, 6-1/2 in deep")]
    public void A_number_is_never_parted_from_its_unit(string text)
    {
        for (int widthMm = 24; widthMm < 200; widthMm += 3)
        {
            ImmutableArray<string> lines = TextSetter.Lines(text, widthMm, 3.4, Fonts.LetterWeight.Regular);
            Assert.All(lines, line => Assert.DoesNotMatch(@"^\(?(m/s|mm|m³|°C|°F|kN·m|mph|ft|ft³|in)\b", line));
            Assert.Equal(Fonts.TapeFractions.Set(text), string.Join(" ", lines));
        }
    }

    [Fact]
    public void A_caution_is_one_frame_with_a_brick_bar_at_its_left()
    {
        Drawing page = Book().Pages()[1].Page;
        FillMark bar = Assert.Single(page.Marks.OfType<FillMark>(), fill => fill.Colour == Ink.Brick);
        SheetBox frame = SheetBox.AroundAll(Assert.Single(page.Marks.OfType<LineMark>(), line => line.Path.Closed).Path.Flattened());
        SheetBox box = SheetBox.AroundAll(bar.Path.Flattened());
        Assert.Equal((frame.LeftMm, frame.TopMm, frame.BottomMm), (box.LeftMm, box.TopMm, box.BottomMm));
    }

    [Fact]
    public void A_row_leads_to_the_page_of_what_it_names_and_writes_its_number_where_it_is_asked_for()
    {
        Drawing drawing = SampleSheets.EndWall(Paper.Letter);
        Table table = new("t", "Where it stands", [new Column("What", 1), new Column("Page", 1)],
            [TableRow.Of("the drawing", PacketBook.PageCell) with { LeadsTo = "end" }, TableRow.Of("a chapter", PacketBook.PageCell) with { LeadsTo = "two" }, TableRow.Of("nowhere", PacketBook.PageCell) with { LeadsTo = "none" }])
        { Drawing = "end" };
        ImmutableArray<PdfSheet> pages = new PacketBook(Paper.Letter, "test") { Drawings = ImmutableDictionary<string, string>.Empty.Add("end", "1 of 1") }
            .Cover("Test", []).Chapter("One").Table(table).Figure(drawing, "end").Chapter("Two", "two").Pages();
        Assert.Equal([3, 4], pages[1].Links.Select(link => link.PageNumber));
        string[] texts = [.. pages[1].Page.Marks.OfType<TextMark>().Select(text => text.Text)];
        Assert.Contains("Sheet 1 of 1", texts);
        Assert.Contains("3", texts);
        Assert.Contains("4", texts);
        Assert.DoesNotContain(PacketBook.PageCell, texts);
        Assert.Equal(2, pages[1].Tags.Count(tag => tag.Opens == PdfRole.Link));
        // What is opened is closed.
        Assert.Equal(pages.Sum(page => page.Tags.Count(tag => tag.Opens is not null)), pages.Sum(page => page.Tags.Count(tag => tag.Opens is null)));
    }

    private static PacketBook Book() => new PacketBook(Paper.Letter, "Invented tunnel").Cover("Invented tunnel", ["For tests."])
        .Chapter("One").Caution("Wind", "Film in wind pulls hard. Local code and a licensed engineer decide.").Paragraph("Text.").Figure(SampleSheets.EndWall(Paper.Letter));

    private static byte[] Pdf(PacketBook book, int times)
    {
        ImmutableArray<PdfSheet> pages = book.Pages();
        for (int time = 1; time < times; time++) pages = book.Pages();
        return PdfWriter.Write(pages, new PdfDetails("Invented tunnel", "For tests", new DateTimeOffset(2026, 3, 1, 0, 0, 0, TimeSpan.Zero)));
    }
}
