using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>Every load case of a tunnel and the combinations in which they are taken.</summary>
public sealed record TunnelLoads
{
    /// <summary>The standard.</summary>
    public required LoadStandard Standard { get; init; }

    /// <summary>The risk category.</summary>
    public required RiskCategory RiskCategory { get; init; }

    /// <summary>Ground snow to design for, after any conversion of return period; null when the plan gives none: then nothing here is for the site.</summary>
    public required Pressure? GroundSnow { get; init; }

    /// <summary>Wind to design for, after any conversion of return period; null when the plan gives none: then nothing here is for the site.</summary>
    public required Speed? Wind { get; init; }

    /// <summary>Half the density of air: what the square of a wind speed is multiplied with.</summary>
    public required Density HalfAir { get; init; }

    /// <summary>The cases, in a stable order.</summary>
    public required ImmutableArray<LoadCase> Cases { get; init; }

    /// <summary>The combinations, in a stable order; only cases that count.</summary>
    public required ImmutableArray<LoadCombination> Combinations { get; init; }

    /// <summary>The values that all cases were worked out with.</summary>
    public required ImmutableArray<Coefficient> Coefficients { get; init; }

    /// <summary>What to look at again.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }

    /// <summary>The case of a code.</summary>
    /// <exception cref="ArgumentException">There is no such case.</exception>
    public LoadCase Case(string code) =>
        Cases.FirstOrDefault(each => each.Code == code) ?? throw new ArgumentException($"There is no load case {code}.", nameof(code));

    /// <summary>The reference pressure ½·ρ·V² of a wind speed, for <see cref="LoadCase.Times"/>.</summary>
    public Pressure ReferenceOf(Speed wind) => Pressure.FromPascals(HalfAir.KilogramsPerCubicMetre * wind.MetresPerSecond * wind.MetresPerSecond);

    /// <summary>The wind speed of a reference pressure; the inverse of <see cref="ReferenceOf"/>.</summary>
    /// <param name="reference">½·ρ·V²; 0 or more.</param>
    public Speed WindOf(Pressure reference) => Speed.FromMetresPerSecond(Math.Sqrt(Math.Max(0, reference.Pascals) / HalfAir.KilogramsPerCubicMetre));
}
