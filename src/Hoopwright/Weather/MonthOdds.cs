using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Weather;

/// <summary>How often a month has a day on which the work can be done.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="Days">Days of it in the record, over all years.</param>
/// <param name="GoodDays">On how many of them there was a window.</param>
/// <param name="OnADay">Part of the days with a window.</param>
/// <param name="InAWeek">Part of the weeks, each ending on a day of the month, with at least one such day; counted, not worked out, since calm days come together.</param>
/// <param name="StartingAt">For each hour of the clock from 0: on what part of the days the work could begin then.</param>
public sealed record MonthOdds(int Month, int Days, int GoodDays, Ratio OnADay, Ratio InAWeek, ImmutableArray<Ratio> StartingAt);
