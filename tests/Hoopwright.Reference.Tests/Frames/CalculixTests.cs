using Hoopwright.Frames;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Steel;
using Hoopwright.Testing;
using Hoopwright.Testing.Frames;

namespace Hoopwright.Reference.Tests.Frames;

/// <summary>
/// Models solved by CalculiX, whose curved beams of three nodes are solids inside, and by us. Skipped where CalculiX is not installed;
/// never where HOOPWRIGHT_NEEDS_CCX is set, as continuous integration does.
/// </summary>
public sealed class CalculixTests
{
    private const double Displacement = 0.005, Factor = 0.01;
    private static readonly FrameMaterial Steel = new(2e11, 1e11, 1.2e-5, 7850);
    private static readonly FrameSection Tube = FrameSection.Of(new RoundTube(Length.FromMillimetres(42.164), Length.FromMillimetres(2.108)), shearFlexible: true);

    public static TheoryData<string, bool> Bows { get; } = [.. SamplePlans.GoodExamples.SelectMany(example => new[] { (example, false), (example, true) })];

    [Theory]
    [InlineData("crown", false)]
    [InlineData("crown", true)]
    [InlineData("snow", false)]
    [InlineData("snow", true)]
    [InlineData("wind", false)]
    [InlineData("wind", true)]
    public void A_semicircle_moves_as_in_calculix(string load, bool fixedFeet) =>
        Compare(Bow(Semicircle(), load, fixedFeet));

    [Theory]
    [InlineData("crown", false)]
    [InlineData("crown", true)]
    [InlineData("snow", false)]
    [InlineData("snow", true)]
    public void A_semicircle_buckles_as_in_calculix(string load, bool fixedFeet) =>
        CompareFactors(Bow(Semicircle(), load, fixedFeet), modes: 2);

    [Theory]
    [MemberData(nameof(Bows))]
    public void A_bow_of_an_example_moves_under_snow_as_in_calculix(string example, bool fixedFeet) =>
        Compare(Bow(Centreline(example), "snow", fixedFeet));

    [Theory]
    [MemberData(nameof(Bows))]
    public void A_bow_of_an_example_moves_in_wind_as_in_calculix(string example, bool fixedFeet) =>
        Compare(Bow(Centreline(example), "wind", fixedFeet));

    [Theory]
    [MemberData(nameof(Bows))]
    public void A_bow_of_an_example_buckles_under_snow_as_in_calculix(string example, bool fixedFeet) =>
        CompareFactors(Bow(Centreline(example), "snow", fixedFeet), modes: 1);

    [Fact]
    public void A_row_of_ten_bows_moves_in_wind_as_in_calculix() => Compare(TunnelRow.InWind(10));

    [Fact]
    public void A_row_of_ten_bows_moves_under_snow_as_in_calculix() => Compare(TunnelRow.InSnow(10));

    [Fact]
    public void A_row_of_ten_bows_buckles_under_snow_as_in_calculix() => CompareFactors(TunnelRow.InSnow(10), modes: 4);

    [Theory]
    [InlineData("snow", false)]
    [InlineData("snow", true)]
    [InlineData("wind", false)]
    [InlineData("wind", true)]
    public void A_semicircle_is_moved_far_as_in_calculix(string load, bool fixedFeet) => CompareLarge(Bow(Semicircle(), load, fixedFeet));

    [Theory]
    [InlineData("wind-front-left-shut-a-plus")]
    [InlineData("wind-back-shut-minus")]
    [InlineData("snow-blown-left")]
    [InlineData("building-bare-front")]
    [InlineData("cold")]
    public void The_row_of_an_example_moves_as_in_calculix(string load) => Compare(Row(load));

    [Fact]
    public void A_row_of_three_bows_is_moved_far_in_wind_as_in_calculix() => CompareLarge(TunnelRow.InWind(3));

    // What the deck can say of the strength's own row: bows and purlins on hinged feet, open ends, loads at nodes. Warmth of the steel is left
    // out of the cold, which leaves the film's pull on the end bows.
    private static FrameModel Row(string load)
    {
        Plan plan = SamplePlans.Example("gothic-26ft");
        Tunnel tunnel = SamplePlans.LayOut(plan with
        {
            Frame = plan.Frame with { Length = new Written<Length>("short", Length.FromFeet(24)), Tie = null, Braces = plan.Frame.Braces! with { Corners = 0 } },
            Ends = new() { Front = new() { Closing = EndClosing.Open } },
        });
        TunnelLoads loads = LoadPlanner.Plan(tunnel, new Answers(tunnel.Units));
        var steel = new BowSteel(tunnel.BowTube, SteelGrades.Unknown);
        var frame = new RowFrame(tunnel, BowRow.Of(tunnel, steel), steel, PlanarFoot.Hinge);
        int at = Enumerable.Range(0, loads.Cases.Length).First(each => loads.Cases[each].Code == load);
        var cases = new RowLoads(frame, loads, [at]);
        var row = new RowCase(new LoadedCase(load, load, [new BowTerm(at, 100)], []), 0, 0, IsSlack: false);
        // Every chord in two halves in line: the deck makes one straight element of the two, where it would bend one through two chords.
        FrameNode[] nodes = [.. frame.Nodes.Select(node => node with { Springs = null, Held = node.Held == Freedoms.None ? Freedoms.None : Freedoms.Shifts })];
        FrameMember[] members = [.. frame.Members.Select(member => member with { Material = Steel })];
        return new FrameModel
        {
            Nodes = [.. nodes, .. members.Select(member => new FrameNode(member.Id, (nodes[member.From].PlaceM + nodes[member.To].PlaceM) * 0.5))],
            Members = [.. members.SelectMany((member, index) => new[] { member with { To = nodes.Length + index }, member with { Id = member.Id + "+", From = nodes.Length + index } })],
            LoadCases = [.. cases.Cases.Select(each => each with { Temperatures = [], Nodes = [.. each.Nodes.Select(node => node with { Load = node.Load with { AboutX = 0, AboutY = 0, AboutZ = 0 } })] })],
            Combinations = [new FrameCombination(load, cases.Of(row))],
        };
    }

