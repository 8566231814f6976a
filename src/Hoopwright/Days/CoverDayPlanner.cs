using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sun;
using Hoopwright.Weather;

namespace Hoopwright.Days;

/// <summary>Finds the days on which the roof film can be pulled.</summary>
public static class CoverDayPlanner
{
    // A record of at least so many days speaks of months.
    private const int DaysOfClimate = 300;

    // Without a plan: bows of a usual height.
    private static readonly Length UsualHeight = Length.FromFeet(12);
    private const int UsualHours = 4;

    /// <summary>For a tunnel.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="cover">Its film.</param>
    /// <param name="record">The weather.</param>
    /// <param name="from">First of the days looked at; null for the first of the record.</param>
    public static CoverDayOutcome Plan(Tunnel tunnel, CoverPlan cover, WeatherRecord record, DateOnly? from = null)
    {
        ArgumentNullException.ThrowIfNull(tunnel);
        ArgumentNullException.ThrowIfNull(cover);
        ArgumentNullException.ThrowIfNull(record);
        Plan plan = tunnel.Plan;
        var answers = new Answers(tunnel.Units);
        List<Diagnostic> found = [];
        if (SitePlace.Of(plan, record, found) is not { } place) return new(null, [.. found]);

        CoverDayNeeds needs = CoverDayNeeds.Of(tunnel, cover, answers);
        CoverHours hours = needs.Hours;
        SiteWind wind = SiteWind.Of(plan, answers, tunnel.Bow.PeakHeight, record.WindHeight);
        var limits = new WindowLimits
        {
            Wind = needs.Wind,
            Gust = needs.Gust,
            Coldest = needs.Coldest,
            Warmest = needs.Warmest,
            RainChance = needs.RainChance,
            GustFactor = answers.Take("coverDay.gustFactor", DayDefaults.GustFactor, plan.CoverDay.GustFactor),
            Hours = hours.Needed,
            WindHere = wind.Mean,
            GustHere = wind.Gust,
        };
        if (limits.Coldest >= limits.Warmest)
        {
            found.Add(new Diagnostic("days.temperatures", Severity.Error, "coverDay.coldest", "The coldest air to pull film in is no colder than the warmest.", TapeText.Of(limits.Coldest, tunnel.Units), "below " + TapeText.Of(limits.Warmest, tunnel.Units)));
            return new(null, [.. found]);
        }
        if (hours.People < DayDefaults.FewestPeople)
            found.Add(new Diagnostic("days.few-people", Severity.Warning, "crew.people", "So few people cannot hold a sheet of film once wind gets under it.", $"{hours.People}", $"{DayDefaults.FewestPeople} or more"));
        return Outcome(record, place, tunnel.Bow.PeakHeight, wind, hours, limits, from, answers.Rules, [.. found, .. answers.Assumptions]);
    }

    /// <summary>For weather alone: bows of 12 ft in open country and four hours of work, by the usual limits.</summary>
    /// <param name="record">The weather.</param>
    /// <param name="from">First of the days looked at; null for the first of the record.</param>
    public static CoverDayOutcome Plan(WeatherRecord record, DateOnly? from = null)
    {
        ArgumentNullException.ThrowIfNull(record);
        List<Diagnostic> found = [];
        if (SitePlace.Of(new Plan(), record, found) is not { } place) return new(null, [.. found]);
        SiteWind wind = SiteWind.Open(UsualHeight, record.WindHeight);
        var limits = new WindowLimits
        {
            Wind = DayDefaults.Wind.Value,
            Gust = DayDefaults.Gust.Value,
            Coldest = DayDefaults.Coldest.Value,
            Warmest = DayDefaults.Warmest.Value,
            RainChance = DayDefaults.RainChance.Value,
            GustFactor = DayDefaults.GustFactor.Value,
            Hours = UsualHours,
            WindHere = wind.Mean,
            GustHere = wind.Gust,
        };
        return Outcome(record, place, UsualHeight, wind, null, limits, from, [], found);
    }

    private static CoverDayOutcome Outcome(
        WeatherRecord record, Place place, Length height, SiteWind wind, CoverHours? hours, WindowLimits limits, DateOnly? from, ImmutableArray<RuleUsed> rules, List<Diagnostic> found)
    {
        var finder = new WindowFinder(record, place);
        bool climate = record.Count >= DaysOfClimate * 24;
        DateOnly? first = from ?? (climate ? null : DateOnly.FromDateTime(record[0].Start.DateTime));
        if (record.IsTypicalYear && from is not null)
        {
            found.Add(new Diagnostic("days.typical-year", Severity.Warning, "weather", "A typical year says nothing of the days of this one, so only the odds of its months are given.", null, "a forecast"));
            first = null;
        }
        if (first is { } start && (start > DateOnly.FromDateTime(record[record.Count - 1].Start.DateTime) || start.AddDays(CoverDayReport.DaysAhead) <= DateOnly.FromDateTime(record[0].Start.DateTime)))
        {
            found.Add(new Diagnostic(
                "days.outside", Severity.Error, "weather", "The weather has none of these days.", $"{start:yyyy-MM-dd}", $"{record[0].Start:yyyy-MM-dd} to {record[record.Count - 1].Start:yyyy-MM-dd}"));
            return new(null, [.. found]);
        }
        bool gusts = record.KnownHours(WeatherElement.Gust) > 0;
        if (!finder.KnowsRain) found.Add(new Diagnostic("days.no-rain", Severity.Assumption, "weather", "The weather has nothing on rain, so it was not looked at: the hours found may be wet.", null, "dry"));
        if (!gusts) found.Add(new Diagnostic("days.no-gusts", Severity.Assumption, "coverDay.gustFactor", "The weather has no gusts, so they were estimated from the mean wind.", null, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{limits.GustFactor.Value} times the mean")));
        var report = new CoverDayReport
        {
            Place = place,
            Height = height,
            SiteWind = wind,
            Hours = hours,
            Limits = limits,
            From = first,
            Windows = first is { } day ? [.. finder.Best(limits, day, CoverDayReport.DaysAhead).Take(CoverDayReport.MostWindows)] : [],
            Odds = climate ? finder.Odds(limits) : [],
            Relaxed = climate ? LimitRelaxing.Each(finder, limits) : LimitRelaxing.Each(finder, limits, first, CoverDayReport.DaysAhead),
            GoodDays = climate ? finder.GoodDays(limits) : finder.GoodDays(limits, first, CoverDayReport.DaysAhead),
            RainKnown = finder.KnowsRain,
            GustsKnown = gusts,
            Rules = rules,
            Diagnostics = [.. found.OrderBy(each => each.Severity)],
        };
        return new(report, report.Diagnostics);
    }
}
