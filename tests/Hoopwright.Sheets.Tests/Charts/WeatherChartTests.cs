using System.Globalization;
using System.Text;
using Hoopwright.Days;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Charts;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Words;
using Hoopwright.Testing;
using Hoopwright.Weather;

namespace Hoopwright.Sheets.Tests.Charts;

public sealed class WeatherChartTests
{
    private static readonly WeatherRecord Forecast = WeatherReader.Read(File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "forecast-invented.json"))).Record!;

    [Theory]
    [InlineData("en", UnitSystem.UsCustomary)]
    [InlineData("en", UnitSystem.Metric)]
    [InlineData("es", UnitSystem.UsCustomary)]
    [InlineData("es", UnitSystem.Metric)]
    public void No_text_of_a_forecast_meets_another_and_every_window_bears_its_rank(string language, UnitSystem units)
    {
        CoverDayReport report = CoverDayPlanner.Plan(Forecast).Report!;
        Drawing drawing = ForecastChart.Draw(report, Forecast, Sheet(units, language), "1 of 1");
        Assert.True(Collisions.In(drawing).IsEmpty, string.Join("\n", Collisions.In(drawing)));
        Assert.NotEmpty(report.Windows);
        Assert.Equal(Enumerable.Range(1, report.Windows.Length).Select(rank => rank.ToString(CultureInfo.InvariantCulture)),
            drawing.Marks.OfType<TextMark>().Where(text => text is { Layer: "days", Weight: Fonts.LetterWeight.Bold }).Select(text => text.Text));
        // A tint in each of three panels marks a window.
        Assert.Equal(3 * report.Windows.Length, drawing.Marks.OfType<FillMark>().Count(fill => fill.Colour == Ink.FilmTint));
    }

    [Fact]
    public void Hours_that_are_not_known_break_the_curve_and_a_table_without_chance_of_rain_shows_how_much()
    {
        var text = new StringBuilder("# latitude: 42.5\n# longitude: -76.5\n# utc offset: -5\ntime,temperature [°C],wind [m/s],precipitation [mm]\n");
        for (int hour = 0; hour < 96; hour++)
            text.Append(CultureInfo.InvariantCulture, $"{new DateTime(2026, 4, 18).AddHours(hour):yyyy-MM-dd HH:mm},{(hour is >= 30 and < 40 ? "NA" : "15")},1.5,{(hour == 50 ? "4" : "0")}\n");
        WeatherRecord record = WeatherReader.Read(Encoding.UTF8.GetBytes(text.ToString())).Record!;
        Drawing drawing = ForecastChart.Draw(CoverDayPlanner.Plan(record).Report!, record, Sheet(UnitSystem.Metric), "1 of 1");
        Assert.Empty(Collisions.In(drawing));
        // Wind in one piece, air in two.
        Assert.Equal(3, drawing.Marks.OfType<LineMark>().Count(line => line is { Layer: "chart", Role: LineRole.Cut }));
        Assert.Contains(drawing.Marks.OfType<TextMark>(), mark => mark.Text == "rain, mm an hour");
        Assert.Contains(drawing.Marks.OfType<TextMark>(), mark => mark.Text == "gusts, estimated");
        Assert.Single(drawing.Marks.OfType<FillMark>(), fill => fill.Colour == Ink.Zinc);
    }

    /// <summary>A year in which the first days of each month are calm, as many as the month's number, and no others: the odds are known beforehand.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void The_bars_of_the_odds_stand_as_high_as_the_numbers_over_them(string language)
    {
        var text = new StringBuilder("# latitude: 42.5\n# longitude: -76.5\n# utc offset: -5\ntime,temperature [°F],wind [mph],precipitation [mm]\n");
        for (DateTime hour = new(2025, 1, 1); hour.Year == 2025; hour = hour.AddHours(1))
            text.Append(CultureInfo.InvariantCulture, $"{hour:yyyy-MM-dd HH:mm},62,{(hour.Day <= hour.Month ? 2 : 20)},0\n");
        WeatherRecord record = WeatherReader.Read(Encoding.UTF8.GetBytes(text.ToString())).Record!;
        Drawing drawing = OddsChart.Draw(CoverDayPlanner.Plan(record).Report!, Sheet(UnitSystem.UsCustomary, language), "1 of 1");
        Assert.True(Collisions.In(drawing).IsEmpty, string.Join("\n", Collisions.In(drawing)));
        TextMark[] over = [.. drawing.Marks.OfType<TextMark>().Where(mark => mark.Layer == "numbers")];
        Assert.Equal(Enumerable.Range(1, 12).Select(month => Math.Round(100.0 * month / DateTime.DaysInMonth(2025, month)).ToString(CultureInfo.InvariantCulture)), over.Where((_, index) => index % 2 == 0).Select(mark => mark.Text));
        SheetBox[] bars = [.. drawing.Marks.OfType<FillMark>().Where(fill => fill.Colour == Ink.Zinc && fill.Layer == "chart").Select(fill => Box(fill.Path)).OrderBy(box => box.LeftMm)];
        Assert.Equal(12, bars.Length);
        for (int month = 2; month <= 12; month++)
            Assert.Equal((double)month / DateTime.DaysInMonth(2025, month) * 31, bars[month - 1].HeightMm / bars[0].HeightMm, 0.01);
    }

    [Fact]
    public void A_record_without_odds_or_days_has_no_such_chart()
    {
        CoverDayReport report = CoverDayPlanner.Plan(Forecast).Report!;
        Assert.Throws<ArgumentException>(() => OddsChart.Draw(report, Sheet(UnitSystem.Metric), "1 of 1"));
        Assert.Equal(["covering-hours"], CoverCharts.Offers(report, Forecast, null, Sheet(UnitSystem.Metric)).Select(offer => offer.Name));
        Assert.Throws<ArgumentException>(() => ForecastChart.Draw(report with { From = null }, Forecast, Sheet(UnitSystem.Metric), "1 of 1"));
    }

    private static SheetBox Box(SheetPath path) => new(
        path.Pieces.Select(piece => piece.End.XMm).Append(path.Start.XMm).Min(), path.Pieces.Select(piece => piece.End.YMm).Append(path.Start.YMm).Min(),
        path.Pieces.Select(piece => piece.End.XMm).Append(path.Start.XMm).Max(), path.Pieces.Select(piece => piece.End.YMm).Append(path.Start.YMm).Max());

    private static FigureSheet Sheet(UnitSystem units, string language = "en") => new(262, 193, "tunnel", "2026-03-01", units) { Words = CrewWords.Of(language) };
}
