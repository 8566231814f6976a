using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength;
using Hoopwright.Testing;
using Hoopwright.Upkeep;

namespace Hoopwright.Tests.Upkeep;

/// <summary>The storm card, the rounds, the film and the season calendar.</summary>
public sealed class UpkeepPlannerTests
{
    public static TheoryData<string> Examples { get; } = [.. SamplePlans.GoodExamples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_roof_is_cleared_at_the_part_of_its_limit_that_the_plan_says(string example)
    {
        Plan plan = SamplePlans.Example(example);
        StormCard half = Upkeep(plan).Card!, third = Upkeep(plan with { Upkeep = new UpkeepRules { ClearAt = new Written<Ratio>("30 %", Ratio.FromPercent(30)) } }).Card!;
        Assert.All(half.Snow, snow => Assert.Equal(snow.AtLimit.Metres / 2, snow.ClearAt.Metres, 9));
        Assert.All(third.Snow.Zip(half.Snow), pair => Assert.Equal(0.6, pair.First.ClearAt / pair.Second.ClearAt, 9));
        // The weakest way in which snow lies, at the weaker end.
        Assert.Equal(half.Limits.Bows.Where(limit => limit.RoofSnow is not null).Min(limit => limit.RoofSnow!.Least), half.RoofSnow);
        // The heavier the snow the sooner.
        Assert.Equal(half.Snow.OrderByDescending(snow => snow.ClearAt), half.Snow);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Closing_comes_before_tightening_before_staying_out_before_the_limit(string example)
    {
        Plan plan = SamplePlans.Example(example);
        foreach (UpkeepRules rules in (UpkeepRules[])[new(), new() { CloseWind = Mph(120), TightenWind = Mph(110) }, new() { CloseWind = Mph(15), WindShare = new Written<Ratio>("40 %", Ratio.FromPercent(40)) }])
        {
            StormCard card = Upkeep(plan with { Upkeep = rules }).Card!;
            Assert.Equal([StormAction.Close, StormAction.Tighten, StormAction.StayOut, StormAction.WindLimit], card.Gusts.Select(gust => gust.Action));
            Assert.Equal(card.Gusts.Select(gust => gust.Gust).Order(), card.Gusts.Select(gust => gust.Gust));
            Assert.True(card.GustOf(StormAction.WindLimit) > card.GustOf(StormAction.StayOut));
            Assert.All(card.Gusts, gust => Assert.NotEmpty(gust.Source.ToString()));
        }
    }

    [Fact]
    public void Taking_film_off_is_told_only_where_the_bare_bows_stand_clearly_more()
    {
        foreach (string example in SamplePlans.GoodExamples)
        {
            StormCard card = Upkeep(SamplePlans.Example(example)).Card!;
            bool told = card.Gusts[^1].Does.Pattern.StartsWith("Last resort", StringComparison.Ordinal);
            Assert.Equal(card.BareGust is not null, told);
            if (card.BareGust is { } bare) Assert.True(bare > card.GustOf(StormAction.WindLimit));
        }
    }

    [Fact]
    public void A_limit_by_EN_1991_is_told_as_the_gust_that_goes_with_its_mean_of_ten_minutes()
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Example("metric-9m"));
        Speed mean = planned.Strength!.Storm!.Of(StormState.Shut)!.Wind!.Least, gust = planned.Upkeep!.Card!.GustOf(StormAction.WindLimit)!.Value;
        // EN 1991-1-4, 4.5 and figure 4.2: ce is 2.35 at 10 m in terrain II (from memory).
        Published.Check("EN 1991-1-4, figure 4.2, terrain II at 10 m (from memory)", "ce", 2.35, Math.Pow(gust / mean, 2), 0.05, "read off a figure");
    }

    [Fact]
    public void Which_side_is_cleared_first_follows_from_the_neighbour_and_from_what_the_bows_stand()
    {
        StormCard alone = Upkeep(SamplePlans.Example("gothic-26ft")).Card!;
        Assert.DoesNotContain(alone.Order, rule => rule.Id == "neighbour");
        StormCard near = Upkeep(SamplePlans.Example("metric-9m")).Card!;
        Assert.Contains("right side", Assert.Single(near.Order, rule => rule.Id == "neighbour").Text.ToString(), StringComparison.Ordinal);
        StormLimit even = alone.Limits.Of(StormState.SnowEven)!, blown = alone.Limits.Of(StormState.SnowOneSide)!;
        bool worse = blown.GroundSnow!.Least < even.GroundSnow!.Least;
        Assert.Equal(worse, Assert.Single(alone.Order, rule => rule.Id == "lop-sided").Text.Pattern.StartsWith("On one side snow is worse", StringComparison.Ordinal));
        Assert.Equal("last-resort", alone.Order[^1].Id);
    }

