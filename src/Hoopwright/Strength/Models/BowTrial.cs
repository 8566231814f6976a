using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Hoopwright.Frames;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Models;

/// <summary>
/// One bow that loads are tried on: second-order analysis in its plane with the weakened stiffness and the notional sideways loads of
/// the direct analysis method, then the check of every chord.
/// </summary>
/// <remarks>Keeps its room between trials, so it is not for two threads at once.</remarks>
internal sealed class BowTrial
{
    // The bisection that looks for limits needs no more; a full report solves again to the end.
    private const double Tolerance = 1e-8;

    // A level load of a fiftieth of the weight leads the way by far over notional loads of 0.3 %.
    private const double ClearPush = 0.02;

    // Where the search for a bow's buckling stops, and how near it comes.
    private const double MostFactor = 200, FactorShare = 2e-3;

    private readonly PlanarBow _bow;
    private readonly BowSteel _steel;
    private readonly double[] _applied;
    private readonly double[] _spread;
    private readonly double[] _down;
    private readonly int[] _same;
    private readonly double[] _across;
    private readonly double _betweenPurlinsM;
    private readonly double _outOfPlanePa;

    /// <summary>Makes a bow ready.</summary>
    /// <param name="mesh">Its chords.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="steel">Its tube.</param>
    /// <param name="foot">How its feet stand.</param>
    /// <param name="loads">The load cases, in the order that <see cref="BowTerm.Load"/> counts.</param>
    /// <param name="betweenPurlinsM">Longest way along the bow between places held against moving lengthwise.</param>
    internal BowTrial(BowMesh mesh, BowPlace place, BowSteel steel, PlanarFoot foot, ImmutableArray<LoadCase> loads, double betweenPurlinsM)
        : this(mesh, place, steel, foot, betweenPurlinsM)
    {
        Loads = [.. loads.Select(load => BowLoad.Of(load, mesh, place))];
        _same = FindSame(loads);
        _across = [.. Loads.Select(load => AcrossN(load, mesh))];
    }

    private BowTrial(BowTrial other, PlanarFoot foot)
        : this(other.Mesh, other.Place, other._steel, foot, other._betweenPurlinsM) =>
        (Loads, _same, _across) = (other.Loads, other._same, other._across);

    private BowTrial(BowMesh mesh, BowPlace place, BowSteel steel, PlanarFoot foot, double betweenPurlinsM)
    {
        (Mesh, Place, _steel, _betweenPurlinsM) = (mesh, place, steel, betweenPurlinsM);
        double youngPa = FrameMaterial.Steel.YoungPa, weakened = DirectAnalysis.StiffnessFactor;
        double[] ea = [.. Enumerable.Repeat(youngPa * weakened * steel.AreaM2, mesh.Chords)], ei = [.. Enumerable.Repeat(youngPa * weakened * steel.SecondM4, mesh.Chords)];
        PlanarTie[] ties = place.Tie is { } tie ? [new(tie.FromNode, tie.ToNode, youngPa * weakened * tie.AreaM2)] : [];
        _bow = new PlanarBow([.. mesh.XM], [.. mesh.ZM], ea, ei, foot, foot, ties);
        (_same, _across) = ([], []);
        _applied = new double[3 * mesh.AlongM.Length];
        _spread = new double[6 * mesh.Chords];
        _down = new double[mesh.AlongM.Length];
        _outOfPlanePa = Buckling.ElasticStressPa(youngPa, betweenPurlinsM, steel.GyrationM);
    }

    /// <summary>The same bow under the same loads on other feet; the loads are not worked out again.</summary>
    internal BowTrial On(PlanarFoot foot) => new(this, foot);

    /// <summary>The chords.</summary>
    internal BowMesh Mesh { get; }

    /// <summary>Where it stands.</summary>
    internal BowPlace Place { get; }

    /// <summary>The load cases on this bow.</summary>
    internal ImmutableArray<BowLoad> Loads { get; } = [];

