using Hoopwright.Cover.Pull;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength;
using Hoopwright.Strength.Film;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Parts;
using Hoopwright.Strength.Soil;
using Hoopwright.Strength.Steel;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Parts;

public sealed class TunnelPartsTests
{
    private static readonly Tunnel Gothic = SamplePlans.LayOut(BarePosts(SamplePlans.Example("gothic-26ft")));

    private static readonly StrengthReport Report = StrengthPlanner.Plan(Gothic, new Answers(UnitSystem.UsCustomary));

    private static BowStudy Study { get; } = new(
        Gothic, Report.Loads, new BowSteel(Gothic.BowTube, SteelGrades.Unknown), FootRange.Of(Gothic, LegBase.Spring, given: false));

    [Fact]
    public void What_both_feet_put_on_their_posts_balances_the_upright_load_of_the_combination()
    {
        BowCases cases = Study.Cases;
        BowRow row = BowRow.Of(Gothic, new BowSteel(Gothic.BowTube, SteelGrades.Unknown));
        BowPlace[] places = [.. row.Places];
        int met = 0;
        foreach (var pair in Study.FootLoads(softest: false).Where(foot => !foot.Buckles).Chunk(2))
        {
            Assert.Equal((pair[0].Case, pair[0].Bow, false, true), (pair[1].Case, pair[1].Bow, pair[0].Right, pair[1].Right));
            BowPlace place = places.Single(each => each.Number == pair[0].Bow);
            double downN = 0, sizeN = 0;
            foreach (BowTerm term in pair[0].Case.Fixed)
            {
                double upN = UpN(BowLoad.Of(Report.Loads.Cases[term.Load], row.Mesh, place), row.Mesh);
                downN -= term.Times * upN;
                sizeN += Math.Abs(term.Times * upN);
            }
            Assert.Equal(downN, -(pair[0].PullN + pair[1].PullN), 1e-6 * Math.Max(1, sizeN));
            met++;
        }
        Assert.True(met > 50);
        Assert.All(Study.FootLoads(softest: false), foot => Assert.StartsWith("asd-", foot.Case.Code, StringComparison.Ordinal));
    }

    [Fact]
    public void Under_a_bow_that_buckles_its_posts_have_no_number_at_either_end_of_what_is_known()
    {
        Tunnel slender = SamplePlans.LayOut(SamplePlans.Simple(span: "30 ft", bow: "\"shape\": \"round\", \"sideHeight\": \"4 ft\", \"peakHeight\": \"10 ft\"", rest: "\"site\": { \"groundSnow\": \"150 psf\", \"wind\": \"105 mph\" }"));
        PartStrength[] posts = [.. StrengthPlanner.Plan(slender, new Answers(UnitSystem.UsCustomary)).Parts.Where(part => part.Kind == PartKind.GroundPost)];
        Assert.Contains(posts, part => part.Code.EndsWith("-uplift", StringComparison.Ordinal));
        Assert.All(posts, part => Assert.Equal(("the bow buckles before it carries the loads", null, null, "beyond all", StrengthVerdict.DoesNotStand), (part.Governs, part.AtWeakest, part.AtStrongest, UsedWords.Of(part), part.Verdict)));
    }

    [Fact]
    public void Dead_load_alone_presses_the_posts_with_the_weight_of_bow_and_film()
    {
        // Tube over the middle line and film over the outside, hung weights as they are: no chord of the mesh in it.
        Tunnel plain = SamplePlans.LayOut(SamplePlans.Simple());
        BowSteel steel = new(plain.BowTube, SteelGrades.Unknown);
        BowStudy study = new(plain, LoadPlanner.Plan(plain, new Answers(UnitSystem.UsCustomary)), steel, FootRange.Of(plain, LegBase.Spring, given: false));
        FootLoad[] feet = [.. study.FootLoads(softest: false).Where(foot => foot.Case.Code == "asd-1").Take(2)];
        BowPlace place = BowRow.Of(plain, steel).Places.Single(each => each.Number == feet[0].Bow);
        double weightN = (place.TubeNPerM * plain.Bow.CentreLine.Length.Metres) + (FilmOf.WeightPa(plain) * place.FilmWidthM * plain.Bow.FilmLine.Length.Metres) + place.HungN.Sum(each => each.WeightN);
        Assert.Equal(weightN, -feet.Sum(foot => foot.PullN), 0.005 * weightN);
    }

