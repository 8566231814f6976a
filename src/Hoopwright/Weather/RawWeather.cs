namespace Hoopwright.Weather;

/// <summary>Rows as they stand in a file: time, line, values.</summary>
internal sealed class RawWeather
{
    /// <summary>A hundred years of hours: no file of weather for a tunnel is longer.</summary>
    internal const int MostRows = 100 * 8784;

    private readonly List<double>?[] _columns = new List<double>?[ElementFact.Count];

    /// <summary>Hours since the beginning of the calendar at which each row begins, or was read.</summary>
    internal List<int> Hours { get; } = [];

    /// <summary>Line of the file each row stands in.</summary>
    internal List<int> Lines { get; } = [];

    internal int Count => Hours.Count;

    /// <summary>Adds a row without values.</summary>
    internal void Add(int hour, int line)
    {
        Hours.Add(hour);
        Lines.Add(line);
    }

    /// <summary>Gives the last row a value.</summary>
    internal void Set(WeatherElement element, double value)
    {
        List<double> column = _columns[(int)element] ??= [];
        while (column.Count < Count - 1) column.Add(double.NaN);
        if (column.Count == Count) column[^1] = value;
        else column.Add(value);
    }

    /// <summary>The values of an element, one a row; null when no row has one.</summary>
    internal double[]? Column(WeatherElement element)
    {
        if (_columns[(int)element] is not { } column) return null;
        while (column.Count < Count) column.Add(double.NaN);
        return [.. column];
    }

    /// <summary>Puts other values in the place of an element's.</summary>
    internal void Replace(WeatherElement element, double[] column) => _columns[(int)element] = [.. column];

    /// <summary>Hours since the beginning of the calendar.</summary>
    internal static int HourOf(DateTime start) => (int)(start.Ticks / TimeSpan.TicksPerHour);
}
