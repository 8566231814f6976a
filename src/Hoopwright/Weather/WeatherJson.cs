using System.Text.Json;

namespace Hoopwright.Weather;

/// <summary>What a weather file holds, as JSON for machines. Numbers are SI with the unit at the end of their names.</summary>
public static class WeatherJson
{
    /// <summary>Writes what was read as an object: form, place, hours, what is known, repairs and, where there is most of a year, months.</summary>
    /// <param name="json">Where to; after a property's name, or where a value may stand.</param>
    /// <param name="reading">What came of reading the file.</param>
    public static void Write(Utf8JsonWriter json, WeatherReading reading)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(reading);
        json.WriteStartObject();
        if (reading.Record is { } record) Record(json, record);
        json.WriteStartArray("repairs");
        foreach (WeatherRepair repair in reading.Repairs)
        {
            json.WriteStartObject();
            json.WriteString("kind", Camel(repair.Kind.ToString()));
            json.WriteString("element", repair.Element is { } element ? Camel(element.ToString()) : null);
            json.WriteNumber("count", repair.Count);
            json.WriteStartArray("lines");
            foreach (int line in repair.Lines) json.WriteNumberValue(line);
            json.WriteEndArray();
            json.WriteString("seen", repair.Seen);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Record(Utf8JsonWriter json, WeatherRecord record)
    {
        json.WriteString("form", Camel(record.Form.ToString()));
        json.WriteString("name", record.Name);
        if (record.Place is { } place)
        {
            json.WriteStartObject("place");
            Number(json, "latitudeDeg", place.Latitude.Degrees, 4);
            Number(json, "longitudeDeg", place.Longitude.Degrees, 4);
            Number(json, "elevationM", place.Elevation.Metres, 1);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("place");
        }
        Number(json, "utcOffsetHours", record.UtcOffset.TotalHours, 2);
        Number(json, "windHeightM", record.WindHeight.Metres, 2);
        json.WriteBoolean("typicalYear", record.IsTypicalYear);
        json.WriteString("issued", record.Issued?.ToString("yyyy-MM-dd'T'HH:mm:sszzz", System.Globalization.CultureInfo.InvariantCulture));
        json.WriteNumber("hours", record.Count);
        json.WriteString("from", record[0].Start.ToString("yyyy-MM-dd'T'HH:mmzzz", System.Globalization.CultureInfo.InvariantCulture));
        json.WriteString("to", record[record.Count - 1].Start.ToString("yyyy-MM-dd'T'HH:mmzzz", System.Globalization.CultureInfo.InvariantCulture));
        json.WriteStartObject("knownHours");
        foreach (WeatherElement element in Enum.GetValues<WeatherElement>())
        {
            if (record.KnownHours(element) is > 0 and var known) json.WriteNumber(Camel(element.ToString()), known);
        }
        json.WriteEndObject();
        if (record.Count < 300 * 24) return;
        var climate = new Climate(record);
        (DateOnly? spring, DateOnly? autumn) = climate.Frost();
        json.WriteString("lastSpringFrost", spring?.ToString("MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        json.WriteString("firstAutumnFrost", autumn?.ToString("MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        if (WindDistribution.Of(record.Column(WeatherElement.Wind) ?? []) is { } wind)
        {
            json.WriteStartObject("wind");
            Number(json, "meanMps", wind.MeanMps, 4);
            Number(json, "deviationMps", wind.DeviationMps, 4);
            Number(json, "calmPart", wind.CalmPart, 4);
            Number(json, "weibullShapeByMoments", wind.MomentShape, 4);
            Number(json, "weibullScaleByMomentsMps", wind.MomentScaleMps, 4);
            Number(json, "weibullShapeMostLikely", wind.LikelyShape, 4);
            Number(json, "weibullScaleMostLikelyMps", wind.LikelyScaleMps, 4);
            json.WriteEndObject();
        }
        json.WriteStartArray("months");
        for (int month = 1; month <= 12; month++)
        {
            if (climate.Month(month) is { } found) Month(json, month, found, climate);
        }
        json.WriteEndArray();
    }

    private static void Month(Utf8JsonWriter json, int month, MonthClimate found, Climate climate)
    {
        json.WriteStartObject();
        json.WriteNumber("month", month);
        json.WriteNumber("days", found.Days);
        Number(json, "meanC", found.MeanC, 3);
        Number(json, "lowestC", found.LowestC, 2);
        Number(json, "highestC", found.HighestC, 2);
        Number(json, "meanDewPointC", found.MeanDewPointC, 3);
        Number(json, "meanWindMps", found.MeanWindMps, 3);
        Number(json, "globalWhPerM2Day", found.GlobalWhPerM2Day, 1);
        Number(json, "beamWhPerM2Day", found.BeamWhPerM2Day, 1);
        Number(json, "diffuseWhPerM2Day", found.DiffuseWhPerM2Day, 1);
        json.WriteNumber("frostDays", found.FrostDays);
        Number(json, "heatingDegreeDays18ByMeanKd", climate.HeatingByMean(month, 18), 1);
        Number(json, "heatingDegreeDays18ByMiddleKd", climate.HeatingByMiddle(month, 18), 1);
        Number(json, "coolingDegreeDays18ByMeanKd", climate.CoolingByMean(month, 18), 1);
        Number(json, "growingDegreeDays10ByMiddleKd", climate.GrowingByMiddle(month, 10), 1);
        Number(json, "growingDegreeDays10To30ByMiddleKd", climate.GrowingCut(month, 10, 30), 1);
        Number(json, "growingDegreeDays10BySineKd", climate.GrowingBySine(month, 10), 1);
        Number(json, "growingDegreeDays10ByHourKd", climate.GrowingByHour(month, 10), 1);
        json.WriteEndObject();
    }

    internal static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    internal static void Number(Utf8JsonWriter json, string name, double value, int decimals)
    {
        // Zero without a sign, so that a rounding down to nothing writes the same bytes everywhere.
        if (double.IsFinite(value)) json.WriteNumber(name, Math.Round((decimal)value, decimals) + 0m);
        else json.WriteNull(name);
    }
}