    /// <summary>The bow as the last trial left it.</summary>
    internal PlanarBow Bow => _bow;

    /// <summary>The nodal loads of the last trial.</summary>
    internal ReadOnlySpan<double> Applied => _applied;

    /// <summary>A name that loads have in common when they are the same on this bow, or its mirror image on a bow that is even.</summary>
    internal string KeyOf(LoadedCase loads) =>
        string.Join(';', loads.Fixed.Select(Key).Order(StringComparer.Ordinal)) + '|' + string.Join(';', loads.Scaled.Select(Key).Order(StringComparer.Ordinal));

    /// <summary>Which ways the bow may be out of plumb under loads: with a level load the way that it pushes, else both.</summary>
    internal ReadOnlySpan<int> LeansOf(ReadOnlySpan<BowTerm> terms)
    {
        double acrossN = 0, downN = 0;
        foreach (BowTerm term in terms)
        {
            acrossN += term.Times * _across[term.Load];
            downN += Math.Abs(term.Times) * Loads[term.Load].DownN.Sum();
        }
        if (Math.Abs(acrossN) <= ClearPush * downN) return [-1, 1];
        return acrossN > 0 ? [1] : [-1];
    }

    /// <summary>Tries loads and checks every chord.</summary>
    /// <param name="terms">The loads.</param>
    /// <param name="lean">1 for notional loads to the right, −1 to the left, 0 for none.</param>
    /// <param name="method">How strengths are taken.</param>
    /// <param name="steel">Another steel than the bow's own; null for its own.</param>
    internal BowVerdict Try(ReadOnlySpan<BowTerm> terms, int lean, DesignMethod method, BowSteel? steel = null)
    {
        if (!Carries(terms, lean))
            return new BowVerdict(double.PositiveInfinity, true, 0, false, default, 1);
        double greatestN = 0;
        for (int chord = 0; chord < Mesh.Chords; chord++)
            greatestN = Math.Max(greatestN, -_bow.AxialN(chord));
        double factor = greatestN > 0 ? _bow.BucklingFactor(MostFactor, FactorShare) : double.PositiveInfinity;
        return Worst(StrengthAt(factor, greatestN, method, steel ?? _steel), factor);
    }

    /// <summary>Strengths of the bow's tube under axial forces that another analysis found, with the factor at which it buckles in its plane under them.</summary>
    /// <param name="axialN">Of every chord, tension positive.</param>
    /// <param name="tieN">Of its tie; 0 where it has none.</param>
    /// <param name="method">How strengths are taken.</param>
    internal TubeStrength StrengthUnder(ReadOnlySpan<double> axialN, double tieN, DesignMethod method)
    {
        double greatestN = 0;
        foreach (double chordN in axialN) greatestN = Math.Max(greatestN, -chordN);
        return StrengthAt(greatestN > 0 ? _bow.BucklingFactor(axialN, tieN, MostFactor, FactorShare) : double.PositiveInfinity, greatestN, method, _steel);
    }

    // The analysis is weakened; the elastic buckling stress that strength is found with is not.
    private TubeStrength StrengthAt(double factor, double greatestN, DesignMethod method, BowSteel steel)
    {
        double inPlanePa = double.IsPositiveInfinity(factor) ? _outOfPlanePa : Buckling.ElasticStressOfLoadPa(factor / DirectAnalysis.StiffnessFactor, greatestN, _steel.AreaM2);
        return steel.StrengthOf(Math.Min(_outOfPlanePa, inPlanePa), _betweenPurlinsM, method);
    }

