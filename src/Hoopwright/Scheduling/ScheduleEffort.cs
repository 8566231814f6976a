namespace Hoopwright.Scheduling;

/// <summary>
/// How much work may be spent on a schedule, counted in dead ends of the search and never by a clock, so that the same job gives the same
/// plan everywhere. Work ends early when the plan is proven to end as early as can be.
/// </summary>
/// <param name="DeadEnds">How many dead ends may be met; some tens of thousands take a second or so on a desk computer.</param>
public sealed record ScheduleEffort(long DeadEnds)
{
    /// <summary>Proves nearly every plan of a tunnel at once; the usual choice.</summary>
    public static ScheduleEffort Usual { get; } = new(100_000);
}
