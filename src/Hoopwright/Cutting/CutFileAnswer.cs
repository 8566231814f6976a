using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Cutting;

/// <summary>What cutting a job file gave.</summary>
public sealed record CutFileAnswer
{
    internal CutFileAnswer()
    {
    }

    /// <summary>What is wrong with the job, or worth a second look, in the order of the job.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }

    /// <summary>The job; null when it could not be read.</summary>
    internal CutFileJob? Job { get; init; }

    /// <summary>How to cut it; null when <see cref="Diagnostics"/> says why not.</summary>
    internal UnitlessCutPlan? Plan { get; init; }

    /// <summary>What became of an earlier plan; null when nothing had been cut yet.</summary>
    internal RecutPlan? Again { get; init; }

    internal static CutFileAnswer Without(ImmutableArray<Diagnostic> diagnostics) => new() { Diagnostics = diagnostics };
}
