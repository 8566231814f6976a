using System.Collections.Immutable;
using Hoopwright.Plans;

namespace Hoopwright.BuildSteps;

/// <summary>What the site book says of a step.</summary>
/// <param name="IsDone">True when it is done.</param>
/// <param name="Day">The day on which it was done; null when it is not done, or the book does not say when.</param>
/// <param name="Signed">The last entry that signs for it; null when nobody has, or it was taken back.</param>
/// <param name="Notes">Notes and pictures, in their order.</param>
public sealed record StepMark(bool IsDone, DateOnly? Day, SiteBookEntry? Signed, ImmutableArray<SiteBookEntry> Notes)
{
    /// <summary>Nothing yet.</summary>
    public static StepMark None { get; } = new(false, null, null, []);

    /// <summary>True when steps that wait for this one may begin: it is done, and signed where it must be.</summary>
    /// <param name="step">The step.</param>
    public bool LetsOn(BuildStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return IsDone && (step.Hold is null || Signed is not null);
    }
}
