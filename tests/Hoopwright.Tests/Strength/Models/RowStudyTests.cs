using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Frames;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Steel;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Models;

public sealed class RowStudyTests
{
    private const double Gravity = 9.80665;

    // Lifted by wind it uses more at the first look, pressed by snow at second order.
    private const string Snowy = "much snow and much wind";

    private const string SnowyPlan =
        """
        "units": "us", "site": { "groundSnow": "45 psf", "wind": "150 mph", "elevation": "1800 ft" },
        "frame": { "span": "34 ft", "length": "24 ft", "bowSpacing": "4 ft", "bow": { "shape": "gothic", "sideHeight": "6 ft", "peakHeight": "17 ft" },
          "bowTube": { "outside": "2.875 in", "wall": "0.12 in", "yield": "50 ksi" }, "tie": { "height": "11 ft", "every": 1, "tube": { "outside": "1.66 in", "wall": "0.083 in" } }, "purlins": { "count": 5 }, "braces": { "corners": 4, "bays": 3 } },
        "ends": { "front": { "doors": [ { "kind": "sliding", "width": "8 ft", "height": "9 ft" } ] }, "back": { "doors": [ { "kind": "double", "width": "8 ft", "height": "8 ft", "swing": "out" } ] } }, "sides": { "left": { "kind": "rollUp", "hipHeight": "5 ft" } },
        "loads": { "standard": "asce7-22", "exposure": "B", "heating": "heatedGreenhouse", "heatWatched": true }
        """;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_ground_takes_all_the_wind_that_the_ends_catch(bool framed)
    {
        Tunnel tunnel = framed ? BowStudyTests.TunnelOf("gothic-26ft") : Closed(EndClosing.RoofSheet);
        Row row = RowOf(tunnel);
        double pressurePa = row.Loads.Case("wind-front-shut-plus").SiteReference!.Value.Pascals, pushPa = row.Loads.Case("wind-front-shut-plus").Ends.Sum(end => end.AlongTunnel.Pascals) * pressurePa;
        FrameState state = row.Solve(row.Alone("wind-front-shut-plus", pressurePa));
        // The film's pull on one end goes against that on the other; the wall is as high as the middle of the tube stands. Without
        // posts its film spans from bow to ground, so half of the wind never reaches the frame.
        double areaM2 = tunnel.Bow.CentreLine.AreaAbove(Length.Zero).SquareMetres * (framed ? 1 : 0.5);
        Assert.Equal(-pushPa * areaM2, Sum(state, 1), 0.01 * Math.Abs(pushPa * areaM2));
    }

    [Fact]
    public void The_ground_takes_all_the_weight_by_feet_and_posts()
    {
        Tunnel tunnel = BowStudyTests.TunnelOf("gothic-26ft");
        Row row = RowOf(tunnel);
        FrameState state = row.Solve(row.Alone("dead-frame", 1));
        // 2.375 x 0.095 in weighs 3.4462 kg/m, 1.66 x 0.083 in 2.0826 kg/m and 1.315 x 0.065 in 1.2927 kg/m by the exact formula (7850 kg/m³).
        double bowsN = 19 * 3.4462 * tunnel.Bow.CentreLine.Length.Metres * Gravity, purlinsN = 3 * 2.0826 * tunnel.Length.Metres * Gravity;
        double tiesN = 1.2927 * tunnel.Members.Where(member => member.Role == MemberRole.Tie).Sum(member => member.CutLength.Metres) * Gravity;
        Assert.Equal(bowsN + purlinsN + tiesN, Sum(state, 2), 0.003 * bowsN);
    }

    [Fact]
    public void An_inner_bow_of_a_long_row_under_even_snow_moves_as_it_does_alone()
    {
        Tunnel tunnel = BowStudyTests.TunnelOf("gothic-26ft");
        Row row = RowOf(tunnel);
        FrameState state = row.Solve(row.Alone("snow-balanced", 50));
        var trial = new BowTrial(row.Bows.Mesh, row.Bows.Places[9], row.Steel, row.Foot, row.Loads.Cases, row.Bows.BetweenPurlinsM);
        int snow = row.IndexOf("snow-balanced");
        trial.Bow.Solve(trial.Loads[snow].Applied.Select(value => value * 50).ToArray(), trial.Loads[snow].Spread.Select(value => value * 50).ToArray(), secondOrder: false);
        int crown = row.Bows.Mesh.NodeAt(tunnel.Bow.CentreLine.Length.Metres / 2);
        double aloneM = trial.Bow.Movement[(3 * crown) + 1], inRowM = state.Movement(row.Frame.NodeOf(9, crown)).Z;
        Assert.Equal(aloneM, inRowM, 0.03 * Math.Abs(aloneM));
    }

