using Hoopwright.Sources;

namespace Hoopwright.Plans;

/// <summary>A value that a result rests on: given by the plan, or taken because the plan did not say.</summary>
/// <param name="Path">Where in the plan it can be given.</param>
/// <param name="UsualSays">What the usual value means, one sentence.</param>
/// <param name="Text">The value as people read it.</param>
/// <param name="Given">True when the plan gives it.</param>
/// <param name="Matters">True when the grower should confirm it where it is not given.</param>
/// <param name="Source">Where it comes from when it is not given.</param>
public sealed record RuleUsed(string Path, string UsualSays, string Text, bool Given, bool Matters, Citation Source)
{
    /// <summary>
    /// What it means, one sentence. What the usual value means may not be what another value means: of one that is given its field
    /// says it.
    /// </summary>
    public string Says => Given ? PlanFormats.Plan.SentenceAt(Path) ?? UsualSays : UsualSays;

    /// <summary>Where the value comes from: the plan, or the source of the usual one.</summary>
    public Citation From => Given ? Citation.ThePlan : Source;

    /// <summary>True when this stands among the assumptions to confirm.</summary>
    public bool IsAssumption => !Given && Matters;
}
