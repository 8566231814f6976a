using Hoopwright.BuildSteps;
using Hoopwright.Weather;

namespace Hoopwright.Calendar;

/// <summary>What a forecast says of slots of work.</summary>
/// <param name="slots">The slots.</param>
/// <param name="record">The forecast; null without one.</param>
/// <param name="hours">Which of its hours are fit; null without one.</param>
internal sealed class Gate(WorkSlots slots, WeatherRecord? record, StepHours? hours)
{
    private readonly Dictionary<StepWeather, bool?[]> _fit = [];

    /// <summary>For each slot whether a step can be worked at in it; null where the forecast says nothing of it.</summary>
    internal bool?[] Of(StepWeather weather)
    {
        if (_fit.TryGetValue(weather, out bool?[]? fit)) return fit;
        fit = new bool?[slots.Count];
        if (record is not null && hours is not null && weather != StepWeather.Any)
        {
            bool[] rows = hours.Of(weather);
            ReadOnlySpan<int> times = record.Hours;
            for (int slot = 0; slot < fit.Length; slot++)
            {
                DateTime start = slots.StartOf(slot);
                int first = Hour(start), last = Hour(start.AddMinutes(CalendarDefaults.SlotMinutes - 1));
                for (int hour = first; hour <= last; hour++)
                {
                    int row = times.BinarySearch(hour);
                    // An hour that is lacking within the forecast is not known to be fit.
                    bool? isFit = row >= 0 ? rows[row] : hour < times[0] || hour > times[^1] ? null : false;
                    fit[slot] = hour == first ? isFit : isFit is null || fit[slot] is null ? null : isFit.Value && fit[slot]!.Value;
                }
            }
        }
        return _fit[weather] = fit;
    }

    private static int Hour(DateTime time) => (int)(time.Ticks / TimeSpan.TicksPerHour);
}
