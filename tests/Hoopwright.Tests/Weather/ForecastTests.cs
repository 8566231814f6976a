using System.Text;
using CsCheck;
using Hoopwright.Diagnostics;
using Hoopwright.Testing;
using Hoopwright.Weather;

namespace Hoopwright.Tests.Weather;

/// <summary>Forecasts in the forms of the U.S. National Weather Service.</summary>
public sealed class ForecastTests
{
    // Written after the pages weather-gov.github.io/api/gridpoints and the schema of the hourly periods; numbers are invented.
    private const string Grid = """
        {"geometry":{"type":"Polygon","coordinates":[[[-76.52,42.48],[-76.48,42.48],[-76.48,42.52],[-76.52,42.52],[-76.52,42.48]]]},
         "properties":{"updateTime":"2026-04-18T09:00:00+00:00","elevation":{"unitCode":"wmoUnit:m","value":250},"gridId":"XYZ","gridX":"1","gridY":"2",
          "temperature":{"uom":"wmoUnit:degC","values":[{"validTime":"2026-04-18T18:00:00+00:00/PT3H","value":12.5},{"validTime":"2026-04-18T21:00:00+00:00/P1DT1H","value":9}]},
          "windSpeed":{"uom":"wmoUnit:km_h-1","values":[{"validTime":"2026-04-18T18:00:00+00:00/PT2H","value":18},{"validTime":"2026-04-18T20:00:00+00:00/P1DT2H","value":7.2}]},
          "windGust":{"uom":"wmoUnit:km_h-1","values":[{"validTime":"2026-04-18T18:00:00+00:00/PT1H","value":36}]},
          "probabilityOfPrecipitation":{"uom":"wmoUnit:percent","values":[{"validTime":"2026-04-18T18:00:00+00:00/PT6H","value":30},{"validTime":"2026-04-19T00:00:00+00:00/PT6H","value":null}]},
          "quantitativePrecipitation":{"uom":"wmoUnit:mm","values":[{"validTime":"2026-04-18T18:00:00+00:00/PT6H","value":3}]}}}
        """;

    private const string Hourly = """
        {"geometry":{"type":"Point","coordinates":[-76.5,42.5]},"properties":{"updateTime":"2026-04-18T09:00:00+00:00","periods":[
         {"number":1,"startTime":"2026-04-18T14:00:00-04:00","endTime":"2026-04-18T15:00:00-04:00","isDaytime":true,"temperature":59,"temperatureUnit":"F",
          "probabilityOfPrecipitation":{"unitCode":"wmoUnit:percent","value":20},"dewpoint":{"unitCode":"wmoUnit:degC","value":5},"relativeHumidity":{"unitCode":"wmoUnit:percent","value":50},
          "windSpeed":"5 to 10 mph","windGust":null,"windDirection":"NW"},
         {"number":2,"startTime":"2026-04-18T15:00:00-04:00","endTime":"2026-04-18T16:00:00-04:00","temperature":{"unitCode":"wmoUnit:degC","value":16},
          "probabilityOfPrecipitation":{"unitCode":"wmoUnit:percent","value":null},"windSpeed":{"unitCode":"wmoUnit:km_h-1","minValue":3.6,"maxValue":7.2},"windGust":"15 mph","windDirection":"S"}]}}
        """;

    [Fact]
    public void Layers_of_a_grid_are_spread_over_their_hours()
    {
        WeatherReading reading = Read(Grid, TimeSpan.FromHours(-4));
        WeatherRecord record = reading.Record!;
        Assert.Equal(WeatherForm.GridForecast, record.Form);
        Assert.Equal(28, record.Count);
        Assert.Equal(new DateTimeOffset(2026, 4, 18, 14, 0, 0, TimeSpan.FromHours(-4)), record[0].Start);
        Assert.Equal(42.5, record.Place!.Latitude.Degrees, 9);
        Assert.Equal(12.5, record[2].AirTemperature!.Value.Celsius, 9);
        Assert.Equal(9, record[3].AirTemperature!.Value.Celsius, 9);
        Assert.Equal(5, record[1].Wind!.Value.MetresPerSecond, 9);
        Assert.Equal(2, record[2].Wind!.Value.MetresPerSecond, 9);
        Assert.Equal(10, record[0].Gust!.Value.MetresPerSecond, 9);
        Assert.Null(record[1].Gust);
        Assert.Equal(0.3, record[5].PrecipitationChance!.Value.Value, 9);
        Assert.Null(record[6].PrecipitationChance);
        // 3 mm in six hours are half a millimetre in each.
        Assert.Equal(0.5, record[4].Precipitation!.Value.Millimetres, 9);
        Assert.Equal(new DateTimeOffset(2026, 4, 18, 5, 0, 0, TimeSpan.FromHours(-4)), record.Issued);
        Assert.DoesNotContain(reading.Diagnostics, each => each.Code == "weather.clock-by-longitude");
        Assert.Contains(Read(Grid).Diagnostics, each => each.Code == "weather.clock-by-longitude" && each.Severity == Severity.Assumption);
    }

