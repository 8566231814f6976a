using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Outside;

/// <summary>Every PDF of a packet as qpdf and poppler read it.</summary>
public sealed partial class PdfOutsideTests
{
    private static readonly DateOnly Day = new(2026, 3, 1);
    private static readonly ConcurrentDictionary<string, PlannedTunnel> Planned = new();

    public static TheoryData<string> Examples { get; } = ["gothic-26ft", "metric-9m"];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Qpdf_finds_no_fault_and_every_font_is_embedded_with_its_characters(string example)
    {
        foreach (PacketFile file in PacketWriter.Write(Work(example), PaperOf(example), Day, choice: new PacketChoice { Crew = "es" }).Where(file => file.Name.EndsWith(".pdf", StringComparison.Ordinal)))
        {
            string said = PdfTools.With(file.Bytes.AsSpan(), path => PdfTools.Run("qpdf", "--check", path));
            Assert.DoesNotContain("WARNING", said, StringComparison.Ordinal);
            string[] fonts = PdfTools.With(file.Bytes.AsSpan(), path => PdfTools.Run("pdffonts", path)).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..];
            Assert.NotEmpty(fonts);
            Assert.All(fonts, font => Assert.Matches(@"^HoopwrightLetters-(Regular|Bold) +CID TrueType +Identity-H +yes no +yes", font));
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Poppler_takes_from_every_page_the_text_that_was_set_and_every_fraction(string example)
    {
        ImmutableArray<PdfSheet> pages = PacketWriter.Pages(Work(example), PaperOf(example), Day);
        string[] read = PdfTools.With(PdfWriter.Write(pages, new PdfDetails("Trial", "", default)), path => PdfTools.Run("pdftotext", "-enc", "UTF-8", path, "-")).Split('\f');
        Assert.Equal(pages.Length + 1, read.Length);
        int fractions = 0;
        foreach ((PdfSheet page, string text) in pages.Zip(read))
        {
            string set = string.Join(' ', page.Page.Marks.OfType<TextMark>().Select(mark => mark.Text));
            Assert.Equal(Sorted(set), Sorted(text));
            string[] wanted = Fractions(set);
            Assert.Equal(wanted, Fractions(text));
            fractions += wanted.Length;
        }
        if (example == "gothic-26ft") Assert.True(fractions > 500, $"only {fractions} fractions were compared");
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Poppler_reads_the_structure_with_every_heading_table_and_drawing(string example)
    {
        ImmutableArray<PdfSheet> pages = PacketWriter.Pages(Work(example), PaperOf(example), Day);
        byte[] bytes = PdfWriter.Write(pages, new PdfDetails("Trial", "", default));
        string told = PdfTools.With(bytes, path => PdfTools.Run("pdfinfo", path)), tree = PdfTools.With(bytes, path => PdfTools.Run("pdfinfo", "-struct-text", path));
        Assert.Matches("Tagged: +yes", told);
        Assert.Matches("Title: +Trial", told);
        foreach ((string name, PdfRole role) in ((string, PdfRole)[])[("H1", PdfRole.Heading1), ("H2", PdfRole.Heading2), ("Table", PdfRole.Table), ("TR", PdfRole.TableRow), ("TH", PdfRole.TableHeading), ("TD", PdfRole.TableCell), ("Figure", PdfRole.Figure), ("LI", PdfRole.ListItem)])
        {
            int wanted = pages.Sum(page => page.Tags.Count(tag => tag.Opens == role));
            Assert.True(wanted > 0);
            Assert.Equal(wanted, Regex.Count(tree, $@"(?m)^ *{name}\b"));
        }
        // Every drawing is told in words.
        Assert.All(pages.SelectMany(page => page.Tags).Where(tag => tag.Opens == PdfRole.Figure), tag => Assert.True(tag.Says!.Length > 20));
        Assert.Contains("\"Marks along both side strings, from the front corner\"", tree, StringComparison.Ordinal);
        // Each text of a drawing is read out too, and lines that follow each other are parted.
        Assert.All(pages.Where(page => page.Label is not null).SelectMany(page => page.Page.Marks.OfType<TextMark>()).Where(text => text.Layer != "footer"), text => Assert.Contains(text.Text, tree, StringComparison.Ordinal));
        Assert.Contains("concrete and leg, cut open\"", tree, StringComparison.Ordinal);
        Assert.Matches(@"post [^\n]* the leg stands in it""", tree);
    }

    private static string Sorted(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)).Order());

    private static string[] Fractions(string text) => [.. Fraction().Matches(text).Select(match => match.Value).Order(StringComparer.Ordinal)];

    private static PlannedTunnel Work(string example) => Planned.GetOrAdd(example, each => TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(each))));

    private static Paper PaperOf(string example) => example == "gothic-26ft" ? Paper.Letter : Paper.A4;

    [GeneratedRegex("[⁰¹²³⁴⁵⁶⁷⁸⁹]+\u2044[₀₁₂₃₄₅₆₇₈₉]+")]
    private static partial Regex Fraction();
}
