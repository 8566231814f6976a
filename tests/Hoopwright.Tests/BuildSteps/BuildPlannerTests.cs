using System.Collections.Immutable;
using CsCheck;
using Hoopwright.BuildSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing;
using Hoopwright.Testing.Generators;

namespace Hoopwright.Tests.BuildSteps;

/// <summary>The whole build as steps.</summary>
public sealed class BuildPlannerTests
{
    private const string Framed = "\"ends\": { \"front\": { \"closing\": \"framed\", \"doors\": [ { \"kind\": \"double\", \"width\": \"8 ft\", \"height\": \"7 ft\" } ] } }";

    public static TheoryData<string> Rests { get; } =
    [
        Framed,
        Framed + ", \"cover\": { \"order\": \"roofFirst\", \"layers\": 2 }",
        Framed + ", \"ground\": { \"anchor\": \"boards\" }",
        Framed + ", \"ground\": { \"postConcrete\": \"none\" }",
        Framed + ", \"ground\": { \"postConcrete\": \"all\" }, \"sides\": { \"left\": { \"kind\": \"drop\", \"hipHeight\": \"4 ft\" }, \"right\": { \"kind\": \"rollUp\", \"hipHeight\": \"4 ft\" } }",
        "\"ends\": { \"front\": { \"closing\": \"framed\", \"postTop\": \"bracket\", \"doors\": [ { \"kind\": \"sliding\", \"width\": \"4 ft\", \"leafCover\": \"sheet\" } ] }, \"back\": { \"closing\": \"framed\", \"doors\": [ { \"kind\": \"overhead\", \"width\": \"8 ft\" } ] } }",
        "\"ends\": { \"front\": { \"closing\": \"roofSheet\" }, \"back\": { \"closing\": \"open\" } }, \"sides\": { \"left\": { \"kind\": \"fixed\" } }",
    ];

    /// <summary>Every line of the takeoff is used by some step, to its last screw, and every step's materials are in the takeoff.</summary>
    [Theory]
    [MemberData(nameof(Rests))]
    public void All_steps_together_use_up_what_the_takeoff_lists(string rest) => Compare(Work(rest));

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public void So_they_do_for_the_examples(string name) => Compare(TunnelWorks.Plan(SamplePlans.Example(name)));

    [Fact]
    public void So_they_do_for_any_tunnel() => Generate.ValidPlan.Sample(
        plan =>
        {
            PlannedTunnel planned = TunnelWorks.Plan(new PlanReading(plan, false, []), depth: WorkDepth.Orders);
            if (planned.Tunnel is null) return;
            Compare(planned);
            Rules(planned.Steps!);
            Rules(planned.RecoverSteps!);
        },
        iter: 60);

    [Theory]
    [MemberData(nameof(Rests))]
    public void Every_step_says_what_a_crew_needs(string rest)
    {
        PlannedTunnel planned = Work(rest);
        Rules(planned.Steps!);
        Rules(planned.RecoverSteps!);
    }

    /// <summary>Posts before boards before concrete before doors before film; common practice, no source.</summary>
    [Fact]
    public void Posts_come_before_boards_before_concrete_before_doors_before_film()
    {
        BuildPlan plan = Work(Framed).Steps!;
        string[] order = [.. plan.Steps.Select(step => step.Id)];
        string[] wanted = ["lines-marked", "set-out", "ground-posts", "bows", "front-posts", "front-boards", "front-concrete", "front-doors", "front-film", "roof-film", "trim", "last-look"];
        Assert.Equal(wanted, order.Where(wanted.Contains));
        Assert.All(wanted.Zip(wanted.Skip(1)), pair => Assert.True(Waits(plan, pair.Second, pair.First) || pair is ("ground-posts", _) or (_, "trim"), $"{pair.Second} does not wait for {pair.First}."));
    }

    /// <summary>Common practice, no source: end walls are covered before the roof by default, and the other order is possible.</summary>
    [Fact]
    public void Ends_are_covered_before_the_roof_or_after_it()
    {
        BuildPlan first = Work(Framed).Steps!, last = Work(Framed + ", \"cover\": { \"order\": \"roofFirst\" }").Steps!;
        Assert.True(Waits(first, "roof-film", "front-film") && !Waits(first, "front-film", "roof-film"));
        Assert.True(Waits(last, "front-film", "roof-film") && !Waits(last, "roof-film", "front-film"));
    }

    /// <summary>
    /// Labour for 30 by 96 ft: two skilled people 75 to 100 h with the material on site (High tunnel construction tips, publisher not shown, read
    /// as person-hours); twelve beginners 114 to 420 person-hours, mean 237 (Hoophouse Farming Startup, E-3138, Michigan State University, 2010).
    /// </summary>
    [Fact]
    public void The_work_of_30_by_96_ft_is_as_published()
    {
        BuildPlan skilled = ThirtyByNinetySix("practised").Steps!, beginners = ThirtyByNinetySix("beginner").Steps!;
        Assert.InRange(skilled.Work.Likely.TotalHours, 75, 100);
        Assert.InRange(skilled.Work.Least.TotalHours, 70, 87.5);
        Assert.InRange(skilled.Work.Most.TotalHours, 87.5, 110);
        Assert.InRange(beginners.Work.Likely.TotalHours, 237 * 0.85, 237 * 1.15);
        Assert.True(beginners.Work.Least.TotalHours >= 114 * 0.85 && beginners.Work.Most.TotalHours <= 420, $"{beginners.Work}");
    }

