namespace Hoopwright.Scheduling;

/// <summary>Which day a time lies on, and where days begin and end.</summary>
internal sealed class ScheduleDays
{
    private readonly int? _length;
    private readonly int[] _begins;

    internal ScheduleDays(ScheduleJob job)
    {
        _length = job.DayLength;
        _begins = new int[job.DayLengths.Length + 1];
        for (int day = 0; day < job.DayLengths.Length; day++) _begins[day + 1] = _begins[day] + job.DayLengths[day];
    }

    /// <summary>The end of the last day; null when days never end.</summary>
    internal int? Last => _begins.Length > 1 ? _begins[^1] : null;

    /// <summary>The day of a time.</summary>
    internal int DayOf(int time)
    {
        if (_begins.Length == 1) return time / _length!.Value;
        int at = Array.BinarySearch(_begins, time);
        return at >= 0 ? at : ~at - 1;
    }

    /// <summary>When a day ends.</summary>
    internal int EndOf(int day) => _begins.Length == 1 ? (day + 1) * _length!.Value : _begins[Math.Min(day + 1, _begins.Length - 1)];
}