    [Fact]
    public void Cautions_name_what_hurts_in_a_storm()
    {
        string said = string.Join(' ', Upkeep(SamplePlans.Example("round-14ft")).Card!.Cautions.Select(caution => caution.Text));
        Assert.All(["under a loaded roof", "Ladders", "cut or free film in wind", "electric", "fumes"], part => Assert.Contains(part, said, StringComparison.Ordinal));
        Assert.DoesNotContain("safe", said, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_pipe_of_plastic_has_no_card_and_says_why()
    {
        UpkeepReport upkeep = Upkeep(SamplePlans.Simple(frame: "\"bowTube\": { \"material\": \"pvc\", \"outside\": \"1.66 in\", \"wall\": \"0.14 in\" }"));
        Assert.Null(upkeep.Card);
        Assert.NotNull(upkeep.NoCard);
        Assert.NotEmpty(upkeep.Rounds);
    }

    [Fact]
    public void Rounds_ask_for_the_parts_that_the_tunnel_has_and_for_no_others()
    {
        static string[] Ids(Plan plan) => [.. Upkeep(plan).Rounds.SelectMany(round => round.Items).Select(item => item.Id)];
        string[] plain = Ids(SamplePlans.Simple()), full = Ids(SamplePlans.Example("gothic-26ft")), twice = Ids(SamplePlans.Simple(rest: "\"cover\": { \"layers\": 2 }"));
        Assert.All([plain, full, twice], ids => Assert.Equal(ids.Length, ids.Distinct().Count()));
        Assert.Contains("round-weekly-sides", full);
        Assert.Contains("round-weekly-doors", full);
        Assert.DoesNotContain("round-weekly-blower", full);
        Assert.Contains("round-weekly-blower", twice);
        Assert.Contains("38", Upkeep(SamplePlans.Example("gothic-26ft")).Rounds.SelectMany(round => round.Items).Single(item => item.Id == "round-winter-posts").What.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_film_ages_from_the_day_in_the_plan_or_the_site_book()
    {
        Plan plan = SamplePlans.Simple();
        Assert.Null(Upkeep(plan).Film.On);
        FilmAge booked = Upkeep(plan with { SiteBook = [new() { Id = "20240501T120000000Z-aaaaaaaa", Kind = SiteBookKind.Done, Of = "roof-film", Value = "2024-05-01" }] }).Film;
        Assert.Equal((new DateOnly(2024, 5, 1), true), (booked.On, booked.FromSiteBook));
        Assert.Equal((new DateOnly(2027, 11, 1), new DateOnly(2028, 5, 1)), (booked.RecoverFrom, booked.RecoverBy));
        Assert.Equal((2, 6), booked.AgeOn(new(2026, 11, 30)));
        Assert.Equal((0, 11), booked.AgeOn(new(2025, 4, 30)));
        Assert.Null(booked.AgeOn(new(2024, 4, 30)));
        FilmAge told = Upkeep(plan with { Upkeep = new() { FilmOn = new(2020, 2, 29), FilmLife = 5 }, SiteBook = [new() { Id = "1", Kind = SiteBookKind.Done, Of = "roof-film", Value = "2024-05-01" }] }).Film;
        Assert.Equal((new DateOnly(2020, 2, 29), new DateOnly(2025, 2, 28), false), (told.On, told.RecoverBy, told.FromSiteBook));
        Assert.Contains("are over since 2025-02-28", StormWords.Film(told, new(2026, 11, 30)).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_cover_takes_film_and_what_holds_it_each_line_once()
    {
        UpkeepReport upkeep = Upkeep(SamplePlans.Example("gothic-26ft"));
        Assert.Contains(upkeep.Order, line => line.Item == "film");
        Assert.Equal(upkeep.Order.Length, upkeep.Order.Select(line => line.Id).Distinct().Count());
        Assert.DoesNotContain(upkeep.Order, line => line.Item.Contains("concrete", StringComparison.Ordinal));
    }

    [Fact]
    public void The_season_calendar_begins_today_and_is_turned_round_south_of_the_equator()
    {
        Plan plan = SamplePlans.Simple(rest: "\"upkeep\": { \"filmOn\": \"2024-05-01\" }");
        UpkeepReport upkeep = Upkeep(plan);
        foreach (DateOnly from in (DateOnly[])[new(2026, 11, 30), new(2026, 7, 4), new(2026, 4, 1), new(2028, 2, 29)])
        {
            Assert.All(UpkeepCalendar.From(upkeep, plan, from), day => Assert.True(day.Day >= from && day.Last >= day.Day, $"{day.Id} {day.Day} {day.Last}"));
        }
        UpkeepDate[] days = [.. UpkeepCalendar.From(upkeep, plan, new(2026, 11, 30))];
        Assert.Equal(new DateOnly(2027, 10, 15), days.Single(day => day.Id == "winter").Day);
        Assert.Equal((new DateOnly(2027, 11, 1), new DateOnly(2028, 5, 1)), days.Where(day => day.Id == "recover").Select(day => (day.Day, day.Last)).Single());
        UpkeepDate july = UpkeepCalendar.From(upkeep, plan, new(2026, 7, 4)).Single(day => day.Id == "weekly");
        Assert.Equal((new DateOnly(2026, 7, 4), new DateOnly(2026, 10, 30)), (july.Day, july.Last));
        Plan south = SamplePlans.Simple(rest: "\"site\": { \"latitude\": \"-33°\", \"longitude\": \"150°\" }");
        Assert.Equal(4, UpkeepCalendar.From(Upkeep(south), south, new(2026, 1, 10)).Single(day => day.Id == "winter").Day.Month);
    }

    private static Written<Speed> Mph(double mph) => new($"{mph} mph", Speed.FromMilesPerHour(mph));

    private static UpkeepReport Upkeep(Plan plan)
    {
        PlannedTunnel planned = TunnelWorks.Plan(plan);
        return planned.Upkeep ?? throw new InvalidOperationException(string.Join("\n", planned.Diagnostics));
    }
}
