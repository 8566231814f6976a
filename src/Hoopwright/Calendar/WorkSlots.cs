using System.Collections.Immutable;

namespace Hoopwright.Calendar;

/// <summary>Working time in half hours, nights and days off left out.</summary>
internal sealed class WorkSlots
{
    private static readonly TimeSpan Slot = TimeSpan.FromMinutes(CalendarDefaults.SlotMinutes);

    private readonly DateTime[] _starts;

    internal WorkSlots(ImmutableArray<WorkDay> days)
    {
        Days = days;
        Lengths = [.. days.Select(day => (int)((day.Ends - day.Begins).Ticks / Slot.Ticks))];
        DayOf = [.. Lengths.SelectMany((length, day) => Enumerable.Repeat(day, length))];
        _starts = [.. days.SelectMany((day, at) => Enumerable.Range(0, Lengths[at]).Select(slot => day.Date.ToDateTime(day.Begins) + (slot * Slot)))];
    }

    /// <summary>The days.</summary>
    internal ImmutableArray<WorkDay> Days { get; }

    /// <summary>How many slots each has.</summary>
    internal ImmutableArray<int> Lengths { get; }

    /// <summary>The day of each slot.</summary>
    internal int[] DayOf { get; }

    /// <summary>How many slots there are.</summary>
    internal int Count => _starts.Length;

    /// <summary>When a slot begins, by the clock on the wall.</summary>
    internal DateTime StartOf(int slot) => _starts[slot];

    /// <summary>When what ends before a slot has ended: in the evening of the day before, where the slot is the first of its day.</summary>
    internal DateTime EndBefore(int slot) => slot == 0 ? _starts[0] : _starts[slot - 1] + Slot;

    /// <summary>The first slot that begins at a time or later.</summary>
    internal int FirstFrom(DateTime time)
    {
        int at = Array.BinarySearch(_starts, time);
        return at >= 0 ? at : ~at;
    }

    /// <summary>Slots that some work of people fills, up to whole ones.</summary>
    internal static int Of(TimeSpan work) => (int)((work.Ticks + Slot.Ticks - 1) / Slot.Ticks);

    /// <summary>For each end, the first slot after a wait by the clock.</summary>
    internal ImmutableArray<int> ReadyAfter(TimeSpan wait)
    {
        ImmutableArray<int>.Builder ready = ImmutableArray.CreateBuilder<int>(Count + 1);
        for (int end = 0; end <= Count; end++) ready.Add(Math.Max(end, FirstFrom(EndBefore(end) + wait)));
        return ready.MoveToImmutable();
    }
}
