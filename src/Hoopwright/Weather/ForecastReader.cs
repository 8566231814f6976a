using System.Globalization;
using System.Text.Json;
using Hoopwright.Quantities;
using Hoopwright.Sun;

namespace Hoopwright.Weather;

/// <summary>
/// Reads forecasts as the U.S. National Weather Service publishes them: the grid of a place with a layer a value, whose stretches of
/// time last one or more hours; or hourly periods. The layers and periods are documented at weather-gov.github.io/api/gridpoints;
/// what units they come in is from memory of such files.
/// </summary>
internal sealed class ForecastReader(TimeSpan? clock, WeatherProblems problems)
{
    // A forecast that spans more is another thing.
    private const int MostHours = 60 * 24;

    private const string Accepted = "a gridpoint or hourly forecast of the National Weather Service";

    private static readonly (string Name, WeatherElement Element)[] Layers =
    [
        ("temperature", WeatherElement.AirTemperature), ("dewpoint", WeatherElement.DewPoint), ("relativeHumidity", WeatherElement.Humidity),
        ("windSpeed", WeatherElement.Wind), ("windGust", WeatherElement.Gust), ("windDirection", WeatherElement.WindDirection),
        ("skyCover", WeatherElement.SkyCover), ("probabilityOfPrecipitation", WeatherElement.PrecipitationChance),
        ("quantitativePrecipitation", WeatherElement.Precipitation), ("pressure", WeatherElement.Pressure),
    ];

    private static readonly string[] Compass = ["N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"];

    private Place? _place;
    private TimeSpan _offset;

