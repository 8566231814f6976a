using Hoopwright.Frames;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Frames;

/// <summary>Arches of radius or span 1, EI 1, loads 1, as chains of chords that are stiff along themselves. Sagging moments count positive.</summary>
public sealed class ArchTests
{
    private const string Semicircle = "Roark's Formulas for Stress and Strain, 8th ed., Tables 9.2 and 9.3; Leontovich, Frames and Arches (from memory; digits by quadrature)";
    private const string Circular = "an independent solver, 400 chords, bending only";
    private const string Parabola = "Leontovich, Frames and Arches; Kleinlogel (from memory; checked by quadrature)";
    private const string ChordError = "an independent solver, the same chords and loads";
    private const string Many = "600 chords leave a hundred-thousandth";
    private const int Chords = 600;

    [Theory]
    [InlineData(false, 0.318310, 0, 0.181690, 0.0189423)]
    [InlineData(true, 0.459138, 0.110607, 0.151468, 0.011662)]
    public void A_semicircle_with_a_force_at_the_crown(bool fixedFeet, double thrust, double atBase, double atCrown, double fall) =>
        Check("crown P", fixedFeet, frame => frame.Push(Chords / 2, fz: -1), thrust, atBase, atCrown, fall);

    [Theory]
    [InlineData(false, 0.424413, 0, 0.075587, 0.013825)]
    [InlineData(true, 0.560117, 0.106582, 0.046464, 0.006810)]
    public void A_semicircle_with_a_load_on_its_plan(bool fixedFeet, double thrust, double atBase, double atCrown, double fall) =>
        Check("w on projection", fixedFeet, frame => Spread(frame, 0, Chords, LoadPer.Projection), thrust, atBase, atCrown, fall);

    [Theory]
    [InlineData(false, 0.500000, 0, 0.070796, 0.013455)]
    [InlineData(true, 0.639490, 0.109555, 0.040862, 0.006244)]
    public void A_semicircle_under_its_own_weight(bool fixedFeet, double thrust, double atBase, double atCrown, double fall) =>
        Check("q along arc", fixedFeet, frame => Spread(frame, 0, Chords, LoadPer.Length), thrust, atBase, atCrown, fall);

    [Theory]
    [InlineData(false, 0.212207, 0, 0, 0.037793, 0.75)]
    [InlineData(true, 0.280059, 0.015497, 0.091084, 0.023232, 0.787793)]
    public void A_semicircle_with_a_load_on_its_left_half(bool fixedFeet, double thrust, double left, double right, double atCrown, double upLeft)
    {
        var state = Solve(fixedFeet, frame => Spread(frame, 0, Chords / 2, LoadPer.Projection));
        Close("thrust", thrust, state.Reaction(0).X);
        Close("V left", upLeft, state.Reaction(0).Z);
        Close("M left", left, Sag(state, 0, end: false));
        Close("M right", right, Sag(state, Chords - 1, end: true));
        Close("M crown", atCrown, Sag(state, Chords / 2, end: false));
    }

    [Fact]
    public void A_semicircle_pushed_sideways_at_the_crown()
    {
        var state = Solve(fixedFeet: false, frame => frame.Push(Chords / 2, fx: 1));
        Close("H", -0.5, state.Reaction(0).X);
        Close("V", -0.5, state.Reaction(0).Z);
        Close("V far", 0.5, state.Reaction(Chords).Z);
        Close("M crown", 0, Sag(state, Chords / 2, end: false));
        Close("M at 45°", 0.207107, Math.Abs(Sag(state, Chords / 4, end: false)));
        Close("greatest M", 0.207107, Enumerable.Range(0, Chords).Max(member => Math.Abs(Sag(state, member, end: false))));
    }

    [Theory]
    [InlineData(false, 1.273240)]
    [InlineData(true, 6.721406)]
    public void A_warmed_semicircle(bool fixedFeet, double thrust)
    {
        var frame = Arch(fixedFeet, Math.PI, new(1e8, 1, 1, 1), new(1, 1, 1));
        for (int member = 0; member < Chords; member++)
            frame.Warm(new(member, 1e-3));
        var state = frame.Solve(planar: true);
        Close("thrust", thrust, state.Reaction(0).X * 1e3);
        if (!fixedFeet)
            Close("M crown", -thrust, Sag(state, Chords / 2, end: false) * 1e3);
    }

    [Fact]
    public void The_greatest_hogging_of_a_hinged_semicircle_stands_at_25_degrees()
    {
        var state = Solve(fixedFeet: false, frame => Spread(frame, 0, Chords, LoadPer.Projection));
        int place = Enumerable.Range(0, Chords / 2).MinBy(member => Sag(state, member, end: false));
        Close("M", -0.090063, Sag(state, place, end: false));
        Published.Check(Semicircle, "angle, °", 25.114, 180.0 * place / Chords, 0.16, "nodes stand 0.3° apart");
    }

