using System.Collections.Immutable;
using System.Text;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Tests.Drawings;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;

namespace Hoopwright.Sheets.Tests.Pdf;

/// <summary>The files are read back by another reader, PdfPig.</summary>
public sealed class PdfWriterTests
{
    [Fact]
    public void Two_writes_give_identical_bytes() => Assert.Equal(SampleSheetTests.SamplePdf(), SampleSheetTests.SamplePdf());

    [Fact]
    public void Other_content_or_another_date_gives_another_identity()
    {
        string[] identities = [.. ((string[])["one", "two"]).SelectMany(text => ((int[])[1, 2]).Select(day => Identity(Bytes(text, day))))];
        Assert.Equal(4, identities.Distinct().Count());
        Assert.Equal(identities[0], Identity(Bytes("one", 1)));
    }

    [Fact]
    public void Pages_have_the_size_of_their_drawings_in_points()
    {
        using PdfDocument pdf = PdfDocument.Open(SampleSheetTests.SamplePdf());
        Drawing[] drawings = [SampleSheets.EndWall(Paper.Letter), SampleSheets.Metric(Paper.A4)];
        Assert.Equal(2, pdf.NumberOfPages);
        foreach ((Page page, Drawing drawing) in pdf.GetPages().Zip(drawings))
        {
            Assert.Equal(drawing.WidthMm * 72 / 25.4, page.Width, 0.01);
            Assert.Equal(drawing.HeightMm * 72 / 25.4, page.Height, 0.01);
        }
    }

    [Fact]
    public void Texts_come_out_as_they_went_in_and_where_they_were_put()
    {
        Drawing drawing = SampleSheets.Metric(Paper.A4);
        using PdfDocument pdf = PdfDocument.Open(PdfWriter.Write([new PdfSheet(drawing)], new PdfDetails("Trial", "", default)));
        Page page = pdf.GetPage(1);
        string letters = string.Concat(page.Letters.Select(letter => letter.Value));
        Assert.Equal(string.Concat(drawing.Marks.OfType<TextMark>().Select(text => text.Text)), letters);
        int at = 0;
        foreach (TextMark text in drawing.Marks.OfType<TextMark>())
        {
            Letter first = page.Letters[at], last = page.Letters[at + text.Text.Length - 1];
            SheetPoint start = new(first.StartBaseLine.X * 25.4 / 72, drawing.HeightMm - (first.StartBaseLine.Y * 25.4 / 72));
            SheetPoint end = new(last.EndBaseLine.X * 25.4 / 72, drawing.HeightMm - (last.EndBaseLine.Y * 25.4 / 72));
            SheetPoint expected = text.Align switch
            {
                TextAlign.Start => start,
                TextAlign.Middle => start.Towards(end, 0.5),
                TextAlign.End => end,
            };
            Assert.True(expected.DistanceMm(text.Anchor) < 0.05, $"{text.Text}: {expected} is not {text.Anchor}");
            Assert.Equal(text.Turn.Radians, start.DirectionRad(end), 0.01);
            at += text.Text.Length;
        }
    }

    [Fact]
    public void Only_our_own_lettering_is_used_and_a_page_without_drawing_takes_little_more_than_its_two_files()
    {
        byte[] bytes = SampleSheetTests.SamplePdf();
        using PdfDocument pdf = PdfDocument.Open(bytes);
        string[] fonts = [.. pdf.GetPages().SelectMany(page => page.Letters).Select(letter => letter.FontName!).Distinct().Order()];
        Assert.Equal(["HoopwrightLetters-Bold", "HoopwrightLetters-Regular"], fonts);
        Assert.True(bytes.Length < 60_000, "two drawings and both faces");
    }

    [Fact]
    public void An_arc_keeps_to_its_circle_as_another_reader_has_it()
    {
        DrawingBuilder sheet = new("Trial", "", 200, 200);
        SheetPoint centre = new(100, 90);
        sheet.On("any").Path(SheetPath.Arc(centre, 80, Angle.FromDegrees(20), Angle.FromDegrees(-200)), LineRole.Outline);
        using PdfDocument pdf = PdfDocument.Open(PdfWriter.Write([new PdfSheet(sheet.Build())], new PdfDetails("Trial", "", default)));
        PdfPath arc = pdf.GetPage(1).Paths.Single(path => !path.IsFilled);
        PdfSubpath.CubicBezierCurve[] curves = [.. arc.Single().Commands.OfType<PdfSubpath.CubicBezierCurve>()];
        Assert.Equal(3, curves.Length);
        foreach (PdfSubpath.CubicBezierCurve curve in curves)
        {
            for (double part = 0; part <= 1; part += 0.125)
            {
                double rest = 1 - part, a = rest * rest * rest, b = 3 * rest * rest * part, c = 3 * rest * part * part, d = part * part * part;
                double x = (a * curve.StartPoint.X) + (b * curve.FirstControlPoint.X) + (c * curve.SecondControlPoint.X) + (d * curve.EndPoint.X);
                double y = (a * curve.StartPoint.Y) + (b * curve.FirstControlPoint.Y) + (c * curve.SecondControlPoint.Y) + (d * curve.EndPoint.Y);
                Assert.Equal(80, centre.DistanceMm(new SheetPoint(x * 25.4 / 72, 200 - (y * 25.4 / 72))), 0.03);
            }
        }
        SheetPoint last = centre.Away(80, -Math.PI);
        Assert.Equal(last.XMm, curves[^1].EndPoint.X * 25.4 / 72, 0.002);
        Assert.Equal(200 - last.YMm, curves[^1].EndPoint.Y * 25.4 / 72, 0.002);
    }