    internal WeatherRecord? Read(ReadOnlyMemory<byte> file)
    {
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(file, new JsonDocumentOptions { MaxDepth = 64, CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        }
        catch (JsonException fault)
        {
            problems.Error("weather.forecast.not-json", WeatherProblems.Line((int)(fault.LineNumber ?? 0) + 1), "The file stops following the rules of JSON here; it may break off.", null, "the whole file: fetch it again");
            return null;
        }
        using (document)
        {
            return Read(document);
        }
    }

    private WeatherRecord? Read(JsonDocument document)
    {
        try
        {
            if (document.RootElement is { ValueKind: JsonValueKind.Object } root && Get(root, "properties") is { ValueKind: JsonValueKind.Object } properties)
            {
                _place = PlaceOf(root, properties);
                if (problems.HasErrors) return null;
                if (Get(properties, "periods") is { ValueKind: JsonValueKind.Array } periods) return Hourly(properties, periods);
                if (Get(properties, "temperature") is not null || Get(properties, "windSpeed") is not null) return Grid(properties);
            }
        }
        catch (InvalidOperationException)
        {
            // How the JSON reader says that a text is no text: half a character, or bytes that are not UTF-8.
            problems.Error("weather.not-text", "file", "A text in the file holds half a character, or is not UTF-8.", null, "a file saved as UTF-8");
            return null;
        }
        problems.Error("weather.forecast.unknown", "file", "The file is JSON but no forecast that is known here.", null, Accepted);
        return null;
    }

    private WeatherRecord? Grid(JsonElement properties)
    {
        if (clock is null && _place is not null)
            problems.Assume("weather.clock-by-longitude", "file", "The forecast is in universal time and does not say by which clock people live, so the standard time of its longitude is taken.", TableReader.OffsetText(Nearest(_place)));
        _offset = clock ?? (_place is null ? TimeSpan.Zero : Nearest(_place));
        var hours = new SortedDictionary<int, double[]>();
        foreach ((string name, WeatherElement element) in Layers)
        {
            string path = "properties." + name;
            if (Get(properties, name) is not { ValueKind: JsonValueKind.Object } layer || Get(layer, "values") is not { ValueKind: JsonValueKind.Array } values || values.GetArrayLength() == 0)
            {
                if (element is WeatherElement.AirTemperature or WeatherElement.Wind)
                    problems.Error("weather.forecast.layer", path, "The forecast lacks this layer.", null, "values of temperature and windSpeed");
                continue;
            }
            string unit = Text(layer, "uom") ?? "";
            if (WeatherUnits.Find(WeatherUnits.KindOf(element)!.Value, unit) is not { } factor)
            {
                problems.Error("weather.unit", path, "The unit of this layer is not known.", unit, WeatherUnits.Accepted(WeatherUnits.KindOf(element)!.Value, unit));
                continue;
            }
            int index = 0;
            foreach (JsonElement value in values.EnumerateArray()) Stretch(value, $"{path}.values[{index++}]", element, factor, hours);
        }
        return Finish(hours, WeatherForm.GridForecast, properties);
    }

    private void Stretch(JsonElement value, string path, WeatherElement element, (double Times, double Plus) factor, SortedDictionary<int, double[]> hours)
    {
        if (value.ValueKind != JsonValueKind.Object || Text(value, "validTime") is not { } written || written.Split('/') is not [var from, var length]
            || !Instant(from, out DateTimeOffset start) || IsoDuration.Read(length) is not { } span || span.TotalHours is < 1 or > MostHours)
        {
            problems.Warn("weather.forecast.time", path, "The stretch of time cannot be read; it is left out.", value.ValueKind == JsonValueKind.Object ? Text(value, "validTime") : null, "2026-04-18T18:00:00+00:00/PT3H");
            return;
        }
        if (Get(value, "value") is not { ValueKind: JsonValueKind.Number } number || !number.TryGetDouble(out double amount) || !double.IsFinite(amount)) return;
        int first = RawWeather.HourOf(start.ToOffset(_offset).DateTime), count = (int)span.TotalHours;
        double kept = (amount * factor.Times) + factor.Plus;
        // What falls in a stretch is spread over its hours; everything else holds all through it.
        if (element == WeatherElement.Precipitation) kept /= count;
        for (int hour = first; hour < first + count; hour++) Put(hours, hour, element, kept);
    }

    private WeatherRecord? Hourly(JsonElement properties, JsonElement periods)
    {
        var hours = new SortedDictionary<int, double[]>();
        bool known = false;
        int index = 0;
        foreach (JsonElement period in periods.EnumerateArray())
        {
            string path = $"properties.periods[{index++}]";
            if (period.ValueKind != JsonValueKind.Object || !Instant(Text(period, "startTime"), out DateTimeOffset start) || !Instant(Text(period, "endTime"), out DateTimeOffset end) || (end - start).TotalHours is < 0.5 or > MostHours)
            {
                problems.Warn("weather.forecast.time", path, "The stretch of time cannot be read; it is left out.", period.ValueKind == JsonValueKind.Object ? Text(period, "startTime") : null, "2026-04-18T14:00:00-04:00");
                continue;
            }
            if ((end - start).TotalHours > 1.5)
            {
                problems.Error("weather.not-hourly", path, "The periods of this forecast are longer than an hour.", Text(period, "startTime") + " to " + Text(period, "endTime"), "the hourly forecast of the same place");
                return null;
            }
            if (!known) (_offset, known) = (clock ?? start.Offset, true);
            int hour = RawWeather.HourOf(start.ToOffset(_offset).DateTime);
            Values(period, path, hour, hours);
        }
        return Finish(hours, WeatherForm.HourlyForecast, properties);
    }

    private void Values(JsonElement period, string path, int hour, SortedDictionary<int, double[]> hours)
    {
        Take(WeatherElement.AirTemperature, "temperature", Text(period, "temperatureUnit") ?? "");
        Take(WeatherElement.DewPoint, "dewpoint", "");
        Take(WeatherElement.Humidity, "relativeHumidity", "");
        Take(WeatherElement.PrecipitationChance, "probabilityOfPrecipitation", "");
        Take(WeatherElement.Wind, "windSpeed", "");
        Take(WeatherElement.Gust, "windGust", "");
        if (Text(period, "windDirection") is { } from && Array.IndexOf(Compass, from) is >= 0 and var point) Put(hours, hour, WeatherElement.WindDirection, point * 22.5);

        void Take(WeatherElement element, string name, string plainUnit)
        {
            if (Get(period, name) is not { } value || value.ValueKind == JsonValueKind.Null) return;
            (double? amount, string unit) = value.ValueKind switch
            {
                JsonValueKind.Number => (value.GetDouble(), plainUnit),
                JsonValueKind.Object => (HighestOf(value), Text(value, "unitCode") ?? ""),
                JsonValueKind.String => Spoken(value.GetString()!),
                _ => (null, ""),
            };
            // An empty text or a value of null says that nothing is known.
            if (amount is null && (value.ValueKind == JsonValueKind.Object || value.ValueKind == JsonValueKind.String && value.GetString()!.Length == 0)) return;
            if (amount is { } number && WeatherUnits.Find(WeatherUnits.KindOf(element)!.Value, unit) is { } factor) Put(hours, hour, element, (number * factor.Times) + factor.Plus);
            else problems.Repaired(WeatherRepairKind.Unreadable, hour, element, value.ToString());
        }
    }

    /// <summary>"5 to 10 mph": the higher number, and the unit.</summary>
    private static (double? Amount, string Unit) Spoken(string text)
    {
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        double? highest = null;
        foreach (string word in words)
        {
            if (double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number)) highest = Math.Max(highest ?? number, number);
        }
        return (highest, words.Length > 0 ? words[^1] : "");
    }

