using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Cutting;

/// <summary>How to cut a job given in plain numbers.</summary>
public sealed record UnitlessCutPlan
{
    /// <summary>The patterns, dearest stock first, then fullest; empty when there is no plan.</summary>
    public required ImmutableArray<UnitlessCutPattern> Patterns { get; init; }

    /// <summary>What the bars cost, less what their leftovers are worth. Zero when there is no plan.</summary>
    public required decimal Cost { get; init; }

    /// <summary>How many bars are cut.</summary>
    public required int Bars { get; init; }

    /// <summary>No plan for this job can cost less.</summary>
    public required decimal LowerBound { get; init; }

    /// <summary>True only when <see cref="Cost"/> equals <see cref="LowerBound"/>.</summary>
    public required bool Proven { get; init; }

    /// <summary>What found the plan.</summary>
    public required CutMethod Method { get; init; }

    /// <summary>What is wrong with the job, or worth a second look, in the order of the job.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }

    /// <summary>True when the whole job is served; false when <see cref="Diagnostics"/> says why not.</summary>
    public bool Found => !Diagnostics.Any(found => found.Severity == Severity.Error);
}
