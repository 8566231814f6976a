namespace Hoopwright.Cutting;

/// <summary>
/// A row that a search adds to its linear programme: a branch or a cut. Every pattern has a whole coefficient in it.
/// </summary>
/// <param name="Coefficients">The coefficient of each pattern of the pool.</param>
/// <param name="Sense">At least or at most.</param>
/// <param name="RightSide">What the sum over a plan is compared with.</param>
internal sealed record SearchRow(int[] Coefficients, RowSense Sense, long RightSide);
