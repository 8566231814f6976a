namespace Hoopwright.Scheduling;

/// <summary>People, tools or anything else of which only so much can be used at a time.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Amount">How much there is at any time.</param>
public sealed record ScheduleResource(string Id, int Amount);
