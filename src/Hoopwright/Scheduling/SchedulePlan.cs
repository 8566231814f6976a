using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Scheduling;

/// <summary>When each activity starts.</summary>
/// <param name="Makespan">When the last one ends; null when no plan was found.</param>
/// <param name="LowerBound">No plan ends before this.</param>
/// <param name="Starts">A start for each activity of the job, in its order; empty when no plan was found.</param>
/// <param name="DeadEnds">How many dead ends the search met.</param>
/// <param name="Diagnostics">What is wrong with the job.</param>
public sealed record SchedulePlan(int? Makespan, int LowerBound, ImmutableArray<int> Starts, long DeadEnds, ImmutableArray<Diagnostic> Diagnostics)
{
    /// <summary>As late as each activity may start with the end where it is, all pushed back together in the order of their ends; empty when no plan was found.</summary>
    public ImmutableArray<int> LatestStarts { get; init; } = [];

    /// <summary>True when no plan can end earlier.</summary>
    public bool IsProven => Makespan == LowerBound;
}
