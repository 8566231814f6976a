using CsCheck;
using Hoopwright.Diagnostics;
using Hoopwright.Frames;

namespace Hoopwright.Tests.Frames;

public sealed class FrameBehaviourTests
{
    private const double Ei = 5e4;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Halving_the_chords_of_an_arch_quarters_the_error(bool secondOrder)
    {
        var kind = secondOrder ? FrameAnalysisKind.SecondOrder : FrameAnalysisKind.Linear;
        double[] falls = [.. new[] { 8, 16, 32, 64 }.Select(chords => Fall(chords, kind))];
        double last = (falls[1] - falls[2]) / (falls[2] - falls[3]);
        Assert.InRange(last, 3.8, 4.2);
    }

    [Fact]
    public void A_symmetric_frame_under_a_symmetric_load_moves_symmetrically() => Gen.Select(Gen.Int[4, 30], Gen.Double[0.2, 1.5], Gen.Double[-500, 500], Gen.Double[0, 3000]).Sample(
        (chords, half, load, springs) =>
        {
            var frame = Arch(2 * chords, half, out int[] nodes);
            frame.Spring(nodes[0], new(0, 0, 0, 0, springs, 0));
            frame.Spring(nodes[^1], new(0, 0, 0, 0, springs, 0));
            for (int member = 0; member < 2 * chords; member++)
                frame.Spread(member, z: load, per: LoadPer.Projection);
            var state = frame.Solve(FrameAnalysisKind.Linear, planar: true);
            double greatest = Math.Max(1e-300, state.Displacements.Max(Math.Abs));
            for (int at = 0; at <= chords; at++)
            {
                var (left, right) = (state.Movement(nodes[at]), state.Movement(nodes[(2 * chords) - at]));
                Assert.InRange(Math.Abs(left.X + right.X), 0, 1e-7 * greatest);
                Assert.InRange(Math.Abs(left.Z - right.Z), 0, 1e-7 * greatest);
            }
        },
        iter: 100, threads: 1);

    [Theory]
    [InlineData(1000, false)]
    [InlineData(-1000, true)]
    public void A_tie_that_only_takes_tension_slackens_when_pressed(double push, bool slack)
    {
        var frame = Braced(tensionOnly: true, push);
        var state = frame.Solve();
        double tieN = state.At(3, end: false).NN;
        if (slack)
            Assert.Equal(0, tieN);
        else
            Assert.True(tieN > 0);
        var without = slack ? Braced(tensionOnly: null, push).Solve() : Braced(tensionOnly: false, push).Solve();
        Assert.Equal(without.Movement(1).X, state.Movement(1).X, 1e-9 * Math.Abs(without.Movement(1).X));
    }

    [Fact]
    public void A_pair_of_ties_works_one_at_a_time()
    {
        var frame = Braced(tensionOnly: true, 1000);
        int other = frame.Member(1, 3, Freedoms.Turns & ~Freedoms.Rx, Freedoms.Turns & ~Freedoms.Rx, tensionOnly: true);
        var state = frame.Solve();
        Assert.Equal(0, state.At(other, end: false).NN);
        Assert.True(state.At(3, end: false).NN > 0);
    }

    [Fact]
    public void A_rigid_arm_acts_as_a_stiff_member_does()
    {
        var arm = new FrameBuilder { Section = new(1e3, Ei, 2 * Ei, Ei), Material = new(1, 1) };
        int foot = arm.Node(0, 0, 0, Freedoms.All), tip = arm.Node(2, 0.3, 0.5);
        arm.Member(foot, tip);
        arm.Change(0, member => member with { OffsetToM = new(0, -0.3, -0.5) });
        arm.Push(tip, fx: 20, fy: 30, fz: -40, my: 5);

        var stiff = new FrameBuilder { Section = new(1e3, Ei, 2 * Ei, Ei), Material = new(1, 1) };
        int root = stiff.Node(0, 0, 0, Freedoms.All), end = stiff.Node(2, 0, 0), top = stiff.Node(2, 0.3, 0.5);
        stiff.Member(root, end);
        stiff.Section = new(1e9, Ei * 1e6, Ei * 1e6, Ei * 1e6);
        stiff.Member(end, top);
        stiff.Push(top, fx: 20, fy: 30, fz: -40, my: 5);

        var (found, expected) = (arm.Solve().Movement(tip), stiff.Solve().Movement(top));
        for (int freedom = 0; freedom < 6; freedom++)
            Assert.Equal(expected[freedom], found[freedom], 1e-5);
    }

