namespace Hoopwright.Frames;

/// <summary>
/// A beam that moves and turns without limit while it bends little in its own turning axes: its axes follow its ends, and what is left
/// is a small linear beam (Battini and Pacoste, Comput. Methods Appl. Mech. Engrg. 191 (2002) 1755; Crisfield, Non-linear Finite Element
/// Analysis 2, 1997, ch. 17; from memory).
/// </summary>
internal ref struct CorotatedBeam
{
    // Twelve columns: shifts and spins of the start, then of the end, all global.
    private const int Wide = 12;

    private readonly Beam _beam;
    private readonly Span<double> _follow;
    private Vector3 _x;
    private Vector3 _y;
    private Vector3 _z;
    private double _lengthM;
    private double _eta;
    private double _eta11;
    private double _eta12;
    private double _eta21;
    private double _eta22;
    private Vector3 _turn1;
    private Vector3 _turn2;
    private double _forceN;
    private Vector3 _moment1;
    private Vector3 _moment2;

    /// <summary>Finds the beam's own axes, its bending and its forces.</summary>
    /// <param name="beam">The beam, as drawn.</param>
    /// <param name="stiffness">Its seven-by-seven stiffness from <see cref="OwnStiffness"/>.</param>
    /// <param name="apart">How its end moved less how its start moved, m.</param>
    /// <param name="turn1">Turn of its start from the drawing.</param>
    /// <param name="turn2">Turn of its end.</param>
    /// <param name="free">What it would do by itself by heat: growth in m, then turn vectors of both ends.</param>
    /// <param name="follow">Room for 72 numbers.</param>
    internal CorotatedBeam(Beam beam, ReadOnlySpan<double> stiffness, Vector3 apart, Turn turn1, Turn turn2, scoped ReadOnlySpan<double> free, Span<double> follow)
    {
        _beam = beam;
        _follow = follow;
        var drawn = Turn.FromColumns(beam.AxisX, beam.AxisY, beam.AxisZ);
        var run = (beam.AxisX * beam.LengthM) + apart;
        _lengthM = run.Size;
        _x = run * (1 / _lengthM);
        // The same as the new length less the old one, without the difference of two nearly equal numbers.
        double growthM = ((2 * beam.LengthM * beam.AxisX.Dot(apart)) + apart.Dot(apart)) / (_lengthM + beam.LengthM);
        Vector3 q1 = turn1.Of(beam.AxisY), q2 = turn2.Of(beam.AxisY), q = (q1 + q2) * 0.5;
        var z = _x.Cross(q);
        _z = z * (1 / z.Size);
        _y = _z.Cross(_x);
        double across = q.Dot(_y);
        (_eta, _eta11, _eta12) = (q.Dot(_x) / across, q1.Dot(_x) / across, q1.Dot(_y) / across);
        (_eta21, _eta22) = (q2.Dot(_x) / across, q2.Dot(_y) / across);
        var back = Turn.FromColumns(_x, _y, _z).Reverse;
        _turn1 = back.After(turn1).After(drawn).ToVector();
        _turn2 = back.After(turn2).After(drawn).ToVector();

        Span<double> bend = [growthM - free[0], _turn1.X - free[1], _turn1.Y - free[2], _turn1.Z - free[3], _turn2.X - free[4], _turn2.Y - free[5], _turn2.Z - free[6]];
        Span<double> own = stackalloc double[7];
        for (int r = 0; r < 7; r++)
        {
            for (int c = 0; c < 7; c++)
                own[r] += stiffness[(7 * r) + c] * bend[c];
        }
        _forceN = own[0];
        _moment1 = new(own[1], own[2], own[3]);
        _moment2 = new(own[4], own[5], own[6]);
    }

    /// <summary>Stiffness against growth and the turns of both ends in the beam's own axes, released turns let go.</summary>
    internal static double[] OwnStiffness(Beam beam)
    {
        Span<double> k = stackalloc double[Beam.MatrixSize], loads = stackalloc double[12];
        beam.Elastic(k);
        loads.Clear();
        BeamMatrix.Release(beam.Released, k, loads);
        ReadOnlySpan<int> kept = [6, 3, 4, 5, 9, 10, 11];
        var own = new double[49];
        for (int r = 0; r < 7; r++)
        {
            for (int c = 0; c < 7; c++)
                own[(7 * r) + c] = k[(12 * kept[r]) + kept[c]];
        }
        return own;
    }

    /// <summary>Its twelve end forces now, along global axes.</summary>
    internal void Forces(Span<double> into)
    {
        Follow();
        Vector3 m1 = Spin(_turn1, _moment1), m2 = Spin(_turn2, _moment2);
        Span<double> six = [m1.X, m1.Y, m1.Z, m2.X, m2.Y, m2.Z];
        for (int c = 0; c < Wide; c++)
        {
            double sum = Stretch(c) * _forceN;
            for (int r = 0; r < 6; r++)
                sum += _follow[(Wide * r) + c] * six[r];
            into[c] = sum;
        }
    }

    /// <summary>Turns global end forces into its present axes.</summary>
    internal readonly void ToOwnAxes(ReadOnlySpan<double> global, Span<double> own)
    {
        for (int part = 0; part < 12; part += 3)
        {
            var v = new Vector3(global[part], global[part + 1], global[part + 2]);
            (own[part], own[part + 1], own[part + 2]) = (_x.Dot(v), _y.Dot(v), _z.Dot(v));
        }
    }

    /// <summary>Change of its end forces with its ends' movements; made symmetric, which it is where all is in balance.</summary>
    internal void Tangent(ReadOnlySpan<double> stiffness, Span<double> into)
    {
        Follow();
        Span<double> spinned = stackalloc double[49];
        SpinStiffness(stiffness, spinned);
        Vector3 m1 = Spin(_turn1, _moment1), m2 = Spin(_turn2, _moment2);
        Span<double> raw = stackalloc double[144], half = stackalloc double[7 * Wide];
        half.Clear();
        raw.Clear();
        for (int r = 0; r < 7; r++)
        {
            for (int c = 0; c < Wide; c++)
            {
                double sum = spinned[7 * r] * Stretch(c);
                for (int k = 0; k < 6; k++)
                    sum += spinned[(7 * r) + 1 + k] * _follow[(Wide * k) + c];
                half[(Wide * r) + c] = sum;
            }
        }
        for (int p = 0; p < Wide; p++)
        {
            for (int c = 0; c < Wide; c++)
            {
                double sum = Stretch(p) * half[c];
                for (int k = 0; k < 6; k++)
                    sum += _follow[(Wide * k) + p] * half[(Wide * (k + 1)) + c];
                raw[(Wide * p) + c] = sum;
            }
        }
        AddStretchTurn(raw);
        AddFrameTurn(raw, m1, m2);
        for (int p = 0; p < Wide; p++)
        {
            for (int c = 0; c < Wide; c++)
                into[(Wide * p) + c] = (raw[(Wide * p) + c] + raw[(Wide * c) + p]) / 2;
        }
    }

    private readonly double Stretch(int column) => column < 3 ? -_x[column] : column is >= 6 and < 9 ? _x[column - 6] : 0;

    /// <summary>How the axes turn when an end moves: three rows in own axes, twelve columns in own axes.</summary>
    private readonly void AxesTurn(Span<double> g)
    {
        g.Clear();
        double l = _lengthM;
        g[2] = _eta / l;
        g[3] = _eta12 / 2;
        g[4] = -_eta11 / 2;
        g[8] = -_eta / l;
        g[9] = _eta22 / 2;
        g[10] = -_eta21 / 2;
        g[Wide + 2] = 1 / l;
        g[Wide + 8] = -1 / l;
        g[(2 * Wide) + 1] = -1 / l;
        g[(2 * Wide) + 7] = 1 / l;
    }

    /// <summary>Fills how spins seen in the own axes follow from the ends' global movements: P·Eᵀ, six rows.</summary>
    private readonly void Follow()
    {
        Span<double> g = stackalloc double[3 * Wide];
        AxesTurn(g);
        for (int r = 0; r < 6; r++)
        {
            int own = r < 3 ? 3 + r : 6 + r;
            for (int part = 0; part < Wide; part += 3)
            {
                double a = -g[(Wide * (r % 3)) + part] + (own == part ? 1 : 0);
                double b = -g[(Wide * (r % 3)) + part + 1] + (own == part + 1 ? 1 : 0);
                double c = -g[(Wide * (r % 3)) + part + 2] + (own == part + 2 ? 1 : 0);
                for (int axis = 0; axis < 3; axis++)
                    _follow[(Wide * r) + part + axis] = (a * _x[axis]) + (b * _y[axis]) + (c * _z[axis]);
            }
        }
    }

    private static Vector3 Spin(Vector3 turn, Vector3 moment)
    {
        double angle = turn.Size, share = HalfOverTan(angle);
        var along = angle == 0 ? Vector3.Zero : turn * (turn.Dot(moment) / (angle * angle) * (1 - share));
        // The transpose of the inverse: its skew part changes sign.
        return (moment * share) + along + (turn.Cross(moment) * 0.5);
    }

    private static double HalfOverTan(double angle) => angle < 1e-4 ? 1 - (angle * angle / 12) : angle / 2 / Math.Tan(angle / 2);

    /// <summary>Stiffness against spins instead of turn vectors.</summary>
    private readonly void SpinStiffness(ReadOnlySpan<double> stiffness, Span<double> spinned)
    {
        Span<double> change = stackalloc double[49], half = stackalloc double[49];
        change.Clear();
        change[0] = 1;
        InverseTurn(_turn1, change, 1);
        InverseTurn(_turn2, change, 4);
        half.Clear();
        spinned.Clear();
        for (int r = 0; r < 7; r++)
        {
            for (int k = 0; k < 7; k++)
            {
                for (int c = 0; c < 7; c++)
                    half[(7 * r) + c] += stiffness[(7 * r) + k] * change[(7 * k) + c];
            }
        }
        for (int k = 0; k < 7; k++)
        {
            for (int r = 0; r < 7; r++)
            {
                for (int c = 0; c < 7; c++)
                    spinned[(7 * r) + c] += change[(7 * k) + r] * half[(7 * k) + c];
            }
        }
        AddMomentTurn(spinned, change, _turn1, _moment1, 1);
        AddMomentTurn(spinned, change, _turn2, _moment2, 4);
    }

    private static void InverseTurn(Vector3 turn, Span<double> into, int at)
    {
        double angle = turn.Size, share = HalfOverTan(angle);
        for (int r = 0; r < 3; r++)
        {
            for (int c = 0; c < 3; c++)
                into[(7 * (at + r)) + at + c] = (r == c ? share : 0) + (angle == 0 ? 0 : (1 - share) * turn[r] * turn[c] / (angle * angle));
        }
        AddSkew(into, 7, at, at, turn, -0.5);
    }

    private static void AddMomentTurn(Span<double> into, ReadOnlySpan<double> change, Vector3 turn, Vector3 moment, int at)
    {
        double angle = turn.Size, angle2 = angle * angle;
        double eta = angle < 1e-2 ? (1.0 / 12) + (angle2 / 720) : ((2 * Math.Sin(angle)) - (angle * (1 + Math.Cos(angle)))) / (2 * angle2 * Math.Sin(angle));
        double sine = Math.Sin(angle / 2);
        double mu = angle < 1e-2 ? (1.0 / 360) + (angle2 / 7560) : ((angle * (angle + Math.Sin(angle))) - (8 * sine * sine)) / (4 * angle2 * angle2 * sine * sine);
        Span<double> own = stackalloc double[9];
        own.Clear();
        var twice = turn.Cross(turn.Cross(moment));
        for (int r = 0; r < 3; r++)
        {
            for (int c = 0; c < 3; c++)
                own[(3 * r) + c] = (eta * ((turn[r] * moment[c]) - (2 * moment[r] * turn[c]) + (r == c ? turn.Dot(moment) : 0))) + (mu * twice[r] * turn[c]);
        }
        AddSkew(own, 3, 0, 0, moment, -0.5);
        for (int r = 0; r < 3; r++)
        {
            for (int c = 0; c < 3; c++)
            {
                for (int k = 0; k < 3; k++)
                    into[(7 * (at + r)) + at + c] += own[(3 * r) + k] * change[(7 * (at + k)) + at + c];
            }
        }
    }

    private static void AddSkew(Span<double> into, int wide, int row, int column, Vector3 v, double times)
    {
        into[(wide * row) + column + 1] -= v.Z * times;
        into[(wide * row) + column + 2] += v.Y * times;
        into[(wide * (row + 1)) + column] += v.Z * times;
        into[(wide * (row + 1)) + column + 2] -= v.X * times;
        into[(wide * (row + 2)) + column] -= v.Y * times;
        into[(wide * (row + 2)) + column + 1] += v.X * times;
    }

    private readonly void AddStretchTurn(Span<double> raw)
    {
        for (int r = 0; r < 3; r++)
        {
            for (int c = 0; c < 3; c++)
            {
                double value = _forceN / _lengthM * ((r == c ? 1 : 0) - (_x[r] * _x[c]));
                raw[(Wide * r) + c] += value;
                raw[(Wide * r) + 6 + c] -= value;
                raw[(Wide * (6 + r)) + c] -= value;
                raw[(Wide * (6 + r)) + 6 + c] += value;
            }
        }
    }

    /// <summary>Adds −E·Q·Gᵀ·Eᵀ + E·G·a·r: forces keep to axes that turn.</summary>
    private readonly void AddFrameTurn(Span<double> raw, Vector3 m1, Vector3 m2)
    {
        Span<double> g = stackalloc double[3 * Wide], skew = stackalloc double[Wide * 3], own = stackalloc double[144], forces = stackalloc double[Wide];
        AxesTurn(g);
        Span<double> six = [m1.X, m1.Y, m1.Z, m2.X, m2.Y, m2.Z];
        for (int c = 0; c < Wide; c++)
        {
            double sum = c is >= 3 and < 6 ? six[c - 3] : c >= 9 ? six[c - 6] : 0;
            for (int r = 0; r < 3; r++)
                sum -= g[(Wide * r) + c] * (six[r] + six[3 + r]);
            forces[c] = sum;
        }
        skew.Clear();
        for (int part = 0; part < Wide; part += 3)
            AddSkew(skew, 3, part, 0, new(forces[part], forces[part + 1], forces[part + 2]), 1);
        ReadOnlySpan<double> a = [0, ((_eta * (m1.X + m2.X)) + m1.Y + m2.Y) / _lengthM, (m1.Z + m2.Z) / _lengthM];
        own.Clear();
        for (int p = 0; p < Wide; p++)
        {
            for (int c = 0; c < Wide; c++)
            {
                double sum = 0;
                for (int k = 0; k < 3; k++)
                    sum -= skew[(3 * p) + k] * g[(Wide * k) + c];
                own[(Wide * p) + c] = sum;
            }
            double lean = 0;
            for (int k = 0; k < 3; k++)
                lean += g[(Wide * k) + p] * a[k];
            own[Wide * p] -= lean;
            own[(Wide * p) + 6] += lean;
        }
        AddTurned(own, raw);
    }

    private readonly void AddTurned(ReadOnlySpan<double> own, Span<double> raw)
    {
        Span<double> half = stackalloc double[144];
        for (int p = 0; p < Wide; p++)
        {
            for (int part = 0; part < Wide; part += 3)
            {
                for (int axis = 0; axis < 3; axis++)
                    half[(Wide * p) + part + axis] = (own[(Wide * p) + part] * _x[axis]) + (own[(Wide * p) + part + 1] * _y[axis]) + (own[(Wide * p) + part + 2] * _z[axis]);
            }
        }
        for (int c = 0; c < Wide; c++)
        {
            for (int part = 0; part < Wide; part += 3)
            {
                for (int axis = 0; axis < 3; axis++)
                    raw[(Wide * (part + axis)) + c] += (half[(Wide * part) + c] * _x[axis]) + (half[(Wide * (part + 1)) + c] * _y[axis]) + (half[(Wide * (part + 2)) + c] * _z[axis]);
            }
        }
    }
}
