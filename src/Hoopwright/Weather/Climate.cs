namespace Hoopwright.Weather;

/// <summary>Means and sums of a record by month and year, each by the definition that its name says.</summary>
internal sealed class Climate
{
    private readonly WeatherRecord _record;
    private readonly List<WeatherDay> _days;
    private readonly double[] _air;

    internal Climate(WeatherRecord record)
    {
        (_record, _days) = (record, WeatherDay.Of(record));
        _air = record.Column(WeatherElement.AirTemperature) ?? new double[record.Count];
    }

    /// <summary>A month over all years of the record; null when it has no hour of it.</summary>
    /// <param name="month">1 to 12; 0 for all months.</param>
    internal MonthClimate? Month(int month)
    {
        List<WeatherDay> days = DaysOf(month);
        if (days.Count == 0) return null;
        return new()
        {
            Days = days.Count,
            MeanC = Mean(days, WeatherElement.AirTemperature),
            HighestC = days.Max(day => Highest(day)),
            LowestC = days.Min(day => Lowest(day)),
            MeanDewPointC = Mean(days, WeatherElement.DewPoint),
            MeanWindMps = Mean(days, WeatherElement.Wind),
            GlobalWhPerM2Day = 24 * Mean(days, WeatherElement.GlobalRadiation),
            BeamWhPerM2Day = 24 * Mean(days, WeatherElement.BeamRadiation),
            DiffuseWhPerM2Day = 24 * Mean(days, WeatherElement.DiffuseRadiation),
            FrostDays = days.Count(day => Lowest(day) <= 0),
        };
    }

    /// <summary>Heating degree days, K·d: how far the mean of the day's hours lies below a base, summed.</summary>
    internal double HeatingByMean(int month, double baseC) => DaysOf(month).Sum(day => Math.Max(0, baseC - MeanOf(day)));

    /// <summary>Cooling degree days, K·d: how far the mean of the day's hours lies above a base, summed.</summary>
    internal double CoolingByMean(int month, double baseC) => DaysOf(month).Sum(day => Math.Max(0, MeanOf(day) - baseC));

    /// <summary>Heating degree days, K·d, by the middle between the day's highest and lowest.</summary>
    internal double HeatingByMiddle(int month, double baseC) => DaysOf(month).Sum(day => Math.Max(0, baseC - ((Highest(day) + Lowest(day)) / 2)));

    /// <summary>Growing degree days, K·d, by the middle between the day's highest and lowest.</summary>
    internal double GrowingByMiddle(int month, double baseC) => DaysOf(month).Sum(day => DegreeDays.Middle(Highest(day), Lowest(day), baseC));

    /// <summary>Growing degree days, K·d, with highest and lowest cut off at a base and a cap first.</summary>
    internal double GrowingCut(int month, double baseC, double capC) => DaysOf(month).Sum(day => DegreeDays.Cut(Highest(day), Lowest(day), baseC, capC));

    /// <summary>Growing degree days, K·d, by a sine through highest and lowest.</summary>
    internal double GrowingBySine(int month, double baseC) => DaysOf(month).Sum(day => DegreeDays.Sine(Highest(day), Lowest(day), baseC));

    /// <summary>Growing degree days, K·d, hour by hour.</summary>
    internal double GrowingByHour(int month, double baseC) => DaysOf(month).Sum(day => Air(day).ToArray().Where(air => !double.IsNaN(air)).Sum(air => Math.Max(0, air - baseC)) / 24);

    /// <summary>
    /// Last day of the spring half of the year, and first day of the autumn half, on which it froze; null where it did not. South of the
    /// equator spring lies in the second half of the year.
    /// </summary>
    internal (DateOnly? LastSpring, DateOnly? FirstAutumn) Frost()
    {
        DateOnly[] frosts = [.. _days.Where(day => Lowest(day) <= 0).Select(day => day.Date)];
        bool north = _record.Place is not { } place || place.Latitude.Degrees >= 0;
        DateOnly? last = frosts.Where(day => day.Month < 7 == north).Select(day => (DateOnly?)day).OrderBy(day => (day!.Value.Month, day.Value.Day)).LastOrDefault();
        return (last, frosts.Where(day => day.Month < 7 != north).Select(day => (DateOnly?)day).OrderBy(day => (day!.Value.Month, day.Value.Day)).FirstOrDefault());
    }

    private List<WeatherDay> DaysOf(int month) => month == 0 ? _days : [.. _days.Where(day => day.Date.Month == month)];

    private ReadOnlySpan<double> Air(WeatherDay day) => _air.AsSpan(day.First, day.Count);

    private double MeanOf(WeatherDay day) => MeanOf(Air(day));

    private double Mean(List<WeatherDay> days, WeatherElement element)
    {
        if (_record.Column(element) is not { } column) return double.NaN;
        double sum = 0;
        int known = 0;
        foreach (WeatherDay day in days)
        {
            foreach (double value in column.AsSpan(day.First, day.Count))
            {
                if (double.IsNaN(value)) continue;
                (sum, known) = (sum + value, known + 1);
            }
        }
        return known == 0 ? double.NaN : sum / known;
    }

    private static double MeanOf(ReadOnlySpan<double> values)
    {
        double sum = 0;
        int known = 0;
        foreach (double value in values)
        {
            if (!double.IsNaN(value)) (sum, known) = (sum + value, known + 1);
        }
        return sum / known;
    }

    private double Highest(WeatherDay day)
    {
        double highest = double.NaN;
        foreach (double air in Air(day)) highest = air > highest || double.IsNaN(highest) ? air : highest;
        return highest;
    }

    private double Lowest(WeatherDay day)
    {
        double lowest = double.NaN;
        foreach (double air in Air(day)) lowest = air < lowest || double.IsNaN(lowest) ? air : lowest;
        return lowest;
    }
}
