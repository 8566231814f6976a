using Hoopwright.Quantities;
using Hoopwright.Weather;

namespace Hoopwright.Inside;

/// <summary>A year inside, or outside, in numbers.</summary>
public sealed record InsideStats
{
    /// <summary>How it was kept.</summary>
    public required InsideWay Way { get; init; }

    /// <summary>The hottest hour.</summary>
    public required Temperature Highest { get; init; }

    /// <summary>When it was.</summary>
    public required DateTimeOffset HighestAt { get; init; }

    /// <summary>The coldest hour.</summary>
    public required Temperature Lowest { get; init; }

    /// <summary>When it was.</summary>
    public required DateTimeOffset LowestAt { get; init; }

    /// <summary>How much warmer than outside the coldest hour of a day is, in the mean of all days.</summary>
    public required TemperatureDifference NightLift { get; init; }

    /// <summary>The same of the night that gains least; below nothing where it is colder inside.</summary>
    public required TemperatureDifference LeastNightLift { get; init; }

    /// <summary>How much warmer than outside the hottest hour of a day is, in the mean of all days.</summary>
    public required TemperatureDifference DayLift { get; init; }

    /// <summary>Hours warmer than the crop takes.</summary>
    public required int HoursTooHot { get; init; }

    /// <summary>Hours colder than the crop takes.</summary>
    public required int HoursTooCold { get; init; }

    /// <summary>Days with an hour at 0 °C or below.</summary>
    public required int FrostDays { get; init; }

    /// <summary>The last such day of spring; null where there was none.</summary>
    public required DateOnly? LastFrost { get; init; }

    /// <summary>The first such day of autumn.</summary>
    public required DateOnly? FirstFrost { get; init; }

    /// <summary>Degree days of growth, by the middle between the highest and the lowest of each day.</summary>
    public required GrowthSum Growth { get; init; }

    internal static InsideStats Of(InsideWay way, WeatherRecord record, IReadOnlyList<WeatherDay> days, ReadOnlySpan<float> airC, ReadOnlySpan<float> outsideC, bool north, in CropLimits limits)
    {
        int highest = 0, lowest = 0, hot = 0, cold = 0;
        for (int hour = 0; hour < airC.Length; hour++)
        {
            if (airC[hour] > airC[highest]) highest = hour;
            if (airC[hour] < airC[lowest]) lowest = hour;
            if (airC[hour] > limits.WarmestC) hot++;
            if (airC[hour] < limits.ColdestC) cold++;
        }
        double lift = 0, least = double.PositiveInfinity, dayLift = 0, growth = 0;
        var frosts = new List<DateOnly>();
        foreach (WeatherDay day in days)
        {
            (double low, double high) = Range(airC.Slice(day.First, day.Count));
            (double lowOutside, double highOutside) = Range(outsideC.Slice(day.First, day.Count));
            lift += low - lowOutside;
            least = Math.Min(least, low - lowOutside);
            dayLift += high - highOutside;
            growth += DegreeDays.Middle(high, low, limits.GrowthFromC);
            if (low <= 0) frosts.Add(day.Date);
        }
        return new()
        {
            Way = way,
            Highest = Temperature.FromCelsius(airC[highest]),
            HighestAt = record[highest].Start,
            Lowest = Temperature.FromCelsius(airC[lowest]),
            LowestAt = record[lowest].Start,
            NightLift = TemperatureDifference.FromKelvins(lift / days.Count),
            LeastNightLift = TemperatureDifference.FromKelvins(least),
            DayLift = TemperatureDifference.FromKelvins(dayLift / days.Count),
            HoursTooHot = hot,
            HoursTooCold = cold,
            FrostDays = frosts.Count,
            LastFrost = frosts.Where(day => day.Month < 7 == north).OrderBy(OfYear).Select(day => (DateOnly?)day).LastOrDefault(),
            FirstFrost = frosts.Where(day => day.Month < 7 != north).OrderBy(OfYear).Select(day => (DateOnly?)day).FirstOrDefault(),
            Growth = GrowthSum.FromKelvinDays(growth),
        };
    }

    internal static (double Low, double High) Range(ReadOnlySpan<float> values)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (float value in values) (low, high) = (Math.Min(low, value), Math.Max(high, value));
        return (low, high);
    }

    // A typical year has months of several years: only month and day count.
    internal static int OfYear(DateOnly day) => (day.Month * 100) + day.Day;
}

/// <summary>What the crop takes, °C.</summary>
internal readonly record struct CropLimits(double ColdestC, double WarmestC, double GrowthFromC);
