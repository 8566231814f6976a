using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sun;
using Hoopwright.Weather;

namespace Hoopwright.Days;

/// <summary>When the roof film can be pulled.</summary>
public sealed record CoverDayReport
{
    /// <summary>How many windows are kept.</summary>
    public const int MostWindows = 10;

    /// <summary>How many days ahead are looked at.</summary>
    public const int DaysAhead = 7;

    /// <summary>Where.</summary>
    public required Place Place { get; init; }

    /// <summary>Height of the bows, at which the wind counts.</summary>
    public required Length Height { get; init; }

    /// <summary>Wind there over that of the record.</summary>
    public required SiteWind SiteWind { get; init; }

    /// <summary>How long it takes; null when there is no plan to work it out from.</summary>
    public required CoverHours? Hours { get; init; }

    /// <summary>What the weather must be like.</summary>
    public required WindowLimits Limits { get; init; }

    /// <summary>First of the days looked at; null where only the odds of months are asked for.</summary>
    public required DateOnly? From { get; init; }

    /// <summary>The best windows of those days, best first.</summary>
    public required ImmutableArray<WeatherWindow> Windows { get; init; }

    /// <summary>Odds by month; empty for a record of less than most of a year.</summary>
    public required ImmutableArray<MonthOdds> Odds { get; init; }

    /// <summary>What relaxing each limit would gain, in the days looked at, or in all of the record where there are odds.</summary>
    public required ImmutableArray<LimitRelaxing> Relaxed { get; init; }

    /// <summary>Days of the record, or of those looked at, that meet the limits as they are.</summary>
    public required int GoodDays { get; init; }

    /// <summary>Whether rain was looked at.</summary>
    public required bool RainKnown { get; init; }

    /// <summary>Whether the record has gusts.</summary>
    public required bool GustsKnown { get; init; }

    /// <summary>What was asked of the plan, and what was taken where it is silent.</summary>
    public required ImmutableArray<RuleUsed> Rules { get; init; }

    /// <summary>What to look at again, and what was assumed.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }
}