    /// <summary>Tries loads without checking strength; true when the bow comes to balance under them, and then it stands so.</summary>
    /// <param name="terms">The loads.</param>
    /// <param name="lean">1 for notional loads to the right, −1 to the left, 0 for none.</param>
    internal bool Carries(ReadOnlySpan<BowTerm> terms, int lean)
    {
        Gather(terms, lean);
        _bow.TiesGone = false;
        PlanarOutcome outcome = Solve();
        // A slender tie that is pressed bows out long before it yields, and leaves the bow to itself.
        if (Place.Tie is { } tie && (outcome != PlanarOutcome.Balanced || -_bow.TieForceN(0) > tie.PressedN))
        {
            _bow.TiesGone = true;
            outcome = Solve();
        }
        return outcome == PlanarOutcome.Balanced;

        PlanarOutcome Solve() => _bow.Solve(_applied, _spread, secondOrder: true, Tolerance);
    }

    private string Key(BowTerm term) => FormattableString.Invariant($"{_same[term.Load]} {term.Times:R}");

    // On an even bow a load and its mirror image ask the same of it. Loads alike to the last digit are one.
    private int[] FindSame(ImmutableArray<LoadCase> loads)
    {
        var same = new int[loads.Length];
        Dictionary<string, int> codes = loads.Select((load, at) => (load.Code, at)).ToDictionary(pair => pair.Code, pair => pair.at, StringComparer.Ordinal);
        for (int at = 0; at < same.Length; at++)
        {
            same[at] = Enumerable.Range(0, at).FirstOrDefault(earlier => Loads[earlier].IsSameAs(Loads[at]), at);
            if (same[at] == at && Place.IsEven && codes.TryGetValue(loads[at].TwinCode, out int twin) && twin < at)
                same[at] = same[twin];
        }
        return same;
    }

    private static double AcrossN(BowLoad load, BowMesh mesh)
    {
        double sum = 0;
        for (int node = 0; node < mesh.AlongM.Length; node++)
            sum += load.Applied[3 * node];
        for (int chord = 0; chord < mesh.Chords; chord++)
        {
            (double c, double s) = mesh.Direction(chord);
            int at = 6 * chord;
            sum += (c * (load.Spread[at] + load.Spread[at + 3])) - (s * (load.Spread[at + 1] + load.Spread[at + 4]));
        }
        return sum;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private BowVerdict Worst(in TubeStrength strength, double factor)
    {
        (double use, int chord, bool atEnd) = (-1, 0, false);
        TubeLimits limits = strength.Limits;
        for (int at = 0; at < Mesh.Chords; at++)
        {
            double start = limits.UseOf(ForcesAt(at, false)), end = limits.UseOf(ForcesAt(at, true));
            if (Ties.Exceeds(start, use)) (use, chord, atEnd) = (start, at, false);
            if (Ties.Exceeds(end, use)) (use, chord, atEnd) = (end, at, true);
        }
        return new BowVerdict(use, false, chord, atEnd, strength.Check(ForcesAt(chord, atEnd)), factor);
    }

    /// <summary>Forces at an end of a chord after a trial: the moment positive when it bends the middle of the span down.</summary>
    internal MemberForces ForcesAt(int chord, bool atEnd)
    {
        int at = (6 * chord) + (atEnd ? 3 : 0), sign = atEnd ? 1 : -1;
        return new MemberForces(sign * _bow.EndForces[at], 0, sign * _bow.EndForces[at + 1], 0, sign * _bow.EndForces[at + 2], 0);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Gather(ReadOnlySpan<BowTerm> terms, int lean)
    {
        Array.Clear(_applied);
        Array.Clear(_spread);
        Array.Clear(_down);
        foreach (BowTerm term in terms)
        {
            BowLoad load = Loads[term.Load];
            Sums.Add(_applied, load.Applied, term.Times);
            Sums.Add(_spread, load.Spread, term.Times);
            Sums.Add(_down, load.DownN, term.Times);
        }
        for (int node = 0; node < _down.Length && lean != 0; node++)
            _applied[3 * node] += lean * DirectAnalysis.NotionalLoadPartWithoutTau * Math.Max(0, _down[node]);
    }
}
