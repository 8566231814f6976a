using System.Collections.Immutable;

namespace Hoopwright.Scheduling;

/// <summary>Something to be done without a break, or at a pace that may rest.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Duration">How long it takes, in whole units of time, not negative; with a <paramref name="Pace"/> how much work it is.</param>
/// <param name="Needs">What it takes of each resource while it lasts; nothing while it rests.</param>
/// <param name="After">Names of the activities that must have ended before it starts.</param>
/// <param name="SameDay">True when it must end on the working day on which it starts.</param>
/// <param name="GoodDaysOnly">True when it must lie within one of the good days.</param>
/// <param name="Pace">How much is done of it at each time; null when it takes the same time whenever it starts.</param>
public sealed record ScheduleActivity(
    string Id, int Duration, ImmutableDictionary<string, int> Needs, ImmutableArray<string> After, bool SameDay = false, bool GoodDaysOnly = false, SchedulePace? Pace = null)
{
    /// <summary>For each time whether it may start then; at times past the end of the list it may. Empty when it may at any time.</summary>
    public ImmutableArray<bool> MayStart { get; init; } = [];

    /// <summary>Waits that go on by the clock after the end of another activity.</summary>
    public ImmutableArray<ScheduleWait> Waits { get; init; } = [];
}
