using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>The exact tunnel: where everything stands and how long it is.</summary>
public sealed record Tunnel
{
    /// <summary>The plan it was laid out from.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The units results are shown in.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>Width at the ground, outside to outside.</summary>
    public required Length Span { get; init; }

    /// <summary>Middle of the first bow to middle of the last.</summary>
    public required Length Length { get; init; }

    /// <summary>The shape of every bow.</summary>
    public required BowShape Bow { get; init; }

    /// <summary>The tube of the bows.</summary>
    public required TubeSection BowTube { get; init; }

    /// <summary>How many pieces a bow is joined from.</summary>
    public required int BowPieces { get; init; }

    /// <summary>What holds the legs.</summary>
    public required AnchorKind Anchor { get; init; }

    /// <summary>Where the bows stand.</summary>
    public required ImmutableArray<BowStation> Stations { get; init; }

    /// <summary>The ground posts: front to back, left before right; none when the bows stand on boards.</summary>
    public required ImmutableArray<GroundPost> GroundPosts { get; init; }

    /// <summary>Holes filled with concrete.</summary>
    public required ImmutableArray<ConcreteHole> Holes { get; init; }

    /// <summary>The front end.</summary>
    public required EndWall Front { get; init; }

    /// <summary>The back end.</summary>
    public required EndWall Back { get; init; }

    /// <summary>The left side.</summary>
    public required SideWall Left { get; init; }

    /// <summary>The right side.</summary>
    public required SideWall Right { get; init; }

    /// <summary>How to set it out.</summary>
    public required SetOut SetOut { get; init; }

    /// <summary>Every member, in a stable order.</summary>
    public required ImmutableArray<Member> Members { get; init; }

    /// <summary>Bays between the bows.</summary>
    public int Bays => Stations.Length - 1;

    /// <summary>The two ends.</summary>
    public ImmutableArray<EndWall> Ends => [Front, Back];

    /// <summary>The two sides.</summary>
    public ImmutableArray<SideWall> Sides => [Left, Right];
}
