using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Svg;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Outside;

/// <summary>
/// Pages as pictures, painted by poppler, against kept ones that were looked at; and drawings as Chromium paints their SVG against their PDF.
/// HOOPWRIGHT_ACCEPT=1 writes the kept ones anew; look at each before committing.
/// </summary>
public sealed class PagePictureTests
{
    private static readonly DateOnly Day = new(2026, 3, 1);
    private static readonly ConcurrentDictionary<string, ImmutableArray<PdfSheet>> Pages = new();

    [Theory]
    [InlineData("gothic-26ft", "Design summary")]
    [InlineData("gothic-26ft", "For reviewers")]
    [InlineData("gothic-26ft", "Set-out and frame")]
    [InlineData("gothic-26ft", "Set-out")]
    [InlineData("gothic-26ft", "Bow")]
    [InlineData("gothic-26ft", "Front end, seen from outside")]
    [InlineData("gothic-26ft", "Details at the ground")]
    [InlineData("gothic-26ft", "Details of a side")]
    [InlineData("gothic-26ft", "Details of film and doors")]
    [InlineData("gothic-26ft", "Orders")]
    [InlineData("gothic-26ft", "Cut lists")]
    [InlineData("metric-9m", "Design summary")]
    [InlineData("metric-9m", "Set-out and frame")]
    [InlineData("metric-9m", "Front end, seen from outside")]
    [InlineData("metric-9m", "Strength")]
    [InlineData("round-14ft", "Cover")]
    [InlineData("as-built-26ft", "As built")]
    public void A_key_page_looks_like_the_kept_picture(string example, string bookmark)
    {
        byte[] png = Painted([PagesOf(example).First(page => page.Bookmark == bookmark)], 60);
        string file = Path.Combine(SamplePlans.Root, "tests", "Hoopwright.Sheets.Tests", "Golden", "Pages", example + "-" + string.Concat(bookmark.ToLowerInvariant().Select(letter => char.IsAsciiLetterLower(letter) ? letter : '-')).Replace("--", "-", StringComparison.Ordinal) + ".png");
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllBytes(file, png);
            return;
        }
        GrayPicture kept = GrayPicture.OfPng(File.ReadAllBytes(file)), painted = GrayPicture.OfPng(png);
        Assert.Equal((kept.Width, kept.Height), (painted.Width, painted.Height));
        // Another version of poppler smooths edges otherwise; a moved line or a lost word shows in its neighbourhood.
        double differs = kept.DiffersFrom(painted, reach: 2, by: 24);
        Assert.True(differs < 0.002, $"{differs:P2} of the page differs from the kept picture");
    }

    [Fact]
    public void A_page_with_a_word_changed_does_not_look_like_the_kept_picture()
    {
        PdfSheet page = PagesOf("gothic-26ft").First(page => page.Bookmark == "Set-out");
        ImmutableArray<Mark> changed = [.. page.Page.Marks.Select(mark => mark is TextMark { Text: "72' 0\"" } text ? text with { Text = "108' 6\"" } : mark)];
        GrayPicture one = GrayPicture.OfPng(Painted([page], 60)), other = GrayPicture.OfPng(Painted([page with { Page = page.Page with { Marks = changed } }], 60));
        Assert.InRange(one.DiffersFrom(other, reach: 2, by: 24), 1e-5, 1);
        Assert.Equal(0, one.DiffersFrom(one, reach: 2, by: 24));
    }

    public static TheoryData<string> Examples { get; } = [.. SamplePlans.GoodExamples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Chromium_paints_the_svg_of_every_drawing_as_poppler_paints_its_pdf(string example)
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(example)));
        Paper paper = planned.Units == UnitSystem.Metric ? Paper.A4 : Paper.Letter;
        (double widthMm, double heightMm) = paper.DrawingSize(landscape: true);
        ImmutableArray<TunnelFigure> figures = TunnelFigures.Of(planned, new FigureSheet(widthMm, heightMm, "Invented tunnel", "2026-03-01", planned.Units) { Paper = paper.Name });
        Assert.True(figures.Length > 15);
        foreach (TunnelFigure[] some in figures.Chunk(8))
        {
            GrayPicture[] bySvg = PaintedByChromium([.. some.Select(figure => figure.Drawing)]);
            for (int index = 0; index < some.Length; index++)
            {
                GrayPicture byPdf = GrayPicture.OfPng(Painted([new PdfSheet(some[index].Drawing)], 96));
                double differs = byPdf.DiffersFrom(bySvg[index], reach: 3, by: 40);
                Assert.True(differs < 0.01, $"{some[index].Name}: {differs:P2} of the drawing differs between SVG and PDF");
                // Paper alone differs from both, so that lines were compared.
                Assert.True(byPdf.DiffersFrom(GrayPicture.OfPng(Painted([new PdfSheet(some[index].Drawing with { Marks = [] })], 96)), reach: 3, by: 40) > 0.02);
            }
        }
    }

    /// <summary>Drawings of one size as a browser paints their SVG, one under the other on one page.</summary>
    private static GrayPicture[] PaintedByChromium(ImmutableArray<Drawing> drawings)
    {
        // A pixel is 1/96 in (CSS Values 4, 6.2), so the picture has the size of the paper.
        int wide = (int)Math.Ceiling(drawings[0].WidthMm * 96 / 25.4), high = (int)Math.Ceiling(drawings[0].HeightMm * 96 / 25.4);
        string folder = Directory.CreateTempSubdirectory("hoopwright-svg-").FullName;
        try
        {
            StringBuilder page = new("<!DOCTYPE html><meta charset=\"utf-8\"><style>body { margin: 0 } img { position: absolute; left: 0 }</style>\n");
            for (int index = 0; index < drawings.Length; index++)
            {
                File.WriteAllText(Path.Combine(folder, FormattableString.Invariant($"{index}.svg")), SvgWriter.Write(drawings[index]));
                page.Append(CultureInfo.InvariantCulture, $"<img src=\"{index}.svg\" style=\"top: {index * high}px\">\n");
            }
            string html = Path.Combine(folder, "drawings.html"), png = Path.Combine(folder, "drawings.png");
            File.WriteAllText(html, page.ToString());
            string size = string.Create(CultureInfo.InvariantCulture, $"--window-size={wide},{high * drawings.Length}");
            PdfTools.Start("chromium", "--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", $"--user-data-dir={folder}/profile", size, $"--screenshot={png}", "file://" + html);
            GrayPicture all = GrayPicture.OfPng(File.ReadAllBytes(png));
            Assert.Equal((wide, high * drawings.Length), (all.Width, all.Height));
            return [.. drawings.Select((_, index) => all.Rows(index * high, high))];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static ImmutableArray<PdfSheet> PagesOf(string example) => Pages.GetOrAdd(example, name =>
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(name)));
        return PacketWriter.Pages(planned, planned.Units == UnitSystem.Metric ? Paper.A4 : Paper.Letter, Day);
    });

    private static byte[] Painted(ImmutableArray<PdfSheet> pages, int dpi) => PdfTools.With(PdfWriter.Write([.. pages.Select(page => page with { Links = [], Tags = [] })], new PdfDetails("Trial", "", default)), path =>
    {
        string to = Path.Combine(Path.GetDirectoryName(path)!, "page");
        PdfTools.Run("pdftoppm", "-r", dpi.ToString(CultureInfo.InvariantCulture), "-gray", "-png", "-singlefile", path, to);
        return File.ReadAllBytes(to + ".png");
    });
}
