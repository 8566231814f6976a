using Hoopwright.AsBuilt;

namespace Hoopwright.BeforeCuts;

/// <summary>A measurement that a cut depends on.</summary>
/// <param name="Of">What is measured.</param>
/// <param name="Taken">What was measured; null while nothing was.</param>
public sealed record CheckNeed(Measurable Of, Measurement? Taken)
{
    /// <summary>True while there is no reading that counts, or the last one is in doubt.</summary>
    public bool IsMissing => Taken?.Value is null || Taken.IsInDoubt;
}
