using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>What the bows stand in or on.</summary>
public sealed record Ground : PlanSection
{
    /// <summary>posts driven in the ground, or boards lying on it.</summary>
    [Description("posts driven in the ground, or boards lying on it.")]
    public AnchorKind? Anchor { get; init; }

    /// <summary>The tube of the ground posts.</summary>
    [Description("The tube of the ground posts.")]
    public Tube PostTube { get; init; } = new();

    /// <summary>Whole length of a ground post.</summary>
    [Description("Whole length of a ground post.")]
    public Written<Length>? PostLength { get; init; }

    /// <summary>How deep a ground post goes into the ground.</summary>
    [Description("How deep a ground post goes into the ground.")]
    public Written<Length>? PostEmbedment { get; init; }

    /// <summary>Which ground posts stand in concrete.</summary>
    [Description("Which ground posts stand in concrete.")]
    public PostConcrete? PostConcrete { get; init; }

    /// <summary>Diameter of the hole for a ground post in concrete.</summary>
    [Description("Diameter of the hole for a ground post in concrete.")]
    public Written<Length>? HoleDiameter { get; init; }

    /// <summary>Depth of the hole for a ground post in concrete.</summary>
    [Description("Depth of the hole for a ground post in concrete.")]
    public Written<Length>? HoleDepth { get; init; }

    /// <summary>How far the concrete rises at the post over the ground, from which it slopes away.</summary>
    [Description("How far the concrete rises at the post over the ground, from which it slopes away.")]
    public Written<Length>? CollarRise { get; init; }

    /// <summary>For boards: hangers that hold one leg of a bow to the board.</summary>
    [Description("For boards: hangers that hold one leg of a bow to the board.")]
    public int? HangersPerLeg { get; init; }

    /// <summary>How a leg is held at the ground: pinned, fixed, or as stiffly as post and soil are.</summary>
    [Description("How a leg is held at the ground: pinned, fixed, or as stiffly as post and soil are.")]
    public LegBase? LegBase { get; init; }

    /// <summary>The board along the foot of both sides.</summary>
    [Description("The board along the foot of both sides.")]
    public Board Baseboard { get; init; } = new();

    /// <summary>Mass of one bag of dry concrete.</summary>
    [Description("Mass of one bag of dry concrete.")]
    public Written<Mass>? BagMass { get; init; }
}
