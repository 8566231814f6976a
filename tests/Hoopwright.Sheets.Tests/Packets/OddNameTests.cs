using System.Collections.Immutable;
using System.Text;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Testing;
using UglyToad.PdfPig;

namespace Hoopwright.Sheets.Tests.Packets;

/// <summary>Names that a person may type or paste.</summary>
public sealed class OddNameTests
{
    private static readonly DateOnly Day = new(2026, 3, 1);
    private static readonly Lazy<PlannedTunnel> Small = new(() => TunnelWorks.Plan(SamplePlans.Example("round-14ft")));

    public static TheoryData<string> Names { get; } =
    [
        "\u200Fחממה צפונית", "الدفيئة الشمالية", "Nord\u202Etekcap\u202C tunnel", "🌱👩🏽‍🌾 North tunnel", "Zoe\u0308's tunnel", "line\none\ttab", "\u0007\u0000\u001B[31m",
        new string('W', 10_000), string.Join(' ', Enumerable.Repeat("very long", 1_000)), "/../../etc", "=1+1", "\uD800 half", "<svg onload=\"x\">&amp;", "",
    ];

    [Theory]
    [InlineData("North tunnel 6¹¹⁄₁₆", "North tunnel 6¹¹⁄₁₆")]
    [InlineData("חממה 3", "☐☐☐☐ 3")]
    [InlineData("🌱 tunnel", "☐ tunnel")]
    [InlineData("👩🏽‍🌾", "☐")]
    [InlineData("a\u202Eb\u200Bc", "abc")]
    [InlineData("Zoe\u0308", "Zoe\u0308")]
    [InlineData("a\u20DDb", "ab")]
    [InlineData("a\tb", "a b")]
    [InlineData("a\u00A0b", "a\u00A0b")]
    public void What_the_lettering_lacks_is_replaced_where_it_can_be_seen(string typed, string shown) => Assert.Equal(shown, Typeface.Shown(typed));

    [Theory]
    [MemberData(nameof(Names))]
    public void An_odd_name_breaks_no_page_and_no_file(string name)
    {
        PlannedTunnel planned = Small.Value with { Plan = Small.Value.Plan with { Name = name, Note = name, Site = Small.Value.Plan.Site with { Place = name } } };
        ImmutableArray<PdfSheet> pages = PacketWriter.Pages(planned, Paper.Letter, Day);
        Assert.All(pages, page => Assert.Equal([], Collisions.In(page.Page)));
        Assert.NotEmpty(pages[0].Links);
        Assert.All(pages.SelectMany(page => page.Page.Marks).OfType<TextMark>(), text => Assert.True(Typeface.Of(LetterWeight.Regular).Has(text.Text), text.Text));
        foreach (PacketFile file in PacketWriter.Write(planned, Paper.Letter, Day).Where(file => file.Name.EndsWith(".pdf", StringComparison.Ordinal) || file.Name.EndsWith(".svg", StringComparison.Ordinal)))
        {
            if (file.Name.EndsWith(".svg", StringComparison.Ordinal))
            {
                System.Xml.Linq.XDocument.Parse(Encoding.UTF8.GetString(file.Bytes.AsSpan()));
            }
            else
            {
                using PdfDocument pdf = PdfDocument.Open([.. file.Bytes]);
                Assert.True(pdf.NumberOfPages > 0);
            }
        }
    }

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("metric-9m")]
    [InlineData("round-14ft")]
    public void The_design_summary_is_one_page_and_the_reviewers_page_leads_to_every_place_it_names(string example)
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(example)));
        foreach (Paper paper in (Paper[])[Paper.Letter, Paper.A4])
        {
            ImmutableArray<PdfSheet> pages = PacketWriter.Pages(planned, paper, Day);
            int summary = pages.IndexOf(pages.Single(page => page.Bookmark == "Design summary")), review = pages.IndexOf(pages.Single(page => page.Bookmark == "For reviewers"));
            Assert.NotNull(pages[summary + 1].Bookmark);
            string[] texts = [.. pages[review].Page.Marks.OfType<TextMark>().Select(text => text.Text)];
            foreach (string asked in (string[])["Location", "Layout", "Anchorage", "Drainage", "Materials", "Safety", "Utilities check"]) Assert.Contains(asked, texts);
            int rows = ReviewChapter.Rows(planned, planned.Tunnel!, ImmutableDictionary<string, string>.Empty).Count(row => row.LeadsTo is not null);
            Assert.True(rows > 12);
            Assert.Equal(rows, pages[review].Links.Length + pages[review + 1].Links.Length);
            // The page that a row writes is the page it leads to.
            Assert.All(pages[review].Links, link => Assert.Contains(link.PageNumber.ToString(System.Globalization.CultureInfo.InvariantCulture), texts));
            Assert.Contains(pages[review].Links, link => pages[link.PageNumber - 1].Bookmark == "Set-out");
        }
    }
}
