using System.Text;
using Hoopwright.Diagnostics;
using Hoopwright.Testing;
using Hoopwright.Weather;

namespace Hoopwright.Tests.Weather;

/// <summary>Plain tables of weather.</summary>
public sealed class TableTests
{
    private const string Notes = "# a remark: of no meaning\n# name: the barn\n# latitude: 42.5\n# longitude: -76.5\n# elevation: 820 ft\n# utc offset: -5\n# wind height: 3 m\n";

    [Fact]
    public void A_table_is_read_in_its_own_units()
    {
        WeatherRecord record = Read(Notes + "time,temperature [°F],dew point [°C],humidity [%],wind [mph],gust [kt],wind direction [°],precipitation [in],pressure [inHg]\n2026-04-18T13:00,59,5,50,10,20,270,0.1,29.92\n2026-04-18T14:00,60,,NA,11,,,,\n").Record!;
        Assert.Equal("the barn", record.Name);
        Assert.Equal(249.936, record.Place!.Elevation.Metres, 6);
        Assert.Equal(3, record.WindHeight.Metres, 9);
        Assert.Equal(new DateTimeOffset(2026, 4, 18, 13, 0, 0, TimeSpan.FromHours(-5)), record[0].Start);
        Assert.Equal(59, record[0].AirTemperature!.Value.Fahrenheit, 9);
        Assert.Equal(10, record[0].Wind!.Value.MilesPerHour, 9);
        Assert.Equal(2.54, record[0].Precipitation!.Value.Millimetres, 9);
        // One knot is 1852 m an hour; one inch of mercury 3386.389 Pa.
        Published.Check("NIST SP 811 (2008), B.8, from memory", "20 kt, m/s", 10.28889, record[0].Gust!.Value.MetresPerSecond, 1e-5, "printed digits");
        Published.Check("NIST SP 811 (2008), B.8, from memory", "29.92 inHg, Pa", 101_320.8, record.Column(WeatherElement.Pressure)![0], 0.1, "printed digits");
        Assert.Null(record[1].Humidity);
    }

    [Fact]
    public void Times_of_any_clock_are_brought_to_that_of_the_notes()
    {
        WeatherRecord record = Read(Notes + "time,temperature [°C],wind [m/s]\n2026-04-18T18:00:00Z,10,1\n2026-04-18T15:00-04:00,11,2\n").Record!;
        Assert.Equal(13, record[0].Start.Hour);
        Assert.Equal(14, record[1].Start.Hour);
    }

    [Fact]
    public void What_the_time_says_is_what_the_notes_say()
    {
        const string Rows = "time,temperature [°C],wind [m/s]\n2026-04-18 14:00,10,1\n";
        Assert.Equal(14, Read(Notes + Rows).Record![0].Start.Hour);
        Assert.Equal(13, Read(Notes + "# time: end of hour\n" + Rows).Record![0].Start.Hour);
        Assert.Equal(WeatherStamp.Reading, Read(Notes + "# time: reading\n" + Rows).Record!.Stamp);
        Assert.Contains(Read(Notes + "# time: now and then\n" + Rows).Diagnostics, each => each is { Code: "weather.note", Path: "line 8" });
    }

    [Fact]
    public void Times_beside_the_hour_count_for_the_nearest()
    {
        WeatherReading reading = Read(Notes + "time,temperature [°C],wind [m/s]\n2026-04-18 13:51,10,1\n2026-04-18 14:51,10,1\n");
        Assert.Equal(14, reading.Record![0].Start.Hour);
        Assert.Equal(2, Assert.Single(reading.Repairs).Count);
    }

    [Theory]
    [InlineData("time,temperature [°F]\n", "weather.table.column-missing")]
    [InlineData("time,temperature [°F],wind\n", "weather.unit")]
    [InlineData("time,temperature [°F],wind [stones]\n", "weather.unit")]
    [InlineData("time,temperature [°F],wind [mph],wind [m/s]\n", "weather.table.column")]
    [InlineData("# latitude: 42\ntime,temperature [°F],wind [mph]\n2026-04-18T13:00,59,5\n", "weather.place")]
    [InlineData("# utc offset: late\ntime,temperature [°F],wind [mph]\n2026-04-18T13:00,59,5\n", "weather.note")]
    [InlineData("time,temperature [°F],wind [mph]\nsoon,59,5\n", "weather.no-rows")]
    public void What_is_wrong_in_a_table_is_told(string table, string code)
    {
        WeatherReading reading = Read(table);
        Assert.Null(reading.Record);
        Assert.Contains(reading.Diagnostics, each => each.Code == code && each.Severity == Severity.Error);
    }

    [Fact]
    public void A_column_that_is_not_known_is_left_out_with_the_nearest_name()
    {
        WeatherReading reading = Read(Notes + "time,temperature [°C],wind [m/s],gusts [m/s]\n2026-04-18 13:00,10,1,9\n");
        Assert.StartsWith("gust", Assert.Single(reading.Diagnostics, each => each.Code == "weather.table.column").Accepted, StringComparison.Ordinal);
        Assert.Null(reading.Record![0].Gust);
    }

    [Fact]
    public void A_gust_below_the_mean_is_raised_to_it()
    {
        WeatherReading reading = Read(Notes + "time,temperature [°C],wind [m/s],gust [m/s]\n2026-04-18 13:00,10,5,3\n");
        Assert.Equal(5, reading.Record![0].Gust!.Value.MetresPerSecond);
        Assert.Equal([9], Assert.Single(reading.Repairs).Lines);
    }

    private static WeatherReading Read(string text) => WeatherReader.Read(Encoding.UTF8.GetBytes(text));

    [Fact]
    public void Another_clock_tells_the_same_hours_and_one_that_is_off_by_a_part_of_an_hour_changes_nothing()
    {
        WeatherRecord record = WeatherReader.Read(System.Text.Encoding.UTF8.GetBytes(
            "# latitude: 42.5\n# longitude: -76.5\n# utc offset: -5\ntime,temperature [°F],wind [mph]\n2026-04-17 23:00,50,3\n2026-04-18 00:00,51,4\n")).Record!;
        WeatherRecord summer = record.ByClock(TimeSpan.FromHours(-4));
        Assert.Equal([record[0].Start.UtcDateTime, record[1].Start.UtcDateTime], new[] { summer[0].Start.UtcDateTime, summer[1].Start.UtcDateTime });
        Assert.Equal(new DateTimeOffset(2026, 4, 18, 0, 0, 0, TimeSpan.FromHours(-4)), summer[0].Start);
        Assert.Equal(summer[0].Start.Offset, TimeSpan.FromHours(-4));
        Assert.Equal(record[1].Wind, summer[1].Wind);
        Assert.Same(record, record.ByClock(new TimeSpan(-4, -30, 0)));
        Assert.Same(record, record.ByClock(record.UtcOffset));
    }
}
