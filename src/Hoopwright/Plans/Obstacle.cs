using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A tree, a hedge or a building that shades the tunnel, as seen from the middle of the tunnel.</summary>
public sealed record Obstacle : PlanSection
{
    /// <summary>What it is, in words.</summary>
    [Description("What it is, in words.")]
    public string? Name { get; init; }

    /// <summary>Direction of its left edge: S, NW, or degrees clockwise from north.</summary>
    [Description("Direction of its left edge as seen from the middle of the tunnel: S, NW, or degrees clockwise from north.")]
    public Written<Angle>? From { get; init; }

    /// <summary>Direction of its right edge, clockwise from the left one.</summary>
    [Description("Direction of its right edge, clockwise from the left one.")]
    public Written<Angle>? To { get; init; }

    /// <summary>Distance from the middle of the tunnel.</summary>
    [Description("Distance from the middle of the tunnel.")]
    public Written<Length>? Distance { get; init; }

    /// <summary>Height over the ground of the tunnel.</summary>
    [Description("Height over the ground of the tunnel.")]
    public Written<Length>? Height { get; init; }

    /// <summary>Part of the light that it lets through: 0 for a wall, about a half for bare trees.</summary>
    [Description("Part of the light that it lets through: 0 for a wall, about a half for bare trees.")]
    public Written<Ratio>? Lets { get; init; }
}
