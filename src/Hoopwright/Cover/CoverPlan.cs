using System.Collections.Immutable;
using Hoopwright.Cover.Pull;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Cover;

/// <summary>The film pieces and how they are held.</summary>
public sealed record CoverPlan
{
    /// <summary>Film pieces in the order they are cut: roof, ends, sides, doors.</summary>
    public required ImmutableArray<CoverPiece> Pieces { get; init; }

    /// <summary>Runs of channel and batten.</summary>
    public required ImmutableArray<FasteningRun> Runs { get; init; }

    /// <summary>Which film goes on first.</summary>
    public required CoverOrder Order { get; init; }

    /// <summary>Layers of film on the roof.</summary>
    public required int Layers { get; init; }

    /// <summary>Pressure that a blower keeps between two layers; null where none does.</summary>
    public required Pressure? Inflation { get; init; }

    /// <summary>Places that could cut film lying on them: tops of end-wall posts, ends of lengthwise tubes.</summary>
    public required int SharpPoints { get; init; }

    /// <summary>Roof film left past an end bow when it is trimmed.</summary>
    public required Length RoofEndTrim { get; init; }

    /// <summary>End film left above the end bow when it is trimmed.</summary>
    public required Length EndAbove { get; init; }

    /// <summary>Roof film past its lowest fastening on each side, to pull by.</summary>
    public required Length RoofSideAllowance { get; init; }

    /// <summary>Film thickness.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Count of 1 ft pieces of spring wire that hold the end film for the time being, both ends.</summary>
    public int TemporaryWires => Runs.Sum(TemporaryWiresIn);

    /// <summary>The most that those pieces stand apart.</summary>
    public required Length TemporaryWireSpacing { get; init; }

    /// <summary>Count of such pieces in one run: only end film that waits for the roof to go over it is held for the time being.</summary>
    /// <param name="run">A run of this plan.</param>
    public int TemporaryWiresIn(FasteningRun run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return Order == CoverOrder.EndsFirst && run is { Kind: FasteningKind.Channel, OnWood: false, Wires: 2 } ? ChannelFastening.TemporaryWires(run.Length, TemporaryWireSpacing) : 0;
    }

    /// <summary>Ropes that pull the roof film over.</summary>
    public required PullingRopes Ropes { get; init; }

    /// <summary>How tight the roof film is pulled; worked out when it is first asked for.</summary>
    public PullPlan Pull => LazyPull?.Value ?? throw new InvalidOperationException("The cover was not planned.");

    /// <summary>The air in which it can be pulled midway between what cold and heat allow.</summary>
    public required PullBand Band { get; init; }

    internal Lazy<PullPlan>? LazyPull { get; init; }

    /// <summary>Length of tape that covers sharp points and the bows.</summary>
    public required Length BowTape { get; init; }
}

/// <summary>Ropes that pull the roof film over.</summary>
/// <param name="Count">How many.</param>
/// <param name="Length">Length of each.</param>
/// <param name="Marks">Where they are tied along the edge of the roof film, from its front edge.</param>
public sealed record PullingRopes(int Count, Length Length, ImmutableArray<Length> Marks);
