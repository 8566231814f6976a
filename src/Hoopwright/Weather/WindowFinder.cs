using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Sun;

namespace Hoopwright.Weather;

/// <summary>Finds the stretches of hours of a record that meet all limits of a piece of work done by daylight, within one day.</summary>
public sealed class WindowFinder
{
    // Chance of rain is known to whole per cents and winds to a tenth; this only keeps a value on a limit within it.
    private const double Slack = 1e-9;

    private readonly WeatherRecord _record;
    private readonly Place _place;
    private readonly List<WeatherDay> _days;
    private readonly double[] _wind, _air;
    private readonly double[]? _gust, _rain, _chance;
    private readonly Dictionary<DateOnly, (double Rise, double Set)> _daylight = [];

    /// <param name="record">The weather.</param>
    /// <param name="place">Where the sun is to rise and set.</param>
    public WindowFinder(WeatherRecord record, Place place)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(place);
        (_record, _place, _days) = (record, place, WeatherDay.Of(record));
        _wind = record.Column(WeatherElement.Wind) ?? Unknown(record.Count);
        _air = record.Column(WeatherElement.AirTemperature) ?? Unknown(record.Count);
        (_gust, _rain, _chance) = (record.Column(WeatherElement.Gust), record.Column(WeatherElement.Precipitation), record.Column(WeatherElement.PrecipitationChance));
    }

    /// <summary>True when the record says anything of rain.</summary>
    public bool KnowsRain => _rain is not null || _chance is not null;

    /// <summary>The windows of some days, best first: those that use their tightest limit least, and of equals the earlier.</summary>
    /// <param name="limits">What the work needs.</param>
    /// <param name="from">First day.</param>
    /// <param name="days">How many days.</param>
    public ImmutableArray<WeatherWindow> Best(WindowLimits limits, DateOnly from, int days)
    {
        ArgumentNullException.ThrowIfNull(limits);
        DateOnly end = from.AddDays(days);
        List<(WeatherDay Day, int First, int Count)> runs = [];
        foreach (WeatherDay day in _days)
        {
            if (day.Date >= from && day.Date < end) Runs(day, limits, (first, count) => runs.Add((day, first, count)));
        }
        return [.. runs.Select(run => Window(run.Day, run.First, run.Count, limits)).OrderBy(window => window.Used.Value).ThenBy(window => window.Begin)];
    }

    /// <summary>On how many days of each month the work can be done, and at which hours it can begin.</summary>
    /// <param name="limits">What the work needs.</param>
    public ImmutableArray<MonthOdds> Odds(WindowLimits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        var months = new Counts[12];
        for (int month = 0; month < 12; month++) months[month] = new Counts();
        int last = int.MinValue, good = int.MinValue;
        foreach (WeatherDay day in _days)
        {
            Counts counts = months[day.Date.Month - 1];
            bool any = false;
            Runs(day, limits, (first, count) =>
            {
                any = true;
                for (int start = first; start + Rows(limits.Hours) <= first + count; start++) counts.Starts[_record.Hours[start] % 24]++;
            });
            // A day of which hours are lacking may still have a window, but it cannot be said that it has none.
            bool whole = day.Count >= 20;
            if (!whole && !any) continue;
            counts.Days++;
            counts.Good += any ? 1 : 0;
            int number = day.Date.DayNumber;
            if (number != last + 1) good = int.MinValue;
            (last, good) = (number, any ? number : good);
            // The week that ends today; weeks with a gap, or at the beginning, are counted as far as they reach.
            counts.Weeks++;
            counts.GoodWeeks += good > number - 7 ? 1 : 0;
        }
        return [.. months.Select((counts, index) => new MonthOdds(
            index + 1, counts.Days, counts.Good, Part(counts.Good, counts.Days), Part(counts.GoodWeeks, counts.Weeks), [.. counts.Starts.Select(starts => Part(starts, counts.Days))]))];

        static Ratio Part(int part, int all) => Ratio.FromValue(all == 0 ? 0 : part / (double)all);
    }

    /// <summary>On how many days the work can be done at all.</summary>
    /// <param name="limits">What the work needs.</param>
    /// <param name="from">First day; null for all.</param>
    /// <param name="days">How many days.</param>
    public int GoodDays(WindowLimits limits, DateOnly? from = null, int days = int.MaxValue)
    {
        ArgumentNullException.ThrowIfNull(limits);
        int good = 0;
        foreach (WeatherDay day in _days)
        {
            if (from is { } first && (day.Date < first || day.Date.DayNumber - first.DayNumber >= days)) continue;
            bool any = false;
            Runs(day, limits, (_, _) => any = true);
            good += any ? 1 : 0;
        }
        return good;
    }

    private static double[] Unknown(int count)
    {
        var values = new double[count];
        Array.Fill(values, double.NaN);
        return values;
    }

    /// <summary>Rows that last so many hours: readings stand at both ends of them.</summary>
    private int Rows(int hours) => _record.RowsLast ? hours : hours + 1;

    /// <summary>The runs of a day that are long enough, longest as they are; daylight is asked for last, since it takes longest.</summary>
    private void Runs(WeatherDay day, WindowLimits limits, Action<int, int> found)
    {
        int rows = Rows(limits.Hours), end = day.First + day.Count;
        var kernel = new Kernel(this, limits);
        for (int row = day.First; row + rows <= end;)
        {
            int stop = row;
            while (stop < end && kernel.Fits(stop) && (stop == row || _record.Hours[stop] - _record.Hours[stop - 1] == 1)) stop++;
            if (stop - row >= rows)
            {
                (int first, int last) = InDaylight(day.Date, row, stop, limits.HoursInTheDark);
                if (last - first >= rows) found(first, last - first);
            }
            row = Math.Max(stop, row + 1);
        }
    }

    private (int First, int Last) InDaylight(DateOnly date, int first, int last, int slack)
    {
        (double rise, double set) = Daylight(date);
        double length = _record.RowsLast ? 1 : 0;
        while (first < last && (_record.Hours[first] % 24) + slack < rise - Slack) first++;
        while (first < last && (_record.Hours[last - 1] % 24) + length - slack > set + Slack) last--;
        return (first, last);
    }

    private (double Rise, double Set) Daylight(DateOnly date)
    {
        if (!_daylight.TryGetValue(date, out var daylight)) _daylight.Add(date, daylight = new SunTrack(_place, date, _record.UtcOffset).Daylight());
        return daylight;
    }

    private WeatherWindow Window(WeatherDay day, int first, int count, WindowLimits limits)
    {
        int rows = Rows(limits.Hours);
        var kernel = new Kernel(this, limits);
        int best = first;
        double least = double.PositiveInfinity;
        for (int start = first; start + rows <= first + count; start++)
        {
            double used = 0;
            for (int row = start; row < start + rows; row++) used = Math.Max(used, kernel.Used(row).Most);
            if (used < least - Slack) (best, least) = (start, used);
        }
        Use worst = default;
        double wind = 0, gust = 0, coldest = double.PositiveInfinity, warmest = double.NegativeInfinity, chance = double.NaN;
        bool estimated = false, rain = true;
        for (int row = best; row < best + rows; row++)
        {
            Use used = kernel.Used(row);
            if (used.Most > worst.Most) worst = used;
            (wind, gust) = (Math.Max(wind, kernel.Wind(row)), Math.Max(gust, kernel.Gust(row)));
            (coldest, warmest) = (Math.Min(coldest, _air[row]), Math.Max(warmest, _air[row]));
            estimated |= !kernel.GustKnown(row);
            if (_chance is not null && !(chance > _chance[row])) chance = double.IsNaN(_chance[row]) ? chance : _chance[row];
            rain &= kernel.RainKnown(row);
        }
        (double rise, double set) = Daylight(day.Date);
        var midnight = new DateTimeOffset(day.Date.ToDateTime(TimeOnly.MinValue), _record.UtcOffset);
        TimeSpan length = TimeSpan.FromHours(_record.RowsLast ? 1 : 0);
        return new()
        {
            From = Start(first),
            To = Start(first + count - 1) + length,
            Begin = Start(best),
            End = Start(best + rows - 1) + length,
            Wind = Speed.FromMetresPerSecond(wind),
            Gust = Speed.FromMetresPerSecond(gust),
            GustEstimated = estimated,
            Coldest = Temperature.FromCelsius(coldest),
            Warmest = Temperature.FromCelsius(warmest),
            RainChance = double.IsNaN(chance) ? null : Ratio.FromValue(chance),
            RainKnown = rain,
            Sunrise = midnight.AddMinutes(Math.Round(rise * 60)),
            Sunset = midnight.AddMinutes(Math.Round(set * 60)),
            Used = Ratio.FromValue(worst.Most),
            Tightest = worst.Limit,
        };

        DateTimeOffset Start(int row) => new(_record.StartOf(row), _record.UtcOffset);
    }

    /// <summary>How much of the limit that is used most an hour uses.</summary>
    private readonly record struct Use(double Most, WindowLimit Limit);

    private sealed class Counts
    {
        internal int Days { get; set; }

        internal int Good { get; set; }

        internal int Weeks { get; set; }

        internal int GoodWeeks { get; set; }

        internal int[] Starts { get; } = new int[24];
    }

    /// <summary>The limits as plain numbers of the record.</summary>
    private readonly struct Kernel(WindowFinder finder, WindowLimits limits)
    {
        private readonly double _here = limits.WindHere.Value, _gustHere = limits.GustHere.Value, _gustFactor = limits.GustFactor.Value;
        private readonly double _wind = limits.Wind.MetresPerSecond, _gust = limits.Gust?.MetresPerSecond ?? double.PositiveInfinity;
        private readonly double _coldest = limits.Coldest.Celsius, _warmest = limits.Warmest.Celsius;
        private readonly double _chance = limits.RainChance?.Value ?? double.PositiveInfinity;
        private readonly bool _rainCounts = limits.RainChance is not null && finder.KnowsRain;

        internal double Wind(int row) => finder._wind[row] * _here;

        internal bool GustKnown(int row) => finder._gust is { } gusts && !double.IsNaN(gusts[row]);

        internal double Gust(int row) => (GustKnown(row) ? finder._gust![row] : finder._wind[row] * _gustFactor) * _gustHere;

        internal bool RainKnown(int row) => (finder._rain is { } rain && !double.IsNaN(rain[row])) || (finder._chance is { } chance && !double.IsNaN(chance[row]));

        // What is not known fails every comparison, so it never fits.
        internal bool Fits(int row) =>
            Wind(row) <= _wind + Slack && Gust(row) <= _gust + Slack && finder._air[row] >= _coldest - Slack && finder._air[row] <= _warmest + Slack
            && (!_rainCounts || (RainKnown(row) && !(finder._rain is { } rain && rain[row] > 0) && !(finder._chance is { } chance && chance[row] > _chance + Slack)));

        internal Use Used(int row)
        {
            var worst = new Use(Wind(row) / _wind, WindowLimit.Wind);
            Take(Gust(row) / _gust, WindowLimit.Gust);
            double middle = (_coldest + _warmest) / 2, half = (_warmest - _coldest) / 2, air = finder._air[row];
            if (half > 0) Take(Math.Abs(air - middle) / half, air < middle ? WindowLimit.Coldest : WindowLimit.Warmest);
            if (_rainCounts && _chance > 0 && finder._chance is { } chance && !double.IsNaN(chance[row])) Take(chance[row] / _chance, WindowLimit.Rain);
            return worst;

            void Take(double used, WindowLimit limit) => worst = used > worst.Most ? new Use(used, limit) : worst;
        }
    }
}
