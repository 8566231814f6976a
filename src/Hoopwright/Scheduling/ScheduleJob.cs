using System.Collections.Immutable;

namespace Hoopwright.Scheduling;

/// <summary>
/// What is to be done, with what, in what order. Time is counted in whole units of working time from 0; nights are left out, so that each
/// day begins when the one before it has ended.
/// </summary>
/// <param name="Resources">What there is.</param>
/// <param name="Activities">What is to be done.</param>
/// <param name="DayLength">Length of a working day; null when no activity minds days, or days have lengths of their own.</param>
/// <param name="GoodDays">Numbers of the good days, from 0.</param>
public sealed record ScheduleJob(ImmutableArray<ScheduleResource> Resources, ImmutableArray<ScheduleActivity> Activities, int? DayLength, ImmutableArray<int> GoodDays)
{
    /// <summary>Lengths of the working days from day 0 on, where they differ; nothing can be done after the last. Empty when all are <see cref="DayLength"/> long.</summary>
    public ImmutableArray<int> DayLengths { get; init; } = [];
}
