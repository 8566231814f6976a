using BenchmarkDotNet.Attributes;
using Hoopwright.Inside;
using Hoopwright.Inside.Air;
using Hoopwright.Inside.Heat;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using Hoopwright.Tests.Weather;
using Hoopwright.Weather;

namespace Hoopwright.Bench.Weather;

/// <summary>Is a year inside, light and heat of every hour, worked out in under 100 ms? And the whole report: seven such years and twelve headings?</summary>
[MemoryDiagnoser]
public class InsideSpeed
{
    private Tunnel? _tunnel;
    private WeatherRecord? _year;

    [GlobalSetup]
    public void Make()
    {
        _tunnel = SamplePlans.LayOut(SamplePlans.Example("gothic-26ft"));
        _year = WeatherReader.Read(InventedWeather.Epw()).Record;
        if (A_year_inside() >= 1e-6) throw new InvalidOperationException("The balance of the year does not close.");
    }

    [Benchmark]
    public double A_year_inside()
    {
        HourlyWeather weather = HourlyWeather.Of(_year!, _year!.Place!).Weather!;
        return new InsideStudy(InsideSetup.Of(_tunnel!, new Answers(UnitSystem.UsCustomary)), weather, _year, _year.Place!).Run(new HouseKeeping()).Sums.Left;
    }

    [Benchmark]
    public int The_whole_report() => InsidePlanner.Plan(_tunnel!, _year!).Report!.Hours.Length;
}
