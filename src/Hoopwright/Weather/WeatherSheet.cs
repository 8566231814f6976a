using System.Globalization;
using System.Text;
using Hoopwright.Quantities;

namespace Hoopwright.Weather;

/// <summary>What a weather file holds, as plain text for people.</summary>
public static class WeatherSheet
{
    /// <summary>The place, the time it spans, what is known, and means by month where there is most of a year.</summary>
    /// <param name="record">The weather.</param>
    /// <param name="units">The units to show it in.</param>
    public static string Of(WeatherRecord record, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(record);
        var text = new StringBuilder();
        text.Append(record.Form switch
        {
            WeatherForm.Epw => record.IsTypicalYear ? "Weather file of a typical year, put together from months of several years" : "Weather file",
            WeatherForm.GridForecast => "Grid forecast",
            WeatherForm.HourlyForecast => "Hourly forecast",
            WeatherForm.Table => "Table of weather",
        });
        if (record.Name.Length > 0) text.Append(": ").Append(record.Name);
        text.Append('\n');
        if (record.Epw is { Source.Length: > 0 } header) text.Append(CultureInfo.InvariantCulture, $"source: {header.Source}{(header.Comments1.Length > 0 ? "; " + header.Comments1 : "")}\n");
        if (record.Place is { } place)
            text.Append(CultureInfo.InvariantCulture, $"place: {place.Latitude.Degrees:0.00}°, {place.Longitude.Degrees:0.00}° (north and east positive), {TapeText.OfRun(place.Elevation, units)} above the sea\n");
        if (record.Issued is { } issued) text.Append(CultureInfo.InvariantCulture, $"issued: {issued:yyyy-MM-dd HH:mm}\n");
        text.Append(CultureInfo.InvariantCulture, $"{record.Count} hours, {record[0].Start:yyyy-MM-dd HH:mm} to {record[record.Count - 1].Start:yyyy-MM-dd HH:mm}, clock {TableReader.OffsetText(record.UtcOffset)}, wind at {TapeText.OfRun(record.WindHeight, units)}\n");
        text.Append("known: ").AppendJoin(", ", Enum.GetValues<WeatherElement>().Where(element => record.KnownHours(element) > 0).Select(element => Known(record, element))).Append('\n');
        if (record.Count >= 300 * 24) Months(text, new Climate(record), units);
        return text.ToString();
    }

    private static string Known(WeatherRecord record, WeatherElement element)
    {
        int known = record.KnownHours(element);
        return ElementFact.Of(element).Name + (known == record.Count ? "" : string.Create(CultureInfo.InvariantCulture, $" ({known} h)"));
    }

    private static void Months(StringBuilder text, Climate climate, UnitSystem units)
    {
        text.Append('\n').Append(Row("month", "mean", "lowest", "highest", "wind", "nights of frost", "light, kWh/m² a day")).Append('\n');
        for (int month = 1; month <= 12; month++)
        {
            if (climate.Month(month) is not { } found) continue;
            text.Append(Row(
                CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month),
                Air(found.MeanC), Air(found.LowestC), Air(found.HighestC), double.IsNaN(found.MeanWindMps) ? "-" : TapeText.Of(Speed.FromMetresPerSecond(found.MeanWindMps), units),
                found.FrostDays.ToString(CultureInfo.InvariantCulture), double.IsNaN(found.GlobalWhPerM2Day) ? "-" : (found.GlobalWhPerM2Day / 1000).ToString("0.0", CultureInfo.InvariantCulture))).Append('\n');
        }

        string Air(double celsius) => double.IsNaN(celsius) ? "-" : TapeText.Of(Temperature.FromCelsius(celsius), units);
    }

    private static string Row(params ReadOnlySpan<string> cells)
    {
        var row = new StringBuilder();
        foreach (string cell in cells) row.Append(cell.PadRight(Math.Max(9, cell.Length + 2)));
        return row.ToString().TrimEnd();
    }
}
