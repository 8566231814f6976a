using Hoopwright.Frames;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Frames;

/// <summary>Buckling of columns, portals and arches under loads that keep their direction; EI is 1.</summary>
public sealed class StabilityTests
{
    private const string Theory = "Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., 1961 (from memory)";
    private const string Independent = "an independent matrix solver, consistent K_G, the same elements";
    private const string Outside = "CalculiX 2.20, B32R";
    private const string PrintedDigits = "printed digits";

    [Theory]
    [InlineData("cantilever", 1, 2.48596)]
    [InlineData("cantilever", 2, 2.46866)]
    [InlineData("cantilever", 4, 2.46748)]
    [InlineData("cantilever", 8, 2.46741)]
    [InlineData("fixed-pinned", 1, 30.0)]
    [InlineData("fixed-pinned", 2, 20.7088)]
    [InlineData("fixed-pinned", 4, 20.2322)]
    [InlineData("fixed-pinned", 8, 20.1935)]
    [InlineData("fixed-fixed", 2, 40.0)]
    [InlineData("fixed-fixed", 4, 39.7754)]
    [InlineData("fixed-fixed", 8, 39.4986)]
    public void A_column_of_few_elements_errs_as_it_must(string ends, int parts, double factor) =>
        Published.Check(Independent, $"P L²/EI, {ends}, {parts} elements", factor, Column(ends, parts), 5e-6 * factor, PrintedDigits);

    [Theory]
    [InlineData("cantilever", 2.467401)]
    [InlineData("pinned", 9.869604)]
    [InlineData("fixed-pinned", 20.190729)]
    [InlineData("fixed-fixed", 39.478418)]
    public void A_column_of_many_elements_buckles_by_the_closed_form(string ends, double factor) =>
        Published.Check(Theory, $"P L²/EI, {ends}", factor, Column(ends, 40), 5e-6 * factor, "40 elements");

    [Fact]
    public void A_cantilever_buckles_under_its_own_weight()
    {
        var frame = new FrameBuilder { Section = new(1e6, 1, 1, 1) };
        frame.Line(frame.Node(0, 0, 0, Freedoms.All), frame.Node(0, 0, 1), 80);
        for (int member = 0; member < 80; member++)
            frame.Spread(member, z: -1);
        Published.Check(Theory, "qL·L²/EI", 7.8373, frame.Buckle(planar: true)[0], 6e-4, "80 elements, axial force even along each");
    }

    [Theory]
    [InlineData(1.0, false, 1.821293)]
    [InlineData(1.0, true, 7.379154)]
    [InlineData(1.5, false, 1.599192)]
    [InlineData(1.5, true, 6.607118)]
    public void A_portal_sways(double spanOverHeight, bool fixedFeet, double squared)
    {
        var frame = new FrameBuilder { Section = new(1e7, 1, 1, 1) };
        var feet = fixedFeet ? Freedoms.All : Freedoms.Shifts;
        int left = frame.Node(0, 0, 0, feet), eave = frame.Node(0, 0, 1), far = frame.Node(spanOverHeight, 0, 1), right = frame.Node(spanOverHeight, 0, 0, feet);
        frame.Line(left, eave, 8);
        frame.Line(eave, far, 8);
        frame.Line(far, right, 8);
        frame.Push(eave, fz: -1);
        frame.Push(far, fz: -1);
        double found = frame.Buckle(planar: true)[0];
        Published.Check(Theory, $"P h²/EI, span/height {spanOverHeight}, fixed {fixedFeet}", squared, found, 3e-5 * squared, "8 elements a member");
        if (spanOverHeight == 1)
            Published.Check(Independent, $"P h²/EI, fixed {fixedFeet}", fixedFeet ? 7.379255 : 1.821294, found, 2e-6 * squared, PrintedDigits);
    }

