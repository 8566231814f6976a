namespace Hoopwright.Cutting;

/// <summary>
/// How much work may be spent on a job, counted in elementary steps and never by a clock, so that the same job gives the
/// same plan everywhere. Work ends early when the least cost is proven.
/// </summary>
/// <param name="Steps">About how many elementary steps; a thousand million take a second or so on a desk computer.</param>
public sealed record CutEffort(long Steps)
{
    /// <summary>The first plan that comes to hand, for when thousands of jobs are only to be shown to work out.</summary>
    public static CutEffort Least { get; } = new(0);

    /// <summary>A good plan while someone is typing.</summary>
    public static CutEffort Live { get; } = new(100_000_000);

    /// <summary>Proves nearly every real order; the usual choice.</summary>
    public static CutEffort Usual { get; } = new(3_000_000_000);

    /// <summary>For a dear order that the usual effort left open.</summary>
    public static CutEffort Thorough { get; } = new(60_000_000_000);
}
