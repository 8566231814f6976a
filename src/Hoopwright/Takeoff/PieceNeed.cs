using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Quantities;

namespace Hoopwright.Takeoff;

/// <summary>A length to be cut from stock, or a run to be joined from several such lengths.</summary>
/// <param name="MemberId">The member or run it is for.</param>
/// <param name="Label">What to write on it.</param>
/// <param name="Length">Length to cut, rounded for the tape.</param>
public sealed record PieceNeed(string MemberId, string Label, Length Length)
{
    /// <summary>Where it goes, in words.</summary>
    public string Place { get; init; } = "";

    /// <summary>How it may be joined from several pieces; null when it must be one.</summary>
    public Joining? Joining { get; init; }
}

/// <summary>How a long run may be joined end to end from several pieces.</summary>
/// <param name="NoJoints">Distances from its start between which no joint may fall.</param>
/// <param name="ShortestPiece">No piece of it is shorter than this, unless the run itself is.</param>
/// <param name="Hardware">What one joint takes.</param>
public sealed record Joining(
    ImmutableArray<NoJoint> NoJoints, Length ShortestPiece, ImmutableArray<JointHardware> Hardware);

/// <summary>Something that every joint of a run takes.</summary>
/// <param name="Item">The item, as in the price book.</param>
/// <param name="Size">Its size.</param>
/// <param name="PerJoint">How many for one joint.</param>
/// <param name="Rule">Why so many.</param>
/// <param name="Source">Where that comes from.</param>
public sealed record JointHardware(string Item, string Size, int PerJoint, string Rule, Sources.Citation Source);
