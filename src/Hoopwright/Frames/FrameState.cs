using System.Collections.Immutable;

namespace Hoopwright.Frames;

/// <summary>A frame at rest under one combination.</summary>
internal sealed record FrameState
{
    /// <summary>Six values for each node: shifts in m, turns in rad.</summary>
    public required ImmutableArray<double> Displacements { get; init; }

    /// <summary>Six values for each node: what its support and springs put on the frame, N and N·m. Zero where there are none.</summary>
    public required ImmutableArray<double> Reactions { get; init; }

    /// <summary>Twelve values for each member: <see cref="SectionForces"/> at its start and at its end.</summary>
    public required ImmutableArray<double> SectionForces { get; init; }

    /// <summary>Times the frame was solved.</summary>
    public required int Iterations { get; init; }

    /// <summary>Greatest force out of balance at any free node, as a share of the greatest force in the model.</summary>
    public required double Residual { get; init; }

    /// <summary>Section forces at one end of a member.</summary>
    internal SectionForces At(int member, bool end)
    {
        int start = (12 * member) + (end ? 6 : 0);
        return new(SectionForces[start], SectionForces[start + 1], SectionForces[start + 2], SectionForces[start + 3], SectionForces[start + 4], SectionForces[start + 5]);
    }

    /// <summary>Shift and turn of a node.</summary>
    internal SixValues Movement(int node) => Six(Displacements, node);

    /// <summary>What the support puts on a node.</summary>
    internal SixValues Reaction(int node) => Six(Reactions, node);

    private static SixValues Six(ImmutableArray<double> values, int node) =>
        new(values[6 * node], values[(6 * node) + 1], values[(6 * node) + 2], values[(6 * node) + 3], values[(6 * node) + 4], values[(6 * node) + 5]);
}
