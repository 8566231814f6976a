using System.Collections.Immutable;
using Hoopwright.BuildSteps;
using Hoopwright.Plans;

namespace Hoopwright.Calendar;

/// <summary>Who does what on which day.</summary>
public sealed record CrewCalendar
{
    /// <summary>The job that is planned.</summary>
    public required BuildJob Job { get; init; }

    /// <summary>The first day that was planned for.</summary>
    public required DateOnly From { get; init; }

    /// <summary>When all is done; the end of the first day's first moment when nothing is left to do.</summary>
    public required DateTime End { get; init; }

    /// <summary>Day by which it is to be finished; null without one.</summary>
    public required DateOnly? FinishBy { get; init; }

    /// <summary>True when no order of the steps ends earlier with these people at the planned hours.</summary>
    public required bool IsProven { get; init; }

    /// <summary>The steps that are left, by their starts.</summary>
    public required ImmutableArray<PlannedStep> Steps { get; init; }

    /// <summary>Names of the steps that are done.</summary>
    public required ImmutableArray<string> Done { get; init; }

    /// <summary>The days on which something is worked on.</summary>
    public required ImmutableArray<CrewDay> Days { get; init; }

    /// <summary>What holds up the end, from the first step of that chain to the last.</summary>
    public required ImmutableArray<string> HoldsUpTheEnd { get; init; }

    /// <summary>What one helper more and two more would do.</summary>
    public required ImmutableArray<MoreHelp> MoreHelp { get; init; }

    /// <summary>The last day of the forecast; null without one.</summary>
    public required DateOnly? ForecastTo { get; init; }

    /// <summary>What was asked of the plan, and what was taken where it is silent.</summary>
    public required ImmutableArray<RuleUsed> Rules { get; init; }

    /// <summary>A step by its name.</summary>
    public PlannedStep this[string id] => Steps.First(each => each.Step.Id == id);
}
