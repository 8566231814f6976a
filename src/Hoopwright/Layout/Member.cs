using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>One physical member. Everything downstream reads the list of these.</summary>
public sealed record Member
{
    /// <summary>Its name: unique in the tunnel and stable for the same plan.</summary>
    public required string Id { get; init; }

    /// <summary>What it does.</summary>
    public required MemberRole Role { get; init; }

    /// <summary>Its section.</summary>
    public required MemberSection Section { get; init; }

    /// <summary>One end of its middle line.</summary>
    public required TunnelPoint Start { get; init; }

    /// <summary>The other end of its middle line.</summary>
    public required TunnelPoint End { get; init; }

    /// <summary>Length to cut, at the longest edge; along the curve for a bent tube. Exact, not yet rounded for the tape.</summary>
    public required Length CutLength { get; init; }

    /// <summary>Where it stands, in words, for labels: "front end, left of the door".</summary>
    public required string Place { get; init; }

    /// <summary>How it is cut at <see cref="End"/>; null for square ends.</summary>
    public Bevel? Bevel { get; init; }

    /// <summary>The middle line of a bent tube in the plane of the bow, left to right; null for straight members.</summary>
    public PlanePath? Curve { get; init; }

    /// <summary>True when it may be joined from several stock pieces.</summary>
    public bool MaySplice { get; init; }

    /// <summary>
    /// For a member that may be spliced: distances from <see cref="Start"/> between which no joint may fall (at bows, over
    /// doors).
    /// </summary>
    public ImmutableArray<NoJoint> NoJoints { get; init; } = [];

    /// <summary>The lengths the plan says this is sold in; empty for the usual ones.</summary>
    public ImmutableArray<Length> StockLengths { get; init; } = [];
}

/// <summary>A stretch of a spliced member in which no joint may fall.</summary>
/// <param name="From">Start of the stretch.</param>
/// <param name="To">End of the stretch.</param>
public readonly record struct NoJoint(Length From, Length To);

/// <summary>A sloping cut at the top of an upright.</summary>
/// <param name="Tilt">Angle off square.</param>
/// <param name="LeftHeight">Height of the left edge over the foot of the member.</param>
/// <param name="RightHeight">Height of the right edge over the foot of the member.</param>
/// <param name="Point">Height of the highest point over the foot, which is between the edges under a ridge.</param>
public sealed record Bevel(Angle Tilt, Length LeftHeight, Length RightHeight, Length Point);