    [Fact]
    public void Posts_prop_the_end_bow_under_snow()
    {
        Row propped = RowOf(BowStudyTests.TunnelOf("gothic-26ft")), open = RowOf(Closed(EndClosing.Open));
        double proppedM = CrownM(propped, 0), openM = CrownM(open, 0), innerM = CrownM(propped, 9);
        Assert.True(Math.Abs(proppedM) < 0.2 * Math.Abs(openM), FormattableString.Invariant($"{proppedM:R} m with posts, {openM:R} m without"));
        Assert.True(Math.Abs(innerM) > 5 * Math.Abs(proppedM));

        static double CrownM(Row row, int bow)
        {
            FrameState state = row.Solve(row.Alone("snow-balanced", 50));
            return state.Movement(row.Frame.NodeOf(bow, row.Bows.Mesh.NodeAt(row.Tunnel.Bow.CentreLine.Length.Metres / 2))).Z;
        }
    }

    [Theory]
    [InlineData("snow-balanced", 100)]
    [InlineData("cold", 1)]
    [InlineData("hot", 1)]
    public void An_even_row_under_an_even_load_moves_evenly_from_left_to_right_and_from_front_to_back(string code, double times)
    {
        Row row = RowOf(Even());
        FrameState state = row.Solve(row.Alone(code, times));
        int bows = row.Bows.Places.Length, nodes = row.Bows.Mesh.XM.Length;
        // From left to right the mesh is even to half a millimetre; from front to back it is one mesh.
        double greatestM = state.Displacements.Where((_, at) => at % 6 < 3).Max(Math.Abs);
        for (int bow = 0; bow < bows; bow++)
        {
            for (int node = 0; node < nodes; node++)
            {
                SixValues here = state.Movement(row.Frame.NodeOf(bow, node)), across = state.Movement(row.Frame.NodeOf(bow, nodes - 1 - node)), along = state.Movement(row.Frame.NodeOf(bows - 1 - bow, node));
                Assert.Equal(here.X, -across.X, 1e-3 * greatestM);
                Assert.Equal(here.Y, across.Y, 1e-3 * greatestM);
                Assert.Equal(here.Z, across.Z, 1e-3 * greatestM);
                Assert.Equal(here.X, along.X, 1e-6 * greatestM);
                Assert.Equal(here.Y, -along.Y, 1e-6 * greatestM);
                Assert.Equal(here.Z, along.Z, 1e-6 * greatestM);
            }
        }
    }

    [Fact]
    public void Film_in_the_cold_pulls_both_end_bows_inwards_by_its_pull_along_their_whole_length()
    {
        Row row = RowOf(Even());
        double pullNPerM = row.Loads.Case("cold").FilmPull!.Steady.NewtonsPerMetre, filmM = row.Bows.Mesh.FilmM[^1];
        FrameLoadCase pull = Assert.Single(row.Cases.Cases, load => load.Id == "cold FilmPull");
        double middleM = row.Tunnel.Length.Metres / 2;
        Assert.Equal(pullNPerM * filmM, Front(load => load.Load.Y).Sum(), 1e-9 * pullNPerM * filmM);
        Assert.Equal(-pullNPerM * filmM, Back(load => load.Load.Y).Sum(), 1e-9 * pullNPerM * filmM);
        // The pull of the sheet that says how tight to pull, with nothing of it crept away.
        Assert.Equal(CoverPlanner.Plan(row.Tunnel, new Answers(row.Tunnel.Units)).Plan.Pull.Planned.ColdPull.NewtonsPerMetre, pullNPerM, 1e-9 * pullNPerM);

        LoadedCase cold = row.Alone("cold", 1);
        FrameState with = row.Solve(cold), without = row.Solve(cold, isSlack: true);
        int crown = row.Bows.Mesh.XM.Length / 2, last = row.Bows.Places.Length - 1;
        Assert.True(with.Movement(row.Frame.NodeOf(0, crown)).Y > without.Movement(row.Frame.NodeOf(0, crown)).Y);
        Assert.True(with.Movement(row.Frame.NodeOf(last, crown)).Y < without.Movement(row.Frame.NodeOf(last, crown)).Y);

        IEnumerable<double> Front(Func<NodeLoad, double> of) => pull.Nodes.Where(load => row.Frame.Nodes[load.Node].PlaceM.Y < middleM).Select(of);
        IEnumerable<double> Back(Func<NodeLoad, double> of) => pull.Nodes.Where(load => row.Frame.Nodes[load.Node].PlaceM.Y > middleM).Select(of);
    }

