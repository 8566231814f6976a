using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Hoopwright.Frames;

/// <summary>A frame under one combination while it is being solved: its stiffness, its movements, its forces. Used again for the next.</summary>
internal sealed class FrameWork
{
    private readonly double[] _local;
    private readonly double[] _ends;
    private readonly double[] _spread;
    private readonly double[] _applied;
    private readonly double[] _forces;
    private readonly double[] _nodeForces;
    private double _greatestLoad;

    internal FrameWork(FrameMesh mesh)
    {
        Mesh = mesh;
        Factor = new(mesh.Pattern);
        _local = new double[mesh.Beams.Length * Beam.MatrixSize];
        _ends = new double[12 * mesh.Beams.Length];
        _spread = new double[12 * mesh.Beams.Length];
        _forces = new double[12 * mesh.Beams.Length];
        _applied = new double[6 * mesh.Nodes];
        _nodeForces = new double[6 * mesh.Nodes];
        Movement = new double[6 * mesh.Nodes];
        Slack = new bool[mesh.Beams.Length];
    }

    /// <summary>The frame.</summary>
    internal FrameMesh Mesh { get; }

    /// <summary>Its stiffness matrix and factors.</summary>
    internal BlockFactor Factor { get; }

    /// <summary>Six for each node: shifts and turns.</summary>
    internal double[] Movement { get; }

    /// <summary>Members that take no part because they would be pressed.</summary>
    internal bool[] Slack { get; }

    /// <summary>Twelve for each beam: local forces on its ends.</summary>
    internal ReadOnlySpan<double> EndForces(int beam) => _forces.AsSpan(12 * beam, 12);

    /// <summary>Puts a combination's loads on the frame and sets it back to rest.</summary>
    /// <param name="parts">Load cases and factors.</param>
    internal void Load(ImmutableArray<CombinationPart> parts)
    {
        Array.Clear(_applied);
        Array.Clear(_spread);
        Array.Clear(_forces);
        Array.Clear(Movement);
        foreach (var part in parts)
            Load(Mesh.Model.LoadCases[part.LoadCase], part.Factor);
        _greatestLoad = GreatestLoad();
    }

    /// <summary>Forms every beam's stiffness, elastic or with what the present forces give, and factors the frame's.</summary>
    /// <param name="geometric">True to count the present forces.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Form(bool geometric)
    {
        Factor.Clear();
        Span<double> global = stackalloc double[Beam.MatrixSize];
        for (int at = 0; at < Mesh.Beams.Length; at++)
        {
            if (Slack[at])
                continue;
            FormBeam(at, geometric);
            BeamMatrix.ToGlobal(Mesh.Beams[at], _local.AsSpan(at * Beam.MatrixSize, Beam.MatrixSize), global);
            Mesh.Scatter(at, global, Factor);
        }
        Mesh.AddGround(Factor);
    }

    /// <summary>Forms the frame's elastic stiffness plus a multiple of what the present forces give, and factors it.</summary>
    /// <param name="geometric">What the present forces give, from <see cref="Geometric"/>.</param>
    /// <param name="times">The multiple.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void FormShifted(ReadOnlySpan<double> geometric, double times)
    {
        Factor.Clear();
        Span<double> local = stackalloc double[Beam.MatrixSize], global = stackalloc double[Beam.MatrixSize];
        for (int at = 0; at < Mesh.Beams.Length; at++)
        {
            if (Slack[at])
                continue;
            int start = at * Beam.MatrixSize;
            for (int entry = 0; entry < local.Length; entry++)
                local[entry] = _local[start + entry] + (times * geometric[start + entry]);
            BeamMatrix.ToGlobal(Mesh.Beams[at], local, global);
            Mesh.Scatter(at, global, Factor);
        }
        Mesh.AddGround(Factor);
        Factor.Factor();
    }

    /// <summary>What the present forces give to every beam's stiffness, local, with released ends following the elastic ones.</summary>
    internal double[] Geometric()
    {
        var all = new double[_local.Length];
        Span<double> elastic = stackalloc double[Beam.MatrixSize], loads = stackalloc double[12];
        for (int at = 0; at < Mesh.Beams.Length; at++)
        {
            if (Slack[at])
                continue;
            var beam = Mesh.Beams[at];
            var geometric = all.AsSpan(at * Beam.MatrixSize, Beam.MatrixSize);
            beam.AddGeometric(geometric, EndForces(at));
            if (beam.Released == 0)
                continue;
            beam.ElasticToFollow(elastic);
            loads.Clear();
            BeamMatrix.Release(beam.Released, elastic, loads, geometric);
        }
        return all;
    }

