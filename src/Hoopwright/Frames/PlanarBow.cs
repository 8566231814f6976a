using System.Runtime.CompilerServices;

namespace Hoopwright.Frames;

/// <summary>
/// One bow in its own upright plane: a chain of beams from foot to foot, with straight ties between its nodes. Solves the same equations
/// as <see cref="StaticSolver"/> does for such a frame, some fifty times faster and without making anything anew: for live editing, for
/// finding limits by trial and for comparing thousands of designs.
/// </summary>
/// <remarks>
/// Freedoms of a node: shift across (x), shift up (z), turn from x to z. Matrix and right-hand sides are kept as a chain of three-by-three
/// blocks; each tie adds two outer products, brought in by the Woodbury formula. Not for use by two threads at once. Loops are compiled
/// to the full at once: a command that runs for half a second would spend most of it in code not yet made fast.
/// </remarks>
internal sealed class PlanarBow
{
    private const int MostRounds = 60;
    private const double LeastPivotShare = 1e-13;
    private readonly double[] _x;
    private readonly double[] _z;
    private readonly double[] _eaN;
    private readonly double[] _eiNm2;
    private readonly PlanarFoot _left;
    private readonly PlanarFoot _right;
    private readonly PlanarTie[] _ties;
    private readonly double[] _length;
    private readonly double[] _cos;
    private readonly double[] _sin;
    private readonly double[] _diagonal;
    private readonly double[] _lower;
    private readonly double[] _pivots;
    private readonly double[] _rest;
    private readonly double[][] _tieShapes;
    private readonly double[] _tieRows;
    private readonly double[] _tieMatrix;
    private readonly double[] _tieStiffness;
    private readonly double[] _axial;
    private readonly double[] _tieAxial;
    private int _negative;
    private bool _whole;
    private double _tieDeterminant = 1;
    private double[]? _elasticTied;
    private double[]? _elasticAlone;

    // The factor found last, times the greatest compression: for like loads it hardly changes.
    private double _factorN;

    /// <summary>Makes a bow ready.</summary>
    /// <param name="x">Places of the nodes across, m; from the left foot to the right one.</param>
    /// <param name="z">Places of the nodes up, m.</param>
    /// <param name="eaN">Axial stiffness of each chord between nodes, N.</param>
    /// <param name="eiNm2">Bending stiffness of each chord, N·m².</param>
    /// <param name="left">The left foot.</param>
    /// <param name="right">The right foot.</param>
    /// <param name="ties">Straight ties, hinged at both ends.</param>
    internal PlanarBow(double[] x, double[] z, double[] eaN, double[] eiNm2, PlanarFoot left, PlanarFoot right, params PlanarTie[] ties)
    {
        (_x, _z, _eaN, _eiNm2, _left, _right, _ties) = (x, z, eaN, eiNm2, left, right, ties);
        int chords = Chords;
        (_length, _cos, _sin) = (new double[chords], new double[chords], new double[chords]);
        for (int at = 0; at < chords; at++)
        {
            double dx = x[at + 1] - x[at], dz = z[at + 1] - z[at];
            _length[at] = Math.Sqrt((dx * dx) + (dz * dz));
            (_cos[at], _sin[at]) = (dx / _length[at], dz / _length[at]);
        }
        _diagonal = new double[9 * Nodes];
        _lower = new double[9 * chords];
        _pivots = new double[3 * Nodes];
        _rest = new double[3 * Nodes];
        _axial = new double[chords];
        _tieAxial = new double[ties.Length];
        _tieShapes = [.. Enumerable.Range(0, 2 * ties.Length).Select(_ => new double[3 * Nodes])];
        _tieRows = new double[2 * ties.Length];
        _tieMatrix = new double[4 * ties.Length * ties.Length];
        _tieStiffness = new double[2 * ties.Length];
        Movement = new double[3 * Nodes];
        EndForces = new double[6 * chords];
    }

    /// <summary>Nodes.</summary>
    internal int Nodes => _x.Length;

    /// <summary>Chords between nodes.</summary>
    internal int Chords => _x.Length - 1;

    /// <summary>True while its ties take no part: they gave way under what pressed them.</summary>
    internal bool TiesGone { get; set; }

