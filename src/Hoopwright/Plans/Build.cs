using System.Collections.Immutable;
using System.ComponentModel;

namespace Hoopwright.Plans;

/// <summary>When it is built.</summary>
public sealed record Build : PlanSection
{
    /// <summary>First day of work, as 2026-04-18.</summary>
    [Description("First day of work, as 2026-04-18.")]
    public DateOnly? Start { get; init; }

    /// <summary>Day by which it is to be finished; leave out when there is none.</summary>
    [Description("Day by which it is to be finished; leave out when there is none.")]
    public DateOnly? FinishBy { get; init; }

    /// <summary>When work begins, as 7:30.</summary>
    [Description("When work begins, as 7:30.")]
    public TimeOnly? Begins { get; init; }

    /// <summary>Hours of work in a day, breaks not counted.</summary>
    [Description("Hours of work in a day, breaks not counted.")]
    public int? Hours { get; init; }

    /// <summary>Who comes on which weekday, and on which date that is otherwise. When any weekday is listed, nobody comes on the others.</summary>
    [Description("Who comes on which weekday, and on which date that is otherwise. When any weekday is listed, nobody comes on the others.")]
    public ImmutableArray<BuildDay> Days { get; init; } = [];

    /// <summary>Tools of which there are only so many, so that steps wait for them; of all others there are enough.</summary>
    [Description("Tools of which there are only so many, so that steps wait for them; of all others there are enough.")]
    public ImmutableArray<BuildTool> Tools { get; init; } = [];
}
