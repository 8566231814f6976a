namespace Hoopwright.Cutting;

/// <summary>
/// What the rest of a cut bar is worth in plain numbers: floor(rest × <paramref name="ValuePer1000"/> / 1000) whole units
/// of price when it is at least <paramref name="MinLength"/>, otherwise nothing.
/// </summary>
/// <param name="MinLength">The shortest rest worth keeping; 0 or more.</param>
/// <param name="ValuePer1000">What a rest of length 1000 is worth; 0 or more.</param>
public sealed record UnitlessLeftoverRule(decimal MinLength, decimal ValuePer1000);
