using System.Globalization;
using Hoopwright.Inside;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Charts;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Words;
using Hoopwright.Testing;
using Hoopwright.Weather;

namespace Hoopwright.Sheets.Tests.Charts;

public sealed class InsideChartTests
{
    private static readonly InsideReport Report = InsidePlanner.Plan(
        SamplePlans.LayOut(SamplePlans.Example("gothic-26ft")), WeatherReader.Read(File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "year-invented.csv"))).Record!).Report!;

    [Theory]
    [InlineData("en", UnitSystem.UsCustomary)]
    [InlineData("en", UnitSystem.Metric)]
    [InlineData("es", UnitSystem.UsCustomary)]
    [InlineData("es", UnitSystem.Metric)]
    public void No_text_of_a_chart_meets_another_and_all_are_in_the_language(string language, UnitSystem units)
    {
        FigureOffer[] offers = [.. InsideCharts.Offers(Report, Sheet(units, language))];
        Assert.Equal(["inside-year", "inside-light", "inside-air"], offers.Select(offer => offer.Name));
        foreach (FigureOffer offer in offers)
        {
            Drawing drawing = offer.Draw();
            Assert.True(Collisions.In(drawing).IsEmpty, offer.Name + "\n" + string.Join("\n", Collisions.In(drawing)));
            if (language == "es") Assert.DoesNotContain(drawing.Marks.OfType<TextMark>(), text => text.Text.Contains("inside", StringComparison.Ordinal) || text.Text.Contains("open", StringComparison.Ordinal) || text.Text.Contains("wind", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Curves_of_the_year_are_the_days_of_the_report()
    {
        Drawing drawing = InsideYearChart.Draw(Report, Sheet(UnitSystem.Metric), "1 of 1");
        // Outside and inside, by day and by night.
        SheetPath[] curves = [.. drawing.Marks.OfType<LineMark>().Where(line => line is { Layer: "chart", Role: LineRole.Outline }).Select(line => line.Path).Where(path => path.Pieces.Length > 300)];
        Assert.Equal(4, curves.Length);
        // On paper a degree is as long for both curves of a panel: so are the differences of days.
        SheetPoint[] outside = Points(curves[0]), inside = Points(curves[1]);
        double scale = Span(outside) / Degrees(Report.Days.Select(day => day.OutsideHigh));
        Assert.Equal(Span(inside) / scale, Degrees(Report.Days.Select(day => day.High)), 0.05);

        static SheetPoint[] Points(SheetPath path) => [path.Start, .. path.Pieces.Select(piece => piece.End)];
        static double Span(SheetPoint[] points) => points.Max(point => point.YMm) - points.Min(point => point.YMm);
        static double Degrees(IEnumerable<Temperature> temperatures) => temperatures.Max().Kelvins - temperatures.Min().Kelvins;
    }

    [Fact]
    public void Numbers_over_the_bars_of_air_are_the_changes_an_hour()
    {
        Drawing drawing = InsideAirChart.Draw(Report, Sheet(UnitSystem.UsCustomary), "1 of 1");
        string[] wanted = [.. Report.Air.SelectMany(air => (AirFlow[])[air.ByWarmth, air.Usual, air.Most]).Select(flow => flow.CubicMetresPerSecond * 3600 / Report.Volume.CubicMetres).Select(changes => changes.ToString(changes < 10 ? "0.#" : "0", CultureInfo.InvariantCulture))];
        Assert.Equal(wanted, drawing.Marks.OfType<TextMark>().Where(text => text.Layer == "numbers").Select(text => text.Text));
    }

    [Fact]
    public void Each_month_of_light_has_a_curve_and_a_name()
    {
        Drawing drawing = InsideLightChart.Draw(Report, Sheet(UnitSystem.UsCustomary), "1 of 1");
        Assert.Equal(12, drawing.Marks.OfType<LineMark>().Count(line => line is { Layer: "chart", Role: LineRole.Outline or LineRole.Cut } && line.Path.Pieces.Length == Report.Across.Length - 1));
        string all = string.Join(' ', drawing.Marks.OfType<TextMark>().Select(text => text.Text));
        for (int month = 1; month <= 12; month++) Assert.Contains(CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month), all, StringComparison.Ordinal);
    }

    private static FigureSheet Sheet(UnitSystem units, string language = "en") => new(262, 193, "tunnel", "2026-03-01", units) { Words = CrewWords.Of(language) };
}
