using System.Collections.Immutable;
using Hoopwright.CoverSteps;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;
using Hoopwright.Testing;

namespace Hoopwright.Tests.CoverSteps;

/// <summary>How the film is put on, step by step.</summary>
public sealed class FasteningPlannerTests
{
    private const string Framed = "\"ends\": { \"front\": { \"closing\": \"framed\", \"doors\": [ { \"kind\": \"double\", \"width\": \"8 ft\", \"height\": \"7 ft\" } ] } }";

    public static TheoryData<string> Rests { get; } =
    [
        Framed,
        Framed + ", \"cover\": { \"order\": \"roofFirst\" }",
        Framed + ", \"cover\": { \"layers\": 2 }",
        Framed + ", \"cover\": { \"layers\": 2, \"inflated\": false, \"endsOnBow\": false }",
        Framed + ", \"cover\": { \"endsOnBow\": false, \"order\": \"roofFirst\" }",
        Framed + ", \"sides\": { \"left\": { \"kind\": \"drop\", \"hipHeight\": \"4 ft\" }, \"right\": { \"kind\": \"rollUp\", \"hipHeight\": \"4 ft\" } }",
        Framed + ", \"sides\": { \"left\": { \"kind\": \"fixed\" } }, \"cover\": { \"sidesInChannel\": false }",
        "\"ends\": { \"front\": { \"closing\": \"roofSheet\" }, \"back\": { \"closing\": \"open\" } }, \"sides\": { \"left\": { \"kind\": \"fixed\" } }",
    ];

    /// <summary>Every line of the takeoff that has to do with film is used by some step, and every step's materials are in the takeoff.</summary>
    [Theory]
    [MemberData(nameof(Rests))]
    public void All_steps_together_use_up_what_the_takeoff_lists(string rest) => Compare(Work(rest));

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public void So_they_do_for_the_examples(string name) => Compare(TunnelWorks.Plan(SamplePlans.Example(name)));

    [Theory]
    [MemberData(nameof(Rests))]
    public void Every_run_and_every_piece_of_film_has_a_step_and_names_are_used_once(string rest)
    {
        PlannedTunnel planned = Work(rest);
        FasteningPlan plan = planned.Fastening!;
        Assert.Equal(planned.Cover!.Runs.Select(run => run.Id).Order(StringComparer.Ordinal), plan.Steps.SelectMany(step => step.RunIds).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(planned.Cover.Pieces.Select(piece => piece.Id).Order(StringComparer.Ordinal), plan.Steps.SelectMany(step => step.PieceIds).Distinct().Order(StringComparer.Ordinal));
        Assert.Distinct(plan.Steps.Select(step => step.Id));
        Assert.All(plan.Steps, step => Assert.True(step.People >= 1 && !step.Does.IsEmpty));
        Assert.DoesNotContain(plan.Steps.SelectMany(step => step.Does.Concat(step.Good)), phrase => phrase.ToString().Contains("safe", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Common practice, no source: end walls are covered before the roof by default, and the other order is possible.</summary>
    [Fact]
    public void Ends_come_before_the_roof_and_after_it_where_the_plan_says_so()
    {
        const string Sides = ", \"sides\": { \"left\": { \"kind\": \"rollUp\", \"hipHeight\": \"4 ft\" } }";
        FasteningPlan first = Work(Framed + Sides).Fastening!, last = Work(Framed + Sides + ", \"cover\": { \"order\": \"roofFirst\" }").Fastening!;
        Assert.Equal([CoverPart.Before, CoverPart.Ends, CoverPart.Roof, CoverPart.Sides, CoverPart.After], Parts(first));
        Assert.Equal([CoverPart.Before, CoverPart.Roof, CoverPart.Ends, CoverPart.Sides, CoverPart.After], Parts(last));
        Assert.Contains(first.Steps, step => step.Id == "front-temporary");
        Assert.DoesNotContain(last.Steps, step => step.Id == "front-temporary");
        string[] order = [.. first.Steps.Where(step => step.Id.StartsWith("front-", StringComparison.Ordinal)).Select(step => step.Id)];
        Assert.Equal(["front-hang", "front-foot", "front-temporary", "front-legs", "front-doors"], order);

        static CoverPart[] Parts(FasteningPlan plan) => [.. plan.Steps.Select(step => step.Part).Distinct()];
    }

    /// <summary>
    /// Common practice, no source: four ropes on a roof sheet of about 75 ft with a person on each; two people pull at the end while wire goes
    /// in from the centre bow outwards, then from the ridge down at the ends.
    /// </summary>
    [Fact]
    public void Four_ropes_on_75_ft_have_a_person_each_and_wire_goes_in_from_the_centre_bow_outwards()
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Simple(length: "72 ft", rest: Framed));
        Assert.Equal(75, planned.Cover!.Pieces[0].AlongRoll.Feet, 9);
        FasteningPlan plan = planned.Fastening!;
        Assert.Equal([1, 2, 3, 4], plan.Stands.Select(stand => stand.RopeNumber).Where(rope => rope > 0));
        Assert.All(plan.Stands.Where(stand => stand.RopeNumber > 0), stand => Assert.NotEqual(plan.RollSide.IsLeft, stand.IsLeft));
        string[] roof = [.. plan.Steps.Where(step => step.Part == CoverPart.Roof).Select(step => step.Id)];
        Assert.Equal(["roof-lay", "roof-ropes", "roof-stakes", "roof-over", "roof-square", "roof-first-side", "roof-second-side", "roof-front-end", "roof-back-end", "roof-check"], roof);
        Assert.Contains("Begin at bow 10 in the middle", Said(plan, "roof-first-side"), StringComparison.Ordinal);
        Assert.Contains("two people pull at each end", Said(plan, "roof-second-side"), StringComparison.Ordinal);
        Assert.Contains("From the ridge down to both sides; double wire is screwed where it laps", Said(plan, "roof-front-end"), StringComparison.Ordinal);
    }

    /// <summary>Common practice, no source: five to seven people cover 30 by 96 ft; a sheet of 48 by 100 ft, 138 lb, is a four-person lift.</summary>
    [Fact]
    public void The_people_for_30_by_96_ft_are_those_of_common_practice()
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Simple(span: "30 ft", length: "96 ft", bow: "\"shape\": \"round\", \"sideHeight\": \"4 ft\", \"peakHeight\": \"13 ft\"", rest: Framed));
        FasteningPlan plan = planned.Fastening!;
        Assert.InRange(plan.People, 5, 7);
        Assert.Equal(4, plan.CrewRules.Single(rule => rule.Id == "carry").People);
        // 0.0287 lb/ft² for each 6 mil layer.
        Assert.Equal(0.0287 * planned.Cover!.Pieces[0].AlongRoll.Feet * planned.Cover.Pieces[0].AcrossRoll.Feet, plan.RoofFilm.Pounds, 1.5);
    }

