using Hoopwright.Sun;

namespace Hoopwright.Weather;

/// <summary>
/// Puts rows in order, each hour once, nonsense out, short gaps filled; and refuses what cannot be put right. Everything done is
/// reported with its lines.
/// </summary>
internal sealed class Mending(RawWeather raw, WeatherProblems problems)
{
    /// <summary>The longest gap that is filled, hours: common practice, no source.</summary>
    internal const int LongestFilled = 3;

    // More bad rows than this part of all, and the file is not to be trusted.
    private const double MostBadRows = 0.1;

    private const int HoursOfMonth = 28 * 24;
    private const int HoursOfYear = 8760;

    internal WeatherRecord? Make(Func<MendedWeather, WeatherRecord> make, Place? place, TimeSpan offset, bool rowsLast)
    {
        int bad = problems.RepairedRows(WeatherRepairKind.BadRow);
        if (raw.Count == 0)
        {
            problems.Error("weather.no-rows", "file", "There is no row of weather in the file that can be read.", null, "one row an hour");
            return null;
        }
        if (bad > MostBadRows * (raw.Count + bad))
        {
            problems.Error("weather.too-many-bad-rows", "file", "More than a tenth of the rows cannot be read.", $"{bad} of {raw.Count + bad}", "one row an hour");
            return null;
        }
        MendedWeather mended = InOrder();
        new SunCheck(mended, place, offset, rowsLast, problems).Look();
        if (problems.HasErrors) return null;
        foreach (WeatherElement element in Enum.GetValues<WeatherElement>()) Clean(mended, element);
        Gusts(mended);
        Rain(mended);
        Span(mended);
        return make(mended);
    }

    /// <summary>Line of each row of the mended weather; the line before it for rows that were filled in.</summary>
    private int[] Lines { get; set; } = [];

    private MendedWeather InOrder()
    {
        bool typical = IsTypical();
        int year = typical && raw.Hours.Exists(hour => Date(hour) is { Month: 2, Day: 29 }) ? 2000 : 2001;
        int[] keys = [.. raw.Hours.Select(hour => typical ? RawWeather.HourOf(Nominal(hour, year)) : hour)];
        SummerTime(keys);
        int[] order = [.. Enumerable.Range(0, keys.Length)];
        int highest = int.MinValue;
        for (int row = 0; row < keys.Length; row++)
        {
            if (keys[row] < highest) problems.Repaired(WeatherRepairKind.Order, raw.Lines[row]);
            highest = Math.Max(highest, keys[row]);
        }
        // Rows of one hour stay in the order of the file.
        long[] times = [.. order.Select(row => ((long)keys[row] << 32) | (uint)row)];
        Array.Sort(times, order);

        List<int> rows = new(keys.Length), hours = new(keys.Length);
        int previous = -1;
        foreach (int row in order)
        {
            if (previous >= 0 && keys[row] == keys[previous])
            {
                problems.Repaired(WeatherRepairKind.Twice, raw.Lines[row]);
                continue;
            }
            if (previous >= 0 && keys[row] - keys[previous] is > 1 and var step)
            {
                problems.Repaired(WeatherRepairKind.MissingHour, raw.Lines[row], count: step - 1);
                for (int missing = 1; step <= LongestFilled + 1 && missing < step; missing++)
                {
                    rows.Add(-1 - previous);
                    hours.Add(HourOf(previous, keys) + missing);
                }
            }
            rows.Add(row);
            hours.Add(HourOf(row, keys));
            previous = row;
        }
        Lines = [.. rows.Select(row => raw.Lines[row < 0 ? -1 - row : row])];
        var columns = new double[]?[ElementFact.Count];
        foreach (WeatherElement element in Enum.GetValues<WeatherElement>())
        {
            if (raw.Column(element) is { } column) columns[(int)element] = [.. rows.Select(row => row < 0 ? double.NaN : column[row])];
        }
        return new([.. hours], columns, typical);

        // A row that was put back from daylight-saving time has a key of its own; in a typical year the key's year is not the row's.
        int HourOf(int row, int[] keys) => typical ? raw.Hours[row] : keys[row];
    }

    /// <summary>True when the rows lie over far more time than they are long: months of several years put together.</summary>
    private bool IsTypical() => raw.Count >= HoursOfMonth && raw.Count <= HoursOfYear + 48 && raw.Hours.Max() - raw.Hours.Min() > 2 * raw.Count;

    private static DateTime Date(int hour) => new(hour * TimeSpan.TicksPerHour);

    private static DateTime Nominal(int hour, int year)
    {
        DateTime date = Date(hour);
        return new DateTime(year, date.Month, date.Day, date.Hour, 0, 0);
    }

