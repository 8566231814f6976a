using BenchmarkDotNet.Attributes;
using Hoopwright.Quantities;
using Hoopwright.Tests.Weather;
using Hoopwright.Weather;

namespace Hoopwright.Bench.Weather;

/// <summary>Is a year of weather read in under 50 ms, and are 30 years of hours looked through for covering days in under a second?</summary>
[MemoryDiagnoser]
public class WeatherSpeed
{
    private static readonly WindowLimits Limits = new()
    {
        Wind = Speed.FromMilesPerHour(8),
        Gust = Speed.FromMilesPerHour(14),
        Coldest = Temperature.FromFahrenheit(50),
        Warmest = Temperature.FromFahrenheit(75),
        Hours = 4,
        GustFactor = Ratio.FromValue(1.6),
    };

    private byte[] _year = [];
    private WeatherRecord? _thirtyYears;

    [GlobalSetup]
    public void Make()
    {
        _year = InventedWeather.Epw();
        _thirtyYears = WeatherReader.Read(InventedWeather.Epw(Enumerable.Range(1991, 30).SelectMany(year => InventedWeather.Rows(year)))).Record;
        if (_thirtyYears!.Count != 262_992) throw new InvalidOperationException("Thirty years have other hours.");
    }

    [Benchmark]
    public int A_year_read() => WeatherReader.Read(_year).Record!.Count;

    [Benchmark]
    public int Thirty_years_of_windows() => new WindowFinder(_thirtyYears!, InventedWeather.Valley).Odds(Limits).Sum(month => month.GoodDays);

    [Benchmark]
    public int Thirty_years_with_every_limit_relaxed() => LimitRelaxing.Each(new WindowFinder(_thirtyYears!, InventedWeather.Valley), Limits).Sum(each => each.Gained);
}
