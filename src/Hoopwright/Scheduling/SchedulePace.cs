using System.Collections.Immutable;

namespace Hoopwright.Scheduling;

/// <summary>
/// How much of an activity is done at each time, by as much of a resource: people who come on a day, nothing while rain lasts. The activity
/// has ended when what was done adds up to its work.
/// </summary>
/// <param name="Resource">What does the work.</param>
/// <param name="Takes">How much of it is at work in each unit of time of the days' lengths; where it is 0 the activity rests, and it starts at no such time.</param>
public sealed record SchedulePace(string Resource, ImmutableArray<int> Takes);