    /// <summary>Bow raising, 20 ft or wider: at least three people (High Tunnels, University of Vermont, 2007, p. 44).</summary>
    [Fact]
    public void Wide_bows_take_three_people()
    {
        Assert.Equal(3, ThirtyByNinetySix("beginner").Steps!.Steps.Single(step => step.Id == "bows").LeastPeople);
        Assert.Equal(2, TunnelWorks.Plan(SamplePlans.Example("round-14ft")).Steps!.Steps.Single(step => step.Id == "bows").LeastPeople);
    }

    /// <summary>A jig holds a post while concrete sets, 12 to 24 h (High Tunnels, University of Vermont, 2007, p. 44).</summary>
    [Fact]
    public void Nothing_loads_concrete_before_it_has_set()
    {
        BuildPlan plan = Work(Framed).Steps!;
        Assert.Equal(TimeSpan.FromHours(24), plan.Steps.Single(step => step.Id == "bows").After.Single(wait => wait.StepId == "post-concrete").Wait);
        Assert.All(plan.Steps.Where(step => step.Id.EndsWith("-concrete", StringComparison.Ordinal)), step => Assert.True(step.Weather.Coldest is not null && step.Weather.Dry));
    }

    [Fact]
    public void More_of_everything_is_more_work()
    {
        TimeSpan shorter = Sized("48 ft").Work.Likely, longer = Sized("96 ft").Work.Likely;
        Assert.True(longer > shorter * 1.3 && longer < shorter * 2);
        static BuildPlan Sized(string length) => TunnelWorks.Plan(SamplePlans.Simple(length: length, rest: Framed)).Steps!;
    }

    private static PlannedTunnel ThirtyByNinetySix(string skill) => TunnelWorks.Plan(SamplePlans.Simple(
        span: "30 ft", length: "96 ft", bow: "\"shape\": \"round\", \"sideHeight\": \"4 ft\", \"peakHeight\": \"13 ft\"",
        rest: $"{Framed}, \"crew\": {{ \"skill\": \"{skill}\" }}, \"sides\": {{ \"left\": {{ \"kind\": \"rollUp\", \"hipHeight\": \"4 ft\" }} }}"));

    private static bool Waits(BuildPlan plan, string later, string earlier)
    {
        BuildStep step = plan.Steps.Single(each => each.Id == later);
        return step.After.Any(wait => wait.StepId == earlier || Waits(plan, wait.StepId, earlier));
    }

    private static void Rules(BuildPlan plan)
    {
        Assert.Distinct(plan.Steps.Select(step => step.Id));
        HashSet<string> done = [];
        foreach (BuildStep step in plan.Steps)
        {
            Assert.All(step.After, wait => Assert.Contains(wait.StepId, done));
            done.Add(step.Id);
            Assert.True(step.LeastPeople >= 1 && step.BestPeople >= step.LeastPeople, step.Id);
            Assert.True(step.Work.Least > TimeSpan.Zero && step.Work.Likely >= step.Work.Least && step.Work.Most >= step.Work.Likely, step.Id);
            Assert.True(!step.Tasks.IsEmpty && !step.Tools.IsEmpty && !step.Drawings.IsEmpty && !step.Parts.IsEmpty && step.Parts.All(part => !part.Does.IsEmpty), step.Id);
            Assert.All(Phrases(step), phrase => Assert.DoesNotContain("safe", phrase.ToString(), StringComparison.OrdinalIgnoreCase));
        }
        // Everything ends in the last look.
        Assert.Equal("last-look", plan.Steps[^1].Id);
        HashSet<string> reached = [];
        Reach(plan.Steps[^1]);
        Assert.Equal(plan.Steps.Length, reached.Count);

        void Reach(BuildStep step)
        {
            if (!reached.Add(step.Id)) return;
            foreach (StepWait wait in step.After) Reach(plan.Steps.Single(each => each.Id == wait.StepId));
        }
    }

    private static IEnumerable<Phrase> Phrases(BuildStep step) =>
        [step.Title, step.Purpose, step.Overnight, .. step.Parts.SelectMany(part => part.Does), .. step.Good, .. step.Hold is { } hold ? (Phrase[])[hold] : [], .. step.After.Select(wait => wait.Why).OfType<Phrase>()];

    private static void Compare(PlannedTunnel planned)
    {
        Dictionary<string, decimal> listed = planned.Takeoff!.Lines.ToDictionary(line => line.Id, line => decimal.Round(line.Quantity, 9));
        Dictionary<string, decimal> used = planned.Steps!.Steps.SelectMany(step => step.Materials).GroupBy(line => line.Id).ToDictionary(group => group.Key, group => decimal.Round(group.Sum(line => line.Quantity), 9));
        Assert.Equal(listed.OrderBy(each => each.Key, StringComparer.Ordinal), used.OrderBy(each => each.Key, StringComparer.Ordinal));
        ImmutableArray<string> cut = [.. planned.Takeoff.Lines.SelectMany(line => line.Pieces).Select(piece => piece.MemberId).Order(StringComparer.Ordinal)];
        Assert.Equal(cut, planned.Steps.Steps.SelectMany(step => step.Materials).SelectMany(line => line.Pieces).Select(piece => piece.MemberId).Order(StringComparer.Ordinal));
    }

    private static PlannedTunnel Work(string rest)
    {
        PlannedTunnel planned = TunnelWorks.Plan(new PlanReading(SamplePlans.Simple(rest: rest), false, []), depth: WorkDepth.Orders);
        Assert.True(planned.Tunnel is not null, string.Join("\n", planned.Diagnostics));
        return planned;
    }
}
