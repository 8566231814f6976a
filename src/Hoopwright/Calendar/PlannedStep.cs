using System.Collections.Immutable;
using Hoopwright.BuildSteps;

namespace Hoopwright.Calendar;

/// <summary>When a step is done.</summary>
public sealed record PlannedStep
{
    /// <summary>The step.</summary>
    public required BuildStep Step { get; init; }

    /// <summary>When it starts, by the clock on the wall.</summary>
    public required DateTime Start { get; init; }

    /// <summary>When it ends.</summary>
    public required DateTime End { get; init; }

    /// <summary>Its hours on each day, in order.</summary>
    public required ImmutableArray<StepShift> Shifts { get; init; }

    /// <summary>When it may start at the latest with the end where it is, what follows pushed back with it.</summary>
    public required DateTime LatestStart { get; init; }

    /// <summary>Working days by which it may slip with the end where it is; 0 when by less than one.</summary>
    public required int MaySlipDays { get; init; }

    /// <summary>True when the end moves if this slips at all.</summary>
    public bool HoldsTheEnd => LatestStart == Start;

    /// <summary>Why it does not start earlier.</summary>
    public required StepHold HeldBy { get; init; }

    /// <summary>The step by which it is held; null where none is.</summary>
    public required string? HeldByStep { get; init; }

    /// <summary>What was looked at of its weather.</summary>
    public required WeatherLook Weather { get; init; }
}
