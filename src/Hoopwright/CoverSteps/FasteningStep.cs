using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Sources;
using Hoopwright.Takeoff;

namespace Hoopwright.CoverSteps;

/// <summary>One step of covering, in the order it is done.</summary>
public sealed record FasteningStep
{
    /// <summary>Its name, unique in a plan.</summary>
    public required string Id { get; init; }

    /// <summary>The part of the work.</summary>
    public required CoverPart Part { get; init; }

    /// <summary>What it is, in short.</summary>
    public required Phrase Title { get; init; }

    /// <summary>What to do, in the imperative, in order.</summary>
    public required ImmutableArray<Phrase> Does { get; init; }

    /// <summary>What good looks like, measurable.</summary>
    public ImmutableArray<Phrase> Good { get; init; } = [];

    /// <summary>How many people it takes at least.</summary>
    public required int People { get; init; }

    /// <summary>Cautions that this step bears.</summary>
    public ImmutableArray<StepCaution> Cautions { get; init; } = [];

    /// <summary>The runs of channel and batten it fastens, as the cover names them.</summary>
    public ImmutableArray<string> RunIds { get; init; } = [];

    /// <summary>The pieces of film it handles, as the cover names them.</summary>
    public ImmutableArray<string> PieceIds { get; init; } = [];

    /// <summary>What it uses up: parts of the lines of the takeoff, under their names.</summary>
    public ImmutableArray<MaterialLine> Materials { get; init; } = [];

    /// <summary>Where the way of doing it comes from.</summary>
    public Citation Source { get; init; } = Citation.CommonPractice;
}
