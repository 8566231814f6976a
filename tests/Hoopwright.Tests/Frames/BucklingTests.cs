using Hoopwright.Frames;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Frames;

public sealed class BucklingTests
{
    private const string Bars = "Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., 1961, ch. 2 (from memory); consistent K_G values by an independent matrix solver";

    [Theory]
    [InlineData(1, 12.0)]
    [InlineData(2, 9.94385)]
    [InlineData(4, 9.87466)]
    [InlineData(8, 9.86993)]
    public void A_pinned_column_buckles_as_the_consistent_matrix_says(int parts, double factor)
    {
        var frame = new FrameBuilder { Section = new(1e3, 1, 1, 1) };
        int foot = frame.Node(0, 0, 0, Freedoms.Shifts), top = frame.Node(1, 0, 0, Freedoms.Uz | Freedoms.Uy);
        frame.Line(foot, top, parts);
        frame.Push(top, fx: -1);
        Published.Check(Bars, "P L²/EI, pinned", factor, frame.Buckle(planar: true)[0], 6e-5 * factor, "printed to six digits; axial shortening is in the model");
    }

    [Theory]
    [InlineData(true, 4, 1.0259)]
    [InlineData(true, 8, 1.0064)]
    [InlineData(true, 16, 1.0016)]
    [InlineData(false, 4, 1.0259)]
    [InlineData(false, 16, 1.0016)]
    public void A_beam_bent_the_strong_way_buckles_sideways(bool aboutY, int parts, double ratio)
    {
        const double Strong = 1e6;
        var frame = new FrameBuilder { Section = aboutY ? new(1e6, Strong, 1, 1) : new(1e6, 1, Strong, 1) };
        int start = frame.Node(0, 0, 0, Freedoms.Shifts | Freedoms.Rx), end = frame.Node(1, 0, 0, Freedoms.Uy | Freedoms.Uz | Freedoms.Rx);
        frame.Line(start, end, parts);
        frame.Push(start, my: aboutY ? 1 : 0, mz: aboutY ? 0 : 1);
        frame.Push(end, my: aboutY ? -1 : 0, mz: aboutY ? 0 : -1);
        Published.Check(
            "Timoshenko and Gere, ch. 6: M = π/L·√(EI·GJ) (from memory); mesh ratios by an independent matrix solver",
            "M over the closed form", ratio, frame.Buckle()[0] / Math.PI, 1e-4, "printed to four decimals");
    }
}
