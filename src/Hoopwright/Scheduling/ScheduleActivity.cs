using System.Collections.Immutable;

namespace Hoopwright.Scheduling;

/// <summary>Something to be done without a break.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Duration">How long it takes, in whole units of time; not negative.</param>
/// <param name="Needs">What it takes of each resource while it lasts.</param>
/// <param name="After">Names of the activities that must have ended before it starts.</param>
/// <param name="SameDay">True when it must end on the working day on which it starts.</param>
/// <param name="GoodDaysOnly">True when it must lie within one of the good days.</param>
public sealed record ScheduleActivity(string Id, int Duration, ImmutableDictionary<string, int> Needs, ImmutableArray<string> After, bool SameDay = false, bool GoodDaysOnly = false);