    [Theory]
    [InlineData(30, false, 35.940)]
    [InlineData(60, false, 8.727)]
    [InlineData(90, false, 3.272)]
    [InlineData(30, true, 74.956)]
    [InlineData(60, true, 19.588)]
    [InlineData(90, true, 9.001)]
    public void An_arch_buckles_under_a_radial_load_that_keeps_its_direction(double halfDeg, bool fixedFeet, double factor) =>
        Published.Check(Independent, $"q R³/EI, half angle {halfDeg}°, fixed {fixedFeet}", factor, Radial(halfDeg, fixedFeet, 120), 6e-4, PrintedDigits);

    [Theory]
    [InlineData(30, false, 35)]
    [InlineData(60, false, 8)]
    [InlineData(90, false, 3)]
    [InlineData(90, true, 8)]
    public void A_load_that_keeps_its_direction_does_not_give_the_value_for_pressure(double halfDeg, bool fixedFeet, double pressure) =>
        Assert.True(Radial(halfDeg, fixedFeet, 120) > 1.02 * pressure);

    [Theory]
    [InlineData(8, 3.4207)]
    [InlineData(12, 3.3372)]
    [InlineData(16, 3.3082)]
    [InlineData(24, 3.2877)]
    [InlineData(48, 3.2753)]
    public void A_hinged_semicircle_of_few_chords_errs_as_it_must(int chords, double factor) =>
        Published.Check(Independent, $"q R³/EI, {chords} chords", factor, Radial(90, fixedFeet: false, chords), 6e-5, PrintedDigits);

    [Theory]
    [InlineData(false, 3.4923, 3.4910)]
    [InlineData(true, 10.2483, 10.2495)]
    public void A_semicircle_buckles_under_a_load_on_its_plan(bool fixedFeet, double independent, double outside)
    {
        var frame = new FrameBuilder { Section = new(1e6, 1, 1, 1) };
        frame.Arc(1, Math.PI, 0, 48, fixedFeet ? Freedoms.All : Freedoms.Shifts);
        for (int member = 0; member < 48; member++)
            frame.Spread(member, z: -1, per: LoadPer.Projection);
        double found = frame.Buckle(planar: true)[0];
        Published.Check(Independent, "q R³/EI", independent, found, 1e-3 * independent, "a tube that shortens a little against one that does not");
        Published.Check(Outside, "q R³/EI", outside, found, 0.005 * outside, "curved solid beams against chords");
    }

    [Theory]
    [InlineData(0.1, 29.07, 60.93)]
    [InlineData(0.2, 46.10, 103.11)]
    [InlineData(0.3, 49.46, 120.04)]
    [InlineData(0.4, 45.01, 117.51)]
    [InlineData(0.5, 38.20, 105.30)]
    [InlineData(0.6, 31.63, 90.52)]
    [InlineData(0.8, 21.61, 64.63)]
    [InlineData(1.0, 15.25, 46.65)]
    public void A_parabolic_arch_buckles_under_a_load_on_its_plan(double rise, double hinged, double built)
    {
        foreach (var (feet, factor) in new[] { (Freedoms.Shifts, hinged), (Freedoms.All, built) })
        {
            var frame = new FrameBuilder();
            Parabolas.Add(frame, rise, 80, feet, _ => new(1e6, 1, 1, 1));
            for (int member = 0; member < 80; member++)
                frame.Spread(member, z: -1, per: LoadPer.Projection);
            Published.Check(Independent, $"q l³/EI, rise {rise}, {feet}", factor, frame.Buckle(planar: true)[0], 0.002 * factor, "another mesh of the same arch");
        }
    }

