using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.Cutting;

/// <summary>How to cut a job: the patterns, what they cost, and the least that any plan could cost.</summary>
public sealed record CutPlan
{
    /// <summary>The patterns, dearest stock first, then fullest; empty when there is no plan.</summary>
    public required ImmutableArray<CutPattern> Patterns { get; init; }

    /// <summary>What the bars cost, less what their leftovers are worth. Zero when there is no plan.</summary>
    public required Money Cost { get; init; }

    /// <summary>How many bars are cut.</summary>
    public required int Bars { get; init; }

    /// <summary>No plan for this job can cost less; reckoned in whole numbers, so that no rounding can spoil it.</summary>
    public required Money LowerBound { get; init; }

    /// <summary>True only when <see cref="Cost"/> equals <see cref="LowerBound"/>: no cheaper plan exists.</summary>
    public required bool Proven { get; init; }

    /// <summary>What found the plan.</summary>
    public required CutMethod Method { get; init; }

    /// <summary>What is wrong with the job, or worth a second look, in the order of the job.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }

    /// <summary>True when the whole job is served; false when <see cref="Diagnostics"/> says why not.</summary>
    public bool Found => !Diagnostics.Any(found => found.Severity == Severity.Error);
}