    [Fact]
    public void More_wind_pulls_with_its_square_and_never_takes_fewer_people()
    {
        FasteningPlan plan = Work(Framed).Fastening!;
        Assert.All(plan.InWind.Zip(plan.InWind.Skip(1)), pair => Assert.True(pair.Second.People >= pair.First.People && pair.Second.Wind > pair.First.Wind));
        CrewInWind five = plan.InWind.Single(each => Math.Abs(each.Wind.MilesPerHour - 5) < 1e-9), ten = plan.InWind.Single(each => Math.Abs(each.Wind.MilesPerHour - 10) < 1e-9);
        Assert.Equal(4, ten.Pull / five.Pull, 9);
        Assert.Equal([true, true, true, true, false, false], plan.InWind.Select(each => each.IsFit));
        // A flat plate square to a wind of 10 m/s: 1.2 · 61.25 Pa on each m² (fluid mechanics, any handbook, from memory).
        Assert.Equal(73.5, five.Pull.Newtons * Math.Pow(10 / five.Wind.MetresPerSecond, 2) / (TunnelWorks.Plan(SamplePlans.Simple(rest: Framed)).Cover!.Pieces[0].AlongRoll.Metres * Length.FromFeet(11).Metres), 6);
    }

    /// <summary>Out by the front is south: entering one looks north, so that left is west.</summary>
    [Theory]
    [InlineData("\"frontFaces\": \"S\"", "W", true)]
    [InlineData("\"frontFaces\": \"S\"", "E", false)]
    [InlineData("\"frontFaces\": \"S\"", "NW", true)]
    [InlineData("\"frontFaces\": \"W\"", "N", true)]
    [InlineData("\"frontFaces\": \"S\", \"fallAcross\": \"-3 %\"", "S", false)]
    [InlineData("\"frontFaces\": \"S\", \"fallAcross\": \"3 %\"", "E", false)]
    [InlineData("\"fallAcross\": \"3 %\"", "E", true)]
    public void The_roll_lies_to_windward_and_uphill_where_the_wind_does_not_say(string site, string wind, bool left)
    {
        RollSide side = Work($"{Framed}, \"site\": {{ {site} }}, \"coverDay\": {{ \"windFrom\": \"{wind}\" }}").Fastening!.RollSide;
        Assert.Equal(left, side.IsLeft);
    }

