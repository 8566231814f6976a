using System.Text.Json.Nodes;
using Hoopwright.Diagnostics;
using Hoopwright.Frames;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Frames;

/// <summary>The two benchmark problems of the AISC commentary: W14x48, kips and inches.</summary>
public sealed class SecondOrderTests
{
    private const string Commentary = "AISC 360-16 Commentary, Figs. C-C2.2 and C-C2.3, as quoted by two public frame programs' tests (github.com)";
    private const string ClosedForm = "closed form of the beam-column: secant and tangent of √(PL²/EI) (Timoshenko and Gere, ch. 1)";
    private const string Mesh = "an independent matrix solver, the same elements";
    private const double E = 29000, I = 484, L = 336, W = 0.2 / 12;
    private const string ThreeDigits = "printed to three digits, and rounded in the commentary's own solver";

    [Theory]
    [InlineData(0, 235, 235, 0.202, 0.197)]
    [InlineData(150, 270, 269, 0.230, 0.224)]
    [InlineData(300, 316, 313, 0.269, 0.261)]
    [InlineData(450, 380, 375, 0.322, 0.311)]
    public void Case_1_a_beam_under_a_thrust(double p, double momentShear, double moment, double fallShear, double fall)
    {
        foreach (var (shear, m, d) in new[] { (true, momentShear, fallShear), (false, moment, fall) })
        {
            var (momentFound, fallFound) = Case1(p, 8, shear);
            Published.Check(Commentary, $"M mid, P {p}, shear {shear}", m, momentFound, 0.004 * m, ThreeDigits);
            Published.Check(Commentary, $"fall mid, P {p}, shear {shear}", d, fallFound, 0.005 * d, ThreeDigits);
        }
    }

    [Theory]
    [InlineData(0, 336, 336, 0.907, 0.901)]
    [InlineData(100, 470, 469, 1.34, 1.33)]
    [InlineData(150, 601, 598, 1.77, 1.75)]
    [InlineData(200, 856, 848, 2.60, 2.56)]
    public void Case_2_a_cantilever_under_a_thrust(double p, double momentShear, double moment, double swayShear, double sway)
    {
        foreach (var (shear, m, d) in new[] { (true, momentShear, swayShear), (false, moment, sway) })
        {
            var (momentFound, swayFound) = Case2(p, 8, shear);
            Published.Check(Commentary, $"M foot, P {p}, shear {shear}", m, momentFound, 0.004 * m, ThreeDigits);
            Published.Check(Commentary, $"sway, P {p}, shear {shear}", d, swayFound, 0.006 * d, ThreeDigits);
        }
    }

    [Theory]
    [InlineData(0, 235.2000, 0.19706)]
    [InlineData(150, 268.8901, 0.22460)]
    [InlineData(300, 313.5165, 0.26106)]
    [InlineData(450, 375.4144, 0.31159)]
    public void Case_1_meets_the_closed_form(double p, double moment, double fall)
    {
        var (momentFound, fallFound) = Case1(p, 32, shear: false);
        Published.Check(ClosedForm, $"M mid, P {p}", moment, momentFound, 2e-6 * moment, "32 elements");
        Published.Check(ClosedForm, $"fall mid, P {p}", fall, fallFound, 6e-6, "printed to five decimals");
    }

    [Theory]
    [InlineData(0, 336, 0.90085)]
    [InlineData(100, 469.0673, 1.33067)]
    [InlineData(150, 598.6540, 1.75103)]
    [InlineData(200, 848.9791, 2.56490)]
    public void Case_2_meets_the_closed_form(double p, double moment, double sway)
    {
        var (momentFound, swayFound) = Case2(p, 32, shear: false);
        Published.Check(ClosedForm, $"M foot, P {p}", moment, momentFound, 1e-6 * moment, "32 elements");
        Published.Check(ClosedForm, $"sway, P {p}", sway, swayFound, 6e-6, "printed to five decimals");
    }

    [Theory]
    [InlineData(1, 844.588)]
    [InlineData(2, 848.662)]
    [InlineData(4, 848.959)]
    [InlineData(8, 848.978)]
    public void Case_2_of_few_elements_errs_as_it_must(int parts, double moment) =>
        Published.Check(Mesh, $"M foot, {parts} elements", moment, Case2(200, parts, shear: false).Moment, 6e-4, "printed to three decimals");

    [Theory]
    [InlineData(2, 374.768)]
    [InlineData(4, 375.372)]
    [InlineData(8, 375.412)]
    public void Case_1_of_few_elements_errs_as_it_must(int parts, double moment) =>
        Published.Check(Mesh, $"M mid, {parts} elements", moment, Case1(450, parts, shear: false).Moment, 6e-4, "printed to three decimals");