    private static void CompareLarge(FrameModel model) =>
        Compare(model with { Analysis = model.Analysis with { Kind = FrameAnalysisKind.LargeDisplacement } }, large: true);

    private static void Compare(FrameModel model, bool large = false)
    {
        Need();
        var (movedMm, _) = Calculix.Run(CalculixDeck.Write(model, large));
        var state = Assert.Single(FrameSolver.Solve(model).States);
        double greatestMm = movedMm.Take(model.Nodes.Length).Max(node => Math.Sqrt((node[0] * node[0]) + (node[1] * node[1]) + (node[2] * node[2])));
        Assert.True(greatestMm > 0.1, "The model hardly moves, so that nothing is compared.");
        for (int node = 0; node < model.Nodes.Length; node++)
        {
            for (int axis = 0; axis < 3; axis++)
                Published.Check("CalculiX, B32R", $"node {model.Nodes[node].Id} axis {axis}, mm", movedMm[node][axis], 1000 * state.Displacements[(6 * node) + axis], Displacement * greatestMm, "half a percent of the greatest movement");
        }
    }

    private static void CompareFactors(FrameModel model, int modes)
    {
        Need();
        model = model with { Analysis = model.Analysis with { Kind = FrameAnalysisKind.Buckling, Modes = modes } };
        var (_, factors) = Calculix.Run(CalculixDeck.Write(model));
        var found = Assert.Single(FrameSolver.Solve(model).Buckling).Factors;
        Assert.Equal(modes, factors.Length);
        for (int mode = 0; mode < modes; mode++)
            Published.Check("CalculiX, B32R", $"factor {mode + 1}", factors[mode], found[mode], Factor * factors[mode], "one percent");
    }

    private static void Need()
    {
        if (Calculix.Program is not null)
            return;
        if (string.IsNullOrEmpty(Environment.GetEnvironmentVariable("HOOPWRIGHT_NEEDS_CCX")))
            Assert.Skip("CalculiX is not installed here; install the Debian package calculix-ccx.");
        Assert.Fail("CalculiX must be here: install the Debian package calculix-ccx.");
    }

    private static Vector3[] Semicircle()
    {
        const int Chords = 48;
        return [.. Enumerable.Range(0, Chords + 1).Select(at => new Vector3(-3.048 * Math.Cos(Math.PI * at / Chords), 0, 3.048 * Math.Sin(Math.PI * at / Chords)))];
    }

    /// <summary>The middle of the tube of an example's bow, in chords of even length.</summary>
    private static Vector3[] Centreline(string example)
    {
        const int Chords = 96;
        var path = SamplePlans.LayOut(SamplePlans.Example(example)).Bow.CentreLine;
        return [.. Enumerable.Range(0, Chords + 1).Select(at => path.PointAt(path.Length * ((double)at / Chords))).Select(point => new Vector3(point.Across.Metres, 0, point.Up.Metres))];
    }

    private static FrameModel Bow(Vector3[] places, string load, bool fixedFeet)
    {
        int chords = places.Length - 1;
        var members = Enumerable.Range(0, chords).Select(at => new FrameMember { Id = $"m{at}", From = at, To = at + 1, Section = Tube, Material = Steel });
        var loads = Enumerable.Range(0, chords).Select(at => load switch
        {
            "snow" => MemberLoad.Uniform(at, new(0, 0, -500), LoadFrame.Global, LoadPer.Projection),
            _ => MemberLoad.Uniform(at, new(0, 0, 600 * (at < chords / 4 ? -0.7 : at < 3 * chords / 4 ? 1.2 : 0.5)), LoadFrame.Member),
        });
        var case_ = load == "crown" ? new FrameLoadCase("L") { Nodes = [new(chords / 2, new(0, 0, -500, 0, 0, 0))] } : new FrameLoadCase("L") { Members = [.. loads] };
        return new()
        {
            Nodes = [.. places.Select((place, at) => new FrameNode($"{at}", place) { Held = at != 0 && at != chords ? Freedoms.None : fixedFeet ? Freedoms.All : Freedoms.Shifts })],
            Members = [.. members],
            LoadCases = [case_],
            Combinations = [new("C", [new(0, 1)])],
            Analysis = new() { Planar = true },
        };
    }
}