    [Fact]
    public void The_first_look_adds_load_cases_to_what_solving_the_combination_gives()
    {
        Row row = RowOf(Short());
        var solver = new StaticSolver(FrameMesh.Of(row.Model([], FrameAnalysisKind.Linear))!);
        RowLook look = RowLook.Of(solver, row.Cases, new RowStrengths(row.Frame), [])!;
        foreach (LoadedCase each in row.AtSite.Where((_, at) => at % 17 == 0))
        {
            var lean = new RowCase(each, 1, -1, IsSlack: false);
            FrameState state = Assert.Single(FrameSolver.Solve(row.Model([lean], FrameAnalysisKind.Linear)).States);
            double[] sections = look.Sections(lean).ToArray();
            double greatest = sections.Max(Math.Abs);
            for (int at = 0; at < sections.Length; at++) Assert.Equal(state.SectionForces[at], sections[at], 1e-7 * greatest);
        }
    }

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("metric-9m")]
    [InlineData(Snowy)]
    public void The_combinations_that_are_chosen_are_the_worst_of_all(string example)
    {
        Row row = RowOf(Short(example), example == Snowy ? 2.6e5 : 5e4);
        RowStrength chosen = Study(everything: false), all = Study(everything: true);
        Assert.True(chosen.Combinations.Length < all.Combinations.Length / 4);
        Assert.Equal(all.Parts.Select(part => part.Kind), chosen.Parts.Select(part => part.Kind));
        foreach ((RowPart found, RowPart worst) in chosen.Parts.Zip(all.Parts))
        {
            double use = worst.Utilisation!.Value.Value;
            Assert.True(found.Utilisation!.Value.Value >= 0.97 * use, FormattableString.Invariant($"{found.Kind}: {found.Utilisation.Value.Value} found under {found.Words}, {use} is there under {worst.Words}"));
        }

        RowStrength Study(bool everything) => RowStudy.Of(row.Tunnel, row.Loads, row.Bows, row.Steel, row.Foot, row.AtSite, [], row.WorstAlone, everything)!.Strength;
    }

    [Fact]
    public void A_row_that_nothing_holds_upright_along_the_tunnel_is_said_to_buckle()
    {
        Plan plan = SamplePlans.Example("gothic-26ft");
        Tunnel tunnel = SamplePlans.LayOut(plan with { Frame = plan.Frame with { Purlins = plan.Frame.Purlins! with { Count = 0 }, Braces = plan.Frame.Braces! with { Corners = 0 } } });
        Row row = RowOf(tunnel);
        RowOutcome outcome = RowStudy.Of(tunnel, row.Loads, row.Bows, row.Steel, PlanarFoot.Hinge, row.AtSite, [], () => [])!;
        Assert.NotEmpty(outcome.Strength.Buckles);
        Assert.Empty(outcome.Strength.Parts);
    }

    [Fact]
    public void A_tie_that_is_pressed_past_its_own_strength_leaves_the_bow_to_itself()
    {
        Row row = RowOf(BowStudyTests.TunnelOf("gothic-26ft"));
        BowPlace place = row.Bows.Places[9];
        BowTrial tied = Trial(place), plain = Trial(place with { Tie = null });
        int wind = row.IndexOf("wind-left-shut-a-plus");
        BowTie tie = place.Tie!;
        // 13 ft of 1.315 x 0.065 in: Euler's load over the whole length, by hand; AISI S100 takes 0.877 and φ 0.85 of it.
        double eulerN = Math.PI * Math.PI * 2e11 * 2.0807e-8 / (tie.LengthM * tie.LengthM);
        Assert.Equal(0.85 * 0.877 * eulerN, tie.PressedN, 0.01 * tie.PressedN);

        BowTerm[] mild = [new(wind, 100)], hard = [new(wind, 900)];
        tied.Carries(mild, 1);
        Assert.InRange(-tied.Bow.TieForceN(0), 1, tie.PressedN);
        plain.Carries(mild, 1);
        Assert.NotEqual(plain.Bow.Movement[30], tied.Bow.Movement[30], 1e-4);
        tied.Carries(hard, 1);
        plain.Carries(hard, 1);
        Assert.Equal(0, tied.Bow.TieForceN(0));
        Assert.Equal(plain.Bow.Movement, tied.Bow.Movement);

        BowTrial Trial(BowPlace of) => new(row.Bows.Mesh, of, row.Steel, row.Foot, row.Loads.Cases, row.Bows.BetweenPurlinsM);
    }

    [Fact]
    public void A_person_on_a_purlin_bends_it_where_he_hangs()
    {
        Row row = RowOf(Even());
        FrameState state = row.Solve(row.Alone("person-purlin-ridge", 1));
        int at = Enumerable.Range(0, row.Frame.Pieces.Count).First(member => row.Frame.Pieces[member].Kind == RowKind.Purlin && row.Frame.Pieces[member].Member.Role == MemberRole.RidgePurlin
            && row.Frame.Nodes[row.Frame.Members[member].To].Id.EndsWith("-middle", StringComparison.Ordinal));
        // Between a simple span, P·L/4, and one built in at both ends, P·L/8.
        double personN = -row.Loads.Case("person-purlin-ridge").Points[0].Amount.Newtons, bayM = row.Frame.Pieces[at].FreeM;
        Assert.InRange(Math.Abs(state.At(at, end: true).MyNm), personN * bayM / 8, personN * bayM / 4);
    }

    private static Tunnel Even()
    {
        Plan plan = SamplePlans.Example("gothic-26ft");
        return SamplePlans.LayOut(plan with
        {
            Site = plan.Site with { FallAlong = null, FallAcross = null },
            Ends = new() { Front = plan.Ends.Front with { Doors = [] } },
        });
    }

    private static Tunnel Closed(EndClosing closing)
    {
        Plan plan = SamplePlans.Example("gothic-26ft");
        return SamplePlans.LayOut(plan with { Ends = new() { Front = new() { Closing = closing } } });
    }

    // Five bays, so that every combination can be solved.
    private static Tunnel Short(string example = "gothic-26ft")
    {
        Plan plan = example == Snowy ? SamplePlans.FromJson(SnowyPlan) : SamplePlans.Example(example);
        Tunnel whole = SamplePlans.LayOut(plan);
        return SamplePlans.LayOut(plan with { Frame = plan.Frame with { Length = new Written<Length>("short", whole.Stations[5].Along) } });
    }

    private static Row RowOf(Tunnel tunnel, double footNmPerRad = 5e4) => new(tunnel, new PlanarFoot(footNmPerRad));

    private static double Sum(FrameState state, int freedom) => Enumerable.Range(0, state.Reactions.Length / 6).Sum(node => state.Reactions[(6 * node) + freedom]);

    private sealed class Row
    {
        internal Row(Tunnel tunnel, PlanarFoot foot)
        {
            (Tunnel, Foot) = (tunnel, foot);
            Loads = LoadPlanner.Plan(tunnel, new Answers(tunnel.Units));
            Steel = new BowSteel(tunnel.BowTube, SteelGrades.Unknown.WithYield(345e6));
            Bows = BowRow.Of(tunnel, Steel);
            Frame = new RowFrame(tunnel, Bows, Steel, Foot);
            AtSite = [.. new BowCases(Loads).AtSite()];
            Cases = new RowLoads(Frame, Loads, Enumerable.Range(0, Loads.Cases.Length));
        }

        internal Tunnel Tunnel { get; }

        internal TunnelLoads Loads { get; }

        internal BowSteel Steel { get; }

        internal BowRow Bows { get; }

        internal PlanarFoot Foot { get; }

        internal RowFrame Frame { get; }

        internal RowLoads Cases { get; }

        internal ImmutableArray<LoadedCase> AtSite { get; }

        internal IEnumerable<string> WorstAlone() => new BowStudy(Tunnel, Loads, Steel, new FootRange(Foot, Foot, Foot, "")).WorstAlone();

        internal int IndexOf(string code) => Enumerable.Range(0, Loads.Cases.Length).First(at => Loads.Cases[at].Code == code);

        internal LoadedCase Alone(string code, double times) => new(code, code, [new BowTerm(IndexOf(code), times)], []);

        internal FrameModel Model(RowCase[] cases, FrameAnalysisKind kind) => new()
        {
            Nodes = [.. Frame.Nodes],
            Members = [.. Frame.Members],
            LoadCases = Cases.Cases,
            Combinations = [.. cases.Select(each => new FrameCombination(each.Case.Code, Cases.Of(each)))],
            Analysis = new FrameAnalysis { Kind = kind },
        };

        internal FrameState Solve(LoadedCase each, bool isSlack = false) => Assert.Single(FrameSolver.Solve(Model([new RowCase(each, 0, 0, isSlack)], FrameAnalysisKind.Linear)).States);
    }
}
