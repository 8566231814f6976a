using Hoopwright.Quantities;
using Hoopwright.Sun;

namespace Hoopwright.Weather;

/// <summary>Weather hour by hour, in order of time, as far as it is known. Hours that the file lacks are not there.</summary>
public sealed class WeatherRecord
{
    private readonly int[] _hours;
    private readonly double[]?[] _columns;

    /// <param name="hours">Hours since the beginning of the calendar, by the clock of the record; rising, or those of a typical year in its order.</param>
    /// <param name="columns">Values by element, not a number where not known; null where nothing is.</param>
    internal WeatherRecord(int[] hours, double[]?[] columns) => (_hours, _columns) = (hours, columns);

    /// <summary>The kind of file.</summary>
    public required WeatherForm Form { get; init; }

    /// <summary>What the file calls the place; empty when it says nothing.</summary>
    public required string Name { get; init; }

    /// <summary>Where it is; null when the file does not say.</summary>
    public required Place? Place { get; init; }

    /// <summary>By how much the clock of the record is ahead of universal time.</summary>
    public required TimeSpan UtcOffset { get; init; }

    /// <summary>What the time of a row says; hours are kept by their beginning.</summary>
    public required WeatherStamp Stamp { get; init; }

    /// <summary>Height over the ground at which the wind was measured or is forecast.</summary>
    public required Length WindHeight { get; init; }

    /// <summary>True when months of several years were put together to a year that stands for all.</summary>
    public bool IsTypicalYear { get; init; }

    /// <summary>When a forecast was issued; null when it does not say, or is none.</summary>
    public DateTimeOffset? Issued { get; init; }

    /// <summary>The header of an EnergyPlus weather file; null for others.</summary>
    public EpwHeader? Epw { get; init; }

    /// <summary>How many hours there are.</summary>
    public int Count => _hours.Length;

    /// <summary>One hour.</summary>
    /// <param name="index">From 0.</param>
    public WeatherHour this[int index] => new()
    {
        Start = new DateTimeOffset(StartOf(index), UtcOffset),
        AirTemperature = Value(WeatherElement.AirTemperature, index) is { } air ? Temperature.FromCelsius(air) : null,
        DewPoint = Value(WeatherElement.DewPoint, index) is { } dew ? Temperature.FromCelsius(dew) : null,
        Humidity = Value(WeatherElement.Humidity, index) is { } humidity ? Ratio.FromValue(humidity) : null,
        Wind = Value(WeatherElement.Wind, index) is { } wind ? Speed.FromMetresPerSecond(wind) : null,
        Gust = Value(WeatherElement.Gust, index) is { } gust ? Speed.FromMetresPerSecond(gust) : null,
        WindDirection = Value(WeatherElement.WindDirection, index) is { } from ? Angle.FromDegrees(from) : null,
        Precipitation = Value(WeatherElement.Precipitation, index) is { } depth ? Length.FromMetres(depth) : null,
        PrecipitationChance = Value(WeatherElement.PrecipitationChance, index) is { } chance ? Ratio.FromValue(chance) : null,
        SkyCover = Value(WeatherElement.SkyCover, index) is { } cover ? Ratio.FromValue(cover) : null,
    };

    /// <summary>The same hours told by another clock, as daylight-saving time is.</summary>
    /// <param name="clock">By how much it is ahead of universal time. One that is not whole hours from the clock of the record leaves that as it is.</param>
    public WeatherRecord ByClock(TimeSpan clock)
    {
        TimeSpan ahead = clock - UtcOffset;
        if (ahead == TimeSpan.Zero || ahead.Ticks % TimeSpan.TicksPerHour != 0) return this;
        int hours = (int)ahead.TotalHours;
        return new([.. _hours.Select(hour => hour + hours)], _columns)
        {
            Form = Form,
            Name = Name,
            Place = Place,
            UtcOffset = clock,
            Stamp = Stamp,
            WindHeight = WindHeight,
            IsTypicalYear = IsTypicalYear,
            Issued = Issued,
            Epw = Epw,
        };
    }

    /// <summary>In how many of the hours an element is known.</summary>
    public int KnownHours(WeatherElement element) => Column(element)?.Count(value => !double.IsNaN(value)) ?? 0;

    /// <summary>Hours since the beginning of the calendar, by the clock of the record.</summary>
    internal ReadOnlySpan<int> Hours => _hours;

    /// <summary>True when a row is a stretch of an hour, false when it is a reading.</summary>
    internal bool RowsLast => Stamp != WeatherStamp.Reading;

    /// <summary>The values of an element, in the unit that <see cref="WeatherElement"/> names, not a number where not known; null when nothing is.</summary>
    internal double[]? Column(WeatherElement element) => _columns[(int)element];

    internal DateTime StartOf(int index) => new(_hours[index] * TimeSpan.TicksPerHour);

    private double? Value(WeatherElement element, int index) => _columns[(int)element] is { } column && !double.IsNaN(column[index]) ? column[index] : null;
}
