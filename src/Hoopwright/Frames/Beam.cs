using System.Runtime.CompilerServices;

namespace Hoopwright.Frames;

/// <summary>
/// One member made ready for solving: its length, axes and stiffnesses. Freedoms run from 0 to 11: shifts along and turns about local
/// x, y, z at its start, then at its end.
/// </summary>
internal sealed class Beam
{
    /// <summary>Numbers in a beam's stiffness matrix.</summary>
    internal const int MatrixSize = 144;

    // Below this length across, a member counts as vertical: its local z would turn on the last digits of its ends.
    private const double VerticalShare = 1e-9;

    private readonly double _phiY;
    private readonly double _phiZ;

    private Beam(FrameMember member, Vector3 run, double lengthM)
    {
        Member = member;
        LengthM = lengthM;
        AxisX = run * (1 / lengthM);
        (AxisY, AxisZ) = CrossAxes(AxisX, member.RollRad);
        var (section, material) = (member.Section, member.Material);
        EaN = material.YoungPa * section.AreaM2;
        EiyNm2 = material.YoungPa * section.IyM4;
        EizNm2 = material.YoungPa * section.IzM4;
        GjNm2 = material.ShearPa * section.JM4;
        PolarM2 = section.AreaM2 > 0 ? (section.IyM4 + section.IzM4) / section.AreaM2 : 0;
        _phiY = section.ShearAreaYM2 > 0 ? 12 * EizNm2 / (material.ShearPa * section.ShearAreaYM2 * lengthM * lengthM) : 0;
        _phiZ = section.ShearAreaZM2 > 0 ? 12 * EiyNm2 / (material.ShearPa * section.ShearAreaZM2 * lengthM * lengthM) : 0;
        Released = (int)member.ReleaseFrom | ((int)member.ReleaseTo << 6);
        HasArms = member.OffsetFromM != Vector3.Zero || member.OffsetToM != Vector3.Zero;
    }

    /// <summary>What it was made from.</summary>
    internal FrameMember Member { get; }

    /// <summary>Length between its own ends, m.</summary>
    internal double LengthM { get; }

    /// <summary>Local x, from its start to its end.</summary>
    internal Vector3 AxisX { get; }

    /// <summary>Local y.</summary>
    internal Vector3 AxisY { get; }

    /// <summary>Local z.</summary>
    internal Vector3 AxisZ { get; }

    /// <summary>Axial stiffness, N.</summary>
    internal double EaN { get; }

    /// <summary>Bending stiffness about local y, N·m².</summary>
    internal double EiyNm2 { get; }

    /// <summary>Bending stiffness about local z, N·m².</summary>
    internal double EizNm2 { get; }

    /// <summary>Torsion stiffness, N·m².</summary>
    internal double GjNm2 { get; }

    /// <summary>Polar second moment over area, m².</summary>
    internal double PolarM2 { get; }

    /// <summary>Released freedoms as twelve bits.</summary>
    internal int Released { get; }

    /// <summary>True when its ends stand off its nodes.</summary>
    internal bool HasArms { get; }

    /// <summary>Makes a member ready; null when it has no length.</summary>
    internal static Beam? Of(FrameMember member, Vector3 fromM, Vector3 toM)
    {
        var run = toM + member.OffsetToM - (fromM + member.OffsetFromM);
        double lengthM = run.Size;
        return lengthM > 0 && double.IsFinite(lengthM) ? new(member, run, lengthM) : null;
    }

    /// <summary>Local y and z of a member along an axis. With no roll, z lies in the vertical plane, or along global x for a vertical member.</summary>
    internal static (Vector3 Y, Vector3 Z) CrossAxes(Vector3 axisX, double rollRad)
    {
        double acrossSize = Math.Sqrt((axisX.X * axisX.X) + (axisX.Y * axisX.Y));
        var z = acrossSize > VerticalShare
            ? new Vector3(-axisX.X * axisX.Z / acrossSize, -axisX.Y * axisX.Z / acrossSize, acrossSize)
            : new Vector3(1, 0, 0);
        var y = z.Cross(axisX);
        if (rollRad == 0)
            return (y, z);
        double cos = Math.Cos(rollRad), sin = Math.Sin(rollRad);
        return ((y * cos) + (z * sin), (z * cos) - (y * sin));
    }

