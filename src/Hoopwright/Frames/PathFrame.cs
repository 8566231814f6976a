using System.Collections.Immutable;

namespace Hoopwright.Frames;

/// <summary>A frame at one point of a large-displacement path.</summary>
internal sealed class PathFrame
{
    private readonly FrameMesh _mesh;
    private readonly Vector3[] _shifts;
    private readonly Turn[] _turns;
    private readonly double[][] _stiffness;
    private readonly double[] _heat;
    private readonly double[] _forces;
    private readonly double _lengthM;
    private readonly double _stiffestNPerM;

    internal PathFrame(FrameMesh mesh, FrameCombination combination)
    {
        _mesh = mesh;
        _shifts = new Vector3[mesh.Nodes];
        _turns = new Turn[mesh.Nodes];
        Array.Fill(_turns, Turn.None);
        _stiffness = [.. mesh.Beams.Select(CorotatedBeam.OwnStiffness)];
        _heat = new double[7 * mesh.Beams.Length];
        _forces = new double[12 * mesh.Beams.Length];
        _lengthM = mesh.Beams.Average(beam => beam.LengthM);
        _stiffestNPerM = mesh.Beams.Max(beam => beam.EaN / beam.LengthM);
        Whole = new double[6 * mesh.Nodes];
        foreach (var part in combination.Parts)
            Add(mesh.Model.LoadCases[part.LoadCase], part.Factor);
    }

    private PathFrame(PathFrame other)
    {
        (_mesh, _stiffness, _heat, _forces, _lengthM, _stiffestNPerM, Whole) = (other._mesh, other._stiffness, other._heat, (double[])other._forces.Clone(), other._lengthM, other._stiffestNPerM, other.Whole);
        _shifts = (Vector3[])other._shifts.Clone();
        _turns = (Turn[])other._turns.Clone();
        LoadFactor = other.LoadFactor;
    }

    /// <summary>Six for each node: the whole load.</summary>
    internal double[] Whole { get; }

    /// <summary>Multiple of the whole load that is on.</summary>
    internal double LoadFactor { get; set; }

    /// <summary>The same, to come back to.</summary>
    internal PathFrame Copy() => new(this);

    /// <summary>Six for each node: shifts, and turn vectors from the drawing.</summary>
    internal double[] Movements()
    {
        var all = new double[6 * _mesh.Nodes];
        for (int node = 0; node < _mesh.Nodes; node++)
        {
            var turn = _turns[node].ToVector();
            (all[6 * node], all[(6 * node) + 1], all[(6 * node) + 2]) = (_shifts[node].X, _shifts[node].Y, _shifts[node].Z);
            (all[(6 * node) + 3], all[(6 * node) + 4], all[(6 * node) + 5]) = (turn.X, turn.Y, turn.Z);
        }
        return all;
    }

    /// <summary>Moves every node by a change: shifts add, turns come after those before.</summary>
    internal void Move(ReadOnlySpan<double> change)
    {
        for (int node = 0; node < _mesh.Nodes; node++)
        {
            var six = change.Slice(6 * node, 6);
            _shifts[node] += new Vector3(six[0], six[1], six[2]);
            _turns[node] = Turn.About(new(six[3], six[4], six[5])).After(_turns[node]);
        }
    }

    /// <summary>Forms and factors the tangent stiffness.</summary>
    internal void Form(BlockFactor factor)
    {
        factor.Clear();
        Span<double> tangent = stackalloc double[Beam.MatrixSize], follow = stackalloc double[72];
        for (int at = 0; at < _mesh.Beams.Length; at++)
        {
            var beam = Corotate(at, follow);
            beam.Tangent(_stiffness[at], tangent);
            _mesh.Scatter(at, tangent, factor);
        }
        _mesh.AddGround(factor);
        factor.Factor();
    }

    /// <summary>What is out of balance at the free freedoms.</summary>
    /// <param name="rest">Six for each node; filled.</param>
    /// <returns>The greatest as a share of the greatest force in the model.</returns>
    internal double OutOfBalance(Span<double> rest)
    {
        rest.Clear();
        Span<double> follow = stackalloc double[72];
        for (int at = 0; at < _mesh.Beams.Length; at++)
        {
            var member = _mesh.Beams[at].Member;
            var forces = _forces.AsSpan(12 * at, 12);
            Corotate(at, follow).Forces(forces);
            for (int freedom = 0; freedom < 6; freedom++)
            {
                rest[(6 * member.From) + freedom] -= forces[freedom];
                rest[(6 * member.To) + freedom] -= forces[6 + freedom];
            }
        }
        double worst = 0, greatest = 0;
        for (int at = 0; at < rest.Length; at++)
        {
            double unit = at % 6 < 3 ? 1 : _lengthM;
            greatest = Math.Max(greatest, Math.Abs(Whole[at] * LoadFactor) / unit);
            if (_mesh.Held[at])
            {
                greatest = Math.Max(greatest, Math.Abs(rest[at]) / unit);
                rest[at] = 0;
                continue;
            }
            rest[at] += (Whole[at] * LoadFactor) - (_mesh.Springs[at] * Movement(at));
            worst = Math.Max(worst, Math.Abs(rest[at]) / unit);
        }
        return worst <= RoundingN() ? 0 : worst / Math.Max(greatest, double.Epsilon);
    }

