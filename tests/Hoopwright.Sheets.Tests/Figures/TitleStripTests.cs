using System.Collections.Immutable;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Figures;

public sealed class TitleStripTests
{
    private static readonly Lazy<PlannedTunnel> Us = new(() => Work("gothic-26ft")), Metric = new(() => Work("metric-9m"));

    [Theory]
    [InlineData("gothic-26ft", "Letter", "Letter, ft and in", "must measure 4 in", 101.6)]
    [InlineData("gothic-26ft", "Tabloid", "Tabloid, ft and in", "must measure 4 in", 101.6)]
    [InlineData("metric-9m", "A4", "A4, mm", "must measure 100 mm", 100)]
    [InlineData("metric-9m", "A3", "A3, mm", "must measure 100 mm", 100)]
    public void Every_sheet_tells_the_same_things_in_the_same_places(string example, string name, string paperAndUnits, string check, double lengthMm)
    {
        Paper paper = name switch { "Letter" => Paper.Letter, "Tabloid" => Paper.Tabloid, "A4" => Paper.A4, _ => Paper.A3 };
        PlannedTunnel planned = example == "gothic-26ft" ? Us.Value : Metric.Value;
        (double widthMm, double heightMm) = paper.DrawingSize(landscape: true);
        ImmutableArray<TunnelFigure> figures = TunnelFigures.Of(planned, new FigureSheet(widthMm, heightMm, "Invented tunnel", "2026-03-01", planned.Units) { Paper = paper.Name, Revision = "B" });
        for (int index = 0; index < figures.Length; index++)
        {
            Drawing drawing = figures[index].Drawing;
            Assert.Equal([], Collisions.In(drawing));
            string[] texts = [.. drawing.Marks.OfType<TextMark>().Where(text => text.Layer == "title").Select(text => text.Text)];
            string number = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Sheet {index + 1} of {figures.Length}");
            foreach (string expected in (string[])["Invented tunnel", number, "2026-03-01, rev. B", paperAndUnits, check, "Do not scale off a screen"]) Assert.Contains(expected, texts);
            Assert.Contains(texts, text => text.StartsWith("Scale ", StringComparison.Ordinal) || text == "Not to scale");
            Assert.Contains(drawing.Marks.OfType<LineMark>().Where(line => line.Layer == "title" && line.Path.Pieces.Length == 1), line => Math.Abs(line.Path.Start.DistanceMm(line.Path.End) - lengthMm) < 1e-9);
        }
    }

    [Fact]
    public void Drawings_on_larger_paper_have_pages_of_that_paper_and_the_text_keeps_its_own()
    {
        ImmutableArray<PdfSheet> pages = PacketWriter.Pages(Us.Value, Paper.Letter, new DateOnly(2026, 3, 1), Paper.Tabloid);
        Assert.All(pages, page => Assert.Contains((page.Page.WidthMm, page.Page.HeightMm), new[] { (215.9, 279.4), (431.8, 279.4) }));
        Assert.All(pages, page => Assert.Equal(page.Label is not null, page.Page.WidthMm == 431.8));
        Assert.True(pages.Count(page => page.Page.WidthMm == 431.8) > 15);
        foreach (PdfSheet page in pages) Assert.Equal([], Collisions.In(page.Page));
    }

    private static PlannedTunnel Work(string name) => TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(name)));
}
