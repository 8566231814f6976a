using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Days;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Charts;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Packets;

/// <summary>The pages on when the film can be pulled, by a weather file that goes with the packet.</summary>
internal static class WeatherChapter
{
    /// <summary>The charts of the weather; none without.</summary>
    public static ImmutableArray<(string Name, Drawing Drawing)> Charts(CoverWeather? weather, FigureSheet sheet) =>
        weather is null ? [] : [.. CoverCharts.Offers(weather.Report, weather.Record, null, sheet).Select(offer => (offer.Name, offer.Draw()))];

    /// <summary>The best windows, and the odds by month, as far as there are any.</summary>
    public static ImmutableArray<Table> TablesOf(CoverWeather? weather, UnitSystem units) => weather is null ? [] :
    [
        .. weather.Report.Windows.IsEmpty ? (ImmutableArray<Table>)[] : [Windows(weather.Report, units)],
        .. weather.Report.Odds.IsEmpty ? (ImmutableArray<Table>)[] : [Odds(weather.Report)],
    ];

    /// <summary>Sets the chapter; nothing without weather.</summary>
    public static void Set(PacketBook book, CoverWeather? weather, ImmutableArray<Table> tables, ImmutableArray<(string Name, Drawing Drawing)> charts)
    {
        if (weather is null) return;
        book.Chapter("When the film can be pulled").Caution("A forecast is no promise", CoverDaySheet.Caution);
        if (weather.Report is { From: not null, Windows.IsEmpty: true }) book.Paragraph("In the days looked at no hours meet all limits.");
        foreach (Table table in tables) book.Table(table);
        foreach ((_, Drawing drawing) in charts) book.Figure(drawing);
    }

    private static Table Windows(CoverDayReport report, UnitSystem units) => new("covering-windows", "The best hours of the next seven days",
        [new("No.", 0.7, TextAlign.End), new("Day", 2), new("From", 1, TextAlign.End), new("To", 1, TextAlign.End), new("Why", 7)],
        [
            .. report.Windows.Select((window, index) => TableRow.Of((index + 1).ToString(CultureInfo.InvariantCulture), window.Begin.ToString("ddd yyyy-MM-dd", CultureInfo.InvariantCulture),
                window.Begin.ToString("HH:mm", CultureInfo.InvariantCulture), window.End.ToString("HH:mm", CultureInfo.InvariantCulture), string.Join(", ", CoverDaySheet.Reasons(window, report.Limits, units)))),
        ]);

    private static Table Odds(CoverDayReport report) => new("covering-odds", "How often each month has a fit day",
        [new("Month", 2), new("Days that are fit", 2, TextAlign.End), new("Of all days", 2, TextAlign.End), new("Weeks with one", 2, TextAlign.End)],
        [
            .. report.Odds.Where(month => month.Days > 0).Select(month => TableRow.Of(CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month.Month),
                string.Create(CultureInfo.InvariantCulture, $"{month.GoodDays} of {month.Days}"), Percent(month.OnADay), Percent(month.InAWeek))),
        ]);

    private static string Percent(Ratio part) => part.Percent.ToString("0", CultureInfo.InvariantCulture) + " %";
}