    [Theory]
    [InlineData(4, 1.0154)]
    [InlineData(8, 1.0039)]
    [InlineData(16, 1.0010)]
    public void A_cantilever_bent_the_strong_way_buckles_sideways(int parts, double ratio)
    {
        var frame = new FrameBuilder { Section = new(1e6, 1e6, 1, 1) };
        int foot = frame.Node(0, 0, 0, Freedoms.All), tip = frame.Node(1, 0, 0);
        frame.Line(foot, tip, parts);
        frame.Push(tip, fz: -1);
        Published.Check(
            "Timoshenko and Gere, ch. 6: P = 4.0126·√(EI·GJ)/L² (from memory); mesh ratios by an independent matrix solver",
            "P over the closed form", ratio, frame.Buckle()[0] / 4.0126, 2e-4, "printed to four decimals");
    }

    [Theory]
    [InlineData(60, 6.2136, 6.2141)]
    [InlineData(90, 1.6981, 1.6982)]
    [InlineData(120, 0.4401, 0.4402)]
    [InlineData(150, 0.0707, 0.0707)]
    public void An_arch_falls_out_of_its_plane(double openingDeg, double closedForm, double independent)
    {
        const int Chords = 48;
        const double Stub = 0.01;
        double half = openingDeg * Math.PI / 360;
        var frame = new FrameBuilder { Section = new(1e6, 1, 1, 1 / 1.3), Material = new(1, 1) };
        int[] nodes = frame.Arc(1, (Math.PI / 2) + half, (Math.PI / 2) - half, Chords, Freedoms.None);
        PushInward(frame, Chords);
        // Held against twist and free about the radius: a short stiff stub along the tangent, hinged about its local z, which is the radius.
        frame.Section = new(1e6, 1e3, 1e3, 1e3);
        foreach (var (end, angle, sense) in new[] { (nodes[0], (Math.PI / 2) + half, -1), (nodes[^1], (Math.PI / 2) - half, 1) })
        {
            int anchor = frame.Node(Math.Cos(angle) + (sense * Stub * Math.Sin(angle)), 0, Math.Sin(angle) - (sense * Stub * Math.Cos(angle)), Freedoms.All);
            frame.Member(anchor, end, releaseTo: Freedoms.Rz);
        }
        double found = frame.Buckle()[0];
        Published.Check(
            "Timoshenko and Gere, ch. 7: q = (EI/R³)(π²−A²)²/(A²(π²+A²·EI/GJ)) (from memory)",
            $"q R³/EI, opening {openingDeg}°", closedForm, found, (0.002 * closedForm) + 1e-4, "48 chords; held through short stubs");
        Published.Check(Independent, $"q R³/EI, opening {openingDeg}°", independent, found, (0.002 * independent) + 1e-4, "held through short stubs");
    }

    private static double Column(string ends, int parts)
    {
        var frame = new FrameBuilder { Section = new(1e7, 1, 1, 1) };
        var (foot, top) = ends switch
        {
            "cantilever" => (Freedoms.All, Freedoms.None),
            "pinned" => (Freedoms.Shifts, Freedoms.Ux | Freedoms.Uy),
            "fixed-pinned" => (Freedoms.All, Freedoms.Ux | Freedoms.Uy),
            _ => (Freedoms.All, Freedoms.Ux | Freedoms.Uy | Freedoms.Turns),
        };
        int tip = frame.Node(0, 0, 1, top);
        frame.Line(frame.Node(0, 0, 0, foot), tip, parts);
        frame.Push(tip, fz: -1);
        return frame.Buckle(planar: true)[0];
    }

    private static double Radial(double halfDeg, bool fixedFeet, int chords)
    {
        double half = halfDeg * Math.PI / 180;
        var frame = new FrameBuilder { Section = new(1e7, 1, 1, 1) };
        frame.Arc(1, (Math.PI / 2) + half, (Math.PI / 2) - half, chords, fixedFeet ? Freedoms.All : Freedoms.Shifts);
        PushInward(frame, chords);
        return frame.Buckle(planar: true)[0];
    }

    /// <summary>A radial load of 1 along an arc.</summary>
    private static void PushInward(FrameBuilder frame, int members)
    {
        for (int member = 0; member < members; member++)
            frame.Spread(member, z: -1, frame: LoadFrame.Member);
    }
}
