using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>A load case in a combination.</summary>
/// <param name="CaseCode">Code of the case.</param>
/// <param name="Factor">The factor on its loads.</param>
public readonly record struct CombinationTerm(string CaseCode, Ratio Factor);

/// <summary>Load cases that are taken to happen together.</summary>
public sealed record LoadCombination
{
    /// <summary>Its stable name, such as <c>asd-7-wind-left-shut-plus</c>.</summary>
    public required string Code { get; init; }

    /// <summary>As it is written: <c>0.6 D + 0.6 W</c>, with the cases in words.</summary>
    public required string Words { get; init; }

    /// <summary>True for factored loads that are held against strength (LRFD, EN 1990); false for allowable strength design.</summary>
    public required bool IsStrengthLevel { get; init; }

    /// <summary>The cases and their factors.</summary>
    public required ImmutableArray<CombinationTerm> Terms { get; init; }

    /// <summary>Where it comes from.</summary>
    public required Citation Source { get; init; }
}
