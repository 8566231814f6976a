namespace Hoopwright.BuildSteps;

/// <summary>Work that cannot be foretold to the hour, as the time one person would take.</summary>
/// <param name="Least">When all goes well.</param>
/// <param name="Likely">What to plan with.</param>
/// <param name="Most">When much goes wrong, bad weather apart.</param>
public sealed record WorkSpan(TimeSpan Least, TimeSpan Likely, TimeSpan Most)
{
    /// <summary>No work.</summary>
    internal static WorkSpan None { get; } = new(TimeSpan.Zero, TimeSpan.Zero, TimeSpan.Zero);

    /// <summary>Work of several kinds together.</summary>
    internal static WorkSpan Sum(IEnumerable<WorkSpan> spans) =>
        spans.Aggregate(None, (sum, each) => new(sum.Least + each.Least, sum.Likely + each.Likely, sum.Most + each.Most));

    /// <summary>The same in whole minutes, so that the last bit of a product decides nothing.</summary>
    internal static WorkSpan OfMinutes(double least, double likely, double most) => new(Whole(least), Whole(likely), Whole(most));

    private static TimeSpan Whole(double minutes) => TimeSpan.FromMinutes(Math.Ceiling(Math.Round(minutes, 6)));
}
