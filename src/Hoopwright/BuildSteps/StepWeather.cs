using Hoopwright.Quantities;

namespace Hoopwright.BuildSteps;

/// <summary>What the weather must be like for a step; null where it does not matter.</summary>
/// <param name="Wind">Most mean wind at the bows.</param>
/// <param name="Gust">Highest gust at the bows.</param>
/// <param name="Coldest">Coldest air.</param>
/// <param name="Warmest">Warmest air.</param>
/// <param name="Dry">True when no rain may fall.</param>
public sealed record StepWeather(Speed? Wind, Speed? Gust, Temperature? Coldest, Temperature? Warmest, bool Dry)
{
    /// <summary>Any weather that people work in.</summary>
    public static StepWeather Any { get; } = new(null, null, null, null, false);
}
