using System.Globalization;
using System.Text;
using CsCheck;
using Hoopwright.Quantities;
using Hoopwright.Weather;

namespace Hoopwright.Tests.Weather;

/// <summary>Stretches of hours that meet every limit, on days made for the purpose.</summary>
public sealed class WindowFinderTests
{
    // 18 April at 42.5° N, 76.5° W: the sun rises at 05:17 and sets at 18:46 by standard time.
    private static readonly DateOnly Day = new(2026, 4, 18);

    private static readonly WindowLimits Limits = new()
    {
        Wind = Speed.FromMetresPerSecond(3),
        Gust = Speed.FromMetresPerSecond(6),
        Coldest = Temperature.FromCelsius(10),
        Warmest = Temperature.FromCelsius(24),
        RainChance = Ratio.FromPercent(20),
        Hours = 4,
        GustFactor = Ratio.FromValue(1.5),
    };

    [Fact]
    public void A_calm_day_is_fit_from_the_first_whole_hour_of_daylight_to_the_last()
    {
        WeatherWindow window = Assert.Single(Best(_ => new(15, 1, 2, 0, 0)));
        Assert.Equal(6, window.From.Hour);
        Assert.Equal(18, window.To.Hour);
        Assert.Equal(6, window.Begin.Hour);
        Assert.Equal(10, window.End.Hour);
    }

    [Theory]
    [InlineData("wind")]
    [InlineData("gust")]
    [InlineData("cold")]
    [InlineData("heat")]
    [InlineData("chance")]
    [InlineData("rain")]
    [InlineData("unknown")]
    public void One_bad_hour_parts_the_day(string what)
    {
        var windows = Best(hour => hour == 11 ? Bad(what) : new(15, 1, 2, 10, 0));
        Assert.Equal(2, windows.Length);
        Assert.Equal([(6, 11), (12, 18)], windows.Select(window => (window.From.Hour, window.To.Hour)).Order());
    }

    [Fact]
    public void The_calmest_hours_of_a_stretch_are_taken_and_the_tightest_limit_is_named()
    {
        WeatherWindow window = Assert.Single(Best(hour => new(17, hour is >= 13 and < 17 ? 1 : 2.4, 2.5, 0, 0)));
        Assert.Equal(13, window.Begin.Hour);
        Assert.Equal(WindowLimit.Gust, window.Tightest);
        Assert.Equal(2.5 / 6, window.Used.Value, 9);
    }

    [Fact]
    public void A_gust_that_is_not_known_is_estimated_and_said_so()
    {
        WeatherWindow window = Assert.Single(Best(_ => new(17, 2, null, 0, 0)));
        Assert.True(window.GustEstimated);
        Assert.Equal(3, window.Gust.MetresPerSecond, 9);
        Assert.Empty(Best(_ => new(17, 2, null, 0, 0), Limits with { GustFactor = Ratio.FromValue(3.1) }));
    }

    [Fact]
    public void Wind_at_the_place_counts_and_not_that_of_the_mast()
    {
        Assert.Empty(Best(_ => new(17, 4, 5, 0, 0)));
        WeatherWindow window = Assert.Single(Best(_ => new(17, 4, 5, 0, 0), Limits with { WindHere = Ratio.FromValue(0.7), GustHere = Ratio.FromValue(0.9) }));
        Assert.Equal(2.8, window.Wind.MetresPerSecond, 9);
        Assert.Equal(4.5, window.Gust.MetresPerSecond, 9);
    }

    [Fact]
    public void Better_windows_come_first()
    {
        WeatherRecord record = Record(48, hour => new(17, hour < 24 ? 2.5 : 1, 2.6, 0, 0));
        var windows = new WindowFinder(record, InventedWeather.Valley).Best(Limits, Day, 7);
        Assert.Equal([19, 18], windows.Select(window => window.Begin.Day));
    }

    [Fact]
    public void Readings_stand_at_both_ends_of_the_hours_needed()
    {
        // Good readings from 8 to 12 are four hours; from 8 to 11 they are three.
        Assert.Single(Best(hour => new(15, hour is >= 8 and <= 12 ? 1 : 9, 2, 0, 0), note: "# time: reading\n"));
        Assert.Empty(Best(hour => new(15, hour is >= 8 and <= 11 ? 1 : 9, 2, 0, 0), note: "# time: reading\n"));
        Assert.Single(Best(hour => new(15, hour is >= 8 and <= 11 ? 1 : 9, 2, 0, 0)));
    }

    [Fact]
    public void A_missing_hour_parts_the_day() =>
        Assert.Equal(2, new WindowFinder(Record(24, hour => new(15, 1, 2, 0, 0), without: [10, 11, 12, 13, 14]), InventedWeather.Valley).Best(Limits with { Hours = 3 }, Day, 1).Length);