    /// <summary>Multiplies a movement by beams' matrices, at the free freedoms.</summary>
    /// <param name="locals">A local matrix for every beam.</param>
    /// <param name="movement">Six values for each node.</param>
    /// <param name="into">Six values for each node; filled.</param>
    internal void Times(ReadOnlySpan<double> locals, ReadOnlySpan<double> movement, Span<double> into)
    {
        into.Clear();
        Span<double> ends = stackalloc double[12], forces = stackalloc double[12], none = stackalloc double[12];
        none.Clear();
        for (int at = 0; at < Mesh.Beams.Length; at++)
        {
            if (Slack[at])
                continue;
            var beam = Mesh.Beams[at];
            int from = 6 * beam.Member.From, to = 6 * beam.Member.To;
            BeamMatrix.ToLocal(beam, movement.Slice(from, 6), movement.Slice(to, 6), ends);
            BeamMatrix.Times(locals.Slice(at * Beam.MatrixSize, Beam.MatrixSize), ends, none, forces);
            BeamMatrix.AddToNodes(beam, forces, into.Slice(from, 6), into.Slice(to, 6), 1);
        }
        for (int at = 0; at < into.Length; at++)
        {
            if (Mesh.Held[at])
                into[at] = 0;
        }
    }

    /// <summary>Multiplies a movement by the frame's elastic stiffness, springs included, at the free freedoms.</summary>
    internal void ElasticTimes(ReadOnlySpan<double> movement, Span<double> into)
    {
        Times(_local, movement, into);
        for (int at = 0; at < into.Length; at++)
        {
            if (!Mesh.Held[at])
                into[at] += Mesh.Springs[at] * movement[at];
        }
    }

    /// <summary>Forms every beam's stiffness without the frame's.</summary>
    internal void FormBeams(bool geometric)
    {
        for (int at = 0; at < Mesh.Beams.Length; at++)
        {
            if (!Slack[at])
                FormBeam(at, geometric);
        }
    }

    /// <summary>Takes up the present loads along beams where the beams' elastic stiffness is formed already.</summary>
    internal void TakeEnds()
    {
        for (int at = 0; at < Mesh.Beams.Length; at++)
        {
            if (Slack[at])
                continue;
            // What released ends pass on hangs on the stiffness before they were let go.
            if (Mesh.Beams[at].Released != 0)
                FormBeam(at, geometric: false);
            else
                _spread.AsSpan(12 * at, 12).CopyTo(_ends.AsSpan(12 * at, 12));
        }
    }

    /// <summary>Finds the forces on every beam's ends at the present movements, and what is left out of balance at the free freedoms.</summary>
    /// <param name="rest">Six for each node; filled.</param>
    /// <returns>The greatest out-of-balance force as a share of the greatest force in the model; moments are counted over the model's mean member length.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal double OutOfBalance(Span<double> rest)
    {
        FindForces();
        double lengthM = MeanLengthM(), worst = 0, greatest = _greatestLoad;
        for (int at = 0; at < rest.Length; at++)
        {
            double unit = at % 6 < 3 ? 1 : lengthM;
            double spring = Mesh.Springs[at] * Movement[at];
            if (Mesh.Held[at])
            {
                rest[at] = 0;
                greatest = Math.Max(greatest, Math.Abs(_nodeForces[at] - _applied[at]) / unit);
                continue;
            }
            rest[at] = _applied[at] - _nodeForces[at] - spring;
            worst = Math.Max(worst, Math.Abs(rest[at]) / unit);
        }
        return worst == 0 ? 0 : worst / Math.Max(greatest, double.Epsilon);
    }

    /// <summary>Adds a solved change to the movements.</summary>
    internal void Move(ReadOnlySpan<double> change)
    {
        for (int at = 0; at < change.Length; at++)
            Movement[at] += change[at];
    }

    /// <summary>Lets go members that are pressed and takes back those that were let go and are stretched.</summary>
    /// <returns>True when any changed.</returns>
    internal bool SetSlack()
    {
        bool changed = false;
        Span<double> ends = stackalloc double[12];
        for (int at = 0; at < Mesh.Beams.Length; at++)
        {
            var beam = Mesh.Beams[at];
            if (!beam.Member.TensionOnly)
                continue;
            BeamMatrix.ToLocal(beam, Movement.AsSpan(6 * beam.Member.From, 6), Movement.AsSpan(6 * beam.Member.To, 6), ends);
            double axialN = (beam.EaN / beam.LengthM * (ends[6] - ends[0])) - ((_spread[(12 * at) + 6] - _spread[12 * at]) / 2);
            bool slack = axialN < 0;
            changed |= slack != Slack[at];
            Slack[at] = slack;
        }
        return changed;
    }

