using CsCheck;
using Hoopwright.Frames;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Frames;

/// <summary>The quick solver of one bow against the general one, which outside values check.</summary>
public sealed class PlanarBowTests
{
    private const double Ea = 5.3e7, Ei = 1.07e4;

    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [InlineData(true, true)]
    public void It_gives_what_the_general_solver_gives(bool tied, bool secondOrder)
    {
        Gen.Select(Gen.Double[1.5, 5], Gen.Double[0, 2], Gen.Int[8, 30], Gen.Double[-400, 400], Gen.Double[-700, 100], Gen.Double[0, 3e4]).Sample(
            (radiusM, legM, arcChords, acrossN, upNPerM, turnNmPerRad) =>
            {
                var (general, quick, applied, spread, nodes) = Both(radiusM, legM, arcChords, acrossN, upNPerM, turnNmPerRad, tied);
                var answer = FrameSolver.Solve(general.Model(secondOrder ? FrameAnalysisKind.SecondOrder : FrameAnalysisKind.Linear, planar: true));
                var outcome = quick.Solve(applied, spread, secondOrder, 1e-9);
                if (outcome != PlanarOutcome.Balanced)
                {
                    Assert.Empty(answer.States);
                    return;
                }
                var state = Assert.Single(answer.States);
                double most = Math.Max(1e-9, state.Displacements.Max(Math.Abs)), mostMoment = Math.Max(1e-9, state.SectionForces.Max(Math.Abs));
                for (int node = 0; node < nodes.Length; node++)
                {
                    Assert.Equal(state.Movement(nodes[node]).X, quick.Movement[3 * node], 1e-6 * most);
                    Assert.Equal(state.Movement(nodes[node]).Z, quick.Movement[(3 * node) + 1], 1e-6 * most);
                    Assert.Equal(-state.Movement(nodes[node]).AboutY, quick.Movement[(3 * node) + 2], 1e-6 * most);
                }
                for (int chord = 0; chord < quick.Chords; chord++)
                {
                    Assert.Equal(state.At(chord, true).NN, quick.EndForces[(6 * chord) + 3], 1e-6 * mostMoment);
                    // Local y of an upright chord points the other way.
                    Assert.Equal(Math.Abs(state.At(chord, true).MyNm), Math.Abs(quick.EndForces[(6 * chord) + 5]), 1e-6 * mostMoment);
                }
                var (reactionAcross, reactionUp, _) = quick.Reaction(right: false, applied);
                Assert.Equal(state.Reaction(nodes[0]).X, reactionAcross, 1e-6 * mostMoment);
                Assert.Equal(state.Reaction(nodes[0]).Z, reactionUp, 1e-6 * mostMoment);
            },
            iter: 40);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void It_buckles_where_the_general_solver_says(bool tied) =>
        Gen.Select(Gen.Double[1.5, 5], Gen.Double[0, 2], Gen.Int[8, 30], Gen.Double[0, 3e4]).Sample(
            (radiusM, legM, arcChords, turnNmPerRad) =>
            {
                var (general, quick, applied, spread, _) = Both(radiusM, legM, arcChords, 0, -100, turnNmPerRad, tied);
                Assert.Equal(PlanarOutcome.Balanced, quick.Solve(applied, spread, secondOrder: false));
                double factor = general.Buckle(planar: true)[0];
                Assert.Equal(factor, quick.BucklingFactor(share: 1e-7), 1e-5 * factor);
            },
            iter: 25);

    [Theory]
    [InlineData(48, 3.2753)]
    [InlineData(120, 3.272)]
    public void A_hinged_semicircle_buckles_as_the_mesh_table_says(int chords, double factor)
    {
        var (x, z) = Semicircle(chords);
        var bow = new PlanarBow(x, z, [.. Enumerable.Repeat(1e7, chords)], [.. Enumerable.Repeat(1.0, chords)], PlanarFoot.Hinge, PlanarFoot.Hinge);
        var applied = new double[3 * (chords + 1)];
        double perNode = 2 * Math.Sin(Math.PI / chords / 2);
        for (int node = 1; node < chords; node++)
            (applied[3 * node], applied[(3 * node) + 1]) = (-x[node] * perNode, -z[node] * perNode);
        Assert.Equal(PlanarOutcome.Balanced, bow.Solve(applied, new double[6 * chords], secondOrder: false));
        Published.Check("an independent matrix solver, dead radial loads (Timoshenko and Gere ch. 7 has 3 for pressure)", "q R³/EI", factor, bow.BucklingFactor(share: 1e-7), 0.002, "loads lumped at the nodes in another way");
    }

    private static (double[] X, double[] Z) Semicircle(int chords) =>
        ([.. Enumerable.Range(0, chords + 1).Select(at => -Math.Cos(Math.PI * at / chords))], [.. Enumerable.Range(0, chords + 1).Select(at => Math.Sin(Math.PI * at / chords))]);

    private static (FrameBuilder General, PlanarBow Quick, double[] Applied, double[] Spread, int[] Nodes) Both(
        double radiusM, double legM, int arcChords, double acrossN, double upNPerM, double turnNmPerRad, bool tied)
    {
        var frame = new FrameBuilder { Section = new(Ea, Ei, Ei, 1), Material = new(1, 1) };
        List<(double X, double Z)> places = [];
        if (legM > 0.1)
            places.Add((-radiusM, 0));
        for (int at = 0; at <= arcChords; at++)
        {
            double angle = Math.PI * at / arcChords;
            places.Add((-radiusM * Math.Cos(angle), legM + (radiusM * Math.Sin(angle))));
        }
        if (legM > 0.1)
            places.Add((radiusM, 0));
        int[] nodes = [.. places.Select(place => frame.Node(place.X, 0, place.Z))];
        frame.Hold(nodes[0], Freedoms.Ux | Freedoms.Uz);
        frame.Hold(nodes[^1], Freedoms.Ux | Freedoms.Uz | Freedoms.Ry);
        frame.Spring(nodes[0], new(0, 0, 0, 0, turnNmPerRad, 0));
        int chords = nodes.Length - 1;
        for (int at = 0; at < chords; at++)
        {
            int member = frame.Member(nodes[at], nodes[at + 1]);
            frame.Spread(member, z: upNPerM);
        }
        int tieFrom = nodes.Length / 4, tieTo = nodes.Length - 1 - tieFrom;
        if (tied)
        {
            frame.Section = new(Ea / 2, 0, 0, 0);
            frame.Member(nodes[tieFrom], nodes[tieTo], Freedoms.Ry, Freedoms.Ry);
        }
        int loaded = nodes.Length / 3;
        frame.Push(nodes[loaded], fx: acrossN);
        var applied = new double[3 * nodes.Length];
        applied[3 * loaded] = acrossN;
        var spread = new double[6 * chords];
        for (int at = 0; at < chords; at++)
        {
            double dx = places[at + 1].X - places[at].X, dz = places[at + 1].Z - places[at].Z, length = Math.Sqrt((dx * dx) + (dz * dz));
            double along = upNPerM * dz / length, left = upNPerM * dx / length;
            spread[6 * at] = spread[(6 * at) + 3] = along * length / 2;
            spread[(6 * at) + 1] = spread[(6 * at) + 4] = left * length / 2;
            spread[(6 * at) + 2] = left * length * length / 12;
            spread[(6 * at) + 5] = -left * length * length / 12;
        }
        PlanarTie[] ties = tied ? [new(tieFrom, tieTo, Ea / 2)] : [];
        double[] ea = [.. Enumerable.Repeat(Ea, chords)], ei = [.. Enumerable.Repeat(Ei, chords)];
        var quick = new PlanarBow([.. places.Select(place => place.X)], [.. places.Select(place => place.Z)], ea, ei, new(turnNmPerRad), PlanarFoot.BuiltIn, ties);
        return (frame, quick, applied, spread, nodes);
    }

    // The search starts from what it found before; what it finds must not hang on that, to the last digit.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_buckling_factor_is_the_same_whatever_was_looked_for_before(bool tied)
    {
        (double[] X, double[] Z) = ([.. Enumerable.Range(0, 33).Select(at => -3 * Math.Cos(Math.PI * at / 32))], [.. Enumerable.Range(0, 33).Select(at => 3 * Math.Sin(Math.PI * at / 32))]);
        PlanarTie[] ties = tied ? [new PlanarTie(6, 26, 3e7)] : [];
        PlanarBow Fresh() => new([.. X], [.. Z], [.. Enumerable.Repeat(8e7, 32)], [.. Enumerable.Repeat(3e4, 32)], new PlanarFoot(2e4), new PlanarFoot(2e4), ties);
        double[][] loads = [.. new[] { 40.0, 3, 900, 11, 250, 0.02 }.Select(size => Enumerable.Range(0, 99).Select(at => at % 3 == 1 ? -size * (1 + (at % 7)) : at % 3 == 0 ? size * Math.Sin(at) : 0).ToArray())];
        PlanarBow used = Fresh();
        foreach (double[] applied in loads.Concat(loads.Reverse()))
        {
            PlanarBow fresh = Fresh();
            double One(PlanarBow bow) => bow.Solve(applied, new double[6 * 32], secondOrder: true) == PlanarOutcome.Balanced ? bow.BucklingFactor(200, 2e-3) : -1;
            Assert.Equal(One(fresh), One(used));
        }
    }
}
