using System.Collections.Immutable;
using CsCheck;
using Hoopwright.BuildSteps;
using Hoopwright.Calendar;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Weather;
using static Hoopwright.Tests.Calendar.CalendarSamples;

namespace Hoopwright.Tests.Calendar;

public sealed class SeasonTests
{
    private static readonly Build Weekdays = new() { Start = Monday, Begins = new TimeOnly(8, 0), Hours = 8 };

    private static readonly StepWeather Calm = new(Speed.FromMetresPerSecond(3), null, null, null, false);

    [Fact]
    public void Numbers_are_those_published_for_the_seed()
    {
        // First outputs of SplitMix64 for the seed 1234567, as Rosetta Code prints them (Pseudo-random numbers/Splitmix64): from memory.
        var numbers = new SeededNumbers(1234567);
        Assert.Equal([6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821], Enumerable.Range(0, 5).Select(_ => numbers.Next()));
    }

    [Fact]
    public void Hours_drawn_follow_the_triangle()
    {
        // Distribution function of the triangular distribution, by its formula.
        var numbers = new SeededNumbers(7);
        double[] drawn = [.. Enumerable.Range(0, 40_000).Select(_ => numbers.Triangle(2, 3, 8))];
        Assert.True(drawn.Min() >= 2 && drawn.Max() <= 8);
        foreach (double x in (double[])[2.5, 3, 4, 6])
        {
            double expected = x <= 3 ? (x - 2) * (x - 2) / 6 : 1 - ((8 - x) * (8 - x) / 30);
            Assert.Equal(expected, drawn.Count(value => value <= x) / 40_000.0, 0.01);
        }
    }

    [Fact]
    public void Where_the_hours_are_sure_and_no_step_minds_weather_every_season_ends_as_planned() => Jobs.Sample(
        job =>
        {
            CrewCalendar calendar = Planned(With(Weekdays), job);
            SeasonOdds odds = Odds(Weekdays, job, calendar, Year(_ => 1), 3);
            Assert.Equal([(DateOnly.FromDateTime(calendar.End), Ratio.FromValue(1))], odds.ByDate);
            Assert.Empty(odds.Waits);
        },
        iter: 40,
        threads: 1);

    private static readonly Gen<BuildPlan> Jobs =
        from work in Gen.Int[1, 40].Array[2, 10]
        from most in Gen.Int[1, 4].Array[work.Length]
        from waits in Gen.Int[0, 20].Array[work.Length]
        select Plan([.. work.Select((each, at) => Sure(Step(FormattableString.Invariant($"s{at}"), each / 2.0, 1, most[at], waits[at] < at ? [(FormattableString.Invariant($"s{waits[at]}"), at % 3 == 0 ? 30 : 0)] : [])))]);

    [Fact]
    public void A_step_for_calm_days_ends_in_as_many_seasons_on_the_first_day_as_days_are_calm()
    {
        // Four years; in each, April to May is calm on every day, on every other day, or on none until summer: by the year alone.
        BuildPlan film = Plan(Sure(Step("film", 8, 2, 2)) with { InOneGo = true, Weather = Calm });
        var climate = Year(time => time.Year switch { 2001 => 1, 2002 => 1, 2003 => time.DayOfYear % 2 == Monday.DayOfYear % 2 ? 9 : 1, _ => time.Month < 6 ? 9 : 1 }, years: 4);
        CrewCalendar calendar = Planned(With(Weekdays), film);
        SeasonOdds odds = Odds(Weekdays, film, calendar, climate, 4000);
        Assert.Equal(4, odds.Years);
        Assert.Equal(0.5, odds.OddsBy(Monday).Value, 0.03);
        Assert.Equal(0.75, odds.OddsBy(Monday.AddDays(1)).Value, 0.03);
        Assert.Equal(0.75, odds.OddsBy(new(2026, 5, 31)).Value, 0.03);
        Assert.Equal(1, odds.OddsBy(new(2026, 6, 1)).Value);
        Assert.Equal((Monday, Monday.AddDays(1), new DateOnly(2026, 6, 1)), (odds.EndsBy(Ratio.FromValue(0.4)), odds.EndsBy(Ratio.FromValue(0.7)), odds.EndsBy(Ratio.FromValue(0.9))));
        StepOdds wait = Assert.Single(odds.Waits);
        Assert.Equal(0.5, wait.Waits.Value, 0.03);
    }

    [Fact]
    public void The_same_seed_gives_the_same_odds_and_more_seasons_leave_the_first_as_they_are()
    {
        BuildPlan job = Plan(Step("posts", 40, 1, 3), Step("film", 10, 2, 4, ("posts", 48)) with { InOneGo = true, Weather = Calm });
        CrewCalendar calendar = Planned(With(Weekdays), job);
        var climate = Year(time => (time.DayOfYear * 7 % 5) + (time.Hour > 11 ? 2 : 0));
        SeasonOdds one = Odds(Weekdays, job, calendar, climate, 300), again = Odds(Weekdays, job, calendar, climate, 300), other = Odds(Weekdays, job, calendar, climate, 300, 8);
        Assert.Equal(one.ByDate, again.ByDate);
        Assert.Equal(one.Waits, again.Waits);
        Assert.NotEqual(one.ByDate, other.ByDate);
        Assert.Equal(0, one.Years);
        // Odds never fall with the days, and end at all.
        Assert.True(one.ByDate.Zip(one.ByDate.Skip(1)).All(pair => pair.First.Date < pair.Second.Date && pair.First.Odds < pair.Second.Odds));
        Assert.Equal(1, one.ByDate[^1].Odds.Value);
    }

    [Fact]
    public void A_forecast_is_too_short_to_draw_seasons_from()
    {
        BuildPlan job = Plan(Step("posts", 4, 1, 2));
        (SeasonOdds? odds, ImmutableArray<Diagnostic> found) = SeasonPlanner.Odds(With(Weekdays), job, Planned(With(Weekdays), job), Record(Enumerable.Range(0, 48).Select(hour => FormattableString.Invariant($"2026-04-{13 + (hour / 24):00}T{hour % 24:00}:00,15,1,,0"))), 10, 1);
        Assert.Null(odds);
        Assert.Equal("calendar.no-climate", Assert.Single(found).Code);
    }

    private static SeasonOdds Odds(Build build, BuildPlan job, CrewCalendar calendar, WeatherRecord climate, int seasons, ulong seed = 7)
    {
        (SeasonOdds? odds, ImmutableArray<Diagnostic> found) = SeasonPlanner.Odds(With(build), job, calendar, climate, seasons, seed);
        Assert.True(odds is not null, string.Join('\n', found));
        return odds;
    }

    private static BuildStep Sure(BuildStep step) => step with { Work = new WorkSpan(step.Work.Likely, step.Work.Likely, step.Work.Likely) };

    private static WeatherRecord Year(Func<DateTime, double> wind, int years = 1) => Record(
        Enumerable.Range(0, (new DateTime(2001 + years, 1, 1) - new DateTime(2001, 1, 1)).Days * 24).Select(hour => new DateTime(2001, 1, 1).AddHours(hour)).Select(time => FormattableString.Invariant($"{time:yyyy-MM-dd'T'HH}:00,15,{wind(time)},,0")),
        "# utc offset: -5\n# wind height: 10 m\n# time: start of hour\n");
}
