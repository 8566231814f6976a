using System.Collections.Immutable;
using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>One end wall. Distances run from the left ground line as seen from outside, looking at the front end; the back end is described as seen from inside, so that left stays left.</summary>
public sealed record End : PlanSection
{
    /// <summary>Framed: posts and film of its own; roof sheet: the roof film is gathered over it; or open.</summary>
    [Description("Framed: posts and film of its own; roof sheet: the roof film is gathered over it; or open.")]
    public EndClosing? Closing { get; init; }

    /// <summary>Nominal size of end-wall posts, such as 4x4; a deeper side stands along the tunnel, against the wind.</summary>
    [Description("Nominal size of end-wall posts, such as 4x4; a deeper side stands along the tunnel, against the wind.")]
    public string? PostSize { get; init; }

    /// <summary>Species of the wood of posts, girts and headers, as its grade stamp says.</summary>
    [Description("Species of the wood of posts, girts and headers, as its grade stamp says.")]
    public WoodSpecies? WoodSpecies { get; init; }

    /// <summary>Grade of the wood of posts, girts and headers, as its grade stamp says.</summary>
    [Description("Grade of the wood of posts, girts and headers, as its grade stamp says.")]
    public WoodGrade? WoodGrade { get; init; }

    /// <summary>The widest gap allowed between end-wall posts, middle to middle.</summary>
    [Description("The widest gap allowed between end-wall posts, middle to middle.")]
    public Written<Length>? PostSpacing { get; init; }

    /// <summary>Extra posts at these distances from the left ground line, to the middle of the post.</summary>
    [Description("Extra posts at these distances from the left ground line, to the middle of the post.")]
    public ImmutableArray<Written<Length>> Posts { get; init; } = [];

    /// <summary>bow: cut to the slope under the bow; bracket: cut square below the bow and held by a bracket.</summary>
    [Description("bow: cut to the slope under the bow; bracket: cut square below the bow and held by a bracket.")]
    public PostTop? PostTop { get; init; }

    /// <summary>How deep an end-wall post goes into the ground, in concrete.</summary>
    [Description("How deep an end-wall post goes into the ground, in concrete.")]
    public Written<Length>? Embedment { get; init; }

    /// <summary>Diameter of the hole for an end-wall post.</summary>
    [Description("Diameter of the hole for an end-wall post.")]
    public Written<Length>? HoleDiameter { get; init; }

    /// <summary>Depth of the hole; the part below the post's foot is filled with concrete.</summary>
    [Description("Depth of the hole; the part below the post's foot is filled with concrete.")]
    public Written<Length>? HoleDepth { get; init; }

    /// <summary>The board along the foot of the end.</summary>
    [Description("The board along the foot of the end.")]
    public Board Baseboard { get; init; } = new();

    /// <summary>Heights of the rows of girts between the posts, to the middle of the girt.</summary>
    [Description("Heights of the rows of girts between the posts, to the middle of the girt.")]
    public ImmutableArray<Written<Length>> Girts { get; init; } = [];

    /// <summary>True for an end without girts; leave out for the usual row.</summary>
    [Description("True for an end without girts; leave out for the usual row.")]
    public bool? WithoutGirts { get; init; }

    /// <summary>The board of girts, jambs and vent rails.</summary>
    [Description("The board of girts, jambs and vent rails.")]
    public Board FrameBoard { get; init; } = new();

    /// <summary>The board of the headers over doors; a header is two of them.</summary>
    [Description("The board of the headers over doors; a header is two of them.")]
    public Board HeaderBoard { get; init; } = new();

    /// <summary>Doors from left to right.</summary>
    [Description("Doors from left to right.")]
    public ImmutableArray<Door> Doors { get; init; } = [];
}
