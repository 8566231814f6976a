namespace Hoopwright.BuildSteps;

/// <summary>Work that cannot be foretold to the hour, in person-hours: one person for one hour.</summary>
/// <param name="LeastHours">When all goes well.</param>
/// <param name="LikelyHours">What to plan with.</param>
/// <param name="MostHours">When much goes wrong, bad weather apart.</param>
public sealed record WorkSpan(double LeastHours, double LikelyHours, double MostHours)
{
    internal static WorkSpan Sum(IEnumerable<WorkSpan> spans)
    {
        var all = spans.ToList();
        return new(all.Sum(each => each.LeastHours), all.Sum(each => each.LikelyHours), all.Sum(each => each.MostHours));
    }

    internal WorkSpan Times(double least, double likely, double most) => new(LeastHours * least, LikelyHours * likely, MostHours * most);
}
