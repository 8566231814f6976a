using System.Collections.Immutable;

namespace Hoopwright.Scheduling;

/// <summary>A wait by the clock, in which nights and days off count as time passed.</summary>
/// <param name="Id">The activity that comes first.</param>
/// <param name="ReadyAt">
/// For each time at which it may end, from 0 to the end of the last day, the first time at which the waiting one may start: no earlier than
/// that end, never less for a later end; past the end of the last day when it is then too late.
/// </param>
public sealed record ScheduleWait(string Id, ImmutableArray<int> ReadyAt);
