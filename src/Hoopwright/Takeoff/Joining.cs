using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Quantities;

namespace Hoopwright.Takeoff;

/// <summary>How a long run may be joined end to end from several pieces.</summary>
/// <param name="NoJoints">Distances from its start between which no joint may fall.</param>
/// <param name="ShortestPiece">No piece of it is shorter than this, unless the run itself is.</param>
/// <param name="Hardware">What one joint takes.</param>
public sealed record Joining(
    ImmutableArray<NoJoint> NoJoints, Length ShortestPiece, ImmutableArray<JointHardware> Hardware);