    /// <summary>Length of a chord, m.</summary>
    internal double LengthM(int chord) => _length[chord];

    /// <summary>Three for each node: shift across and up, m, and turn from x to z, rad.</summary>
    internal double[] Movement { get; }

    /// <summary>Six for each chord, in its own axes: along, to its left, turning from along to left, at its start and at its end. Forces on the chord.</summary>
    internal double[] EndForces { get; }

    /// <summary>Times the bow was solved last.</summary>
    internal int Rounds { get; private set; }

    /// <summary>Greatest force out of balance, as a share of the greatest force.</summary>
    internal double Residual { get; private set; }

    /// <summary>Axial force of a tie, N; tension positive.</summary>
    internal double TieForceN(int tie) => TiesGone ? 0 : TieStretchN(tie);

    private int Ties => TiesGone ? 0 : _ties.Length;

    /// <summary>Axial force of a chord at its middle, N; tension positive.</summary>
    internal double AxialN(int chord) => (EndForces[(6 * chord) + 3] - EndForces[6 * chord]) / 2;

    /// <summary>Solves for loads.</summary>
    /// <param name="applied">Three for each node: forces across and up, N, and moments, N·m.</param>
    /// <param name="spread">Six for each chord, in its own axes: what loads along it put on its held ends, with the sign of the load.</param>
    /// <param name="secondOrder">True to count what axial forces give or take, iterated to balance.</param>
    /// <param name="tolerance">Out-of-balance allowed, as a share of the greatest force.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal PlanarOutcome Solve(ReadOnlySpan<double> applied, ReadOnlySpan<double> spread, bool secondOrder, double tolerance = 1e-9)
    {
        Array.Clear(Movement);
        Array.Clear(_axial);
        Array.Clear(_tieAxial);
        double scale = Scale(applied, spread);
        for (Rounds = 1; Rounds <= MostRounds; Rounds++)
        {
            Residual = OutOfBalance(applied, spread, scale);
            if (Rounds > 1 && (!secondOrder || Residual <= tolerance))
            {
                Rounds--;
                return PlanarOutcome.Balanced;
            }
            if (!Form(1))
                return PlanarOutcome.Buckled;
            SolveRest();
            for (int at = 0; at < Movement.Length; at++)
                Movement[at] += _rest[at];
            if (secondOrder)
                TakeAxial(spread);
        }
        return PlanarOutcome.Unsettled;
    }

    /// <summary>The least multiple of the present axial forces at which the bow buckles in its plane.</summary>
    /// <param name="most">Where to stop looking.</param>
    /// <param name="share">Error allowed, as a share of the factor.</param>
    /// <returns>The factor; positive infinity when it is over the most.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal double BucklingFactor(double most = 1000, double share = 1e-4)
    {
        for (int at = 0; at < Chords; at++)
            _axial[at] = AxialN(at);
        for (int tie = 0; tie < Ties; tie++)
            _tieAxial[tie] = TieStretchN(tie);
        return Factor(most, share);
    }

    /// <summary>The same for axial forces that another analysis found.</summary>
    /// <param name="axialN">Of every chord, tension positive.</param>
    /// <param name="tieN">Of every tie.</param>
    /// <param name="most">Where to stop looking.</param>
    /// <param name="share">Error allowed, as a share of the factor.</param>
    internal double BucklingFactor(ReadOnlySpan<double> axialN, double tieN, double most, double share)
    {
        axialN.CopyTo(_axial);
        Array.Fill(_tieAxial, tieN);
        return Factor(most, share);
    }

