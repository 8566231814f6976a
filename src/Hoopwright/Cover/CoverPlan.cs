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

    /// <summary>Film thickness.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Count of 1 ft pieces of spring wire that hold the end film for the time being, both ends.</summary>
    public required int TemporaryWires { get; init; }

    /// <summary>Ropes that pull the roof film over.</summary>
    public required PullingRopes Ropes { get; init; }

    /// <summary>How tight the roof film is pulled; worked out when it is first asked for.</summary>
    public PullPlan Pull => LazyPull?.Value ?? throw new InvalidOperationException("The cover was not planned.");

    internal Lazy<PullPlan>? LazyPull { get; init; }

    /// <summary>Length of tape that covers sharp points and the bows.</summary>
    public required Length BowTape { get; init; }
}

/// <summary>Ropes that pull the roof film over.</summary>
/// <param name="Count">How many.</param>
/// <param name="Length">Length of each.</param>
/// <param name="Marks">Where they are tied along the edge of the roof film, from its front edge.</param>
public sealed record PullingRopes(int Count, Length Length, ImmutableArray<Length> Marks);
