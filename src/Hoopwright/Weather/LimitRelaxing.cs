using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Weather;

/// <summary>What relaxing one limit would gain.</summary>
/// <param name="Limit">Which.</param>
/// <param name="Limits">All limits with that one relaxed.</param>
/// <param name="GoodDays">Days with a window then.</param>
/// <param name="Gained">How many more that is.</param>
public sealed record LimitRelaxing(WindowLimit Limit, WindowLimits Limits, int GoodDays, int Gained)
{
    /// <summary>Each limit relaxed by a step that people can picture, most gained first: 2 mph of wind, 5 mph of gust, 10 °F either way, 20 in a hundred of rain, an hour less, an hour of half-light at either end.</summary>
    /// <param name="finder">The weather.</param>
    /// <param name="limits">What the work needs.</param>
    /// <param name="from">First day; null for all of the record.</param>
    /// <param name="days">How many days.</param>
    public static ImmutableArray<LimitRelaxing> Each(WindowFinder finder, WindowLimits limits, DateOnly? from = null, int days = int.MaxValue)
    {
        ArgumentNullException.ThrowIfNull(finder);
        ArgumentNullException.ThrowIfNull(limits);
        int now = finder.GoodDays(limits, from, days);
        List<(WindowLimit Limit, WindowLimits Limits)> relaxed =
        [
            (WindowLimit.Wind, limits with { Wind = limits.Wind + Speed.FromMilesPerHour(2) }),
            (WindowLimit.Coldest, limits with { Coldest = Temperature.FromFahrenheit(limits.Coldest.Fahrenheit - 10) }),
            (WindowLimit.Warmest, limits with { Warmest = Temperature.FromFahrenheit(limits.Warmest.Fahrenheit + 10) }),
            (WindowLimit.Daylight, limits with { HoursInTheDark = limits.HoursInTheDark + 1 }),
        ];
        if (limits.Gust is { } gust) relaxed.Add((WindowLimit.Gust, limits with { Gust = gust + Speed.FromMilesPerHour(5) }));
        if (limits.RainChance is { } rain && finder.KnowsRain) relaxed.Add((WindowLimit.Rain, limits with { RainChance = Ratio.FromValue(Math.Min(1, rain.Value + 0.2)) }));
        if (limits.Hours > 1) relaxed.Add((WindowLimit.Hours, limits with { Hours = limits.Hours - 1 }));
        return
        [
            .. relaxed.Select(each => (each.Limit, each.Limits, Good: finder.GoodDays(each.Limits, from, days)))
                .Select(each => new LimitRelaxing(each.Limit, each.Limits, each.Good, each.Good - now))
                .OrderByDescending(each => each.Gained).ThenBy(each => each.Limit),
        ];
    }
}