    /// <summary>
    /// Doubles and halves as a search that knows nothing would, but asks only about the last of its intervals: where the determinant of the
    /// matrix comes to nothing, by the values it had, says which that is. The answer is the same to the last digit.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Factor(double most, double share)
    {
        double cap = 1, greatestN = 0;
        while (cap < most)
            cap *= 2;
        for (int at = 0; at < Chords; at++)
            greatestN = Math.Max(greatestN, -_axial[at]);
        TakeElastic();
        (double stands, double atStands, double fails, double atFails) = (0, 1, double.PositiveInfinity, double.NaN);
        double guess = greatestN > 0 && _factorN > 0 ? _factorN / greatestN : 4;
        for (int asked = 0; ; asked++)
        {
            (double low, double high) = guess >= cap ? (cap, double.PositiveInfinity) : Interval(guess, share);
            if (low > stands && !Form(low))
                (fails, atFails) = (low, Determinant());
            else if (low > stands && low >= cap)
                return double.PositiveInfinity;
            else
            {
                if (low > stands)
                    (stands, atStands) = (low, Determinant());
                if (high >= fails || !Form(high))
                {
                    _factorN = (low + high) / 2 * greatestN;
                    return (low + high) / 2;
                }
                (stands, atStands) = (high, Determinant());
            }
            guess = double.IsPositiveInfinity(fails)
                ? stands * (atStands < 1 ? Math.Clamp(1 / (1 - atStands), 1.05, 4) : 4)
                : Between(stands, atStands, fails, atFails, asked);
        }
    }

    // The zero of a straight line between the two; in the middle where their signs tell of no single zero, or the line does not get on.
    private static double Between(double low, double atLow, double high, double atHigh, int asked)
    {
        double share = atLow > 0 && atHigh < 0 && asked % 3 < 2 ? atLow / (atLow - atHigh) : 0.5;
        return low + ((high - low) * Math.Clamp(share, 1e-4, 1 - 1e-4));
    }

    // Where doubling and halving would end if the factor were the guess.
    private static (double Low, double High) Interval(double guess, double share)
    {
        double low = 0, high = 1;
        while (high < guess)
            (low, high) = (high, 2 * high);
        while (high - low > share * high)
        {
            double middle = (low + high) / 2;
            if (middle < guess)
                low = middle;
            else
                high = middle;
        }
        return (low, high);
    }

    // Pivots without any axial force, once for the bow with its ties and once for the bow without.
    private void TakeElastic()
    {
        double[]? known = TiesGone ? _elasticAlone : _elasticTied;
        if (known is not null)
            return;
        bool stands = Form(0);
        double[] pivots = [.. _pivots, _tieDeterminant];
        if (!stands)
            Array.Fill(pivots, double.NaN);
        if (TiesGone)
            _elasticAlone = pivots;
        else
            _elasticTied = pivots;
    }

    /// <summary>Of the matrix that was formed last, as a share of that without axial forces; no number where it was not factored to the end.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Determinant()
    {
        if (!_whole)
            return double.NaN;
        double[] elastic = (TiesGone ? _elasticAlone : _elasticTied)!;
        double product = _tieDeterminant / elastic[^1];
        for (int at = 0; at < _pivots.Length; at++)
            product *= _pivots[at] / elastic[at];
        return product;
    }

