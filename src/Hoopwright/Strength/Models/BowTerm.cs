namespace Hoopwright.Strength.Models;

/// <summary>A load case of a <see cref="BowTrial"/> and what it is multiplied with.</summary>
/// <param name="Load">Index of the case.</param>
/// <param name="Times">The multiple: a factor of the combination, times the snow or the wind where the case is held for 1 Pa.</param>
internal readonly record struct BowTerm(int Load, double Times);
