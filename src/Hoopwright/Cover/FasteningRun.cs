using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cover;

/// <summary>A line along which film is held.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Kind">How it is held.</param>
/// <param name="Place">Where, in words.</param>
/// <param name="Length">Exact length of the run.</param>
/// <param name="PieceIds">The pieces of film it holds.</param>
/// <param name="OnMemberIds">The members it is fastened to.</param>
/// <param name="OnWood">True when it is fastened to wood, false when to steel tube.</param>
/// <param name="Wires">Layers of spring wire in a lock channel: 2 where film of two pieces is held by a wire each.</param>
public sealed record FasteningRun(
    string Id, FasteningKind Kind, string Place, Length Length, ImmutableArray<string> PieceIds,
    ImmutableArray<string> OnMemberIds, bool OnWood, int Wires);

/// <summary>How film is held along a line.</summary>
public enum FasteningKind
{
    /// <summary>Lock channel with spring wire.</summary>
    Channel,

    /// <summary>Batten nailed over the film, with staples between the nails.</summary>
    Batten,
}
