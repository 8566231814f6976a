using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>One long side.</summary>
/// <param name="IsLeft">True on the left.</param>
/// <param name="Kind">How it is closed.</param>
/// <param name="HipHeight">Middle of the hip board over the ground line; zero for a fixed side.</param>
/// <param name="HipBoardDepth">Depth (height) of the hip board; zero for a fixed side.</param>
/// <param name="BaseboardHeight">Depth (height) of the baseboard.</param>
/// <param name="OverlapBelow">How far the curtain hangs below the top of the baseboard.</param>
/// <param name="ArcToHip">Distance over the film line from the ground line to the middle of the hip board; zero when fixed.</param>
public sealed record SideWall(
    bool IsLeft, SideKind Kind, Length HipHeight, Length HipBoardDepth, Length BaseboardHeight, Length OverlapBelow,
    Length ArcToHip)
{
    /// <summary>"left" or "right".</summary>
    public string Name => IsLeft ? "left" : "right";
}
