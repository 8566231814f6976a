using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Cutting;

/// <summary>How to go on with a job that has been cut in part.</summary>
public sealed record RecutPlan
{
    /// <summary>How to cut what is left; its cost is what is still to be spent.</summary>
    public required UnitlessCutPlan Plan { get; init; }

    /// <summary>For each pattern of the plan, how many of its bars are cut as the earlier plan had it.</summary>
    public required ImmutableArray<int> Kept { get; init; }

    /// <summary>For each pattern of the plan, how many of its bars are still to be bought or taken; the others are at hand.</summary>
    public required ImmutableArray<int> Further { get; init; }

    /// <summary>How many bars of the earlier plan were still to be cut.</summary>
    public required int Waiting { get; init; }

    /// <summary>True when no plan of this cost keeps more bars of the earlier plan.</summary>
    public required bool FewestChanged { get; init; }

    /// <summary>What is wrong with the job or with what was said of the work done.</summary>
    public ImmutableArray<Diagnostic> Diagnostics => Plan.Diagnostics;
}