    /// <summary>
    /// An hour missing in one half of the year and one that stands twice in the other are clocks put forward and back: the rows between
    /// are put back to standard time. Only where both are there, at night, and some six months apart.
    /// </summary>
    private void SummerTime(int[] keys)
    {
        for (int row = 1; row < keys.Length; row++)
        {
            if (keys[row] - keys[row - 1] != 2 || keys[row] % 24 is < 1 or > 4) continue;
            for (int back = row + 1; back < keys.Length; back++)
            {
                int apart = keys[back] - keys[row];
                if (keys[back] - keys[back - 1] is not (0 or 1)) break;
                if (keys[back] != keys[back - 1]) continue;
                if (apart is < 150 * 24 or > 260 * 24 || keys[back] % 24 > 4) break;
                for (int between = row; between < back; between++) keys[between]--;
                problems.Repaired(WeatherRepairKind.SummerTime, raw.Lines[row], count: back - row);
                break;
            }
        }
    }

    private void Clean(MendedWeather mended, WeatherElement element)
    {
        if (mended.Columns[(int)element] is not { } column) return;
        ElementFact fact = ElementFact.Of(element);
        for (int row = 0; row < column.Length; row++)
        {
            double value = column[row];
            if (double.IsNaN(value) || (value >= fact.Least && value <= fact.Most)) continue;
            Nonsense(row, value);
        }
        for (int row = 1; double.IsFinite(fact.Jump) && row + 1 < column.Length; row++)
        {
            double before = column[row - 1], value = column[row], after = column[row + 1];
            bool above = value - before > fact.Jump && value - after > fact.Jump, below = before - value > fact.Jump && after - value > fact.Jump;
            if ((above || below) && mended.Hours[row + 1] - mended.Hours[row - 1] == 2) Nonsense(row, value);
        }
        if (element == WeatherElement.Humidity)
        {
            for (int row = 0; row < column.Length; row++) column[row] = Math.Min(column[row], 1);
        }
        Fill(mended, fact, column);

        void Nonsense(int row, double value)
        {
            problems.Repaired(WeatherRepairKind.Nonsense, Lines[row], element, value.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture) + Unit(element));
            column[row] = double.NaN;
        }
    }

    private static string Unit(WeatherElement element) => element switch
    {
        WeatherElement.AirTemperature or WeatherElement.DewPoint => " °C",
        WeatherElement.Wind or WeatherElement.Gust => " m/s",
        WeatherElement.Pressure => " Pa",
        _ => "",
    };

    private void Fill(MendedWeather mended, ElementFact fact, double[] column)
    {
        if (fact.Fill == GapFill.None) return;
        for (int row = 1; row < column.Length; row++)
        {
            if (!double.IsNaN(column[row]) || double.IsNaN(column[row - 1])) continue;
            int end = row;
            while (end < column.Length && double.IsNaN(column[end]) && end - row <= LongestFilled) end++;
            int before = row - 1;
            if (end == column.Length || double.IsNaN(column[end]) || end - row > LongestFilled || !Follows(before, end)) continue;
            double first = column[before], last = column[end];
            for (int at = row; at < end; at++)
            {
                column[at] = fact.Fill == GapFill.Higher ? Math.Max(first, last) : first + ((last - first) * (at - before) / (end - before));
                problems.Repaired(WeatherRepairKind.Filled, Lines[at], fact.Element);
            }
        }

        // In a typical year an hour follows another also where the year changes.
        bool Follows(int before, int after) => mended.Hours[after] - mended.Hours[before] == after - before || (mended.IsTypicalYear && Date(mended.Hours[after]).Day == 1);
    }

    private void Gusts(MendedWeather mended)
    {
        if (mended.Columns[(int)WeatherElement.Gust] is not { } gusts || mended.Columns[(int)WeatherElement.Wind] is not { } winds) return;
        for (int row = 0; row < gusts.Length; row++)
        {
            if (!(gusts[row] < winds[row] - 1e-9)) continue;
            problems.Repaired(WeatherRepairKind.GustBelowMean, Lines[row], WeatherElement.Gust);
            gusts[row] = winds[row];
        }
    }

    /// <summary>Zeros in every hour of a year are no dry year but no measurement.</summary>
    private void Rain(MendedWeather mended)
    {
        if (mended.Columns[(int)WeatherElement.Precipitation] is not { } rain) return;
        int known = rain.Count(value => !double.IsNaN(value));
        if (known >= HoursOfMonth * 10 && !rain.Any(value => value > 0))
        {
            problems.Assume("weather.rain-all-zero", "file", "The file has no rain in any hour of a year, so rain counts as not known.", "not known");
            mended.Columns[(int)WeatherElement.Precipitation] = null;
        }
        else if (known < rain.Length / 2 && mended.Columns[(int)WeatherElement.PrecipitationChance] is null)
        {
            // Half a record of rain tells nothing of a dry hour.
            problems.Assume("weather.rain-mostly-missing", "file", "The file has rain for less than half of its hours, so rain counts as not known.", "not known");
            mended.Columns[(int)WeatherElement.Precipitation] = null;
        }
    }

    private void Span(MendedWeather mended)
    {
        if (mended.IsTypicalYear && mended.Hours.Length < HoursOfYear)
            problems.Warn("weather.short", "file", "The year is not whole.", $"{mended.Hours.Length} hours", $"{HoursOfYear} hours");
    }
}