    [Fact]
    public void The_file_tells_its_title_language_date_and_bookmarks()
    {
        using PdfDocument pdf = PdfDocument.Open(SampleSheetTests.SamplePdf());
        Assert.Equal("Sample sheets", pdf.Information.Title);
        Assert.Equal("Hoopwright", pdf.Information.Creator);
        Assert.Equal(new DateTimeOffset(2026, 3, 1, 12, 0, 0, TimeSpan.Zero), pdf.Information.GetCreatedDateTimeOffset());
        Assert.Equal(new DateTimeOffset(2026, 3, 1, 12, 0, 0, TimeSpan.Zero), pdf.Information.GetModifiedDateTimeOffset());
        Assert.Equal("en", ((StringToken)pdf.Structure.Catalog.CatalogDictionary.Data["Lang"]).Data);
        Assert.True(pdf.TryGetBookmarks(out Bookmarks? bookmarks));
        Assert.Equal([("End wall", 1), ("Plan", 2)], bookmarks!.GetNodes().OfType<DocumentBookmarkNode>().Select(node => (node.Title, node.PageNumber)));
    }

    [Fact]
    public void Bookmarks_of_drawings_and_tables_stand_under_their_chapter_and_pages_have_the_names_of_their_sheets()
    {
        ImmutableArray<PdfSheet> pages = new PacketBook(Paper.Letter, "test").Cover("Test", []).Chapter("One").Heading("Words").Paragraph("Text.")
            .Figure(SampleSheets.EndWall(Paper.Letter)).Chapter("Two").Paragraph("Text.").Pages();
        using PdfDocument pdf = PdfDocument.Open(PdfWriter.Write(pages, new PdfDetails("Trial", "", default)));
        Assert.True(pdf.TryGetBookmarks(out Bookmarks? bookmarks));
        Assert.Equal(["0 One 2", "1 Words 2", "1 Sample end wall 3", "0 Two 4"], bookmarks!.GetNodes().OfType<DocumentBookmarkNode>().Select(node => FormattableString.Invariant($"{node.Level} {node.Title} {node.PageNumber}")));
        var numbers = (ArrayToken)((DictionaryToken)pdf.Structure.Catalog.CatalogDictionary.Data["PageLabels"]).Data["Nums"];
        Assert.Equal([0, 2, 3], numbers.Data.OfType<NumericToken>().Select(number => number.Int));
        Assert.Equal("Sheet 1 of 2", ((StringToken)((DictionaryToken)numbers.Data[3]).Data["P"]).Data);
        Assert.Equal(4, ((NumericToken)((DictionaryToken)numbers.Data[5]).Data["St"]).Int);
    }

    [Fact]
    public void A_link_lies_where_it_was_put_and_leads_to_its_page()
    {
        using PdfDocument pdf = PdfDocument.Open(SampleSheetTests.SamplePdf());
        var link = Assert.Single(pdf.GetPage(2).GetAnnotations());
        double heightMm = SampleSheets.Metric(Paper.A4).HeightMm;
        Assert.Equal(10, link.Rectangle.Left * 25.4 / 72, 0.01);
        Assert.Equal(60, link.Rectangle.Right * 25.4 / 72, 0.01);
        Assert.Equal(10, heightMm - (link.Rectangle.Top * 25.4 / 72), 0.01);
        Assert.Equal(20, heightMm - (link.Rectangle.Bottom * 25.4 / 72), 0.01);
    }

    [Fact]
    public void Nothing_in_the_file_tells_the_machine_or_the_moment()
    {
        string text = Encoding.Latin1.GetString(SampleSheetTests.SamplePdf());
        Assert.DoesNotContain(".NET", text, StringComparison.Ordinal);
        Assert.DoesNotContain(DateTimeOffset.UtcNow.ToString("yyyyMMdd", System.Globalization.CultureInfo.InvariantCulture), text, StringComparison.Ordinal);
    }

    private static byte[] Bytes(string text, int day)
    {
        DrawingBuilder sheet = new("Trial", "", 100, 50);
        sheet.On("any").Text(new SheetPoint(10, 20), text);
        return PdfWriter.Write([new PdfSheet(sheet.Build())], new PdfDetails("Trial", "", new DateTimeOffset(2026, 3, day, 0, 0, 0, TimeSpan.Zero)));
    }

    private static string Identity(byte[] pdf)
    {
        string text = Encoding.Latin1.GetString(pdf);
        return text[text.LastIndexOf("/ID", StringComparison.Ordinal)..][..70];
    }
}