    /// <summary>The present state.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal FrameState State(int iterations, double residual)
    {
        var section = new double[12 * Mesh.Beams.Length];
        for (int at = 0; at < section.Length; at++)
            section[at] = at % 12 < 6 ? -_forces[at] : _forces[at];
        var reactions = new double[6 * Mesh.Nodes];
        for (int at = 0; at < reactions.Length; at++)
        {
            if (Mesh.Held[at])
                reactions[at] = _nodeForces[at] - _applied[at];
            else if (Mesh.Springs[at] != 0)
                reactions[at] = -Mesh.Springs[at] * Movement[at];
        }
        return new()
        {
            Displacements = [.. Movement],
            Reactions = ImmutableArray.Create(reactions),
            SectionForces = ImmutableArray.Create(section),
            Iterations = iterations,
            Residual = residual,
        };
    }

    private void FormBeam(int at, bool geometric)
    {
        var beam = Mesh.Beams[at];
        var k = _local.AsSpan(at * Beam.MatrixSize, Beam.MatrixSize);
        beam.Elastic(k);
        if (geometric)
            beam.AddGeometric(k, EndForces(at));
        var ends = _ends.AsSpan(12 * at, 12);
        _spread.AsSpan(12 * at, 12).CopyTo(ends);
        BeamMatrix.Release(beam.Released, k, ends);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FindForces()
    {
        Array.Clear(_nodeForces);
        Span<double> ends = stackalloc double[12];
        for (int at = 0; at < Mesh.Beams.Length; at++)
        {
            var forces = _forces.AsSpan(12 * at, 12);
            if (Slack[at])
            {
                forces.Clear();
                continue;
            }
            var beam = Mesh.Beams[at];
            BeamMatrix.ToLocal(beam, Movement.AsSpan(6 * beam.Member.From, 6), Movement.AsSpan(6 * beam.Member.To, 6), ends);
            BeamMatrix.Times(_local.AsSpan(at * Beam.MatrixSize, Beam.MatrixSize), ends, _ends.AsSpan(12 * at, 12), forces);
            BeamMatrix.AddToNodes(beam, forces, _nodeForces.AsSpan(6 * beam.Member.From, 6), _nodeForces.AsSpan(6 * beam.Member.To, 6), 1);
        }
    }

    private void Load(FrameLoadCase loads, double factor)
    {
        foreach (var load in loads.Nodes)
        {
            for (int freedom = 0; freedom < 6; freedom++)
                _applied[(6 * load.Node) + freedom] += load.Load[freedom] * factor;
        }
        foreach (var movement in loads.Movements)
        {
            for (int freedom = 0; freedom < 6; freedom++)
            {
                if (Mesh.Held[(6 * movement.Node) + freedom])
                    Movement[(6 * movement.Node) + freedom] += movement.Movement[freedom] * factor;
            }
        }
        foreach (var load in loads.Members)
            Mesh.Beams[load.Member].AddLoad(_spread.AsSpan(12 * load.Member, 12), load, factor);
        foreach (var temperature in loads.Temperatures)
            Mesh.Beams[temperature.Member].AddTemperature(_spread.AsSpan(12 * temperature.Member, 12), temperature, factor);
        if (loads.SelfWeight == Vector3.Zero)
            return;
        for (int at = 0; at < Mesh.Beams.Length; at++)
            Mesh.Beams[at].AddLoad(_spread.AsSpan(12 * at, 12), MemberLoad.Uniform(at, loads.SelfWeight * FrameWeights.NPerM(Mesh.Beams[at].Member)), factor);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double GreatestLoad()
    {
        double lengthM = MeanLengthM(), greatest = 0;
        for (int at = 0; at < _applied.Length; at++)
            greatest = Math.Max(greatest, Math.Abs(_applied[at]) / (at % 6 < 3 ? 1 : lengthM));
        for (int at = 0; at < _spread.Length; at++)
            greatest = Math.Max(greatest, Math.Abs(_spread[at]) / (at % 6 < 3 ? 1 : lengthM));
        return greatest;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double MeanLengthM()
    {
        double sumM = 0;
        foreach (var beam in Mesh.Beams)
            sumM += beam.LengthM;
        return Mesh.Beams.Length == 0 ? 1 : sumM / Mesh.Beams.Length;
    }
}
