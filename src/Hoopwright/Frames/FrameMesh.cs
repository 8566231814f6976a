using System.Runtime.CompilerServices;

namespace Hoopwright.Frames;

/// <summary>A checked model made ready for solving: its beams, what is held, and where everything goes in the matrix.</summary>
internal sealed class FrameMesh
{
    private readonly int[] _slots;

    private FrameMesh(FrameModel model, Beam[] beams, bool[] held, double[] springs, BlockPattern pattern)
    {
        Model = model;
        Beams = beams;
        Held = held;
        Springs = springs;
        Pattern = pattern;
        _slots = new int[3 * beams.Length];
        for (int at = 0; at < beams.Length; at++)
        {
            int from = pattern.Place[beams[at].Member.From], to = pattern.Place[beams[at].Member.To];
            _slots[3 * at] = pattern.Starts[from];
            _slots[(3 * at) + 1] = pattern.Starts[to];
            _slots[(3 * at) + 2] = pattern.Find(Math.Max(from, to), Math.Min(from, to));
        }
    }

    /// <summary>What it was made from.</summary>
    internal FrameModel Model { get; }

    /// <summary>Its beams, in the model's order of members.</summary>
    internal Beam[] Beams { get; }

    /// <summary>Six for each node: held by a support or by the plane.</summary>
    internal bool[] Held { get; }

    /// <summary>Six for each node: spring stiffness.</summary>
    internal double[] Springs { get; }

    /// <summary>Where the matrix has its blocks.</summary>
    internal BlockPattern Pattern { get; }

    /// <summary>Nodes.</summary>
    internal int Nodes => Model.Nodes.Length;

    /// <summary>Makes a checked model ready; null when its nodes are joined so densely that its matrix would be out of reach.</summary>
    /// <param name="model">A model without errors (see <see cref="FrameCheck"/>).</param>
    /// <param name="pattern">The pattern of an earlier model with the same nodes and the same connections; null to make one.</param>
    internal static FrameMesh? Of(FrameModel model, BlockPattern? pattern = null)
    {
        var beams = new Beam[model.Members.Length];
        var pairs = new (int, int)[model.Members.Length];
        for (int at = 0; at < beams.Length; at++)
        {
            var member = model.Members[at];
            beams[at] = Beam.Of(member, model.Nodes[member.From].PlaceM, model.Nodes[member.To].PlaceM)
                ?? throw new InvalidOperationException("The model was not checked: a member has no length.");
            pairs[at] = (member.From, member.To);
        }
        var held = new bool[6 * model.Nodes.Length];
        var springs = new double[held.Length];
        var outOfPlane = model.Analysis.Planar ? Freedoms.Uy | Freedoms.Rx | Freedoms.Rz : Freedoms.None;
        for (int node = 0; node < model.Nodes.Length; node++)
        {
            int mask = (int)(model.Nodes[node].Held | outOfPlane);
            for (int freedom = 0; freedom < 6; freedom++)
            {
                held[(6 * node) + freedom] = (mask >> freedom & 1) != 0;
                springs[(6 * node) + freedom] = model.Nodes[node].Springs?[freedom] ?? 0;
            }
        }
        pattern ??= BlockPattern.Of(model.Nodes.Length, pairs);
        return pattern is null ? null : new(model, beams, held, springs, pattern);
    }

    /// <summary>Adds one beam's global matrix to the frame's, leaving held freedoms out.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Scatter(int beam, ReadOnlySpan<double> global, BlockFactor into)
    {
        int from = Beams[beam].Member.From, to = Beams[beam].Member.To;
        var values = into.Values;
        AddDiagonal(values.Slice(_slots[3 * beam] * BlockFactor.BlockSize, BlockFactor.BlockSize), global, 0, from);
        AddDiagonal(values.Slice(_slots[(3 * beam) + 1] * BlockFactor.BlockSize, BlockFactor.BlockSize), global, 6, to);
        bool fromIsRow = Pattern.Place[from] > Pattern.Place[to];
        var block = values.Slice(_slots[(3 * beam) + 2] * BlockFactor.BlockSize, BlockFactor.BlockSize);
        int rowStart = fromIsRow ? 0 : 6, columnStart = fromIsRow ? 6 : 0;
        int rowNode = 6 * (fromIsRow ? from : to), columnNode = 6 * (fromIsRow ? to : from);
        for (int c = 0; c < 6; c++)
        {
            if (Held[columnNode + c])
                continue;
            for (int r = 0; r < 6; r++)
            {
                if (!Held[rowNode + r])
                    block[(6 * c) + r] += global[(12 * (rowStart + r)) + columnStart + c];
            }
        }
    }

    /// <summary>Adds springs, and ones for the freedoms that are held.</summary>
    internal void AddGround(BlockFactor into)
    {
        var values = into.Values;
        for (int node = 0; node < Nodes; node++)
        {
            int block = Pattern.Starts[Pattern.Place[node]] * BlockFactor.BlockSize;
            for (int freedom = 0; freedom < 6; freedom++)
                values[block + (7 * freedom)] += Held[(6 * node) + freedom] ? 1 : Springs[(6 * node) + freedom];
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void AddDiagonal(Span<double> block, ReadOnlySpan<double> global, int start, int node)
    {
        for (int r = 0; r < 6; r++)
        {
            if (Held[(6 * node) + r])
                continue;
            for (int c = 0; c < 6; c++)
            {
                if (!Held[(6 * node) + c])
                    block[(6 * r) + c] += global[(12 * (start + r)) + start + c];
            }
        }
    }
}