    [Theory]
    [InlineData("post-concrete-", true)]
    [InlineData("post-bare-", false)]
    public void Ground_posts_of_a_kind_are_held_against_the_hardest_pull_of_any_foot(string code, bool inConcrete)
    {
        PartStrength uplift = Report.Parts.Single(part => part.Code == code + "uplift"), sideways = Report.Parts.Single(part => part.Code == code + "sideways");
        bool ends = Gothic.GroundPosts.Where(post => post.InConcrete == inConcrete).All(post => post.Bow == 1 || post.Bow == Gothic.Stations.Length);
        double mostN = Study.FootLoads(softest: false).Where(foot => (foot.Bow == 1 || foot.Bow == Gothic.Stations.Length) == ends).Max(foot => foot.PullN);
        var check = (UpliftCheck)uplift.Checks.Single();
        Assert.Equal(mostN / check.AllowedN.Least, uplift.AtWeakest!.Value.Value, 1e-6 * check.Utilisation);
        Assert.True(uplift.AtStrongest!.Value.Value < uplift.AtWeakest!.Value.Value);
        Assert.True(sideways.AtStrongest is { } best && (sideways.AtWeakest is null || best.Value < sideways.AtWeakest.Value.Value));
        Assert.StartsWith("asd-", uplift.LoadCode, StringComparison.Ordinal);
        Checks.SaysWhy(uplift.Checks.Single());
    }

    [Fact]
    public void Where_only_the_upper_end_counts_soil_over_the_frost_line_the_pull_is_allowed_for_at_both_ends_as_it_is_shown()
    {
        Tunnel frozen = SamplePlans.LayOut(SamplePlans.Simple(rest: "\"site\": { \"wind\": \"105 mph\", \"groundSnow\": \"20 psf\", \"soilClass\": \"gravel\", \"frostDepth\": \"6 ft\" }, \"ground\": { \"anchor\": \"posts\", \"postConcrete\": \"all\", \"legBase\": \"pinned\" }"));
        PartStrength[] uplifts = [.. StrengthPlanner.Plan(frozen, new Answers(UnitSystem.UsCustomary)).Parts.Where(part => part.Code.EndsWith("-uplift", StringComparison.Ordinal))];
        Assert.Contains(uplifts, part => part.Kind == PartKind.GroundPost);
        Assert.All(uplifts, part =>
        {
            var check = (UpliftCheck)part.Checks.Single();
            Assert.True(check.AllowedN.Most > check.AllowedN.Least);
            double pullN = part.AtWeakest!.Value.Value * check.AllowedN.Least;
            Assert.Equal(pullN, part.AtStrongest!.Value.Value * check.AllowedN.Most, 1e-6 * pullN);
            // 0.6 of the weight, and soil over 2.5, from what is shown of both.
            Assert.Equal(check.AllowedN.Most, (0.6 * check.WeightN) + ((check.UltimateN.Most - check.WeightN) / 2.5), 1e-6 * check.AllowedN.Most);
        });
    }

