using System.Globalization;
using System.Text.Json;
using Hoopwright.Weather;

namespace Hoopwright.Upkeep;

/// <summary>A forecast against a storm card, as JSON for machines. Numbers are SI with the unit at the end of their names.</summary>
public static class StormOutlookJson
{
    /// <summary>Writes it as an object.</summary>
    /// <param name="json">Where to; after a property's name, or where a value may stand.</param>
    /// <param name="outlook">The forecast against the card.</param>
    public static void Write(Utf8JsonWriter json, StormOutlook outlook)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(outlook);
        json.WriteStartObject();
        Time("from", outlook.From);
        Time("to", outlook.To);
        json.WriteBoolean("pastLimit", outlook.PastLimit);
        WeatherJson.Number(json, "gustMps", outlook.Gust?.MetresPerSecond ?? double.NaN, 3);
        if (outlook.GustAt is { } at) Time("gustAt", at);
        json.WriteBoolean("gustsEstimated", outlook.GustsEstimated);
        WeatherJson.Number(json, "lyingPa", outlook.Lying.Pascals, 1);
        WeatherJson.Number(json, "snowPa", outlook.Snow.Pascals, 1);
        WeatherJson.Number(json, "rainOnSnowPa", outlook.RainOnSnow.Pascals, 1);
        json.WriteString("snowRule", StormWatch.Rule.Text);
        json.WriteString("snowSource", StormWatch.Rule.Source.ToString());
        json.WriteNumber("hoursUnknown", outlook.HoursUnknown);
        json.WriteStartArray("warnings");
        foreach (StormWarning warning in outlook.Warnings)
        {
            json.WriteStartObject();
            json.WriteString("action", WeatherJson.Camel(warning.Action.ToString()));
            Time("first", warning.First);
            json.WriteNumber("hours", warning.Hours);
            Time("worstAt", warning.WorstAt);
            if (warning.Gust is { } gust) WeatherJson.Number(json, "gustMps", gust.MetresPerSecond, 3);
            if (warning.GustLimit is { } most) WeatherJson.Number(json, "gustLimitMps", most.MetresPerSecond, 3);
            if (warning.Snow is { } snow) WeatherJson.Number(json, "snowPa", snow.Pascals, 1);
            if (warning.SnowLimit is { } limit) WeatherJson.Number(json, "snowLimitPa", limit.Pascals, 1);
            WeatherJson.Number(json, "times", warning.Times.Value, 3);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();

        void Time(string name, DateTimeOffset time) => json.WriteString(name, time.ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture));
    }
}
