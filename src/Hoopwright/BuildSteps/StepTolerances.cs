using Hoopwright.AsBuilt;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.BuildSteps;

/// <summary>How near is near enough. No extension page gives any: all are from memory.</summary>
public static class StepTolerances
{
    /// <summary>Where they come from.</summary>
    public static Citation Source { get; } = Citation.FromMemory;

    /// <summary>Difference of the two diagonals of a tunnel of a length.</summary>
    /// <param name="length">Length of the tunnel.</param>
    public static Length Diagonals(Length length) => AsBuiltTolerances.UsualDiagonals(length).Value;

    /// <summary>Post tops, spans and bow spacing; plumb over the height of a post or an end bow.</summary>
    public static Length Frame { get; } = AsBuiltTolerances.UsualFrame.Value;

    /// <summary>How far a face stands off its string.</summary>
    public static Length OffString { get; } = Length.FromInches(0.125);

    /// <summary>A bow from foot to foot before it is raised, and the line of the ridges.</summary>
    public static Length Bow { get; } = AsBuiltTolerances.UsualBow.Value;
}