    [Fact]
    public void What_feet_put_on_posts_at_most_is_no_less_than_any_foot_does_and_some_foot_does_it()
    {
        // Steel and feet of the report, not those of the study above.
        Plan plan = Gothic.Plan;
        FootRange range = FootRange.Of(Gothic, LegBase.Spring, given: false);
        var study = new BowStudy(Gothic, Report.Loads, new BowSteel(Gothic.BowTube, SteelGrades.Unknown with { YieldPa = plan.Frame.BowTube.Yield!.Value.Value.Pascals }), range);
        FootLoad[] feet = [.. study.FootLoads(softest: false).Where(foot => !foot.Buckles)];
        Assert.Equal([false, true], Report.FootLoads.Select(each => each.OnEnds));
        foreach (FootLoads most in Report.FootLoads)
        {
            FootLoad[] those = [.. feet.Where(foot => (foot.Bow == 1 || foot.Bow == Gothic.Stations.Length) == most.OnEnds)];
            Assert.Equal(those.Max(foot => foot.PullN), most.Pull!.Size.Newtons, 1e-4 * most.Pull.Size.Newtons);
            Assert.Equal(those.Max(foot => -foot.PullN), most.Press!.Size.Newtons, 1e-4 * most.Press.Size.Newtons);
            Assert.Equal(those.Max(foot => Math.Abs(foot.AcrossN)), most.Across!.Size.Newtons, 1e-4 * most.Across.Size.Newtons);
            Assert.Equal(those.Max(foot => Math.Abs(foot.TurningNm)), most.Turning!.Size.NewtonMetres, 1e-4 * most.Turning.Size.NewtonMetres);
            FootLoad pulled = those.First(foot => foot.Bow == most.Pull.Bow && foot.Right == most.Pull.IsRight && foot.Case.Code == most.Pull.LoadCode);
            Assert.Equal(pulled.PullN, most.Pull.Size.Newtons, 1e-4 * pulled.PullN);
        }
    }

    [Fact]
    public void End_posts_meet_the_hardest_wind_of_any_case_at_its_allowable_factor()
    {
        foreach (EndWall end in Gothic.Ends)
        {
            // 0.6 W of the hardest case, ASCE/SEI 7-16, 2.4.1: no combination has more of the wind.
            double hardestPa = 0.6 * Report.Loads.Cases.Where(load => load.Counts && load.Kind is LoadKind.Wind or LoadKind.Construction)
                .SelectMany(load => load.AtSite()?.Ends ?? []).Where(load => load.IsFront == end.IsFront).Max(load => Math.Abs(load.Inwards.Pascals));
            Assert.Equal(hardestPa, Math.Abs(EndWind.Of(end, Report.Loads, Study.Cases.ForGround())!.PressurePa), 1e-6);
            PartStrength wood = Report.Parts.Single(part => part.Code == $"end-post-{end.Name}-wood");
            Assert.True(wood.AtStrongest!.Value.Value < wood.AtWeakest!.Value.Value);
            Assert.Equal(wood.Checks.Single().Utilisation, wood.AtWeakest.Value.Value);
            Assert.Contains(Report.Parts, part => part.Code == $"end-post-{end.Name}-foot");
        }
    }

    [Fact]
    public void Lifted_film_is_an_arc_as_long_as_the_film()
    {
        // A half circle of radius 3, and an arc of 2 rad on it.
        Assert.Equal(3, FilmLift.ArcRadiusM(3 * Math.PI, 6), 1e-9);
        Assert.Equal(3, FilmLift.ArcRadiusM(6, 6 * Math.Sin(1)), 1e-9);
        PartStrength film = Report.Parts.Single(part => part.Code == "film");
        var check = (FilmCheck)film.Checks.Single();
        Assert.Equal(check.StressPa / FilmStrength.Yield.LeastPa, film.AtWeakest!.Value.Value, 1e-12);
        Assert.True(film.AtStrongest!.Value.Value < film.AtWeakest.Value.Value);
    }

    [Fact]
    public void The_verdict_is_no_better_than_its_worst_part_and_names_the_first_that_fails()
    {
        PartStrength first = Report.Parts.Where(part => part.Verdict == StrengthVerdict.DoesNotStand).MaxBy(part => part.AtStrongest?.Value ?? double.PositiveInfinity)!;
        Assert.Equal(StrengthVerdict.DoesNotStand, Report.Verdict);
        Assert.Contains(first.Words, Report.Says, StringComparison.Ordinal);
        Assert.Contains("does not stand the entered loads on these assumptions", Report.Says, StringComparison.Ordinal);
        foreach (PartStrength part in Report.Parts.Where(part => part.Verdict != StrengthVerdict.Stands))
            Assert.Contains(Report.Diagnostics, told => told.Message.Contains(part.Words, StringComparison.Ordinal));
    }