    [Fact]
    public void A_thrust_above_the_buckling_load_is_told_and_gives_no_state()
    {
        var frame = Cantilever(4, shear: false, out int tip);
        frame.Push(tip, fz: -400, fx: 1);
        var answer = FrameSolver.Solve(frame.Model(FrameAnalysisKind.SecondOrder, planar: true));
        Assert.Empty(answer.States);
        Assert.Equal("model.second-order.buckled", Assert.Single(answer.Diagnostics, found => found.Severity == Severity.Error).Code);
    }

    [Fact]
    public void One_combination_that_buckles_is_marked_and_the_others_keep_their_states()
    {
        var frame = Cantilever(4, shear: false, out int tip);
        frame.Push(tip, fz: -100, fx: 1);
        var model = frame.Model(FrameAnalysisKind.SecondOrder, planar: true);
        FrameCombination Times(string id, double times) => new(id, [new CombinationPart(0, times)]);
        var answer = FrameSolver.Solve(model with { Combinations = [Times("once", 1), Times("past buckling", 4), Times("half", 0.5)] });
        Assert.Equal([0, 2], answer.Solved);
        Assert.Equal((1, "model.second-order.buckled"), Assert.Single(answer.Unsolved));
        Assert.Equal("combinations.past buckling", Assert.Single(answer.Diagnostics, found => found.Severity == Severity.Error).Path);
        foreach (var (state, times) in answer.States.Zip([1.0, 0.5]))
            Assert.Equal(Assert.Single(FrameSolver.Solve(model with { Combinations = [Times("alone", times)] }).States).Displacements, state.Displacements);
        var combinations = JsonNode.Parse(FrameAnswerText.Json(answer, TimeSpan.Zero))!["combinations"]!.AsObject();
        Assert.Equal(["once", "past buckling", "half"], combinations.Select(each => each.Key));
        Assert.Equal("model.second-order.buckled", combinations["past buckling"]!["unsolved"]!.GetValue<string>());
        Assert.NotNull(combinations["half"]!["reactions"]);
        string table = FrameAnswerText.Table(answer);
        Assert.Contains("Combination half: second order", table, StringComparison.Ordinal);
        Assert.Contains("Combination past buckling: not solved, model.second-order.buckled", table, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_wrong_with_the_frame_is_said_once_and_marks_every_combination()
    {
        var frame = new FrameBuilder { Section = new(1e3, 1e3, 1e3, 1e3) };
        int left = frame.Node(0, 0, 0, Freedoms.Shifts), right = frame.Node(2, 0, 0);
        frame.Member(left, right);
        frame.Push(right, fz: -1);
        var model = frame.Model(planar: true);
        var answer = FrameSolver.Solve(model with { Combinations = [new("a", [new CombinationPart(0, 1)]), new("b", [new CombinationPart(0, 2)])] });
        Assert.Empty(answer.Solved);
        Assert.Equal([(0, "model.mechanism"), (1, "model.mechanism")], answer.Unsolved);
        Assert.Single(answer.Diagnostics, found => found.Severity == Severity.Error);
    }

    private static (double Moment, double Fall) Case1(double p, int parts, bool shear)
    {
        var frame = new FrameBuilder { Section = Section(shear), Material = new(E, 11200) };
        int left = frame.Node(0, 0, 0, Freedoms.Shifts), right = frame.Node(L, 0, 0, Freedoms.Uy | Freedoms.Uz);
        int[] nodes = frame.Line(left, right, parts);
        for (int member = 0; member < parts; member++)
            frame.Spread(member, z: -W);
        frame.Push(right, fx: -p);
        var state = frame.Solve(FrameAnalysisKind.SecondOrder, planar: true);
        return (-state.At(parts / 2, end: false).MyNm, -state.Movement(nodes[parts / 2]).Z);
    }

    private static (double Moment, double Sway) Case2(double p, int parts, bool shear)
    {
        var frame = Cantilever(parts, shear, out int tip);
        frame.Push(tip, fz: -p, fx: 1);
        var state = frame.Solve(FrameAnalysisKind.SecondOrder, planar: true);
        return (-state.Reaction(0).AboutY, state.Movement(tip).X);
    }

    private static FrameBuilder Cantilever(int parts, bool shear, out int tip)
    {
        var frame = new FrameBuilder { Section = Section(shear), Material = new(E, 11200) };
        int foot = frame.Node(0, 0, 0, Freedoms.All);
        tip = frame.Node(0, 0, L);
        frame.Line(foot, tip, parts);
        return frame;
    }

    private static FrameSection Section(bool shear) => new(14.1, I, 51.4, 1.45, 0, shear ? 13.8 * 0.340 : 0);
}
