namespace Hoopwright.Scheduling;

/// <summary>An activity that another waits for, by their numbers.</summary>
/// <param name="Earlier">The one that comes first.</param>
/// <param name="Later">The one that waits.</param>
/// <param name="ReadyAt">For each end of the first, when the other may start; null when that is at once.</param>
internal sealed record ScheduleArc(int Earlier, int Later, int[]? ReadyAt);
