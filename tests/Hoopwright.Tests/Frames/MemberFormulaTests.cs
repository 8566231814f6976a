using Hoopwright.Frames;
using Hoopwright.Geometry;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Frames;

public sealed class MemberFormulaTests
{
    private const string Roark = "Roark's Formulas for Stress and Strain, 8th ed., Table 8.1, and AISC Steel Construction Manual, Table 3-23 (from memory)";
    private const string Exact = "one beam element is exact at its ends";
    private const double P = 7, W = 3, L = 4, Ei = 5e4;

    [Fact]
    public void A_cantilever_with_a_force_at_its_tip()
    {
        var (frame, nodes) = Beam(1, Freedoms.All, Freedoms.None);
        frame.Push(nodes[^1], fz: -P);
        var state = frame.Solve(planar: true);
        Check("moment PL", P * L, -state.Reaction(nodes[0]).AboutY);
        Check("deflection PL³/3EI", P * L * L * L / (3 * Ei), -state.Movement(nodes[^1]).Z);
        Check("slope PL²/2EI", P * L * L / (2 * Ei), state.Movement(nodes[^1]).AboutY);
    }

    [Fact]
    public void A_cantilever_with_a_uniform_load()
    {
        var (frame, nodes) = Beam(1, Freedoms.All, Freedoms.None);
        frame.Spread(0, z: -W);
        var state = frame.Solve(planar: true);
        Check("moment wL²/2", W * L * L / 2, -state.Reaction(nodes[0]).AboutY);
        Check("deflection wL⁴/8EI", W * L * L * L * L / (8 * Ei), -state.Movement(nodes[^1]).Z);
    }

    [Fact]
    public void A_beam_on_two_hinges()
    {
        var (frame, nodes) = Beam(2, Freedoms.Shifts, Freedoms.Shifts);
        Spread(frame, 2);
        var state = frame.Solve(planar: true);
        Check("moment wL²/8", W * L * L / 8, -state.At(0, end: true).MyNm);
        Check("deflection 5wL⁴/384EI", 5 * W * L * L * L * L / (384 * Ei), -state.Movement(nodes[1]).Z);
        (frame, nodes) = Beam(2, Freedoms.Shifts, Freedoms.Shifts);
        frame.Push(nodes[1], fz: -P);
        state = frame.Solve(planar: true);
        Check("moment PL/4", P * L / 4, -state.At(0, end: true).MyNm);
        Check("deflection PL³/48EI", P * L * L * L / (48 * Ei), -state.Movement(nodes[1]).Z);
    }

    [Fact]
    public void A_beam_built_in_at_both_ends()
    {
        var (frame, nodes) = Beam(2, Freedoms.All, Freedoms.All);
        Spread(frame, 2);
        var state = frame.Solve(planar: true);
        Check("end moment wL²/12", W * L * L / 12, -state.Reaction(nodes[0]).AboutY);
        Check("middle moment wL²/24", W * L * L / 24, -state.At(0, end: true).MyNm);
        Check("deflection wL⁴/384EI", W * L * L * L * L / (384 * Ei), -state.Movement(nodes[1]).Z);
        (frame, nodes) = Beam(2, Freedoms.All, Freedoms.All);
        frame.Push(nodes[1], fz: -P);
        state = frame.Solve(planar: true);
        Check("end moment PL/8", P * L / 8, -state.Reaction(nodes[0]).AboutY);
        Check("middle moment PL/8", P * L / 8, -state.At(0, end: true).MyNm);
        Check("deflection PL³/192EI", P * L * L * L / (192 * Ei), -state.Movement(nodes[1]).Z);
    }

    [Theory]
    [InlineData(0.25)]
    [InlineData(0.7)]
    public void A_built_in_beam_with_a_force_anywhere(double share)
    {
        double a = share * L, b = L - a;
        var frame = new FrameBuilder { Section = new(1e6, Ei, Ei, 1) };
        int left = frame.Node(0, 0, 0, Freedoms.All), loaded = frame.Node(a, 0, 0), right = frame.Node(L, 0, 0, Freedoms.All);
        frame.Member(left, loaded);
        frame.Member(loaded, right);
        frame.Push(loaded, fz: -P);
        var state = frame.Solve(planar: true);
        Check("left moment Pab²/L²", P * a * b * b / (L * L), -state.Reaction(left).AboutY);
        Check("right moment Pa²b/L²", P * a * a * b / (L * L), state.Reaction(right).AboutY);
    }

    [Fact]
    public void A_propped_cantilever()
    {
        const double Lowest = 0.4215;
        var frame = new FrameBuilder { Section = new(1e6, Ei, Ei, 1) };
        int prop = frame.Node(0, 0, 0, Freedoms.Shifts), low = frame.Node(Lowest * L, 0, 0), wall = frame.Node(L, 0, 0, Freedoms.All);
        frame.Member(prop, low);
        frame.Member(low, wall);
        Spread(frame, 2);
        var state = frame.Solve(planar: true);
        Check("moment wL²/8", W * L * L / 8, state.Reaction(wall).AboutY);
        Check("prop 3wL/8", 3 * W * L / 8, state.Reaction(prop).Z);
        Published.Check(Roark, "deflection wL⁴/185EI", W * L * L * L * L / (185 * Ei), -state.Movement(low).Z, 2e-3 * W * L * L * L * L / (185 * Ei), "185 is rounded from 184.6");
    }

