namespace Hoopwright.Cutting;

/// <summary>Something that is a whole number in every plan and is not in the mixture at hand.</summary>
/// <param name="CoefficientOf">How much a bar of a pattern counts.</param>
/// <param name="Value">Its value in the mixture.</param>
internal sealed record BranchChoice(Func<Pattern, int> CoefficientOf, double Value)
{
    /// <summary>The side where it is rounded down.</summary>
    public SearchRow Down(List<Pattern> pool) => new(Coefficients(pool), RowSense.AtMost, (long)Math.Floor(Value));

    /// <summary>The side where it is rounded up.</summary>
    public SearchRow Up(List<Pattern> pool) => new(Coefficients(pool), RowSense.AtLeast, (long)Math.Floor(Value) + 1);

    private int[] Coefficients(List<Pattern> pool) => [.. pool.Select(CoefficientOf)];
}
