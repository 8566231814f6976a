using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>One long side.</summary>
public sealed record Side : PlanSection
{
    /// <summary>Fixed: the roof film runs down to the baseboard; roll-up or drop: a curtain below the hip board.</summary>
    [Description("Fixed: the roof film runs down to the baseboard; roll-up or drop: a curtain below the hip board.")]
    public SideKind? Kind { get; init; }

    /// <summary>Height of the middle of the hip board above the ground line.</summary>
    [Description("Height of the middle of the hip board above the ground line.")]
    public Written<Length>? HipHeight { get; init; }

    /// <summary>The hip board.</summary>
    [Description("The hip board.")]
    public Board HipBoard { get; init; } = new();

    /// <summary>The tube the curtain rolls on.</summary>
    [Description("The tube the curtain rolls on.")]
    public Tube RollTube { get; init; } = new();

    /// <summary>How far the curtain hangs below the top of the baseboard when closed.</summary>
    [Description("How far the curtain hangs below the top of the baseboard when closed.")]
    public Written<Length>? OverlapBelow { get; init; }
}