    /// <summary>Elastic stiffness in local axes (Przemieniecki, Theory of Matrix Structural Analysis, 1968, eq. 5.116).</summary>
    internal void Elastic(Span<double> k) => Elastic(k, EiyNm2, EizNm2);

    /// <summary>
    /// The same with some bending stiffness where the section has none: its released ends then follow the straight line between its
    /// nodes, as those of a bar do.
    /// </summary>
    internal void ElasticToFollow(Span<double> k)
    {
        double someNm2 = EaN * LengthM * LengthM;
        Elastic(k, EiyNm2 > 0 ? EiyNm2 : someNm2, EizNm2 > 0 ? EizNm2 : someNm2);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Elastic(Span<double> k, double eiyNm2, double eizNm2)
    {
        k.Clear();
        double axial = EaN / LengthM, twist = GjNm2 / LengthM;
        Add(k, 0, 0, axial);
        Add(k, 0, 6, -axial);
        Add(k, 6, 6, axial);
        Add(k, 3, 3, twist);
        Add(k, 3, 9, -twist);
        Add(k, 9, 9, twist);
        Bend(k, eizNm2, _phiY, shift: 1, turn: 5, sense: 1);
        Bend(k, eiyNm2, _phiZ, shift: 2, turn: 4, sense: -1);
    }

    /// <summary>
    /// Adds the stiffness that the forces at the beam's ends give: the consistent matrix with axial force, end moments and torque
    /// (McGuire, Gallagher and Ziemian, Matrix Structural Analysis, 2nd ed., 2000, sec. 9.4, from memory; shear flexibility after
    /// Przemieniecki, from memory).
    /// </summary>
    /// <param name="k">Matrix to add to.</param>
    /// <param name="f">Twelve forces on the beam's ends, local.</param>
    /// <param name="times">Multiple of the forces.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void AddGeometric(Span<double> k, ReadOnlySpan<double> f, double times = 1)
    {
        // Loads along the beam change the axial force and the torque on the way: their means count.
        double l = LengthM, n = (f[6] - f[0]) / 2 * times, torque = (f[9] - f[3]) / 2 * times;
        double my1 = f[4] * times, mz1 = f[5] * times, my2 = f[10] * times, mz2 = f[11] * times;
        Tighten(k, n, _phiY, shift: 1, turn: 5, sense: 1);
        Tighten(k, n, _phiZ, shift: 2, turn: 4, sense: -1);

        double wind = n * PolarM2 / l;
        Add(k, 3, 3, wind);
        Add(k, 3, 9, -wind);
        Add(k, 9, 9, wind);

        Add(k, 1, 3, my1 / l);
        Add(k, 1, 9, my2 / l);
        Add(k, 3, 7, -my1 / l);
        Add(k, 7, 9, -my2 / l);
        Add(k, 2, 3, mz1 / l);
        Add(k, 2, 9, mz2 / l);
        Add(k, 3, 8, -mz1 / l);
        Add(k, 8, 9, -mz2 / l);

        Add(k, 3, 4, -((2 * mz1) - mz2) / 6);
        Add(k, 3, 5, ((2 * my1) - my2) / 6);
        Add(k, 3, 10, -(mz1 + mz2) / 6);
        Add(k, 3, 11, (my1 + my2) / 6);
        Add(k, 4, 9, -(mz1 + mz2) / 6);
        Add(k, 5, 9, (my1 + my2) / 6);
        Add(k, 9, 10, (mz1 - (2 * mz2)) / 6);
        Add(k, 9, 11, -(my1 - (2 * my2)) / 6);

        Add(k, 1, 4, torque / l);
        Add(k, 1, 10, -torque / l);
        Add(k, 2, 5, torque / l);
        Add(k, 2, 11, -torque / l);
        Add(k, 4, 7, -torque / l);
        Add(k, 5, 8, -torque / l);
        Add(k, 7, 10, torque / l);
        Add(k, 8, 11, torque / l);
        Add(k, 4, 11, torque / 2);
        Add(k, 5, 10, -torque / 2);
    }

    /// <summary>Adds the forces that a load along the beam puts on its ends when they are held, with the sign of the load.</summary>
    /// <param name="at">Twelve end forces to add to, local.</param>
    /// <param name="load">The load.</param>
    /// <param name="times">Multiple of the load.</param>
    internal void AddLoad(Span<double> at, MemberLoad load, double times)
    {
        var (start, end) = (Local(load.StartNPerM, load), Local(load.EndNPerM, load));
        double from = load.FromShare, part = load.ToShare - load.FromShare;
        for (int point = 0; point < 3; point++)
        {
            double place = HeldEnds.Places[point], xi = from + (part * place), weightM = HeldEnds.Weights[point] * part * LengthM * times;
            var q = (start * (1 - place)) + (end * place);
            at[0] += (1 - xi) * q.X * weightM;
            at[6] += xi * q.X * weightM;
            HeldEnds.AddAcross(at, q.Y * weightM, LengthM, xi, _phiY, shift: 1, turn: 5, apart: 6, sense: 1);
            HeldEnds.AddAcross(at, q.Z * weightM, LengthM, xi, _phiZ, shift: 2, turn: 4, apart: 6, sense: -1);
        }
    }

    /// <summary>Adds the forces that a change of temperature puts on the beam's held ends, with the sign of a load.</summary>
    internal void AddTemperature(Span<double> at, MemberTemperature temperature, double times)
    {
        double expansion = Member.Material.ExpansionPerK * times;
        double pushN = EaN * expansion * temperature.UniformK;
        at[0] -= pushN;
        at[6] += pushN;
        double aboutYNm = EiyNm2 * expansion * temperature.GradientZKPerM, aboutZNm = EizNm2 * expansion * temperature.GradientYKPerM;
        at[4] -= aboutYNm;
        at[10] += aboutYNm;
        at[5] += aboutZNm;
        at[11] -= aboutZNm;
    }

    private Vector3 Local(Vector3 load, MemberLoad how)
    {
        if (how.Frame == LoadFrame.Member)
            return load;
        if (how.Per == LoadPer.Projection)
            load = new(load.X * Seen(AxisX.X), load.Y * Seen(AxisX.Y), load.Z * Seen(AxisX.Z));
        return new(load.Dot(AxisX), load.Dot(AxisY), load.Dot(AxisZ));

        static double Seen(double along) => Math.Sqrt(Math.Max(0, 1 - (along * along)));
    }

    private void Bend(Span<double> k, double ei, double phi, int shift, int turn, int sense)
    {
        double l = LengthM, scale = ei / (l * (1 + phi));
        double a = 12 * scale / (l * l), b = 6 * scale / l * sense, c = (4 + phi) * scale, d = (2 - phi) * scale;
        AddPlane(k, a, b, c, d, shift, turn);
    }

    private void Tighten(Span<double> k, double n, double phi, int shift, int turn, int sense)
    {
        double l = LengthM, scale = n / ((1 + phi) * (1 + phi));
        double a = scale * (1.2 + (2 * phi) + (phi * phi)) / l, b = scale / 10 * sense;
        double c = scale * l * ((2.0 / 15) + (phi / 6) + (phi * phi / 12)), d = -scale * l * ((1.0 / 30) + (phi / 6) + (phi * phi / 12));
        AddPlane(k, a, b, c, d, shift, turn);
    }

    /// <summary>Adds what a beam does in one of its planes: shift against shift a, shift against turn b, turn against its own c and against the other d.</summary>
    private static void AddPlane(Span<double> k, double a, double b, double c, double d, int shift, int turn)
    {
        Add(k, shift, shift, a);
        Add(k, shift, turn, b);
        Add(k, shift, shift + 6, -a);
        Add(k, shift, turn + 6, b);
        Add(k, turn, turn, c);
        Add(k, turn, shift + 6, -b);
        Add(k, turn, turn + 6, d);
        Add(k, shift + 6, shift + 6, a);
        Add(k, shift + 6, turn + 6, -b);
        Add(k, turn + 6, turn + 6, c);
    }

    private static void Add(Span<double> k, int row, int column, double value)
    {
        k[(12 * row) + column] += value;
        if (row != column)
            k[(12 * column) + row] += value;
    }
}
