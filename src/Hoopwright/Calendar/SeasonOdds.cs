using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Calendar;

/// <summary>When a job ends in many seasons, with weather and hours drawn by lot.</summary>
public sealed record SeasonOdds
{
    /// <summary>How many seasons.</summary>
    public required int Seasons { get; init; }

    /// <summary>The seed that they were drawn with.</summary>
    public required ulong Seed { get; init; }

    /// <summary>How many whole years the weather was drawn from; 0 where blocks of days were drawn from around the same days of the year.</summary>
    public required int Years { get; init; }

    /// <summary>Each day on which some season ends, and the part of the seasons that have ended by then, rising; what ends in none of the days looked at is missing.</summary>
    public required ImmutableArray<(DateOnly Date, Ratio Odds)> ByDate { get; init; }

    /// <summary>The steps that wait for their weather, most first.</summary>
    public required ImmutableArray<StepOdds> Waits { get; init; }

    /// <summary>The day by which so many of the seasons have ended; null when fewer end at all.</summary>
    /// <param name="part">The part, such as 0.9.</param>
    public DateOnly? EndsBy(Ratio part)
    {
        foreach ((DateOnly date, Ratio odds) in ByDate)
        {
            if (odds >= part) return date;
        }
        return null;
    }

    /// <summary>In what part of the seasons the job has ended by a day.</summary>
    /// <param name="date">The day.</param>
    public Ratio OddsBy(DateOnly date)
    {
        Ratio odds = Ratio.FromValue(0);
        foreach ((DateOnly day, Ratio part) in ByDate)
        {
            if (day <= date) odds = part;
        }
        return odds;
    }
}
