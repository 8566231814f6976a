using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Scheduling;

/// <summary>What came of a scheduling job file.</summary>
/// <param name="Job">The job; null when the file could not be read.</param>
/// <param name="Plan">The plan; null when there is none.</param>
/// <param name="Diagnostics">What was found.</param>
public sealed record ScheduleFileAnswer(ScheduleJob? Job, SchedulePlan? Plan, ImmutableArray<Diagnostic> Diagnostics);
