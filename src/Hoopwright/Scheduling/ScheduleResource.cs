using System.Collections.Immutable;

namespace Hoopwright.Scheduling;

/// <summary>People, tools or anything else of which only so much can be used at a time.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Amount">How much there is at any time.</param>
public sealed record ScheduleResource(string Id, int Amount)
{
    /// <summary>How much there is on each of the days with lengths of their own, where that differs; empty when it is the same on all.</summary>
    public ImmutableArray<int> AmountByDay { get; init; } = [];

    /// <summary>The most there is at any time.</summary>
    internal int Most => AmountByDay.IsEmpty ? Amount : AmountByDay.Max();
}
