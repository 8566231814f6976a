using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>One end wall, with its left as seen entering by the front end.</summary>
public sealed record EndWall
{
    /// <summary>True for the front end.</summary>
    public required bool IsFront { get; init; }

    /// <summary>"front" or "back".</summary>
    public string Name => IsFront ? "front" : "back";

    /// <summary>How it is closed.</summary>
    public required EndClosing Closing { get; init; }

    /// <summary>Position of the end bow along the length.</summary>
    public required Length Along { get; init; }

    /// <summary>Height of the end bow's ground line over the datum.</summary>
    public required Length Base { get; init; }

    /// <summary>The end bow's own shape: the tunnel's, but where the end was measured.</summary>
    public required BowShape Bow { get; init; }

    /// <summary>Posts from left to right.</summary>
    public required ImmutableArray<EndPost> Posts { get; init; }

    /// <summary>Doors from left to right.</summary>
    public required ImmutableArray<DoorOpening> Doors { get; init; }

    /// <summary>Baseboards from left to right.</summary>
    public required ImmutableArray<EndBoard> Baseboards { get; init; }

    /// <summary>Depth (height) of the baseboard; zero when there is none.</summary>
    public required Length BaseboardHeight { get; init; }
}

/// <summary>A post of an end wall.</summary>
/// <param name="MemberId">The member.</param>
/// <param name="Centre">Middle of the post from the left string.</param>
/// <param name="Width">Width across the end.</param>
/// <param name="Ground">Height of the ground at the post over the bow's ground line.</param>
/// <param name="TopLeft">Height of the left edge of its top over the bow's ground line.</param>
/// <param name="TopRight">Height of the right edge of its top over the bow's ground line.</param>
/// <param name="TopPoint">Height of the highest point of its top over the bow's ground line.</param>
/// <param name="Tilt">Angle of the top cut off square.</param>
/// <param name="Embedment">How deep it goes into the ground.</param>
/// <param name="DoorId">The door whose side it forms; null otherwise.</param>
public sealed record EndPost(
    string MemberId, Length Centre, Length Width, Length Ground, Length TopLeft, Length TopRight, Length TopPoint, Angle Tilt,
    Length Embedment, string? DoorId);

/// <summary>A baseboard of an end.</summary>
/// <param name="MemberId">The member.</param>
/// <param name="From">Its left end from the left string.</param>
/// <param name="To">Its right end.</param>
/// <param name="BetweenPosts">True when it stands flush between posts, so that a door can swing out over it.</param>
public sealed record EndBoard(string MemberId, Length From, Length To, bool BetweenPosts);

/// <summary>A door opening with its frame and leaves. Heights are over the bow's ground line.</summary>
public sealed record DoorOpening
{
    /// <summary>Its name.</summary>
    public required string Id { get; init; }

    /// <summary>Its kind.</summary>
    public required DoorKind Kind { get; init; }

    /// <summary>The way it swings; for hinged doors.</summary>
    public required DoorSwing Swing { get; init; }

    /// <summary>The side it is hinged at, for a side door; null for other doors: a double door is hinged at both sides.</summary>
    public required HingeSide? Hinge { get; init; }

    /// <summary>What its leaves are covered with.</summary>
    public required LeafCover LeafCover { get; init; }

    /// <summary>Middle, from the left string.</summary>
    public required Length Centre { get; init; }

    /// <summary>Clear width between the jambs.</summary>
    public required Length ClearWidth { get; init; }

    /// <summary>Clear height under the header.</summary>
    public required Length ClearHeight { get; init; }

    /// <summary>Rough width: post to post.</summary>
    public required Length RoughWidth { get; init; }

    /// <summary>Height of the top of the header.</summary>
    public required Length HeaderTop { get; init; }

    /// <summary>Clear height of the vent over the header; zero for none.</summary>
    public required Length VentHeight { get; init; }

    /// <summary>Height of the top of the vent rail, or of the header where there is no vent.</summary>
    public required Length FrameTop { get; init; }

    /// <summary>The leaves, left to right; none for a door bought whole.</summary>
    public required ImmutableArray<DoorLeaf> Leaves { get; init; }

    /// <summary>Left edge of the rough opening.</summary>
    public Length RoughLeft => Centre - (RoughWidth / 2);

    /// <summary>Right edge of the rough opening.</summary>
    public Length RoughRight => Centre + (RoughWidth / 2);
}

/// <summary>A door leaf.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Left">Its left edge when closed, from the left string.</param>
/// <param name="Bottom">Its lower edge over the ground line.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="HingeLeft">True when hinged at its left; null when it slides.</param>
/// <param name="MemberIds">Its own frame.</param>
public sealed record DoorLeaf(
    string Id, Length Left, Length Bottom, Length Width, Length Height, bool? HingeLeft, ImmutableArray<string> MemberIds)
{
    /// <summary>Hinges it hangs from: three where it is higher than the limit, else two; none where it slides.</summary>
    public int Hinges => HingeLeft is null ? 0 : Height > LayoutDefaults.TallLeaf.Value ? 3 : 2;
}
