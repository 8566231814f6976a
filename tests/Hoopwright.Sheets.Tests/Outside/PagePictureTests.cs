using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Packets;
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
    private static readonly Lazy<PlannedTunnel> Planned = new(() => TunnelWorks.Plan(SamplePlans.Example("gothic-26ft")));
    private static readonly Lazy<ImmutableArray<PdfSheet>> Pages = new(() => PacketWriter.Pages(Planned.Value, Paper.Letter, Day));

    [Theory]
    [InlineData("Design summary")]
    [InlineData("For reviewers")]
    [InlineData("Set-out and frame")]
    [InlineData("Set-out")]
    [InlineData("Bow")]
    [InlineData("Front end, seen from outside")]
    [InlineData("Details at the ground")]
    [InlineData("Details of a side")]
    [InlineData("Details of film and doors")]
    public void A_key_page_looks_like_the_kept_picture(string bookmark)
    {
        byte[] png = Painted([Pages.Value.First(page => page.Bookmark == bookmark)], 60);
        string file = Path.Combine(SamplePlans.Root, "tests", "Hoopwright.Sheets.Tests", "Golden", "Pages", string.Concat(bookmark.ToLowerInvariant().Select(letter => char.IsAsciiLetterLower(letter) ? letter : '-')).Replace("--", "-", StringComparison.Ordinal) + ".png");
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
        PdfSheet page = Pages.Value.First(page => page.Bookmark == "Set-out");
        ImmutableArray<Mark> changed = [.. page.Page.Marks.Select(mark => mark is TextMark { Text: "72' 0\"" } text ? text with { Text = "108' 6\"" } : mark)];
        GrayPicture one = GrayPicture.OfPng(Painted([page], 60)), other = GrayPicture.OfPng(Painted([page with { Page = page.Page with { Marks = changed } }], 60));
        Assert.InRange(one.DiffersFrom(other, reach: 2, by: 24), 1e-5, 1);
        Assert.Equal(0, one.DiffersFrom(one, reach: 2, by: 24));
    }

    [Theory]
    [InlineData("set-out")]
    [InlineData("side-details")]
    public void Chromium_paints_the_svg_of_a_drawing_as_poppler_paints_its_pdf(string name)
    {
        (double widthMm, double heightMm) = Paper.Letter.DrawingSize(landscape: true);
        Drawing drawing = TunnelFigures.Offers(Planned.Value, new FigureSheet(widthMm, heightMm, "Invented tunnel", "2026-03-01", Planned.Value.Units)).First(offer => offer.Name == name).Draw();
        GrayPicture pdf = GrayPicture.OfPng(Painted([new PdfSheet(drawing)], 96));
        string folder = Directory.CreateTempSubdirectory("hoopwright-svg-").FullName;
        try
        {
            string svg = Path.Combine(folder, "drawing.svg"), png = Path.Combine(folder, "drawing.png");
            File.WriteAllText(svg, SvgWriter.Write(drawing));
            // A pixel is 1/96 in (CSS Values 4, 6.2), so the picture has the size of the paper.
            string size = string.Create(CultureInfo.InvariantCulture, $"--window-size={pdf.Width},{pdf.Height}");
            PdfTools.Start("chromium", "--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", $"--user-data-dir={folder}/profile", size, $"--screenshot={png}", "file://" + svg);
            GrayPicture painted = GrayPicture.OfPng(File.ReadAllBytes(png));
            double differs = pdf.DiffersFrom(painted, reach: 3, by: 40);
            Assert.True(differs < 0.01, $"{differs:P2} of the drawing differs between SVG and PDF");
            // Paper alone differs from both, so that lines were compared.
            Assert.True(pdf.DiffersFrom(GrayPicture.OfPng(Painted([new PdfSheet(drawing with { Marks = [] })], 96)), reach: 3, by: 40) > 0.03);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static byte[] Painted(ImmutableArray<PdfSheet> pages, int dpi) => PdfTools.With(PdfWriter.Write([.. pages.Select(page => page with { Links = [], Tags = [] })], new PdfDetails("Trial", "", default)), path =>
    {
        string to = Path.Combine(Path.GetDirectoryName(path)!, "page");
        PdfTools.Run("pdftoppm", "-r", dpi.ToString(CultureInfo.InvariantCulture), "-gray", "-png", "-singlefile", path, to);
        return File.ReadAllBytes(to + ".png");
    });
}
