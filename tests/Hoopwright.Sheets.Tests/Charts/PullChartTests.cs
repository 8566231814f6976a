using System.Globalization;
using Hoopwright.Cover.Pull;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Charts;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Words;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Charts;

public sealed class PullChartTests
{
    public static TheoryData<string> Examples { get; } = [.. SamplePlans.GoodExamples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void No_text_of_the_chart_meets_another_on_any_day_in_either_language(string name)
    {
        PlannedTunnel planned = Work(name);
        foreach (string language in CrewWords.Languages)
        {
            foreach (double fahrenheit in (double[])[12, 40, 55, 61, 75, 105])
            {
                Drawing drawing = PullChart.Draw(planned.Cover!.Pull, planned.Cover.Pull.At(Temperature.FromFahrenheit(fahrenheit)), Sheet(planned, language), "1 of 1");
                Assert.True(Collisions.In(drawing).IsEmpty, $"{language} {fahrenheit}\n{string.Join("\n", Collisions.In(drawing))}");
                Assert.DoesNotContain(drawing.Marks.OfType<LineMark>(), line => line.Colour is not (Ink.Black or Ink.Zinc));
            }
        }
    }

    /// <summary>The heavy line is read like a person would, between the numbers of both axes, and gives what the pull table gives.</summary>
    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    public void What_is_read_off_the_line_is_the_pull_of_the_table(string name)
    {
        PlannedTunnel planned = Work(name);
        PullPlan pull = planned.Cover!.Pull;
        Drawing drawing = PullChart.Draw(pull, null, Sheet(planned), "1 of 1");
        LineMark target = Assert.Single(drawing.Marks.OfType<LineMark>(), line => line.Layer == "chart" && line.Role == LineRole.Cut);
        SheetPoint[] points = [target.Path.Start, .. target.Path.Pieces.Select(piece => piece.End)];
        TextMark[] numbers = [.. drawing.Marks.OfType<TextMark>().Where(text => text.Layer == "chart")];
        TextMark[] below = [.. numbers.Where(text => text.Align == TextAlign.Middle && double.TryParse(text.Text, CultureInfo.InvariantCulture, out _))];
        (TextMark cold, TextMark hot) = (below.First(text => text.Text == "20"), below.First(text => text.Text == "100"));
        double perDegreeMm = (hot.Anchor.XMm - cold.Anchor.XMm) / 80;
        TextMark[] left = [.. numbers.Where(text => text.Align == TextAlign.End).OrderBy(text => text.Anchor.YMm)];
        TextMark zero = left.First(text => text.Text == "0\"");
        // One step over nought stands right above it.
        double stepMm = zero.Anchor.YMm - left[Array.IndexOf(left, zero) - 1].Anchor.YMm;
        double stepInches = left[Array.IndexOf(left, zero) - 1].Text switch { "¹⁄₁₆\"" => 1 / 16.0, "¹⁄₈\"" => 1 / 8.0, "¹⁄₄\"" => 1 / 4.0, var other => throw new InvalidOperationException(other) };
        double noughtMm = drawing.Marks.OfType<LineMark>().Where(line => line.Layer == "chart" && line.Role == LineRole.Dimension && line.Path.Start.YMm == line.Path.End.YMm)
            .MinBy(line => Math.Abs(line.Path.Start.YMm - (zero.Anchor.YMm - 1.25)))!.Path.Start.YMm;
        foreach (PullRow row in pull.Rows)
        {
            double atMm = cold.Anchor.XMm + ((row.Film.Fahrenheit - 20) * perDegreeMm);
            int next = Array.FindIndex(points, point => point.XMm >= atMm - 1e-6);
            SheetPoint right = points[Math.Max(1, next)], before = points[Math.Max(1, next) - 1];
            double upMm = noughtMm - (before.YMm + ((right.YMm - before.YMm) * (atMm - before.XMm) / (right.XMm - before.XMm)));
            Assert.Equal(row.PastSnugPerBay.Inches, upMm / stepMm * stepInches, 0.003);
        }
    }

    [Fact]
    public void The_day_is_told_in_words_as_the_row_has_it()
    {
        PlannedTunnel planned = Work("gothic-26ft");
        PullPlan pull = planned.Cover!.Pull;
        FigureSheet sheet = Sheet(planned);
        Assert.StartsWith("film at 30 °F: past snug by", PullChart.Reading(pull, pull.At(Temperature.FromFahrenheit(30)), sheet), StringComparison.Ordinal);
        Assert.StartsWith("film at 70 °F: longer than snug by", PullChart.Reading(pull, pull.At(Temperature.FromFahrenheit(70)), sheet), StringComparison.Ordinal);
        Assert.Equal("film at 120 °F: too hot, do not pull", PullChart.Reading(pull, pull.At(Temperature.FromFahrenheit(120)), sheet));
        Assert.Equal("film at 0 °F: too cold, do not pull", PullChart.Reading(pull, pull.At(Temperature.FromFahrenheit(0)), sheet));
        Assert.Equal("plástico a 120 °F: demasiado caliente, no estire", PullChart.Reading(pull, pull.At(Temperature.FromFahrenheit(120)), Sheet(planned, "es")));
    }

    private static FigureSheet Sheet(PlannedTunnel planned, string language = "en")
    {
        (double widthMm, double heightMm) = (planned.Units == UnitSystem.Metric ? Paper.A4 : Paper.Letter).DrawingSize(landscape: true);
        return new FigureSheet(widthMm, heightMm, "tunnel", "2026-03-01", planned.Units) { Words = CrewWords.Of(language) };
    }

    private static PlannedTunnel Work(string name) => TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(name)), depth: WorkDepth.Orders);
}
