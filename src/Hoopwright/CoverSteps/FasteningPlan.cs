using System.Collections.Immutable;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.CoverSteps;

/// <summary>How the film is put on, step by step, with who stands where.</summary>
public sealed record FasteningPlan
{
    /// <summary>How the roof is covered.</summary>
    public required FilmVariant Variant { get; init; }

    /// <summary>What the day must be like.</summary>
    public required CoverDayNeeds Day { get; init; }

    /// <summary>Where the roof film is rolled out.</summary>
    public required RollSide RollSide { get; init; }

    /// <summary>Mass of the roof film, all layers.</summary>
    public required Mass RoofFilm { get; init; }

    /// <summary>Reasons for the people it takes; the most of them is the number.</summary>
    public required ImmutableArray<CrewRule> CrewRules { get; init; }

    /// <summary>People for this sheet in the most wind of the plan: the most that a rule asks for.</summary>
    public required int People { get; init; }

    /// <summary>What it takes in other winds, lightest first.</summary>
    public required ImmutableArray<CrewInWind> InWind { get; init; }

    /// <summary>Who stands where while the film comes over, front to back; ropes first.</summary>
    public required ImmutableArray<Stand> Stands { get; init; }

    /// <summary>Where the film of each framed end is held on its bow.</summary>
    public required ImmutableArray<EndHold> Ends { get; init; }

    /// <summary>What to do with fewer people than that; null where there are enough.</summary>
    public required Phrase? WithFewer { get; init; }

    /// <summary>The steps in order.</summary>
    public required ImmutableArray<FasteningStep> Steps { get; init; }

    /// <summary>True at the first step that bears a caution, where it is told in full; later steps name it.</summary>
    /// <param name="caution">The caution.</param>
    /// <param name="step">One of the steps that bear it.</param>
    public bool TellsFirst(StepCaution caution, FasteningStep step) => Steps.First(each => each.Cautions.Contains(caution)) == step;
}
