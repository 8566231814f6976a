using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Hoopwright.Cutting;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Strength;
using Hoopwright.Sweeps;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Sweeps;

public sealed class ChangeStudyTests
{
    private static readonly ChangeStudy Round = Asked("round-14ft");

    public static TheoryData<string> Examples { get; } = [.. SamplePlans.GoodExamples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_change_can_be_read_and_sets_something_else_than_there_is(string name)
    {
        ChangeStudy study = Asked(name);
        Assert.True(study.Changes.Length > 8);
        for (int number = 0; number < study.Changes.Length; number++)
        {
            PlanReading reading = study.PlanOf(number);
            Assert.True(reading.IsUsable, study.Changes[number].Words + string.Join("\n", reading.Diagnostics));
            Assert.NotEqual(PlanWriter.Write(study.Before.Plan), PlanWriter.Write(reading.Plan));
        }
        Assert.Equal(study.Changes.Length, study.Changes.Select(change => change.Words).Distinct().Count());
    }

    [Fact]
    public void Closer_bows_share_the_length_into_whole_bays()
    {
        // 24 ft: 3 ft and 2 ft do, 3 ft 6 in and 2 ft 6 in do not.
        Assert.Equal(["3' 0\"", "2' 0\""], Round.Changes.Where(change => change.Code == "closer-bows").Select(change => change.Values[0].Text));
    }

    [Fact]
    public void Stronger_steel_is_tried_for_bows_and_posts_until_there_is_none()
    {
        // Nothing is said of the steel, so 30 ksi is taken; A53 grade B promises 35.
        PlanChange change = Assert.Single(Round.Changes, each => each.Code == "stronger-bow-steel");
        Assert.Equal(new ChangedValue("frame.bowTube.yield", "35.0 ksi"), Assert.Single(change.Values));
        // Bows and posts of the others are of 50 ksi and 355 MPa, the strongest of either list.
        foreach (string example in (string[])["gothic-26ft", "metric-9m"])
            Assert.DoesNotContain(Asked(example).Changes, each => each.Code.StartsWith("stronger-", StringComparison.Ordinal));
    }

    [Fact]
    public void A_tie_stands_where_one_can_walk_under_it()
    {
        ImmutableArray<PlanChange> ties = [.. Round.Changes.Where(change => change.Code == "tie")];
        Assert.NotEmpty(ties);
        Assert.All(ties, tie => Assert.True(SamplePlans.LayOut(Round.PlanOf(Round.Changes.IndexOf(tie)).Plan).Members.First(member => member.Id.StartsWith("tie", StringComparison.Ordinal)).Start.Z.Inches >= 78));
    }

    [Fact]
    public void The_leg_of_a_wider_bow_still_goes_into_its_post()
    {
        ChangeStudy study = Asked("gothic-26ft");
        Assert.NotNull(study.Before.Plan.Ground.PostTube.Outside);
        foreach (PlanChange change in study.Changes.Where(change => change.Code is "wider-bow-tube" or "heavier-bow-tube" or "thicker-bow-tube"))
            Assert.DoesNotContain(study.Planned(study.Changes.IndexOf(change)).Diagnostics, found => found.Code == "ground.post.tube-fit");
    }

    [Fact]
    public void What_a_change_gains_and_costs_is_the_difference_of_the_two_plans()
    {
        int number = Round.Changes.IndexOf(Round.Changes.First(change => change.Code == "closer-bows"));
        ChangedDesign change = Round.Work(number);
        Plan own = SamplePlans.Example("round-14ft");
        PlannedTunnel before = TunnelWorks.Plan(new PlanReading(own, false, []), effort: CutEffort.Least);
        PlannedTunnel after = TunnelWorks.Plan(new PlanReading(own with { Frame = own.Frame with { BowSpacing = new Written<Length>("3 ft", Length.FromFeet(3)) } }, false, []), effort: CutEffort.Least);
        Assert.Equal(after.Orders!.Total - before.Orders!.Total, change.MoreCost);
        Assert.Equal(after.Strength!.InSnow(StrengthLevel.Storm)!.GroundSnow!.Taken - before.Strength!.InSnow(StrengthLevel.Storm)!.GroundSnow!.Taken, change.MoreSnow);
        Assert.True(change.Helps);
        Assert.True(change.MoreGust!.Value.MetresPerSecond > 0);
    }

    [Fact]
    public void Those_that_make_it_stand_come_first_by_cost_then_by_gain_for_the_money()
    {
        ChangedDesign[] changes =
        [
            Made(0, StrengthVerdict.DoesNotStand, 100, 0.5), Made(1, StrengthVerdict.Stands, 900, 2), Made(2, StrengthVerdict.DoesNotStand, 100, 0.9), Made(3, null, null, 0),
            Made(4, StrengthVerdict.Stands, 400, 2), Made(5, StrengthVerdict.DoesNotStand, 5, 0), Made(6, StrengthVerdict.DoesNotStand, -20, 0.3), Made(7, StrengthVerdict.Marginal, 1000, 0.6),
        ];
        Assert.Equal([4, 1, 6, 2, 0, 7, 5, 3], ChangeRank.Order(changes, StrengthVerdict.DoesNotStand).Select(change => change.Design.Number));
        Assert.Equal([4, 1, 6, 2, 0, 7, 5, 3], ChangeRank.Order(changes.Reverse(), StrengthVerdict.DoesNotStand).Select(change => change.Design.Number));
        // Where the plan stood already, that it stands sets no change before another.
        Assert.Equal([6, 2, 0, 4, 1, 7, 5, 3], ChangeRank.Order(changes, StrengthVerdict.Stands).Select(change => change.Design.Number));
    }

    [Fact]
    public void With_no_loads_entered_nothing_is_used_and_changes_rank_by_what_they_stand()
    {
        Assert.Null(LoadUse.Worst(Round.Before.Strength!));
        Assert.Equal(0, LoadUse.Short(Round.Before.Strength!));
        ImmutableArray<ChangedDesign> ranked = ChangeRank.Order(Enumerable.Range(0, Round.Changes.Length).Select(Round.Work), Round.Verdict);
        Assert.True(ranked[0].Helps);
        Assert.All(ranked.SkipWhile(change => change.Helps), change => Assert.False(change.Helps));
        using JsonDocument json = JsonDocument.Parse(ChangeText.Json(Round, ranked, []));
        Assert.Equal(ranked.Length, json.RootElement.GetProperty("ranked").GetArrayLength());
        Assert.Equal(ranked[0].MoreSnow!.Value.Pascals, json.RootElement.GetProperty("ranked")[0].GetProperty("moreStormSnowPa").GetDouble(), 1e-3);
    }

    [Fact]
    public void A_tunnel_past_its_limits_uses_more_than_all_and_is_nearer_to_standing_under_less()
    {
        const string Gravel = "\"soilClass\": \"gravel\",";
        StrengthReport weak = Asked("round-14ft", "\"groundSnow\": \"60 psf\", \"wind\": \"150 mph\"," + Gravel).Before.Strength!, light = Asked("round-14ft", "\"groundSnow\": \"10 psf\", \"wind\": \"60 mph\"," + Gravel).Before.Strength!;
        Assert.Equal(StrengthVerdict.DoesNotStand, weak.Verdict);
        Assert.True(LoadUse.Worst(weak)!.Value.Used > 1);
        Assert.True(LoadUse.Short(weak) > LoadUse.Short(light));
        foreach (StrengthReport report in (StrengthReport[])[weak, light])
        {
            Assert.Equal(LoadUse.Worst(report)!.Value.Used > 1, LoadUse.Short(report) > 0);
            Assert.Contains(report.Parts.Select(part => part.Words).Append("bows").Concat((report.Row?.Parts ?? []).Select(part => $"{part.Kind} in the row")), part => part == LoadUse.Worst(report)!.Value.Part);
        }
    }

    [Fact]
    public void A_plan_with_errors_is_told_and_gives_no_study()
    {
        (ChangeStudy? study, var wrong) = ChangeStudy.Read(SamplePlans.ExampleBytes("wrong"));
        Assert.Null(study);
        Assert.NotEmpty(wrong);
    }

    private static ChangeStudy Asked(string name, string site = "") =>
        ChangeStudy.Read(Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(SamplePlans.ExampleBytes(name)).Replace("\"site\": {", "\"site\": { " + site, StringComparison.Ordinal))).Study
            ?? throw new InvalidOperationException("An example can be built.");

    private static ChangedDesign Made(int number, StrengthVerdict? verdict, int? cost, double gain) => new()
    {
        Change = new PlanChange("made", "made", [], Citation.CommonPractice),
        Design = new SweptDesign { Number = number, Values = [], Verdict = verdict },
        MoreCost = cost is { } given ? new Money(given) : null,
        Gain = gain,
    };
}
