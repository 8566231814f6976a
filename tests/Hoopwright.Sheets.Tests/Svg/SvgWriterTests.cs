using System.Globalization;
using System.Xml.Linq;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Svg;
using Hoopwright.Sheets.Tests.Drawings;

namespace Hoopwright.Sheets.Tests.Svg;

public sealed class SvgWriterTests
{
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    [Fact]
    public void The_picture_has_its_real_size_title_description_and_layers()
    {
        Drawing drawing = SampleSheets.EndWall(Paper.Letter);
        XElement svg = XDocument.Parse(SvgWriter.Write(drawing)).Root!;
        Assert.Equal("261.4mm", svg.Attribute("width")!.Value);
        Assert.Equal("192.9mm", svg.Attribute("height")!.Value);
        Assert.Equal("0 0 261.4 192.9", svg.Attribute("viewBox")!.Value);
        Assert.Equal(drawing.Title, svg.Element(Ns + "title")!.Value);
        Assert.Equal(drawing.Description, svg.Element(Ns + "desc")!.Value);
        Assert.Equal(drawing.Layers.Order(), svg.Elements(Ns + "g").Select(group => group.Attribute("data-layer")!.Value).Distinct().Order());
        Assert.Equal(svg.Descendants().Attributes("id").Count(), svg.Descendants().Attributes("id").Select(id => id.Value).Distinct().Count());
    }

    [Fact]
    public void Every_text_is_there_as_it_was_and_as_wide_as_it_was_measured()
    {
        Drawing drawing = SampleSheets.Metric(Paper.A4);
        TextMark[] texts = [.. drawing.Marks.OfType<TextMark>()];
        XElement[] written = [.. XDocument.Parse(SvgWriter.Write(drawing)).Descendants(Ns + "text")];
        Assert.Equal(texts.Select(text => text.Text).Order(), written.Select(text => text.Value).Order());
        foreach (XElement text in written)
        {
            double width = double.Parse(text.Attribute("textLength")!.Value, CultureInfo.InvariantCulture);
            Assert.Contains(texts, mark => mark.Text == text.Value && Math.Abs(mark.WidthMm - width) < 0.001);
        }
    }

    [Fact]
    public void Words_with_marks_of_xml_come_through()
    {
        DrawingBuilder sheet = new("A & B < C", "\"quoted\"", 100, 50);
        sheet.On("a \"layer\"").Text(new SheetPoint(10, 20), "5' 6\" <b> & more");
        XElement svg = XDocument.Parse(SvgWriter.Write(sheet.Build())).Root!;
        Assert.Equal("A & B < C", svg.Element(Ns + "title")!.Value);
        Assert.Equal("5' 6\" <b> & more", svg.Descendants(Ns + "text").Single().Value);
    }

    [Theory]
    [InlineData(90, "A20 20 0 0 0 30 10")]
    [InlineData(-90, "A20 20 0 0 1 30 50")]
    [InlineData(270, "A20 20 0 1 0 30 50")]
    public void Arcs_are_true_arcs_with_the_right_turn(double sweepDeg, string expected)
    {
        DrawingBuilder sheet = new("Arc", "", 100, 100);
        sheet.On("any").Path(SheetPath.Arc(new SheetPoint(30, 30), 20, Angle.Zero, Angle.FromDegrees(sweepDeg)));
        XElement path = XDocument.Parse(SvgWriter.Write(sheet.Build())).Descendants(Ns + "path").Single();
        Assert.Equal("M50 30" + expected, path.Attribute("d")!.Value);
    }

    [Fact]
    public void The_lettering_is_inside_and_nothing_is_fetched()
    {
        string svg = SvgWriter.Write(SampleSheets.EndWall(Paper.Letter));
        Assert.Equal(2, svg.Split("@font-face").Length - 1);
        Assert.DoesNotContain("http", svg.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("@font-face", SvgWriter.Write(SampleSheets.EndWall(Paper.Letter), withFont: false), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_drawing_gives_the_same_bytes_in_every_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string plain = SvgWriter.Write(SampleSheets.EndWall(Paper.Letter));
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE") { NumberFormat = { NumberDecimalSeparator = ",", NegativeSign = "~" } };
            Assert.Equal(plain, SvgWriter.Write(SampleSheets.EndWall(Paper.Letter)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
