using System.Runtime.CompilerServices;

namespace Hoopwright.Frames;

/// <summary>What is done to a beam's twelve-by-twelve matrices and twelve-number vectors on their way to the frame.</summary>
internal static class BeamMatrix
{
    // A released freedom whose own stiffness has sunk this far under its elastic start has no hold left on the rest.
    private const double GoneShare = 1e-12;

    /// <summary>Lets released freedoms go: their forces become zero and their turns follow the rest (static condensation).</summary>
    /// <param name="released">Twelve bits.</param>
    /// <param name="k">Stiffness; changed.</param>
    /// <param name="loads">End forces of loads along the beam; changed.</param>
    /// <param name="along">A second matrix that is carried along by the same follow-on movements, such as the geometric one; empty for none.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Release(int released, Span<double> k, Span<double> loads, Span<double> along = default)
    {
        if (released == 0)
            return;
        Span<double> starts = stackalloc double[12], follow = stackalloc double[12];
        for (int at = 0; at < 12; at++)
            starts[at] = Math.Abs(k[13 * at]);
        for (int gone = 0; gone < 12; gone++)
        {
            if ((released >> gone & 1) == 0)
                continue;
            double own = k[13 * gone];
            bool holds = Math.Abs(own) > GoneShare * starts[gone];
            for (int at = 0; at < 12; at++)
                follow[at] = holds && at != gone ? -k[(12 * gone) + at] / own : 0;
            double load = loads[gone];
            Follow(k, gone, follow);
            if (!along.IsEmpty)
                Follow(along, gone, follow);
            loads[gone] = 0;
            for (int at = 0; at < 12; at++)
                loads[at] += follow[at] * load;
        }
    }

    /// <summary>Turns a local matrix into global axes, at the beam's own ends, and carries it to the nodes over its rigid arms.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void ToGlobal(Beam beam, ReadOnlySpan<double> local, Span<double> global)
    {
        Span<double> axes = stackalloc double[9], half = stackalloc double[9];
        Axes(beam, axes);
        for (int rows = 0; rows < 12; rows += 3)
        {
            for (int columns = 0; columns < 12; columns += 3)
            {
                for (int r = 0; r < 3; r++)
                {
                    int at = (12 * (rows + r)) + columns;
                    double a = local[at], b = local[at + 1], c = local[at + 2];
                    for (int q = 0; q < 3; q++)
                        half[(3 * r) + q] = (a * axes[q]) + (b * axes[3 + q]) + (c * axes[6 + q]);
                }
                for (int p = 0; p < 3; p++)
                {
                    double a = axes[p], b = axes[3 + p], c = axes[6 + p];
                    int at = (12 * (rows + p)) + columns;
                    for (int q = 0; q < 3; q++)
                        global[at + q] = (a * half[q]) + (b * half[3 + q]) + (c * half[6 + q]);
                }
            }
        }
        if (beam.HasArms)
            Carry(beam, global);
    }

    /// <summary>Local end movements from the movements of the beam's two nodes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void ToLocal(Beam beam, ReadOnlySpan<double> from, ReadOnlySpan<double> to, Span<double> local)
    {
        End(beam, from, beam.Member.OffsetFromM, local[..6]);
        End(beam, to, beam.Member.OffsetToM, local[6..]);

        static void End(Beam beam, ReadOnlySpan<double> node, Vector3 arm, Span<double> end)
        {
            var turn = new Vector3(node[3], node[4], node[5]);
            var shift = new Vector3(node[0], node[1], node[2]);
            if (beam.HasArms)
                shift += turn.Cross(arm);
            end[0] = beam.AxisX.Dot(shift);
            end[1] = beam.AxisY.Dot(shift);
            end[2] = beam.AxisZ.Dot(shift);
            end[3] = beam.AxisX.Dot(turn);
            end[4] = beam.AxisY.Dot(turn);
            end[5] = beam.AxisZ.Dot(turn);
        }
    }

    /// <summary>Adds local end forces to the forces at the beam's two nodes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void AddToNodes(Beam beam, ReadOnlySpan<double> local, Span<double> from, Span<double> to, double times)
    {
        End(beam, local[..6], beam.Member.OffsetFromM, from, times);
        End(beam, local[6..], beam.Member.OffsetToM, to, times);

        static void End(Beam beam, ReadOnlySpan<double> end, Vector3 arm, Span<double> node, double times)
        {
            var force = ((beam.AxisX * end[0]) + (beam.AxisY * end[1]) + (beam.AxisZ * end[2])) * times;
            var moment = ((beam.AxisX * end[3]) + (beam.AxisY * end[4]) + (beam.AxisZ * end[5])) * times;
            if (beam.HasArms)
                moment += arm.Cross(force);
            node[0] += force.X;
            node[1] += force.Y;
            node[2] += force.Z;
            node[3] += moment.X;
            node[4] += moment.Y;
            node[5] += moment.Z;
        }
    }

    /// <summary>out = k·v − less.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Times(ReadOnlySpan<double> k, ReadOnlySpan<double> v, ReadOnlySpan<double> less, Span<double> into)
    {
        for (int r = 0; r < 12; r++)
        {
            double sum = -less[r];
            var row = k.Slice(12 * r, 12);
            for (int c = 0; c < 12; c++)
                sum += row[c] * v[c];
            into[r] = sum;
        }
    }

    private static void Axes(Beam beam, Span<double> axes)
    {
        (axes[0], axes[1], axes[2]) = (beam.AxisX.X, beam.AxisX.Y, beam.AxisX.Z);
        (axes[3], axes[4], axes[5]) = (beam.AxisY.X, beam.AxisY.Y, beam.AxisY.Z);
        (axes[6], axes[7], axes[8]) = (beam.AxisZ.X, beam.AxisZ.Y, beam.AxisZ.Z);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Follow(Span<double> k, int gone, ReadOnlySpan<double> follow)
    {
        Span<double> row = stackalloc double[12];
        k.Slice(12 * gone, 12).CopyTo(row);
        double own = row[gone];
        for (int r = 0; r < 12; r++)
        {
            if (r == gone)
                continue;
            for (int c = 0; c < 12; c++)
            {
                if (c != gone)
                    k[(12 * r) + c] += (follow[r] * row[c]) + (row[r] * follow[c]) + (follow[r] * own * follow[c]);
            }
        }
        for (int at = 0; at < 12; at++)
        {
            k[(12 * gone) + at] = 0;
            k[(12 * at) + gone] = 0;
        }
    }

    // An end stands off its node by an arm o: its shift is u + θ × o, so columns of turns gain those of shifts, and rows likewise.
    private static void Carry(Beam beam, Span<double> k)
    {
        Arm(k, 0, beam.Member.OffsetFromM);
        Arm(k, 6, beam.Member.OffsetToM);

        static void Arm(Span<double> k, int start, Vector3 o)
        {
            for (int r = 0; r < 12; r++)
            {
                var row = k.Slice(12 * r, 12);
                var force = new Vector3(row[start], row[start + 1], row[start + 2]);
                var moment = o.Cross(force);
                row[start + 3] += moment.X;
                row[start + 4] += moment.Y;
                row[start + 5] += moment.Z;
            }
            for (int c = 0; c < 12; c++)
            {
                var force = new Vector3(k[(12 * start) + c], k[(12 * (start + 1)) + c], k[(12 * (start + 2)) + c]);
                var moment = o.Cross(force);
                k[(12 * (start + 3)) + c] += moment.X;
                k[(12 * (start + 4)) + c] += moment.Y;
                k[(12 * (start + 5)) + c] += moment.Z;
            }
        }
    }
}
