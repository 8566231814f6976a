using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Takeoff;

namespace Hoopwright.Upkeep;

/// <summary>What a tunnel that stands asks for: storms, rounds, the next cover.</summary>
public sealed record UpkeepReport
{
    /// <summary>The storm card; null where the frame is not checked.</summary>
    public required StormCard? Card { get; init; }

    /// <summary>Why there is no card; null where there is one.</summary>
    public required string? NoCard { get; init; }

    /// <summary>The rounds.</summary>
    public required ImmutableArray<InspectionRound> Rounds { get; init; }

    /// <summary>How long the film is on.</summary>
    public required FilmAge Film { get; init; }

    /// <summary>What the next cover takes, by the steps of the re-cover: lines of the takeoff, each once.</summary>
    public required ImmutableArray<MaterialLine> Order { get; init; }

    /// <summary>Every answer of the plan about upkeep, and every usual value taken.</summary>
    public required ImmutableArray<RuleUsed> Rules { get; init; }

    /// <summary>What to confirm.</summary>
    public required ImmutableArray<Diagnostic> Assumptions { get; init; }
}
