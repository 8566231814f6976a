using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Xml.Linq;
using CsCheck;
using Hoopwright.Days;
using Hoopwright.Inside;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Tables;
using Hoopwright.Testing;
using Hoopwright.Testing.Generators;
using Hoopwright.Weather;
using UglyToad.PdfPig;

namespace Hoopwright.Sheets.Tests.Packets;

public sealed class PacketTests
{
    private static readonly DateOnly Day = new(2026, 3, 1);

    public static TheoryData<string> Examples { get; } = [.. SamplePlans.GoodExamples, SamplePlans.BuiltExample];

    [Theory]
    [MemberData(nameof(Examples))]
    public void No_drawing_of_an_example_has_a_collision(string name)
    {
        foreach (Paper paper in (Paper[])[Paper.Letter, Paper.A4])
        {
            foreach (TunnelFigure figure in Figures(Work(name), paper))
                Assert.True(Collisions.In(figure.Drawing).IsEmpty, $"{name} {paper.Name} {figure.Name}\n{string.Join("\n", Collisions.In(figure.Drawing))}");
        }
    }

    [Fact]
    public void Pages_on_the_year_inside_say_how_hot_how_sure_by_which_sources_and_what_harms_on_both_papers()
    {
        PlannedTunnel planned = Work("gothic-26ft");
        WeatherRecord record = WeatherReader.Read(System.IO.File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "year-invented.csv"))).Record!;
        InsideReport inside = InsidePlanner.Plan(planned.Tunnel!, record).Report!;
        var weather = new CoverWeather(CoverDayPlanner.Plan(planned.Tunnel!, planned.Cover!, record).Report!, record, inside);
        foreach (Paper paper in (Paper[])[Paper.Letter, Paper.A4])
        {
            ImmutableArray<PacketFile> files = PacketWriter.Write(planned, paper, Day, choice: new PacketChoice { Weather = weather });
            using PdfDocument pdf = PdfDocument.Open([.. files.First(file => file.Name == "packet.pdf").Bytes]);
            string text = string.Join(" ", pdf.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));
            InsideStats kept = inside.Ways.Single(way => way.Way == InsideWay.ByHand);
            string[] wanted =
            [
                "The year inside", "carbon monoxide", "How sure that is", "Savage", "Heater and fans", "How it could lie here", "to confirm", "Penn State Extension",
                $"opened by hand {TapeText.Of(kept.Highest, planned.Units)} {TapeText.Of(kept.Lowest, planned.Units)}",
            ];
            Assert.All(wanted, each => Assert.Contains(each, text, StringComparison.Ordinal));
            Assert.DoesNotContain("\uFFFD", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Random_tunnels_give_whole_packets_whose_pages_have_no_collision() => Generate.ValidPlanText.Sample(text =>
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(Encoding.UTF8.GetBytes(text)));
        foreach (var page in PacketWriter.Pages(planned, Paper.Letter, Day)) Assert.True(Collisions.In(page.Page).IsEmpty, $"{text}\n{page.Bookmark}\n{string.Join("\n", Collisions.In(page.Page))}");
        ImmutableArray<PacketFile> files = PacketWriter.Write(planned, Paper.A4, Day);
        Assert.Equal(files.Length, files.Select(file => file.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }, iter: 30);

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_packet_is_the_same_bytes_twice_and_in_another_culture(string name)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("en-US");
            byte[] american = ZipWriter.Write(PacketWriter.Write(Work(name), Paper.Letter, Day));
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal(american, ZipWriter.Write(PacketWriter.Write(Work(name), Paper.Letter, Day)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("letter", 612, 792)]
    [InlineData("a4", 595.28, 841.89)]
    public void The_pdf_opens_in_another_reader_with_its_text_and_its_paper(string paper, double widthPt, double heightPt)
    {
        PlannedTunnel planned = Work("gothic-26ft");
        byte[] bytes = [.. File(PacketWriter.Write(planned, paper == "a4" ? Paper.A4 : Paper.Letter, Day), "packet.pdf")];
        using PdfDocument document = PdfDocument.Open(bytes);
        Assert.Equal(widthPt, document.GetPage(1).Width, 0.1);
        Assert.Equal(heightPt, document.GetPage(1).Height, 0.1);
        string all = string.Join(" ", document.GetPages().Select(page => string.Join(" ", page.GetWords().Select(word => word.Text))));
        foreach (string expected in (string[])["North", "tunnel,", "Assumptions", "front-post-1", "proven", "75'", "91'", "107'", "engineer"])
            Assert.Contains(expected, all, StringComparison.Ordinal);
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        Assert.Contains(bookmarks.GetNodes(), node => node.Title == "Cut lists");
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_svg_is_well_formed_and_every_csv_has_rows_of_one_width(string name)
    {
        foreach (PacketFile file in PacketWriter.Write(Work(name), Paper.Letter, Day))
        {
            string text = Encoding.UTF8.GetString(file.Bytes.AsSpan());
            if (file.Name.EndsWith(".svg", StringComparison.Ordinal)) Assert.Equal("svg", XDocument.Parse(text).Root!.Name.LocalName);
            if (file.Name.EndsWith(".csv", StringComparison.Ordinal)) Assert.Single(Csv(text).Select(row => row.Count).Distinct());
        }
    }

    [Fact]
    public void The_end_drawing_carries_every_post_with_its_mark_and_its_top()
    {
        PlannedTunnel planned = Work("gothic-26ft");
        Drawing front = Figures(planned, Paper.Letter).First(figure => figure.Name.Contains("front-end", StringComparison.Ordinal)).Drawing;
        string[] texts = [.. front.Marks.OfType<TextMark>().Select(text => text.Text)];
        foreach (var post in planned.Tunnel!.Front.Posts)
        {
            Assert.Contains(texts, text => text == Fonts.TapeFractions.Set(TapeText.Of(post.Centre, planned.Units)));
            Assert.Contains(texts, text => text.EndsWith(Fonts.TapeFractions.Set(TapeText.Of(post.TopPoint, planned.Units)), StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("metric-9m")]
    public void The_strength_sheets_carry_the_worst_use_and_both_feet_as_numbers(string name)
    {
        PlannedTunnel planned = Work(name);
        var worst = planned.Strength!.Worst!;
        Drawing bow = Figures(planned, Paper.A4).First(figure => figure.Name.EndsWith("strength-bow", StringComparison.Ordinal)).Drawing;
        string[] texts = [.. bow.Marks.OfType<TextMark>().Select(text => text.Text)];
        string used = planned.Strength.Combinations.First(each => each.Code == worst.Code).Utilisation!.Value.Value.ToString("0.00", CultureInfo.InvariantCulture);
        Assert.Contains("worst: " + used, texts);
        Assert.Contains(texts, text => text.StartsWith("left foot: " + TapeText.Of(Force.FromNewtons(Math.Abs(worst.LeftFoot.Up.Newtons)), planned.Units), StringComparison.Ordinal));
        Assert.Contains(texts, text => text.StartsWith("right foot: ", StringComparison.Ordinal));
        Assert.Contains(texts, text => text == TapeText.Of(Moment.FromNewtonMetres(worst.Points.Max(point => Math.Abs(point.Moment.NewtonMetres))), planned.Units));
    }

    [Fact]
    public void The_strength_tables_go_out_as_files_and_the_caution_stands_on_two_pages()
    {
        PlannedTunnel planned = Work("gothic-26ft");
        string[] names = [.. PacketWriter.Write(planned, Paper.Letter, Day).Select(file => file.Name)];
        foreach (string expected in (string[])["limits", "combinations", "row", "parts", "posts", "assumptions", "coefficients"])
            Assert.Contains(names, name => name.EndsWith($"-strength-{expected}.csv", StringComparison.Ordinal));
        Assert.Equal(2, PacketWriter.Pages(planned, Paper.Letter, Day).Count(page => page.Page.Marks.OfType<TextMark>().Any(text => text.Text.StartsWith("For planning and comparing only", StringComparison.Ordinal))));
    }

    [Fact]
    public void Every_part_besides_the_bows_and_what_posts_carry_stand_in_the_strength_chapter()
    {
        PlannedTunnel planned = Work("gothic-26ft");
        string text = string.Join(" ", PacketWriter.Pages(planned, Paper.Letter, Day).SelectMany(page => page.Page.Marks.OfType<TextMark>()).Select(mark => mark.Text));
        Assert.All(planned.Strength!.Parts, part => Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"{part.AtStrongest!.Value.Value:0.00} to {part.AtWeakest!.Value.Value:0.00}"), text, StringComparison.Ordinal));
        Assert.All(planned.Strength.FootLoads, feet =>
        {
            foreach (Force force in new[] { feet.Pull!.Size, feet.Press!.Size, feet.Across!.Size })
                Assert.Contains(TapeText.Of(force, planned.Units), text, StringComparison.Ordinal);
            Assert.Contains(TapeText.Of(feet.Turning!.Size, planned.Units), text, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("@x", "'@x")]
    [InlineData("+x", "'+x")]
    [InlineData("-4.5", "-4.5")]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("5' 6\"", "\"5' 6\"\"\"")]
    public void Csv_cells_are_quoted_by_the_standard_and_never_run_as_formulas(string cell, string written)
    {
        // RFC 4180, section 2, rules 5 to 7.
        string csv = CsvWriter.Write(new Table("t", "t", [new Column("a", 1)], [TableRow.Of(cell)]));
        Assert.Equal($"a\r\n{written}\r\n", csv);
    }

    [Fact]
    public void A_long_table_repeats_its_head_on_every_page_and_loses_no_row()
    {
        var table = new Table("t", "Long", [new Column("Number", 1), new Column("Words", 4)],
            [.. Enumerable.Range(1, 150).Select(row => TableRow.Of(string.Create(CultureInfo.InvariantCulture, $"R{row}"), string.Join(' ', Enumerable.Repeat("word", row % 40))))]);
        var pages = new PacketBook(Paper.Letter, "test").Cover("Test", []).Chapter("One").Table(table).Pages();
        string[][] texts = [.. pages.Skip(1).Select(page => page.Page.Marks.OfType<TextMark>().Select(text => text.Text).ToArray())];
        Assert.True(texts.Length > 3);
        Assert.All(texts, page => Assert.Single(page, text => text == "Number"));
        Assert.Equal(Enumerable.Range(1, 150).Select(row => $"R{row}"), texts.SelectMany(page => page.Where(text => text.StartsWith('R') && text.Length > 1 && char.IsAsciiDigit(text[1]))));
        foreach (var page in pages) Assert.Empty(Collisions.In(page.Page));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void No_text_of_any_page_lies_on_another(string name)
    {
        PlannedTunnel planned = Work(name);
        foreach (var page in PacketWriter.Pages(planned, Paper.Letter, Day))
            Assert.True(Collisions.In(page.Page).IsEmpty, $"{name}: {page.Bookmark}\n{string.Join("\n", Collisions.In(page.Page))}");
    }

    private static PlannedTunnel Work(string name) => TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(name)));

    private static ImmutableArray<TunnelFigure> Figures(PlannedTunnel planned, Paper paper)
    {
        (double widthMm, double heightMm) = paper.DrawingSize(landscape: true);
        return TunnelFigures.Of(planned, new FigureSheet(widthMm, heightMm, "tunnel", "2026-03-01", planned.Units));
    }

    private static ImmutableArray<byte> File(ImmutableArray<PacketFile> files, string name) => files.First(file => file.Name == name).Bytes;

    /// <summary>Reads RFC 4180 text: fields parted by commas, records by CRLF, quotes doubled within quotes.</summary>
    private static List<List<string>> Csv(string text)
    {
        List<List<string>> rows = [[]];
        var field = new StringBuilder();
        bool quoted = false;
        for (int at = 0; at < text.Length; at++)
        {
            char each = text[at];
            if (quoted)
            {
                if (each == '"' && at + 1 < text.Length && text[at + 1] == '"') field.Append(text[++at]);
                else if (each == '"') quoted = false;
                else field.Append(each);
            }
            else if (each == '"') quoted = true;
            else if (each == ',' || each == '\n')
            {
                rows[^1].Add(field.ToString());
                field.Clear();
                if (each == '\n') rows.Add([]);
            }
            else if (each != '\r') field.Append(each);
        }
        rows.RemoveAt(rows.Count - 1);
        return rows;
    }
}
