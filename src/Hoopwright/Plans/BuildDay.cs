using System.ComponentModel;

namespace Hoopwright.Plans;

/// <summary>Who comes on a weekday, or on one date.</summary>
public sealed record BuildDay : PlanSection
{
    /// <summary>The weekday; leave out for a date.</summary>
    [Description("The weekday; leave out for a date.")]
    public DayOfWeek? Weekday { get; init; }

    /// <summary>The date; it goes before its weekday.</summary>
    [Description("The date; it goes before its weekday.")]
    public DateOnly? Date { get; init; }

    /// <summary>How many come; 0 for a day off. As many as in crew.people when left out.</summary>
    [Description("How many come; 0 for a day off. As many as in crew.people when left out.")]
    public int? People { get; init; }

    /// <summary>When work begins on it.</summary>
    [Description("When work begins on it.")]
    public TimeOnly? Begins { get; init; }

    /// <summary>Hours of work on it.</summary>
    [Description("Hours of work on it.")]
    public int? Hours { get; init; }
}
