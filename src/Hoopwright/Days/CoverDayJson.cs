using System.Globalization;
using System.Text.Json;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Weather;

namespace Hoopwright.Days;

/// <summary>When the roof film can be pulled, as JSON for machines. Numbers are SI with the unit at the end of their names.</summary>
public static class CoverDayJson
{
    /// <summary>Writes the report as an object.</summary>
    /// <param name="json">Where to; after a property's name, or where a value may stand.</param>
    /// <param name="report">The report.</param>
    /// <param name="units">The units of the texts in it.</param>
    public static void Write(Utf8JsonWriter json, CoverDayReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(report);
        json.WriteStartObject();
        json.WritePropertyName("limits");
        Limits(json, report.Limits);
        json.WriteStartObject("siteWind");
        WeatherJson.Number(json, "heightM", report.Height.Metres, 3);
        WeatherJson.Number(json, "mean", report.SiteWind.Mean.Value, 4);
        WeatherJson.Number(json, "gust", report.SiteWind.Gust.Value, 4);
        json.WriteString("formula", report.SiteWind.Formula.Text);
        json.WriteString("source", report.SiteWind.Formula.Source.ToString());
        json.WriteEndObject();
        if (report.Hours is { } hours)
        {
            json.WriteStartObject("hours");
            json.WriteNumber("people", hours.People);
            WeatherJson.Number(json, "filmM2", hours.Film.SquareMetres, 2);
            WeatherJson.Number(json, "workHours", hours.Work.TotalHours, 3);
            json.WriteNumber("neededHours", hours.Needed);
            json.WriteString("rule", CoverHours.Rule.Text);
            json.WriteString("source", CoverHours.Rule.Source.ToString());
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("hours");
        }
        json.WriteBoolean("rainKnown", report.RainKnown);
        json.WriteBoolean("gustsKnown", report.GustsKnown);
        json.WriteString("from", report.From?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteStartArray("windows");
        foreach (WeatherWindow window in report.Windows) Window(json, window, report.Limits, units);
        json.WriteEndArray();
        json.WriteStartArray("odds");
        foreach (MonthOdds odds in report.Odds) Odds(json, odds);
        json.WriteEndArray();
        json.WriteNumber("goodDays", report.GoodDays);
        json.WriteStartArray("relaxed");
        foreach (LimitRelaxing each in report.Relaxed)
        {
            json.WriteStartObject();
            json.WriteString("limit", WeatherJson.Camel(each.Limit.ToString()));
            json.WriteNumber("goodDays", each.GoodDays);
            json.WriteNumber("gained", each.Gained);
            json.WritePropertyName("limits");
            Limits(json, each.Limits);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        RuleJson.Write(json, report.Rules);
        json.WriteString("caution", CoverDaySheet.Caution);
        json.WriteEndObject();
    }

    private static void Limits(Utf8JsonWriter json, WindowLimits limits)
    {
        json.WriteStartObject();
        WeatherJson.Number(json, "windMps", limits.Wind.MetresPerSecond, 4);
        WeatherJson.Number(json, "gustMps", limits.Gust?.MetresPerSecond ?? double.NaN, 4);
        WeatherJson.Number(json, "coldestC", limits.Coldest.Celsius, 3);
        WeatherJson.Number(json, "warmestC", limits.Warmest.Celsius, 3);
        WeatherJson.Number(json, "rainChance", limits.RainChance?.Value ?? double.NaN, 4);
        json.WriteNumber("hours", limits.Hours);
        WeatherJson.Number(json, "gustFactor", limits.GustFactor.Value, 4);
        json.WriteNumber("hoursInTheDark", limits.HoursInTheDark);
        json.WriteEndObject();
    }

    private static void Window(Utf8JsonWriter json, WeatherWindow window, WindowLimits limits, UnitSystem units)
    {
        json.WriteStartObject();
        Time(json, "begin", window.Begin);
        Time(json, "end", window.End);
        Time(json, "from", window.From);
        Time(json, "to", window.To);
        Time(json, "sunrise", window.Sunrise);
        Time(json, "sunset", window.Sunset);
        WeatherJson.Number(json, "windMps", window.Wind.MetresPerSecond, 3);
        WeatherJson.Number(json, "gustMps", window.Gust.MetresPerSecond, 3);
        json.WriteBoolean("gustEstimated", window.GustEstimated);
        WeatherJson.Number(json, "coldestC", window.Coldest.Celsius, 2);
        WeatherJson.Number(json, "warmestC", window.Warmest.Celsius, 2);
        WeatherJson.Number(json, "rainChance", window.RainChance?.Value ?? double.NaN, 3);
        json.WriteBoolean("rainKnown", window.RainKnown);
        WeatherJson.Number(json, "used", window.Used.Value, 4);
        json.WriteString("tightest", WeatherJson.Camel(window.Tightest.ToString()));
        json.WriteStartArray("reasons");
        foreach (string reason in CoverDaySheet.Reasons(window, limits, units)) json.WriteStringValue(reason);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Odds(Utf8JsonWriter json, MonthOdds odds)
    {
        json.WriteStartObject();
        json.WriteNumber("month", odds.Month);
        json.WriteNumber("days", odds.Days);
        json.WriteNumber("goodDays", odds.GoodDays);
        WeatherJson.Number(json, "onADay", odds.OnADay.Value, 4);
        WeatherJson.Number(json, "inAWeek", odds.InAWeek.Value, 4);
        json.WriteStartArray("startingAt");
        foreach (Ratio part in odds.StartingAt) json.WriteNumberValue(Math.Round((decimal)part.Value, 4));
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Time(Utf8JsonWriter json, string name, DateTimeOffset time) => json.WriteString(name, time.ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture));
}
