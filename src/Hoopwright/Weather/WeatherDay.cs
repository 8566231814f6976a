namespace Hoopwright.Weather;

/// <summary>One day of a record.</summary>
/// <param name="Date">Which.</param>
/// <param name="First">Index of its first hour.</param>
/// <param name="Count">How many hours of it there are.</param>
internal readonly record struct WeatherDay(DateOnly Date, int First, int Count)
{
    /// <summary>The days of a record in its order.</summary>
    internal static List<WeatherDay> Of(WeatherRecord record)
    {
        var days = new List<WeatherDay>((record.Count / 24) + 1);
        ReadOnlySpan<int> hours = record.Hours;
        for (int row = 0; row < hours.Length;)
        {
            int day = hours[row] / 24, end = row + 1;
            while (end < hours.Length && hours[end] / 24 == day) end++;
            days.Add(new(DateOnly.FromDayNumber(day), row, end - row));
            row = end;
        }
        return days;
    }
}