    [Fact]
    public void A_ring_pressed_between_two_forces()
    {
        const string Ring = "Roark's Formulas for Stress and Strain, 8th ed., Table 9.2 case 1 (from memory)";
        var frame = new FrameBuilder { Section = new(1e8, 1, 1, 1) };
        for (int at = 0; at < Chords; at++)
            frame.Node(Math.Sin(2 * Math.PI * at / Chords), 0, -Math.Cos(2 * Math.PI * at / Chords));
        for (int at = 0; at < Chords; at++)
            frame.Member(at, (at + 1) % Chords);
        frame.Hold(0, Freedoms.Ux | Freedoms.Uz);
        frame.Hold(Chords / 2, Freedoms.Ux);
        frame.Push(Chords / 2, fz: -1);
        var state = frame.Solve(planar: true);
        Published.Check(Ring, "M under the load", 0.318310, Math.Abs(state.At(Chords / 2, end: false).MyNm), 3e-5, Many);
        Published.Check(Ring, "M at the sides", 0.181690, Math.Abs(state.At(Chords / 4, end: false).MyNm), 3e-5, Many);
        Published.Check(Ring, "diameter along", 0.148780, -state.Movement(Chords / 2).Z, 3e-5, Many);
        Published.Check(Ring, "diameter across", 0.136620, state.Movement(Chords / 4).X - state.Movement(3 * Chords / 4).X, 3e-5, Many);
    }

    [Theory]
    [InlineData(0.1, 1.24284, 0.00072, 1.93673, 0.05633, 1.25708, 0.00114, 0.00043, 2.34111, 0.03231, 0.04820)]
    [InlineData(0.2, 0.61052, 0.00290, 0.94436, 0.06113, 0.63880, 0.00451, 0.00175, 1.16686, 0.03545, 0.05208)]
    [InlineData(0.3, 0.39465, 0.00661, 0.60412, 0.06876, 0.43659, 0.00998, 0.00400, 0.77425, 0.04048, 0.05821)]
    [InlineData(0.4, 0.28270, 0.01192, 0.42797, 0.07881, 0.33784, 0.01741, 0.00727, 0.57742, 0.04719, 0.06622)]
    [InlineData(0.5, 0.21221, 0.01890, 0.31831, 0.09084, 0.28006, 0.02664, 0.01162, 0.45914, 0.05530, 0.07573)]
    public void Circular_arches_of_span_1(
        double rise, double h2W, double c2W, double h2P, double c2P, double hW, double bW, double cW, double hP, double bP, double cP)
    {
        const int N = 400;
        double radius = ((0.25 + (rise * rise)) / (2 * rise)), half = rise == 0.5 ? Math.PI / 2 : Math.Asin(0.5 / radius);
        foreach (var (fixedFeet, load, thrust, atBase, atCrown) in new[] { (false, "w", h2W, 0, c2W), (false, "P", h2P, 0, c2P), (true, "w", hW, bW, cW), (true, "P", hP, bP, cP) })
        {
            var frame = new FrameBuilder { Section = new(1e9, 1, 1, 1) };
            frame.Arc(radius, (Math.PI / 2) + half, (Math.PI / 2) - half, N, fixedFeet ? Freedoms.All : Freedoms.Shifts);
            if (load == "w")
                Spread(frame, 0, N, LoadPer.Projection);
            else
                frame.Push(N / 2, fz: -1);
            var state = frame.Solve(planar: true);
            string what = $"rise {rise}, {(fixedFeet ? "fixed" : "hinged")}, {load}";
            Published.Check(Circular, what + ", H", thrust, state.Reaction(0).X, 3e-5 * thrust, "printed to five decimals");
            Published.Check(Circular, what + ", M crown", atCrown, Sag(state, N / 2, end: false), 1.1e-5, "printed to five decimals");
            if (fixedFeet)
                Published.Check(Circular, what + ", M base", atBase, Sag(state, 0, end: false), 1.1e-5, "printed to five decimals");
        }
    }

