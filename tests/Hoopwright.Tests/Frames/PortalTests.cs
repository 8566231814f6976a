using Hoopwright.Frames;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Frames;

public sealed class PortalTests
{
    private const string Kleinlogel = "Kleinlogel, Rigid Frame Formulas, Ungar; Leontovich, Frames and Arches, McGraw-Hill 1959 (from memory; checked by an independent matrix solver)";
    private const string NoShortening = "bending only: shortening is made a billionth of it";
    private const double HeightM = 4, SpanM = 6;

    [Fact]
    public void Hinged_feet_uniform_load()
    {
        var state = Portal(Freedoms.Shifts, frame => frame.Spread(1, z: -10));
        Check("thrust", 5.192308, state.Reaction(0).X);
        Check("corner moment", 20.769231, state.At(1, end: false).MyNm);
        Check("middle moment", 24.230769, (10 * SpanM * SpanM / 8) - state.At(1, end: false).MyNm);
    }

    [Fact]
    public void Hinged_feet_push_at_the_eave()
    {
        var state = Portal(Freedoms.Shifts, frame => frame.Push(1, fx: 10));
        Check("thrust", -5, state.Reaction(0).X);
        Check("corner moment", 20, -state.At(1, end: false).MyNm);
        Check("upright reaction", 6.666667, state.Reaction(3).Z);
        Check("sway × EI", 186.666667, state.Movement(1).X);
    }

    [Fact]
    public void Fixed_feet_uniform_load()
    {
        var state = Portal(Freedoms.All, frame => frame.Spread(1, z: -10));
        Check("foot moment", 11.25, state.Reaction(0).AboutY);
        Check("corner moment", 22.5, state.At(1, end: false).MyNm);
        Check("middle moment", 22.5, (10 * SpanM * SpanM / 8) - state.At(1, end: false).MyNm);
        Check("thrust", 8.4375, state.Reaction(0).X);
    }

    [Fact]
    public void Fixed_feet_push_at_the_eave()
    {
        var state = Portal(Freedoms.All, frame => frame.Push(1, fx: 10));
        Check("foot moment", 12, -state.Reaction(0).AboutY);
        Check("corner moment", 8, -state.At(1, end: false).MyNm);
        Check("upright reaction", 2.666667, state.Reaction(3).Z);
        Check("sway × EI", 42.666667, state.Movement(1).X);
    }

    private static FrameState Portal(Freedoms feet, Action<FrameBuilder> load)
    {
        var frame = new FrameBuilder { Section = new(1e9, 1, 1, 1) };
        int left = frame.Node(0, 0, 0, feet), eave = frame.Node(0, 0, HeightM), far = frame.Node(SpanM, 0, HeightM), right = frame.Node(SpanM, 0, 0, feet);
        frame.Member(left, eave);
        frame.Member(eave, far);
        frame.Member(far, right);
        load(frame);
        return frame.Solve(planar: true);
    }

    private static void Check(string what, double expected, double actual) => Published.Check(Kleinlogel, what, expected, actual, 3e-7 * Math.Abs(expected), NoShortening);
}