    [Fact]
    public void Shear_adds_PL_over_GA()
    {
        var frame = new FrameBuilder { Section = new(1e6, Ei, Ei, 1, 20, 10), Material = new(1, 400) };
        int foot = frame.Node(0, 0, 0, Freedoms.All), tip = frame.Node(L, 0, 0);
        frame.Member(foot, tip);
        frame.Push(tip, fy: P, fz: -P);
        var state = frame.Solve();
        Check("along z", (P * L * L * L / (3 * Ei)) + (P * L / (400 * 10)), -state.Movement(tip).Z);
        Check("along y", (P * L * L * L / (3 * Ei)) + (P * L / (400 * 20)), state.Movement(tip).Y);
    }

    [Fact]
    public void A_warmed_bar_between_walls_pushes_with_EA_alpha_T()
    {
        var frame = new FrameBuilder { Section = new(2, Ei, Ei, 1), Material = new(3e5, 1e5, 1.2e-5) };
        frame.Member(frame.Node(0, 0, 0, Freedoms.All), frame.Node(L, 0, 0, Freedoms.All));
        frame.Warm(new(0, 30));
        Check("EA·α·ΔT", -3e5 * 2 * 1.2e-5 * 30, frame.Solve().At(0, end: false).NN);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_beam_warmer_on_top_bends_between_walls_and_bows_free(bool acrossZ)
    {
        const double RiseKPerM = 150, ExpansionPerK = 1.2e-5;
        var frame = new FrameBuilder { Section = new(2, Ei, 2 * Ei, 1), Material = new(1, 1, ExpansionPerK) };
        int left = frame.Node(0, 0, 0, Freedoms.All), right = frame.Node(L, 0, 0, Freedoms.All);
        frame.Member(left, right);
        frame.Warm(new(0, 0, acrossZ ? 0 : RiseKPerM, acrossZ ? RiseKPerM : 0));
        var ends = frame.Solve().At(0, end: false);
        Check("EI·α·ΔT/h", (acrossZ ? Ei : 2 * Ei) * ExpansionPerK * RiseKPerM, acrossZ ? -ends.MyNm : ends.MzNm);
        frame.Hold(right, Freedoms.None);
        var moved = frame.Solve().Movement(right);
        Check("curvature α·ΔT/h", -ExpansionPerK * RiseKPerM * L * L / 2, acrossZ ? moved.Z : moved.Y);
    }

    [Fact]
    public void A_tube_as_cantilever_in_digits()
    {
        const string Source = "closed form PL³/3EI with and without PL/GA, tube 42.164 × 2.108 mm; CalculiX 2.20 gave 25.0005";
        var tube = new RoundTube(Length.FromMillimetres(42.164), Length.FromMillimetres(2.108));
        Published.Check(Source, "area, mm²", 265.270, FrameSection.Of(tube).AreaM2 * 1e6, 6e-4, "printed digits");
        Published.Check(Source, "second moment, mm⁴", 53349.99, FrameSection.Of(tube).IyM4 * 1e12, 6e-3, "printed digits");
        foreach (var (shear, fallMm) in new[] { (false, 24.9922), (true, 25.0073) })
        {
            var frame = new FrameBuilder { Section = FrameSection.Of(tube, shear), Material = new(2e11, 1e11) };
            int foot = frame.Node(0, 0, 0, Freedoms.All), tip = frame.Node(2, 0, 0);
            frame.Member(foot, tip);
            frame.Push(tip, fz: -100);
            Published.Check(Source, "fall of the tip, mm", fallMm, -1000 * frame.Solve().Movement(tip).Z, 6e-5, "printed digits");
        }
    }

    [Fact]
    public void An_L_bracket_bends_and_twists()
    {
        const string Source = "closed form Pa³/3EI + PL³/3EI + Pa²L/GJ; CalculiX 2.20 gave 23.4364";
        var tube = new RoundTube(Length.FromMillimetres(42.164), Length.FromMillimetres(2.108));
        var frame = new FrameBuilder { Section = FrameSection.Of(tube), Material = new(2e11, 1e11) };
        int foot = frame.Node(0, 0, 0, Freedoms.All), corner = frame.Node(2, 0, 0), tip = frame.Node(2, 0, 1);
        frame.Member(foot, corner);
        frame.Member(corner, tip);
        frame.Push(tip, fy: 50);
        Published.Check(Source, "shift of the tip, mm", 23.4302, 1000 * frame.Solve().Movement(tip).Y, 6e-5, "printed digits");
    }

    [Fact]
    public void A_shaft_between_walls_shares_its_torques()
    {
        const string Source = "statics T1 = ΣT(L−a)/L; 6.07 and 8.93 in a public frame program's tests (github.com, Testing/test_torsion.py)";
        var frame = new FrameBuilder();
        int left = frame.Node(0, 0, 0, Freedoms.All), first = frame.Node(36, 0, 0), second = frame.Node(132, 0, 0), right = frame.Node(168, 0, 0, Freedoms.All);
        frame.Member(left, first);
        frame.Member(first, second);
        frame.Member(second, right);
        frame.Push(first, mx: 5);
        frame.Push(second, mx: 10);
        var state = frame.Solve();
        Published.Check(Source, "left", 6.07, -state.Reaction(left).AboutX, 0.005, "printed digits");
        Published.Check(Source, "right", 8.93, -state.Reaction(right).AboutX, 0.005, "printed digits");
    }

    private static (FrameBuilder Frame, int[] Nodes) Beam(int parts, Freedoms left, Freedoms right)
    {
        var frame = new FrameBuilder { Section = new(1e6, Ei, Ei, 1) };
        int start = frame.Node(0, 0, 0, left), end = frame.Node(L, 0, 0, right);
        return (frame, frame.Line(start, end, parts));
    }

    private static void Spread(FrameBuilder frame, int members)
    {
        for (int member = 0; member < members; member++)
            frame.Spread(member, z: -W);
    }

    private static void Check(string what, double expected, double actual) => Published.Check(Roark, what, expected, actual, 1e-9 * Math.Abs(expected), Exact);
}