    // A shift is known to its last digit only, and a stiff beam makes a force of that digit.
    private double RoundingN()
    {
        double farthestM = 0;
        foreach (var shift in _shifts)
            farthestM = Math.Max(farthestM, shift.Size);
        return 4 * 2.2e-16 * farthestM * _stiffestNPerM;
    }

    /// <summary>One freedom's shift or turn.</summary>
    internal double Movement(int at) => at % 6 < 3 ? _shifts[at / 6][at % 6] : _turns[at / 6].ToVector()[(at % 6) - 3];

    /// <summary>The frame as it is now.</summary>
    internal FrameState State(int iterations, double residual)
    {
        var section = new double[12 * _mesh.Beams.Length];
        var reactions = new double[6 * _mesh.Nodes];
        Span<double> follow = stackalloc double[72], own = stackalloc double[12];
        for (int at = 0; at < _mesh.Beams.Length; at++)
        {
            var member = _mesh.Beams[at].Member;
            var forces = _forces.AsSpan(12 * at, 12);
            Corotate(at, follow).ToOwnAxes(forces, own);
            for (int freedom = 0; freedom < 6; freedom++)
            {
                section[(12 * at) + freedom] = -own[freedom];
                section[(12 * at) + 6 + freedom] = own[6 + freedom];
                reactions[(6 * member.From) + freedom] += forces[freedom];
                reactions[(6 * member.To) + freedom] += forces[6 + freedom];
            }
        }
        for (int at = 0; at < reactions.Length; at++)
            reactions[at] = _mesh.Held[at] ? reactions[at] - (Whole[at] * LoadFactor) : -_mesh.Springs[at] * Movement(at);
        return new()
        {
            Displacements = [.. Movements()],
            Reactions = ImmutableArray.Create(reactions),
            SectionForces = ImmutableArray.Create(section),
            Iterations = iterations,
            Residual = residual,
        };
    }

    private CorotatedBeam Corotate(int at, Span<double> follow)
    {
        var beam = _mesh.Beams[at];
        int from = beam.Member.From, to = beam.Member.To;
        Span<double> free = stackalloc double[7];
        for (int way = 0; way < 7; way++)
            free[way] = _heat[(7 * at) + way] * LoadFactor;
        return new(beam, _stiffness[at], _shifts[to] - _shifts[from], _turns[from], _turns[to], free, follow);
    }

    // Loads along members go to their nodes as they lie in the drawing, and keep their direction.
    private void Add(FrameLoadCase loads, double factor)
    {
        foreach (var load in loads.Nodes)
        {
            for (int freedom = 0; freedom < 6; freedom++)
                Whole[(6 * load.Node) + freedom] += load.Load[freedom] * factor;
        }
        Span<double> ends = stackalloc double[12];
        foreach (var load in loads.Members)
            Spread(load, factor, ends);
        for (int at = 0; at < _mesh.Beams.Length && loads.SelfWeight != Vector3.Zero; at++)
            Spread(MemberLoad.Uniform(at, loads.SelfWeight * FrameWeights.NPerM(_mesh.Beams[at].Member)), factor, ends);
        foreach (var heat in loads.Temperatures)
        {
            var beam = _mesh.Beams[heat.Member];
            double growth = beam.Member.Material.ExpansionPerK * factor, half = growth * beam.LengthM / 2;
            _heat[7 * heat.Member] += growth * heat.UniformK * beam.LengthM;
            _heat[(7 * heat.Member) + 2] -= half * heat.GradientZKPerM;
            _heat[(7 * heat.Member) + 5] += half * heat.GradientZKPerM;
            _heat[(7 * heat.Member) + 3] += half * heat.GradientYKPerM;
            _heat[(7 * heat.Member) + 6] -= half * heat.GradientYKPerM;
        }
    }

    private void Spread(MemberLoad load, double factor, Span<double> ends)
    {
        var beam = _mesh.Beams[load.Member];
        ends.Clear();
        beam.AddLoad(ends, load, factor);
        BeamMatrix.AddToNodes(beam, ends, Whole.AsSpan(6 * beam.Member.From, 6), Whole.AsSpan(6 * beam.Member.To, 6), 1);
    }
}
