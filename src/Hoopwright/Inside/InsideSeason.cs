using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Sun;
using Hoopwright.Weather;

namespace Hoopwright.Inside;

/// <summary>Days on which hardy crops grow inside: they nearly stand still where the day is shorter than ten hours, or the ground is cold.</summary>
/// <param name="ShortFrom">First day shorter than ten hours after the longest day of the year; null where none is.</param>
/// <param name="ShortTo">Last such day before the longest day; null where none is.</param>
/// <param name="ShortDays">Days shorter than ten hours.</param>
/// <param name="HardyDays">Days of ten hours or more with the ground inside above 40 °F in the mean of the day, as kept by hand.</param>
/// <param name="ColdGroundDays">Days with the ground inside at 40 °F or below.</param>
public sealed record InsideSeason(DateOnly? ShortFrom, DateOnly? ShortTo, int ShortDays, int HardyDays, int ColdGroundDays)
{
    /// <summary>The rule.</summary>
    public static Formula Rule { get; } = new(
        "days", "of ten hours or more from sunrise to sunset, and ground above 40 °F", "",
        new Citation("common practice, no source, for the ten hours; Penn State Extension for the ground that keeps hardy greens growing", "", Standing.CommonPractice));

    /// <summary>40 °F.</summary>
    internal static readonly Temperature WarmGround = Temperature.FromFahrenheit(40);

    private static readonly TimeSpan Long = TimeSpan.FromHours(10);

    internal static InsideSeason Of(IReadOnlyList<WeatherDay> days, ReadOnlySpan<float> groundC, Place place, TimeSpan utcOffset)
    {
        var shorts = new List<DateOnly>();
        int hardy = 0, cold = 0;
        foreach (WeatherDay day in days)
        {
            double ground = 0;
            foreach (float each in groundC.Slice(day.First, day.Count)) ground += each / day.Count;
            bool isShort = SunAlmanac.Day(place, day.Date, utcOffset).DayLength < Long, isWarm = ground > WarmGround.Celsius;
            if (isShort) shorts.Add(day.Date);
            if (!isWarm) cold++;
            if (isWarm && !isShort) hardy++;
        }
        // The longest day is in the middle of the year in the north, and at its end in the south.
        bool north = place.Latitude.Degrees >= 0;
        return new(
            shorts.Where(day => !north || day.Month > 6).OrderBy(InsideStats.OfYear).Select(day => (DateOnly?)day).FirstOrDefault(),
            shorts.Where(day => !north || day.Month <= 6).OrderBy(InsideStats.OfYear).Select(day => (DateOnly?)day).LastOrDefault(), shorts.Count, hardy, cold);
    }
}