    [Fact]
    public void Odds_count_days_weeks_and_hours_to_begin()
    {
        // Every fourth day of April is fit from 8 to 13.
        WeatherRecord record = Record(28 * 24, hour => new(15, hour / 24 % 4 == 0 && hour % 24 is >= 8 and < 13 ? 1 : 9, 2, 0, 0), first: new DateOnly(2026, 4, 1));
        MonthOdds april = new WindowFinder(record, InventedWeather.Valley).Odds(Limits)[3];
        Assert.Equal((28, 7), (april.Days, april.GoodDays));
        Assert.Equal(0.25, april.OnADay.Value);
        Assert.Equal(1, april.InAWeek.Value);
        Assert.Equal([8, 9], Enumerable.Range(0, 24).Where(hour => april.StartingAt[hour].Value > 0));
        Assert.Equal(0.25, april.StartingAt[8].Value);
    }

    [Fact]
    public void Relaxing_a_limit_never_loses_a_day_and_the_one_that_stands_in_the_way_gains()
    {
        WeatherRecord record = Record(24 * 5, hour => new(17, 3.5, 4, 0, 0));
        var finder = new WindowFinder(record, InventedWeather.Valley);
        var relaxed = LimitRelaxing.Each(finder, Limits);
        Assert.Equal((WindowLimit.Wind, 5), (relaxed[0].Limit, relaxed[0].Gained));
        Assert.All(relaxed.Skip(1), each => Assert.Equal(0, each.Gained));
    }

    [Fact]
    public void Stricter_limits_never_find_more() =>
        Gen.Select(Gen.Double[0, 8].Array[72], Gen.Double[0, 30].Array[72], Gen.Double[1, 8], Gen.Int[1, 8]).Sample((winds, airs, wind, hours) =>
        {
            WeatherRecord record = Record(72, hour => new(Math.Round(airs[hour], 3), Math.Round(winds[hour], 3), null, 0, 0));
            var finder = new WindowFinder(record, InventedWeather.Valley);
            WindowLimits loose = Limits with { Wind = Speed.FromMetresPerSecond(wind), Gust = null, Hours = hours };
            Assert.True(finder.GoodDays(loose) >= finder.GoodDays(loose with { Hours = hours + 1 }));
            Assert.True(finder.GoodDays(loose) >= finder.GoodDays(loose with { Wind = Speed.FromMetresPerSecond(wind * 0.9) }));
            Assert.True(finder.GoodDays(loose) >= finder.GoodDays(loose with { Gust = Speed.FromMetresPerSecond(wind) }));
            foreach (WeatherWindow window in finder.Best(loose, Day, 3))
            {
                Assert.True(window.Begin >= window.From && window.End <= window.To && window.From >= window.Sunrise && window.To <= window.Sunset);
                Assert.InRange(window.Used.Value, 0, 1 + 1e-9);
            }
        }, iter: 100);

    private static Hour Bad(string what) => what switch
    {
        "wind" => new(15, 3.1, 4, 10, 0),
        "gust" => new(15, 1, 6.1, 10, 0),
        "cold" => new(9.9, 1, 2, 10, 0),
        "heat" => new(24.1, 1, 2, 10, 0),
        "chance" => new(15, 1, 2, 21, 0),
        "rain" => new(15, 1, 2, 10, 0.2),
        _ => new(15, 1, 2, null, null),
    };

    private static System.Collections.Immutable.ImmutableArray<WeatherWindow> Best(Func<int, Hour> hours, WindowLimits? limits = null, string note = "") =>
        new WindowFinder(Record(24, hours, note: note), InventedWeather.Valley).Best(limits ?? Limits, Day, 1);

    private static WeatherRecord Record(int count, Func<int, Hour> hours, DateOnly? first = null, int[]? without = null, string note = "")
    {
        var text = new StringBuilder(note + "# utc offset: -5\ntime,temperature [°C],wind [m/s],gust [m/s],chance of precipitation [%],precipitation [mm]\n");
        DateTime start = (first ?? Day).ToDateTime(TimeOnly.MinValue);
        for (int hour = 0; hour < count; hour++)
        {
            if (without?.Contains(hour) == true) continue;
            Hour here = hours(hour);
            text.Append(CultureInfo.InvariantCulture, $"{start.AddHours(hour):yyyy-MM-dd HH:mm},{here.AirC},{here.WindMps},{here.GustMps},{here.ChancePercent},{here.RainMm}\n");
        }
        return WeatherReader.Read(Encoding.UTF8.GetBytes(text.ToString())).Record!;
    }

    private sealed record Hour(double AirC, double WindMps, double? GustMps, double? ChancePercent, double? RainMm);
}