    private static double? HighestOf(JsonElement value) =>
        Get(value, "maxValue") is { ValueKind: JsonValueKind.Number } most ? most.GetDouble() : Get(value, "value") is { ValueKind: JsonValueKind.Number } plain ? plain.GetDouble() : null;

    private WeatherRecord? Finish(SortedDictionary<int, double[]> hours, WeatherForm form, JsonElement properties)
    {
        if (problems.HasErrors) return null;
        if (hours.Count > MostHours)
        {
            problems.Error("weather.too-large", "file", "The forecast has more hours than any.", hours.Count.ToString(CultureInfo.InvariantCulture), "up to 60 days");
            return null;
        }
        var raw = new RawWeather();
        foreach ((int hour, double[] values) in hours)
        {
            raw.Add(hour, raw.Count + 1);
            for (int element = 0; element < values.Length; element++)
            {
                if (!double.IsNaN(values[element])) raw.Set((WeatherElement)element, values[element]);
            }
        }
        bool issued = Instant(Text(properties, "updateTime") ?? Text(properties, "generatedAt"), out DateTimeOffset when);
        return new Mending(raw, problems).Make(mended => new WeatherRecord(mended.Hours, mended.Columns)
        {
            Form = form,
            Name = Text(properties, "gridId") is { } grid ? $"grid {grid} {Get(properties, "gridX")},{Get(properties, "gridY")}" : "",
            Place = _place,
            UtcOffset = _offset,
            Stamp = WeatherStamp.HourBeginning,
            WindHeight = Length.FromMetres(10),
            Issued = issued ? when.ToOffset(_offset) : null,
        }, _place, _offset, rowsLast: true);
    }

    private static void Put(SortedDictionary<int, double[]> hours, int hour, WeatherElement element, double value)
    {
        if (!hours.TryGetValue(hour, out double[]? values))
        {
            if (hours.Count > MostHours) return;
            hours.Add(hour, values = new double[ElementFact.Count]);
            Array.Fill(values, double.NaN);
        }
        values[(int)element] = value;
    }

    private Place? PlaceOf(JsonElement root, JsonElement properties)
    {
        if (Get(root, "geometry") is not { ValueKind: JsonValueKind.Object } geometry || Get(geometry, "coordinates") is not { ValueKind: JsonValueKind.Array } coordinates) return null;
        var points = new List<(double East, double North)>();
        Points(coordinates, points, depth: 0);
        if (points.Count == 0) return null;
        // The corners of the square; its first stands again at its end.
        var corners = points.Distinct().ToList();
        double heightM = Get(properties, "elevation") is { ValueKind: JsonValueKind.Object } elevation && Get(elevation, "value") is { ValueKind: JsonValueKind.Number } height ? height.GetDouble() : 0;
        return PlaceCheck.Of(corners.Average(corner => corner.North), corners.Average(corner => corner.East), heightM, "geometry", problems);
    }

    private static void Points(JsonElement list, List<(double, double)> points, int depth)
    {
        if (depth > 4 || points.Count > 1000) return;
        JsonElement[] items = [.. list.EnumerateArray()];
        if (items.Length >= 2 && items.All(item => item.ValueKind == JsonValueKind.Number)) points.Add((items[0].GetDouble(), items[1].GetDouble()));
        else foreach (JsonElement item in items.Where(item => item.ValueKind == JsonValueKind.Array)) Points(item, points, depth + 1);
    }

    private static TimeSpan Nearest(Place place) => TimeSpan.FromHours(Math.Round(place.Longitude.Degrees / 15));

    private static bool Instant(string? text, out DateTimeOffset instant) =>
        DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out instant) && instant.Year is >= 1800 and <= 2200;

    private static JsonElement? Get(JsonElement group, string name) => group.TryGetProperty(name, out JsonElement value) ? value : null;

    private static string? Text(JsonElement group, string name) => Get(group, name) is { ValueKind: JsonValueKind.String } value ? value.GetString() : null;
}