    [Fact]
    public void A_hinge_is_the_same_whichever_member_lets_go()
    {
        double[] Moved(bool first)
        {
            var frame = new FrameBuilder { Section = new(1e6, Ei, Ei, Ei) };
            int left = frame.Node(0, 0, 0, Freedoms.All), middle = frame.Node(2, 0, 0), right = frame.Node(5, 0, 0, Freedoms.All);
            frame.Member(left, middle, releaseTo: first ? Freedoms.Ry : Freedoms.None);
            frame.Member(middle, right, releaseFrom: first ? Freedoms.None : Freedoms.Ry);
            frame.Spread(0, z: -70);
            frame.Push(middle, fz: -300);
            var state = frame.Solve();
            return [state.Movement(middle).Z, state.Reaction(left).AboutY, state.Reaction(right).AboutY];
        }
        double[] one = Moved(true), two = Moved(false);
        for (int at = 0; at < 3; at++)
            Assert.Equal(one[at], two[at], 1e-9 * Math.Abs(one[at]));
    }

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e3)]
    [InlineData(1e9)]
    public void A_spring_gives_way_by_force_over_stiffness(double stiffnessNPerM)
    {
        var frame = new FrameBuilder { Section = new(1e3, Ei, Ei, Ei) };
        int foot = frame.Node(0, 0, 0, Freedoms.Ux | Freedoms.Uy | Freedoms.Turns), top = frame.Node(0, 0, 1);
        frame.Member(foot, top);
        frame.Spring(foot, new(0, 0, stiffnessNPerM, 0, 0, 0));
        frame.Push(top, fz: -12);
        var state = frame.Solve();
        Assert.Equal(-12 / stiffnessNPerM, state.Movement(foot).Z, 1e-9 * 12 / stiffnessNPerM);
        Assert.Equal(12, state.Reaction(foot).Z, 1e-9);
    }

    [Fact]
    public void A_sunken_support_moves_a_frame_without_strain_where_it_can_follow()
    {
        var frame = new FrameBuilder { Section = new(1e3, Ei, Ei, Ei) };
        int left = frame.Node(0, 0, 0, Freedoms.Shifts | Freedoms.Rx | Freedoms.Rz), right = frame.Node(4, 0, 0, Freedoms.Uz | Freedoms.Uy);
        int[] nodes = frame.Line(left, right, 2);
        frame.Shift(right, new(0, 0, -0.02, 0, 0, 0));
        var state = frame.Solve();
        Assert.Equal(-0.01, state.Movement(nodes[1]).Z, 1e-12);
        Assert.InRange(state.SectionForces.Max(Math.Abs), 0, 1e-9);
    }

    [Fact]
    public void A_mechanism_names_the_nodes_and_directions_that_are_free()
    {
        var frame = new FrameBuilder { Section = new(1e3, Ei, Ei, Ei) };
        int left = frame.Node(0, 0, 0, Freedoms.Shifts), middle = frame.Node(2, 0, 0), right = frame.Node(4, 0, 0, Freedoms.Shifts);
        frame.Member(left, middle, releaseTo: Freedoms.Ry);
        frame.Member(middle, right);
        frame.Push(middle, fz: -1);
        var answer = FrameSolver.Solve(frame.Model(planar: true));
        Assert.Empty(answer.States);
        var found = Assert.Single(answer.Diagnostics, each => each.Severity == Severity.Error);
        Assert.Equal("model.mechanism", found.Code);
        Assert.Contains("node 2 uz", found.Seen, StringComparison.Ordinal);
    }

    private static double Fall(int chords, FrameAnalysisKind kind)
    {
        var frame = Arch(chords, Math.PI / 2, out int[] nodes);
        for (int member = 0; member < chords; member++)
            frame.Spread(member, z: -0.5 * Ei, per: LoadPer.Projection);
        return frame.Solve(kind, planar: true).Movement(nodes[chords / 2]).Z;
    }

    private static FrameBuilder Arch(int chords, double halfRad, out int[] nodes)
    {
        var frame = new FrameBuilder { Section = new(1e4 * Ei, Ei, Ei, Ei) };
        nodes = frame.Arc(1, (Math.PI / 2) + halfRad, (Math.PI / 2) - halfRad, chords, Freedoms.Shifts);
        return frame;
    }

    /// <summary>A portal of soft joints pushed sideways, with a tie across it; null leaves the tie out.</summary>
    private static FrameBuilder Braced(bool? tensionOnly, double push)
    {
        var frame = new FrameBuilder { Section = new(1e6, Ei, Ei, Ei) };
        int left = frame.Node(0, 0, 0, Freedoms.All), eave = frame.Node(0, 0, 2), far = frame.Node(3, 0, 2), right = frame.Node(3, 0, 0, Freedoms.All);
        frame.Member(left, eave);
        frame.Member(eave, far);
        frame.Member(far, right);
        if (tensionOnly is { } only)
            frame.Member(left, far, Freedoms.Ry | Freedoms.Rz, Freedoms.Ry | Freedoms.Rz, only);
        frame.Push(eave, fx: push);
        return frame;
    }
}