    [Fact]
    public void In_soft_soil_nothing_is_counted_on_sideways()
    {
        Tunnel soft = SamplePlans.LayOut(SamplePlans.Simple(rest: """ "site": { "groundSnow": "5 psf", "wind": "60 mph", "soilClass": "soft" } """));
        StrengthReport report = StrengthPlanner.Plan(soft, new Answers(UnitSystem.UsCustomary));
        PartStrength sideways = report.Parts.First(part => part.Code.EndsWith("-sideways", StringComparison.Ordinal));
        Assert.Null(sideways.AtWeakest);
        Assert.Null(sideways.AtStrongest);
        Assert.Equal(StrengthVerdict.DoesNotStand, sideways.Verdict);
        Assert.Empty(sideways.Checks);
        Assert.NotEqual(StrengthVerdict.Stands, report.Verdict);
    }

    [Fact]
    public void What_the_plan_does_not_say_of_soil_and_wood_is_an_assumption()
    {
        Tunnel silent = SamplePlans.LayOut(SamplePlans.Simple(rest: """ "site": { "groundSnow": "5 psf", "wind": "60 mph" } """));
        var answers = new Answers(UnitSystem.UsCustomary);
        StrengthPlanner.Plan(silent, answers);
        string[] assumed = [.. answers.Assumptions.Select(each => each.Code)];
        Assert.Contains("assumed.site.soil-class", assumed);
        Assert.Contains("assumed.ends.front.wood-species", assumed);
        Assert.Contains("assumed.ends.front.wood-grade", assumed);
        Assert.Contains("assumed.ground.post-tube.yield", assumed);
        // The back is like the front, so it is asked of once.
        Assert.DoesNotContain("assumed.ends.back.wood-grade", assumed);
    }

    [Fact]
    public void Without_snow_and_wind_there_is_nothing_to_hold_the_parts_against()
    {
        Tunnel plain = SamplePlans.LayOut(SamplePlans.Simple());
        StrengthReport report = StrengthPlanner.Plan(plain, new Answers(UnitSystem.UsCustomary));
        Assert.Equal(StrengthVerdict.NothingEntered, report.Verdict);
        Assert.Empty(report.Parts);
    }

    [Fact]
    public void The_European_standard_has_strength_level_only_and_the_parts_are_held_against_that()
    {
        StrengthReport report = StrengthPlanner.Plan(SamplePlans.LayOut(SamplePlans.Example("metric-9m")), new Answers(UnitSystem.Metric));
        Assert.NotEmpty(report.Parts);
        Assert.All(report.Parts, part => Assert.StartsWith("en-", part.LoadCode, StringComparison.Ordinal));
        Assert.All(report.Parts, part => Assert.Contains("strength level", part.LoadWords, StringComparison.Ordinal));
    }

    // Both kinds of post: in concrete at the corners, bare between.
    private static Plan BarePosts(Plan plan) => plan with { Ground = plan.Ground with { PostConcrete = PostConcrete.Corners } };

    private static double UpN(BowLoad load, BowMesh mesh)
    {
        double sum = 0;
        for (int node = 0; node < mesh.AlongM.Length; node++)
            sum += load.Applied[(3 * node) + 1];
        for (int chord = 0; chord < mesh.Chords; chord++)
        {
            double lengthM = mesh.LengthM(chord), c = (mesh.XM[chord + 1] - mesh.XM[chord]) / lengthM, s = (mesh.ZM[chord + 1] - mesh.ZM[chord]) / lengthM;
            int at = 6 * chord;
            sum += (s * (load.Spread[at] + load.Spread[at + 3])) + (c * (load.Spread[at + 1] + load.Spread[at + 4]));
        }
        return sum;
    }
}
