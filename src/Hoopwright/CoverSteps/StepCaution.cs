using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.CoverSteps;

/// <summary>What can hurt at a step, what to do, who decides.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Text">What can happen and what to do.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record StepCaution(string Id, string Text, Citation Source)
{
    /// <summary>Film in wind.</summary>
    public static StepCaution Wind { get; } = new("wind", "A sheet in the wind lifts people. Stop when small twigs move all the time, and let go rather than be lifted. Never wind a rope round a hand.", Citation.CommonPractice);

    /// <summary>Ladders.</summary>
    public static StepCaution Ladder { get; } = new("ladder", "Ladders: foot out a quarter of the height, tied at the top, both feet on it. Never lift people in a loader bucket. Local rules on work at height decide.",
        new("29 CFR 1926.1053, Ladders, and 1926.451(c)(2), Scaffolds, U.S. Occupational Safety and Health Administration", "angle of ladders, loaders under platforms", Standing.Published));

    /// <summary>Knives.</summary>
    public static StepCaution Knife { get; } = new("knife", "Cut away from hands and from film that stays. Keep knives closed until the sheet is fastened all round.", Citation.CommonPractice);

    /// <summary>How far to keep from overhead lines, first in the units of the plan.</summary>
    /// <param name="units">Units of the plan.</param>
    public static string LineDistance(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => "10 ft (3 m)",
        UnitSystem.Metric => "3 m (10 ft)",
    };

    /// <summary>Overhead lines.</summary>
    /// <param name="units">Units of the plan.</param>
    public static StepCaution Lines(UnitSystem units) => new("lines", $"Overhead lines: keep ropes, film and tubes {LineDistance(units)} away at least, farther from lines of more than 50 kV; ask the utility.",
        new("29 CFR 1926.1408, Table A, U.S. Occupational Safety and Health Administration", "minimum clearance distances", Standing.Published));

    /// <summary>Lifting a roll.</summary>
    public static StepCaution Lift { get; } = new("lift", "A roll of film is heavy and has no handles: lift it together, with straight backs, or roll it.", Citation.CommonPractice);

    /// <summary>Springy channel and wire.</summary>
    public static StepCaution Spring { get; } = new("spring", "Bent channel and spring wire jump: eye protection, and hold the end until it is in or screwed.", Citation.CommonPractice);

    /// <summary>Electric blower.</summary>
    public static StepCaution Current { get; } = new("current", "Blower and cable stand in the wet: an outdoor circuit with residual-current protection, by a licensed electrician. Local code decides.", Citation.CommonPractice);

    /// <summary>All of them.</summary>
    /// <param name="units">Units of the plan.</param>
    public static ImmutableArray<StepCaution> All(UnitSystem units) => [Wind, Ladder, Knife, Lines(units), Lift, Spring, Current];
}
