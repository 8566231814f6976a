using Hoopwright.Quantities;

namespace Hoopwright.Upkeep;

/// <summary>What a coming storm calls for, and when.</summary>
/// <param name="Action">What it calls for.</param>
/// <param name="First">When it is first reached.</param>
/// <param name="Hours">In how many hours of the forecast it is reached.</param>
/// <param name="WorstAt">When it is worst.</param>
/// <param name="Gust">The strongest gust, at 10 m in open country; null for snow.</param>
/// <param name="GustLimit">The gust that it is held against; null for snow.</param>
/// <param name="Snow">The heaviest snow, with the rain in it; null for wind.</param>
/// <param name="SnowLimit">The snow that it is held against; null for wind.</param>
public sealed record StormWarning(StormAction Action, DateTimeOffset First, int Hours, DateTimeOffset WorstAt, Speed? Gust, Speed? GustLimit, Pressure? Snow, Pressure? SnowLimit)
{
    /// <summary>The worst over what it is held against: above 1 by so much.</summary>
    public Ratio Times => Ratio.FromValue(Gust is { } gust ? gust / GustLimit!.Value : Snow!.Value / SnowLimit!.Value);
}