    [Theory]
    [InlineData(6, 0.44399, 0.07892)]
    [InlineData(8, 0.43538, 0.09100)]
    [InlineData(12, 0.42927, 0.09965)]
    [InlineData(16, 0.42714, 0.10268)]
    [InlineData(24, 0.42563, 0.10485)]
    [InlineData(32, 0.42510, 0.10561)]
    [InlineData(48, 0.42472, 0.10615)]
    [InlineData(96, 0.42449, 0.10647)]
    public void A_semicircle_of_few_chords_errs_as_it_must(int chords, double thrust, double atBase)
    {
        foreach (bool fixedFeet in (bool[])[false, true])
        {
            var frame = new FrameBuilder { Section = new(1e8, 1, 1, 1) };
            frame.Arc(1, Math.PI, 0, chords, fixedFeet ? Freedoms.All : Freedoms.Shifts);
            Spread(frame, 0, chords, LoadPer.Projection);
            var state = frame.Solve(planar: true);
            if (fixedFeet)
                Published.Check(ChordError, $"M base, {chords} chords", atBase, Sag(state, 0, end: false), 6e-6, "printed to five decimals");
            else
                Published.Check(ChordError, $"H, {chords} chords", thrust, state.Reaction(0).X, 6e-6, "printed to five decimals");
        }
    }

    [Theory]
    [InlineData(false, 25.0 / 128, 0, 7.0 / 128, 15.0 / 8)]
    [InlineData(true, 15.0 / 64, 1.0 / 32, 3.0 / 64, 45.0 / 4)]
    public void A_parabola_whose_section_grows_with_its_slope(bool fixedFeet, double crownThrust, double crownBase, double crown, double warm)
    {
        const double Rise = 0.4;
        const int N = 400;
        var full = Solve(frame => Spread(frame, 0, N, LoadPer.Projection));
        Close("full load, H", 1 / (8 * Rise), full.Reaction(0).X);
        Published.Check(Parabola, "full load, M", 0, Enumerable.Range(0, N).Max(member => Math.Abs(Sag(full, member, end: false))), 2e-5, "of wL²; 400 chords");
        var half = Solve(frame => Spread(frame, 0, N / 2, LoadPer.Projection));
        Close("half load, H", 1 / (16 * Rise), half.Reaction(0).X);
        Close("half load, M crown", 0, Sag(half, N / 2, end: false));
        if (fixedFeet)
            Close("half load, M base", -1.0 / 64, Sag(half, 0, end: false));
        else
            Close("half load, M quarter", 1.0 / 64, Sag(half, N / 4, end: false));
        var push = Solve(frame => frame.Push(N / 2, fz: -1));
        Close("crown P, H", crownThrust / Rise, push.Reaction(0).X);
        Close("crown P, M crown", crown, Sag(push, N / 2, end: false));
        Close("crown P, M base", crownBase, Sag(push, 0, end: false));
        var warmed = Solve(frame =>
        {
            for (int member = 0; member < N; member++)
                frame.Warm(new(member, 1e-3));
        });
        Close("warmed, H", warm / (Rise * Rise), 1e3 * warmed.Reaction(0).X);

        FrameState Solve(Action<FrameBuilder> load)
        {
            var frame = new FrameBuilder { Material = new(1, 1, 1) };
            Parabolas.Add(frame, Rise, N, fixedFeet ? Freedoms.All : Freedoms.Shifts, secant => new(1e8, secant, secant, 1));
            load(frame);
            return frame.Solve(planar: true);
        }

        static void Close(string what, double expected, double actual) => Published.Check(Parabola, what, expected, actual, (1e-4 * Math.Abs(expected)) + 1e-6, "400 chords");
    }

    private static void Check(string load, bool fixedFeet, Action<FrameBuilder> put, double thrust, double atBase, double atCrown, double fall)
    {
        var state = Solve(fixedFeet, put);
        Close(load + ", H", thrust, state.Reaction(0).X);
        Close(load + ", M base", atBase, Sag(state, 0, end: false));
        Close(load + ", M crown", atCrown, Sag(state, Chords / 2, end: false));
        Close(load + ", crown", fall, -state.Movement(Chords / 2).Z);
    }

    private static void Close(string what, double expected, double actual) => Published.Check(Semicircle, what, expected, actual, (8e-5 * Math.Abs(expected)) + 2e-6, Many);

    private static FrameState Solve(bool fixedFeet, Action<FrameBuilder> put)
    {
        var frame = Arch(fixedFeet, Math.PI, new(1e8, 1, 1, 1), new(1, 1));
        put(frame);
        return frame.Solve(planar: true);
    }

    private static FrameBuilder Arch(bool fixedFeet, double fromRad, FrameSection section, FrameMaterial material)
    {
        var frame = new FrameBuilder { Section = section, Material = material };
        frame.Arc(1, fromRad, 0, Chords, fixedFeet ? Freedoms.All : Freedoms.Shifts);
        return frame;
    }

    private static void Spread(FrameBuilder frame, int from, int to, LoadPer per)
    {
        for (int member = from; member < to; member++)
            frame.Spread(member, z: -1, per: per);
    }

    // From left to right local z points outward, so that a positive moment about y hogs.
    private static double Sag(FrameState state, int member, bool end) => -state.At(member, end).MyNm;
}