    [Fact]
    public void Periods_of_an_hour_are_read_as_words_and_as_numbers()
    {
        WeatherRecord record = Read(Hourly).Record!;
        Assert.Equal(TimeSpan.FromHours(-4), record.UtcOffset);
        Assert.Equal(59, record[0].AirTemperature!.Value.Fahrenheit, 9);
        // Of a range the higher counts.
        Assert.Equal(10, record[0].Wind!.Value.MilesPerHour, 9);
        Assert.Equal(2, record[1].Wind!.Value.MetresPerSecond, 9);
        Assert.Equal(315, record[0].WindDirection!.Value.Degrees, 9);
        Assert.Null(record[0].Gust);
        Assert.Equal(15, record[1].Gust!.Value.MilesPerHour, 9);
        Assert.Null(record[1].PrecipitationChance);
        Assert.Equal(16, record[1].AirTemperature!.Value.Celsius, 9);
    }

    [Theory]
    [InlineData("{\"properties\":", "weather.forecast.not-json")]
    [InlineData("{}", "weather.forecast.unknown")]
    [InlineData("{\"properties\":{\"temperature\":{}}}", "weather.forecast.layer")]
    [InlineData("{\"properties\":{\"periods\":[]}}", "weather.no-rows")]
    [InlineData("{\"properties\":{\"periods\":[{\"startTime\":\"2026-04-18T06:00:00-04:00\",\"endTime\":\"2026-04-18T18:00:00-04:00\"}]}}", "weather.not-hourly")]
    [InlineData("{\"properties\":{\"gridId\":\"\\ud800\",\"periods\":[{\"startTime\":\"2026-04-18T06:00:00-04:00\",\"endTime\":\"2026-04-18T07:00:00-04:00\",\"temperature\":5,\"temperatureUnit\":\"F\"}]}}", "weather.not-text")]
    public void What_is_no_forecast_is_refused(string text, string code)
    {
        WeatherReading reading = Read(text);
        Assert.Null(reading.Record);
        Assert.Contains(reading.Diagnostics, each => each.Code == code);
    }

    [Fact]
    public void A_unit_that_is_not_known_and_a_stretch_of_time_that_cannot_be_read_are_told()
    {
        Assert.Contains(Read(Grid.Replace("wmoUnit:km_h-1", "wmoUnit:furlong", StringComparison.Ordinal)).Diagnostics, each => each is { Code: "weather.unit", Path: "properties.windSpeed" });
        WeatherReading reading = Read(Grid.Replace("2026-04-18T18:00:00+00:00/PT3H", "yesterday", StringComparison.Ordinal));
        Assert.Contains(reading.Diagnostics, each => each is { Code: "weather.forecast.time", Path: "properties.temperature.values[0]", Seen: "yesterday" });
        Assert.NotNull(reading.Record);
    }

    [Fact]
    public void The_bundled_forecast_is_whole_and_says_that_it_is_invented()
    {
        byte[] file = File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "forecast-invented.json"));
        Assert.Contains("An invented forecast", Encoding.UTF8.GetString(file), StringComparison.Ordinal);
        WeatherReading reading = WeatherReader.Read(file);
        Assert.Empty(reading.Repairs);
        Assert.Equal(174, reading.Record!.Count);
    }

    [Fact]
    public void Whatever_the_bytes_nothing_is_thrown() =>
        Gen.Select(Gen.Int[0, 5000], Gen.Byte, Gen.Bool).List[1, 6].Sample(changes =>
        {
            byte[] file = Encoding.UTF8.GetBytes(changes[0].Item3 ? Grid : Hourly);
            foreach ((int at, byte value, _) in changes) file[at % file.Length] = value;
            WeatherReading reading = WeatherReader.Read(file);
            Assert.True(reading.Record is not null || reading.Diagnostics.Any(each => each.Severity == Severity.Error));
        }, iter: 500);

    [Theory]
    [InlineData("PT1H", 60)]
    [InlineData("P1DT6H", 1800)]
    [InlineData("P7D", 10080)]
    [InlineData("PT30M", 30)]
    [InlineData("P1W", 10080)]
    [InlineData("PT", -1)]
    [InlineData("P1M", -1)]
    [InlineData("PT1.5H", -1)]
    [InlineData("P1DT", 1440)]
    [InlineData("1H", -1)]
    [InlineData("PT9999999H", -1)]
    public void Lengths_of_time_are_read_as_ISO_8601_writes_them(string text, int minutes) =>
        Assert.Equal(minutes < 0 ? null : TimeSpan.FromMinutes(minutes), IsoDuration.Read(text));

    private static WeatherReading Read(string text, TimeSpan? clock = null) => WeatherReader.Read(Encoding.UTF8.GetBytes(text), clock);
}