    /// <summary>What the ground puts on a foot: forces across and up, N, and the moment, N·m, from x to z.</summary>
    /// <param name="right">True for the right foot.</param>
    /// <param name="applied">The loads that were solved for.</param>
    internal (double AcrossN, double UpN, double MomentNm) Reaction(bool right, ReadOnlySpan<double> applied)
    {
        int chord = right ? Chords - 1 : 0, node = right ? Nodes - 1 : 0, start = (6 * chord) + (right ? 3 : 0);
        double along = EndForces[start], left = EndForces[start + 1];
        double across = (along * _cos[chord]) - (left * _sin[chord]), up = (along * _sin[chord]) + (left * _cos[chord]);
        return (across - applied[3 * node], up - applied[(3 * node) + 1], EndForces[start + 2] - applied[(3 * node) + 2]);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double Scale(ReadOnlySpan<double> applied, ReadOnlySpan<double> spread)
    {
        double greatest = double.Epsilon;
        for (int at = 0; at < applied.Length; at++)
        {
            if (at % 3 != 2)
                greatest = Math.Max(greatest, Math.Abs(applied[at]));
        }
        for (int at = 0; at < spread.Length; at++)
        {
            if (at % 3 != 2)
                greatest = Math.Max(greatest, Math.Abs(spread[at]));
        }
        return greatest;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void TakeAxial(ReadOnlySpan<double> spread)
    {
        for (int at = 0; at < Chords; at++)
        {
            int from = 3 * at;
            double stretch = (_cos[at] * (Movement[from + 3] - Movement[from])) + (_sin[at] * (Movement[from + 4] - Movement[from + 1]));
            _axial[at] = (_eaN[at] / _length[at] * stretch) + ((spread[6 * at] - spread[(6 * at) + 3]) / 2);
        }
        for (int tie = 0; tie < Ties; tie++)
            _tieAxial[tie] = TieStretchN(tie);
    }

    private double TieStretchN(int tie)
    {
        var (from, to, eaN) = _ties[tie];
        double dx = _x[to] - _x[from], dz = _z[to] - _z[from], length2 = (dx * dx) + (dz * dz);
        return eaN / length2 * ((dx * (Movement[3 * to] - Movement[3 * from])) + (dz * (Movement[(3 * to) + 1] - Movement[(3 * from) + 1])));
    }

    /// <summary>Finds all end forces at the present movements and axial forces, and the rest at the free freedoms.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double OutOfBalance(ReadOnlySpan<double> applied, ReadOnlySpan<double> spread, double scale)
    {
        applied.CopyTo(_rest);
        for (int at = 0; at < Chords; at++)
        {
            double l = _length[at], c = _cos[at], s = _sin[at], n = _axial[at];
            int from = 3 * at, f = 6 * at;
            double x1 = Movement[from], z1 = Movement[from + 1], t1 = Movement[from + 2], x2 = Movement[from + 3], z2 = Movement[from + 4], t2 = Movement[from + 5];
            double u = (c * (x2 - x1)) + (s * (z2 - z1)), w = (c * (z2 - z1)) - (s * (x2 - x1));
            double e = _eiNm2[at] / l, axial = _eaN[at] / l * u;
            double b = (6 * e / l) + (n / 10), a = ((12 * e / l) + (1.2 * n)) / l;
            double near = (4 * e) + (n * l * 2 / 15), far = (2 * e) - (n * l / 30);
            double side = (a * w) - (b * (t1 + t2));
            EndForces[f] = -axial - spread[f];
            EndForces[f + 3] = axial - spread[f + 3];
            EndForces[f + 1] = -side - spread[f + 1];
            EndForces[f + 4] = side - spread[f + 4];
            EndForces[f + 2] = (near * t1) + (far * t2) - (b * w) - spread[f + 2];
            EndForces[f + 5] = (far * t1) + (near * t2) - (b * w) - spread[f + 5];
            _rest[from] -= (c * EndForces[f]) - (s * EndForces[f + 1]);
            _rest[from + 1] -= (s * EndForces[f]) + (c * EndForces[f + 1]);
            _rest[from + 2] -= EndForces[f + 2];
            _rest[from + 3] -= (c * EndForces[f + 3]) - (s * EndForces[f + 4]);
            _rest[from + 4] -= (s * EndForces[f + 3]) + (c * EndForces[f + 4]);
            _rest[from + 5] -= EndForces[f + 5];
        }
        for (int tie = 0; tie < Ties; tie++)
            TieForces(tie);
        double worst = 0, lengthM = _length[0];
        Hold(_rest);
        for (int at = 0; at < _rest.Length; at++)
            worst = Math.Max(worst, Math.Abs(_rest[at]) / (at % 3 == 2 ? lengthM : 1));
        for (int at = 0; at < Chords; at++)
            scale = Math.Max(scale, Math.Abs(EndForces[6 * at]));
        return worst / scale;
    }

    private void TieForces(int tie)
    {
        var (from, to, _) = _ties[tie];
        double dx = _x[to] - _x[from], dz = _z[to] - _z[from], length = Math.Sqrt((dx * dx) + (dz * dz)), c = dx / length, s = dz / length;
        double force = TieStretchN(tie);
        double side = _tieAxial[tie] / length * ((c * (Movement[(3 * to) + 1] - Movement[(3 * from) + 1])) - (s * (Movement[3 * to] - Movement[3 * from])));
        double fx = (c * force) - (s * side), fz = (s * force) + (c * side);
        _rest[3 * from] += fx;
        _rest[(3 * from) + 1] += fz;
        _rest[3 * to] -= fx;
        _rest[(3 * to) + 1] -= fz;
    }

    private void Hold(double[] rest)
    {
        int last = 3 * (Nodes - 1);
        rest[0] = rest[1] = rest[last] = rest[last + 1] = 0;
        rest[2] = double.IsPositiveInfinity(_left.TurnNmPerRad) ? 0 : rest[2] - (_left.TurnNmPerRad * Movement[2]);
        rest[last + 2] = double.IsPositiveInfinity(_right.TurnNmPerRad) ? 0 : rest[last + 2] - (_right.TurnNmPerRad * Movement[last + 2]);
    }

    /// <summary>Forms and factors the matrix with a multiple of the present axial forces; false when the bow does not stand with them.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Form(double times)
    {
        Array.Clear(_diagonal);
        for (int at = 0; at < Chords; at++)
            FormChord(at, times);
        Support(0, _left);
        Support(Nodes - 1, _right);
        if (_left.TurnNmPerRad is double.PositiveInfinity)
            Cut(0, 2);
        if (_right.TurnNmPerRad is double.PositiveInfinity)
            Cut(Nodes - 1, 2);
        Cut(0, 0);
        Cut(0, 1);
        Cut(Nodes - 1, 0);
        Cut(Nodes - 1, 1);
        _tieDeterminant = 1;
        _whole = Factor() && FormTies(times);
        return _whole && _negative == 0;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FormChord(int at, double times)
    {
        double l = _length[at], c = _cos[at], s = _sin[at], n = _axial[at] * times, e = _eiNm2[at] / l;
        double p = _eaN[at] / l, a = ((12 * e / l) + (1.2 * n)) / l, b = (6 * e / l) + (n / 10);
        double near = (4 * e) + (n * l * 2 / 15), far = (2 * e) - (n * l / 30);
        double xx = (c * c * p) + (s * s * a), zz = (s * s * p) + (c * c * a), xz = c * s * (p - a);
        var d = _diagonal.AsSpan(9 * at, 18);
        d[0] += xx;
        d[3] += xz;
        d[4] += zz;
        d[6] -= s * b;
        d[7] += c * b;
        d[8] += near;
        d[9] += xx;
        d[12] += xz;
        d[13] += zz;
        d[15] += s * b;
        d[16] -= c * b;
        d[17] += near;
        // Rows of the node after, columns of the node before.
        var o = _lower.AsSpan(9 * at, 9);
        o[0] = -xx;
        o[1] = -xz;
        o[2] = s * b;
        o[3] = -xz;
        o[4] = -zz;
        o[5] = -c * b;
        o[6] = -s * b;
        o[7] = c * b;
        o[8] = far;
    }

    private void Support(int node, PlanarFoot foot)
    {
        if (double.IsFinite(foot.TurnNmPerRad))
            _diagonal[(9 * node) + 8] += foot.TurnNmPerRad;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Cut(int node, int freedom)
    {
        var d = _diagonal.AsSpan(9 * node, 9);
        for (int other = 0; other < 3; other++)
        {
            d[(3 * Math.Max(freedom, other)) + Math.Min(freedom, other)] = other == freedom ? 1 : 0;
            if (node == 0)
                _lower[(3 * other) + freedom] = 0;
            else
                _lower[(9 * (Chords - 1)) + (3 * freedom) + other] = 0;
        }
    }

    // Diagonal blocks keep their lower half; an off-diagonal block becomes L = B·l⁻ᵀ·d⁻¹ and what it takes off the next is L·d·Lᵀ.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Factor()
    {
        Span<double> w = stackalloc double[9];
        _negative = 0;
        for (int node = 0; node < Nodes; node++)
        {
            var d = _diagonal.AsSpan(9 * node, 9);
            double d0 = d[0], d1 = d[4] - (d[3] * d[3] / d0), l10 = d[3] / d0, l20 = d[6] / d0;
            double l21 = (d[7] - (d[6] * l10)) / d1, d2 = d[8] - (d[6] * l20) - (l21 * l21 * d1);
            if (!(Math.Abs(d0) > LeastPivotShare && Math.Abs(d1) > LeastPivotShare * d[4] && Math.Abs(d2) > LeastPivotShare * d[8]))
                return false;
            _negative += (d0 < 0 ? 1 : 0) + (d1 < 0 ? 1 : 0) + (d2 < 0 ? 1 : 0);
            (d[3], d[6], d[7]) = (l10, l20, l21);
            (_pivots[3 * node], _pivots[(3 * node) + 1], _pivots[(3 * node) + 2]) = (d0, d1, d2);
            if (node == Nodes - 1)
                break;
            var o = _lower.AsSpan(9 * node, 9);
            var next = _diagonal.AsSpan(9 * (node + 1), 9);
            double i0 = 1 / d0, i1 = 1 / d1, i2 = 1 / d2;
            for (int r = 0; r < 9; r += 3)
            {
                w[r] = o[r];
                w[r + 1] = o[r + 1] - (w[r] * l10);
                w[r + 2] = o[r + 2] - (w[r] * l20) - (w[r + 1] * l21);
                o[r] = w[r] * i0;
                o[r + 1] = w[r + 1] * i1;
                o[r + 2] = w[r + 2] * i2;
            }
            next[0] -= (w[0] * o[0]) + (w[1] * o[1]) + (w[2] * o[2]);
            next[3] -= (w[3] * o[0]) + (w[4] * o[1]) + (w[5] * o[2]);
            next[4] -= (w[3] * o[3]) + (w[4] * o[4]) + (w[5] * o[5]);
            next[6] -= (w[6] * o[0]) + (w[7] * o[1]) + (w[8] * o[2]);
            next[7] -= (w[6] * o[3]) + (w[7] * o[4]) + (w[8] * o[5]);
            next[8] -= (w[6] * o[6]) + (w[7] * o[7]) + (w[8] * o[8]);
        }
        return true;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Back(double[] v)
    {
        double b0 = 0, b1 = 0, b2 = 0;
        for (int node = 0; node < Nodes; node++)
        {
            int at = 3 * node;
            var d = _diagonal.AsSpan(9 * node, 9);
            double y0 = v[at] - b0, y1 = v[at + 1] - b1 - (d[3] * y0), y2 = v[at + 2] - b2 - (d[6] * y0) - (d[7] * y1);
            (v[at], v[at + 1], v[at + 2]) = (y0, y1, y2);
            if (node == Nodes - 1)
                break;
            var o = _lower.AsSpan(9 * node, 9);
            b0 = (o[0] * y0) + (o[1] * y1) + (o[2] * y2);
            b1 = (o[3] * y0) + (o[4] * y1) + (o[5] * y2);
            b2 = (o[6] * y0) + (o[7] * y1) + (o[8] * y2);
        }
        for (int node = Nodes - 1; node >= 0; node--)
        {
            int at = 3 * node;
            double x0 = v[at] / _pivots[at], x1 = v[at + 1] / _pivots[at + 1], x2 = v[at + 2] / _pivots[at + 2];
            if (node < Nodes - 1)
            {
                var o = _lower.AsSpan(9 * node, 9);
                double n0 = v[at + 3], n1 = v[at + 4], n2 = v[at + 5];
                x0 -= (o[0] * n0) + (o[3] * n1) + (o[6] * n2);
                x1 -= (o[1] * n0) + (o[4] * n1) + (o[7] * n2);
                x2 -= (o[2] * n0) + (o[5] * n1) + (o[8] * n2);
            }
            var d = _diagonal.AsSpan(9 * node, 9);
            x1 -= d[7] * x2;
            x0 -= (d[3] * x1) + (d[6] * x2);
            (v[at], v[at + 1], v[at + 2]) = (x0, x1, x2);
        }
    }

    /// <summary>Each tie is k·g·gᵀ along it and n/l·h·hᵀ across it: solves the chain for each g and h, and factors S = 1/k + gᵀ·K⁻¹·g.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool FormTies(double times)
    {
        int rank = 2 * Ties;
        for (int row = 0; row < rank; row++)
        {
            var (from, to, eaN) = _ties[row / 2];
            double dx = _x[to] - _x[from], dz = _z[to] - _z[from], length = Math.Sqrt((dx * dx) + (dz * dz));
            bool along = row % 2 == 0;
            _tieStiffness[row] = along ? eaN / length : _tieAxial[row / 2] * times / length;
            var shape = _tieShapes[row];
            Array.Clear(shape);
            (double c, double s) = along ? (dx / length, dz / length) : (-dz / length, dx / length);
            (shape[3 * from], shape[(3 * from) + 1], shape[3 * to], shape[(3 * to) + 1]) = (-c, -s, c, s);
            HoldShape(shape);
            Back(shape);
        }
        CountTies(rank);
        for (int row = 0; row < rank; row++)
        {
            for (int column = 0; column < rank; column++)
                _tieMatrix[(row * rank) + column] = (row == column ? 1 : 0) + (Across(row, _tieShapes[column]) * _tieStiffness[column]);
        }
        for (int k = 0; k < rank; k++)
        {
            double pivot = _tieMatrix[(k * rank) + k];
            if (pivot == 0)
                return false;
            _tieDeterminant *= pivot;
            for (int row = k + 1; row < rank; row++)
            {
                double share = _tieMatrix[(row * rank) + k] /= pivot;
                for (int column = k + 1; column < rank; column++)
                    _tieMatrix[(row * rank) + column] -= share * _tieMatrix[(k * rank) + column];
            }
        }
        return true;
    }

    // A tie can hold up a chain that would not stand alone. By the inertia of [K₀ G; Gᵀ −1/k] taken both ways, the negative pivots of
    // K₀ + G·k·Gᵀ are those of K₀, plus the positive ones of 1/k + Gᵀ·K₀⁻¹·G, less the positive k (Haynsworth, 1968).
    private void CountTies(int rank)
    {
        Span<int> active = stackalloc int[rank];
        int count = 0;
        for (int row = 0; row < rank; row++)
        {
            if (_tieStiffness[row] != 0)
                active[count++] = row;
            if (_tieStiffness[row] > 0)
                _negative--;
        }
        for (int row = 0; row < count; row++)
        {
            for (int column = 0; column < count; column++)
                _tieMatrix[(row * rank) + column] = Across(active[row], _tieShapes[active[column]]) + (row == column ? 1 / _tieStiffness[active[row]] : 0);
        }
        for (int k = 0; k < count; k++)
        {
            double pivot = _tieMatrix[(k * rank) + k];
            if (pivot > 0)
                _negative++;
            for (int row = k + 1; row < count && pivot != 0; row++)
            {
                double share = _tieMatrix[(row * rank) + k] / pivot;
                for (int column = k + 1; column < count; column++)
                    _tieMatrix[(row * rank) + column] -= share * _tieMatrix[(k * rank) + column];
            }
        }
    }

    private void HoldShape(double[] shape)
    {
        int last = 3 * (Nodes - 1);
        shape[0] = shape[1] = shape[last] = shape[last + 1] = 0;
    }

    private double Across(int row, double[] movement)
    {
        var (from, to, _) = _ties[row / 2];
        double dx = _x[to] - _x[from], dz = _z[to] - _z[from], length = Math.Sqrt((dx * dx) + (dz * dz));
        (double c, double s) = row % 2 == 0 ? (dx / length, dz / length) : (-dz / length, dx / length);
        return (c * (movement[3 * to] - movement[3 * from])) + (s * (movement[(3 * to) + 1] - movement[(3 * from) + 1]));
    }

    private void SolveRest()
    {
        Back(_rest);
        int rank = 2 * Ties;
        if (rank == 0)
            return;
        for (int row = 0; row < rank; row++)
        {
            _tieRows[row] = Across(row, _rest);
            for (int column = 0; column < row; column++)
                _tieRows[row] -= _tieMatrix[(row * rank) + column] * _tieRows[column];
        }
        for (int row = rank - 1; row >= 0; row--)
        {
            for (int column = row + 1; column < rank; column++)
                _tieRows[row] -= _tieMatrix[(row * rank) + column] * _tieRows[column];
            _tieRows[row] /= _tieMatrix[(row * rank) + row];
        }
        for (int row = 0; row < rank; row++)
        {
            double share = _tieStiffness[row] * _tieRows[row];
            for (int at = 0; at < _rest.Length; at++)
                _rest[at] -= share * _tieShapes[row][at];
        }
    }
}