    [Fact]
    public void Two_layers_are_blown_apart_unless_the_plan_lays_them_together()
    {
        PlannedTunnel blown = Work(Framed + ", \"cover\": { \"layers\": 2, \"inflationPressure\": \"60 Pa\" }"), together = Work(Framed + ", \"cover\": { \"layers\": 2, \"inflated\": false }");
        Assert.Equal((FilmVariant.Inflated, FilmVariant.Double, FilmVariant.Single), (blown.Fastening!.Variant, together.Fastening!.Variant, Work(Framed).Fastening!.Variant));
        Assert.Equal(1, Assert.Single(blown.Takeoff!.Of(Items.InflationBlower)).Quantity);
        Assert.Empty(together.Takeoff!.Of(Items.InflationBlower));
        Assert.Contains("0.24 in of water", Said(blown.Fastening, "blower"), StringComparison.Ordinal);
        Assert.Contains(StepCaution.Current, blown.Fastening.Steps.Single(step => step.Id == "blower").Cautions);
        Assert.Contains("both at once and alike", Said(together.Fastening, "roof-lay"), StringComparison.Ordinal);
    }

    [Fact]
    public void Too_few_people_are_told_what_would_do()
    {
        Assert.Contains("The plan has 3 people", Work(Framed + ", \"crew\": { \"people\": 3 }").Fastening!.WithFewer!.ToString(), StringComparison.Ordinal);
        Assert.Null(Work(Framed + ", \"crew\": { \"people\": 9 }").Fastening!.WithFewer);
    }

    [Fact]
    public void The_sheet_lies_past_each_end_by_what_that_end_takes()
    {
        PlannedTunnel planned = Work("\"ends\": { \"front\": { \"closing\": \"roofSheet\" }, \"back\": { \"closing\": \"open\" } }");
        // Peak and 2 ft to close the front, 18 in at the back; 48 ft and both are 62 ft 6 in, cut at 63 ft.
        Assert.Equal((13.25, 1.75), (Math.Round(FasteningPlanner.PastEnd(planned.Cover!, planned.Tunnel!.Front).Feet, 9), Math.Round(FasteningPlanner.PastEnd(planned.Cover!, planned.Tunnel.Back).Feet, 9)));
        Assert.Equal(planned.Cover!.Ropes.Marks[0].Feet - 13.25, planned.Fastening!.Stands[0].Along.Feet, 9);
    }

    [Theory]
    [InlineData("drop", "fixed", "down the left leg of")]
    [InlineData("fixed", "rollUp", "down the right leg of")]
    [InlineData("drop", "rollUp", "down both legs of")]
    public void The_film_of_an_end_is_fastened_down_the_legs_that_stand_free_of_the_roof_film(string left, string right, string says)
    {
        string hip = ", \"hipHeight\": \"4 ft\"";
        PlannedTunnel planned = Work(Framed + $", \"sides\": {{ \"left\": {{ \"kind\": \"{left}\"{(left == "fixed" ? "" : hip)} }}, \"right\": {{ \"kind\": \"{right}\"{(right == "fixed" ? "" : hip)} }} }}");
        Assert.Contains(says, planned.Fastening!.Steps.First(step => step.Id == "front-legs").Does[0].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_caution_stands_at_a_step_that_bears_it() =>
        Assert.Equal(StepCaution.All(UnitSystem.UsCustomary).Select(caution => caution.Id).Order(StringComparer.Ordinal),
            Work(Framed + ", \"cover\": { \"layers\": 2 }").Fastening!.Steps.SelectMany(step => step.Cautions).Select(caution => caution.Id).Distinct().Order(StringComparer.Ordinal));

    private static void Compare(PlannedTunnel planned)
    {
        // Hip boards, roll tubes and their screws are members of the frame, put up before any film.
        ImmutableArray<MaterialLine> members = [.. planned.Takeoff!.Lines.Where(line => line.Item is Items.Tube or Items.Board or Items.BoardToTubeScrew)];
        Dictionary<string, decimal> listed = planned.Takeoff.Lines.Where(line => line.Stage == BuildStage.Cover).Except(members).ToDictionary(line => line.Id, line => decimal.Round(line.Quantity, 9));
        Dictionary<string, decimal> used = planned.Fastening!.Steps.SelectMany(step => step.Materials).GroupBy(line => line.Id).ToDictionary(group => group.Key, group => decimal.Round(group.Sum(line => line.Quantity), 9));
        Assert.Equal(listed.OrderBy(each => each.Key, StringComparer.Ordinal), used.OrderBy(each => each.Key, StringComparer.Ordinal));
        Assert.True(listed.Count >= 8);
    }

    private static string Said(FasteningPlan plan, string step) => string.Join(' ', plan.Steps.Single(each => each.Id == step).Does);

    private static PlannedTunnel Work(string rest)
    {
        PlannedTunnel planned = TunnelWorks.Plan(new PlanReading(SamplePlans.Simple(rest: rest), false, []), depth: WorkDepth.Orders);
        Assert.True(planned.Tunnel is not null, string.Join("\n", planned.Diagnostics));
        return planned;
    }
}
