using Hoopwright.Quantities;

namespace Hoopwright.Cutting;

/// <summary>
/// What the rest of a cut bar is worth: nothing when shorter than the least length, otherwise in proportion to its length,
/// rounded down to 1/10 000 of the currency unit. A bar that is not cut at all earns nothing.
/// </summary>
/// <param name="MinimumLength">The shortest rest worth keeping; 0 or more.</param>
/// <param name="Worth">What a rest of length <paramref name="Per"/> is worth; 0 or more.</param>
/// <param name="Per">The length that <paramref name="Worth"/> is for; above 0.</param>
public sealed record LeftoverRule(Length MinimumLength, Money Worth, Length Per);
