using System.Collections.Immutable;

namespace Hoopwright.Scheduling;

/// <summary>
/// What is to be done, with what, in what order. Time is counted in whole units of working time from 0; nights are left out, so that day
/// k lasts from k times the day's length to k + 1 times.
/// </summary>
/// <param name="Resources">What there is.</param>
/// <param name="Activities">What is to be done.</param>
/// <param name="DayLength">Length of a working day; null when no activity minds days.</param>
/// <param name="GoodDays">Numbers of the good days, from 0.</param>
public sealed record ScheduleJob(ImmutableArray<ScheduleResource> Resources, ImmutableArray<ScheduleActivity> Activities, int? DayLength, ImmutableArray<int> GoodDays);
