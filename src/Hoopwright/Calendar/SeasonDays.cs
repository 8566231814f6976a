using Hoopwright.Weather;

namespace Hoopwright.Calendar;

/// <summary>
/// Days of a climate in place of days to come: of several years a whole one at a time, else blocks of days from around the same day of the
/// year, so that calm and wet days come together as they do.
/// </summary>
internal sealed class SeasonDays
{
    /// <summary>Whole years from which one is drawn at a time; with fewer, blocks of days are.</summary>
    internal const int FewestYears = 3;

    /// <summary>Length of a block, and how many days before or after its place in the year it may come from.</summary>
    internal const int BlockDays = 7, Around = 21;

    private const int DaysOfYear = 365;

    private readonly List<WeatherDay> _whole;
    private readonly Dictionary<DateOnly, int> _byDate = [];
    private readonly int[] _years;

    internal SeasonDays(WeatherRecord climate)
    {
        _whole = [.. WeatherDay.Of(climate).Where(day => day.Count == 24)];
        for (int at = 0; at < _whole.Count; at++) _byDate.TryAdd(_whole[at].Date, at);
        int[] years = climate.IsTypicalYear ? [] : [.. _whole.GroupBy(day => day.Date.Year).Where(year => year.Count() >= DaysOfYear - 7).Select(year => year.Key).Order()];
        _years = years.Length >= FewestYears ? years : [];
    }

    /// <summary>How many whole years one is drawn from; 0 where blocks of days are drawn.</summary>
    internal int Years => _years.Length;

    /// <summary>How many whole days there are.</summary>
    internal int Count => _whole.Count;

    /// <summary>For each day from a first on, the first row of the day that stands for it.</summary>
    internal int[] Draw(DateOnly from, int days, SeededNumbers numbers)
    {
        int[] rows = new int[days];
        if (_years.Length > 0)
        {
            int year = _years[numbers.Below(_years.Length)];
            for (int day = 0; day < days; day++)
            {
                DateOnly date = from.AddDays(day);
                int of = year + date.Year - from.Year;
                if (Array.BinarySearch(_years, of) < 0) of = year;
                rows[day] = _whole[On(new DateOnly(of, date.Month, Math.Min(date.Day, DateTime.DaysInMonth(of, date.Month))))].First;
            }
            return rows;
        }
        for (int day = 0; day < days; day += BlockDays)
        {
            int first = Near(from.AddDays(day).DayOfYear + numbers.Below((2 * Around) + 1) - Around, numbers);
            for (int at = day; at < Math.Min(day + BlockDays, days); at++) rows[at] = _whole[(first + at - day) % _whole.Count].First;
        }
        return rows;
    }

    // The day of a year that is whole, or one of the days before it.
    private int On(DateOnly date)
    {
        for (int back = 0; ; back++)
        {
            if (_byDate.TryGetValue(date.AddDays(-back), out int at)) return at;
            if (back > DaysOfYear) return 0;
        }
    }

    // One of the whole days of the record that come nearest to a day of the year; one of each year, drawn by lot.
    private int Near(int dayOfYear, SeededNumbers numbers)
    {
        int wanted = ((dayOfYear - 1 + DaysOfYear) % DaysOfYear) + 1, best = 0, least = int.MaxValue, same = 0;
        for (int at = 0; at < _whole.Count; at++)
        {
            int away = Math.Abs(_whole[at].Date.DayOfYear - wanted);
            away = Math.Min(away, DaysOfYear - away);
            if (away > least) continue;
            same = away < least ? 1 : same + 1;
            least = away;
            if (same == 1 || numbers.Below(same) == 0) best = at;
        }
        return best;
    }
}
