using Hoopwright.Cover;
using Hoopwright.Cover.Pull;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using Hoopwright.Tests.Weather;
using Hoopwright.Weather;

namespace Hoopwright.Tests.Days;

/// <summary>When the roof film of a tunnel can be pulled.</summary>
public sealed class CoverDayPlannerTests
{
    private static readonly WeatherRecord Forecast = WeatherReader.Read(File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "forecast-invented.json"))).Record!;

    private static readonly WeatherRecord Year = WeatherReader.Read(InventedWeather.Epw()).Record!;

    [Fact]
    public void Six_practised_people_need_four_hours_with_the_reserve_for_a_sheet_of_48_by_100_feet()
    {
        CoverHours hours = Report(Plan("\"crew\": { \"people\": 6, \"skill\": \"practised\" }")).Hours!;
        double film = hours.Film.SquareFeet;
        Assert.Equal(30 + (15 * 60 * film / 4800 / 6), hours.Work.TotalMinutes, 1.0);
        Assert.Equal((int)Math.Ceiling(hours.Work.TotalHours * 1.25), hours.Needed);
    }

    [Fact]
    public void More_people_and_practice_never_take_longer_and_two_layers_take_longer()
    {
        double Hours(string rest) => Report(Plan(rest)).Hours!.Work.TotalHours;
        Assert.True(Hours("\"crew\": { \"people\": 8 }") < Hours("\"crew\": { \"people\": 4 }"));
        Assert.True(Hours("\"crew\": { \"skill\": \"practised\" }") < Hours("\"crew\": { \"skill\": \"beginner\" }"));
        Assert.True(Hours("\"cover\": { \"layers\": 2 }") > Hours("\"cover\": { \"layers\": 1 }"));
        Assert.Equal(2, Hours("\"coverDay\": { \"hours\": 2 }"));
    }

    /// <summary>Common practice, no source: the best air is about 60 °F, some say 50; neither is put in.</summary>
    [Fact]
    public void The_air_is_that_in_which_the_film_can_be_pulled_midway_where_the_plan_does_not_say()
    {
        foreach (string loads in (string[])["\"coldest\": \"-20 °F\"", "\"coldest\": \"-10 °F\", \"hottest\": \"115 °F\""])
        {
            CoverDayReport report = Report(Plan($"\"loads\": {{ {loads} }}"));
            Assert.InRange(report.Limits.Coldest.Fahrenheit, 35, 58);
            Assert.InRange(report.Limits.Warmest.Fahrenheit, 62, 85);
            Assert.Contains(report.Rules, rule => rule.Path == "coverDay.warmest" && rule.Source.ToString().Contains("how tight the film is pulled", StringComparison.Ordinal));
        }
        // A warmer year calls for a tighter pull, so that the band moves up.
        Assert.True(Report(Plan("\"loads\": { \"coldest\": \"10 °F\" }")).Limits.Warmest > Report(Plan("\"loads\": { \"coldest\": \"-30 °F\" }")).Limits.Warmest);
        // One pound less at each end of the band and the middle is out of reach.
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Simple());
        PullPlan pull = planned.Cover!.Pull;
        PullRow low = pull.At(planned.Cover.Band.Coldest);
        Assert.Equal(low.ByHand.Value, (low.Least.Value + low.Most.Value) / 2, 6);
    }

    [Fact]
    public void Limits_are_those_of_the_plan_and_what_it_does_not_say_is_assumed()
    {
        CoverDayReport report = Report(Plan("\"coverDay\": { \"wind\": \"8 mph\", \"gust\": \"14 mph\", \"coldest\": \"45 °F\", \"rainChance\": \"35 %\", \"shelter\": \"0.5\" }"));
        Assert.Equal(8, report.Limits.Wind.MilesPerHour, 9);
        Assert.Equal(14, report.Limits.Gust!.Value.MilesPerHour, 9);
        Assert.Equal(45, report.Limits.Coldest.Fahrenheit, 9);
        Assert.Equal(0.35, report.Limits.RainChance!.Value.Value, 9);
        Assert.Contains(Report(Plan("")).Diagnostics, each => each is { Code: "assumed.cover-day.wind", Severity: Severity.Assumption });
        Assert.DoesNotContain(report.Diagnostics, each => each.Code == "assumed.cover-day.wind");
        Assert.True(report.SiteWind.Mean.Value < 0.5);
    }

    [Fact]
    public void A_forecast_gives_windows_best_first_within_seven_days_and_no_odds()
    {
        CoverDayReport report = Report(Plan());
        Assert.Empty(report.Odds);
        Assert.NotEmpty(report.Windows);
        Assert.True(report.Windows.Length <= CoverDayReport.MostWindows);
        Assert.Equal(report.Windows.Select(window => window.Used.Value).Order(), report.Windows.Select(window => window.Used.Value));
        Assert.All(report.Windows, window => Assert.InRange(window.Begin.Day, 18, 24));
        Assert.All(report.Windows, window => Assert.True((window.End - window.Begin).TotalHours == report.Limits.Hours));
        string sheet = CoverDaySheet.Of(report, UnitSystem.UsCustomary);
        Assert.Contains(CoverDaySheet.Caution, sheet, StringComparison.Ordinal);
        Assert.Contains("% of the limit on", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void A_year_gives_odds_by_month_and_windows_only_for_days_asked_for()
    {
        CoverDayReport report = Report(Plan(), Year);
        Assert.Equal(12, report.Odds.Length);
        Assert.Empty(report.Windows);
        Assert.Equal(report.GoodDays, report.Odds.Sum(month => month.GoodDays));
        Assert.Equal(365, report.Odds.Sum(month => month.Days));
        Assert.NotNull(Report(Plan(), Year, new DateOnly(2026, 5, 1)).From);
        Assert.Contains(report.Diagnostics, each => each.Code == "days.no-gusts");
    }

    [Fact]
    public void A_day_that_the_weather_does_not_reach_is_refused() =>
        Assert.Equal("days.outside", Assert.Single(Outcome(Plan(), Forecast, new DateOnly(2027, 1, 1)).Diagnostics, each => each.Severity == Severity.Error).Code);

    [Fact]
    public void Weather_from_elsewhere_is_told_and_weather_from_nowhere_needs_a_place()
    {
        Assert.Contains(Report(Plan("\"site\": { \"latitude\": \"44°\", \"longitude\": \"-76.5°\", \"elevation\": \"3000 ft\" }")).Diagnostics, each => each.Code == "days.far");
        Assert.Contains(Report(Plan("\"site\": { \"latitude\": \"42.5°\", \"longitude\": \"-76.5°\", \"elevation\": \"3000 ft\" }")).Diagnostics, each => each.Code == "days.height");
        WeatherRecord nowhere = WeatherReader.Read("# utc offset: -5\ntime,temperature [°C],wind [m/s]\n2026-04-18 10:00,10,1\n"u8.ToArray()).Record!;
        Assert.Equal("days.no-place", Assert.Single(Outcome(Plan(), nowhere).Diagnostics).Code);
        Assert.NotNull(Outcome(Plan("\"site\": { \"latitude\": \"42.5°\", \"longitude\": \"-76.5°\" }"), nowhere).Report);
    }

    [Fact]
    public void A_band_turned_round_and_too_few_people_are_told()
    {
        Assert.Equal("days.temperatures", Assert.Single(Outcome(Plan("\"coverDay\": { \"coldest\": \"80 °F\" }"), Forecast).Diagnostics).Code);
        Assert.Contains(Report(Plan("\"crew\": { \"people\": 2 }")).Diagnostics, each => each.Code == "days.few-people");
    }

    private static Plan Plan(string rest = "") => SamplePlans.Simple(rest: rest);

    private static CoverDayReport Report(Plan plan, WeatherRecord? record = null, DateOnly? from = null) => Outcome(plan, record ?? Forecast, from).Report!;

    private static CoverDayOutcome Outcome(Plan plan, WeatherRecord record, DateOnly? from = null)
    {
        Tunnel tunnel = SamplePlans.LayOut(plan);
        return CoverDayPlanner.Plan(tunnel, CoverPlanner.Plan(tunnel, new Answers(tunnel.Units)).Plan, record, from);
    }
}
