using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>How many screws, bolts, clamps and plates hold what.</summary>
public sealed record FastenerRules : PlanSection
{
    /// <summary>Self-drilling screws that hold each bow leg to its ground post.</summary>
    [Description("Self-drilling screws that hold each bow leg to its ground post.")]
    public int? ScrewsPerLeg { get; init; }

    /// <summary>Self-drilling screws of a sleeve, over both tubes that it joins.</summary>
    [Description("Self-drilling screws of a sleeve, over both tubes that it joins.")]
    public int? ScrewsPerSleeve { get; init; }

    /// <summary>Clamps where a purlin crosses a bow.</summary>
    [Description("Clamps where a purlin crosses a bow.")]
    public int? ClampsPerCrossing { get; init; }

    /// <summary>Clamps of a corner brace, over both its ends.</summary>
    [Description("Clamps of a corner brace, over both its ends.")]
    public int? ClampsPerBrace { get; init; }

    /// <summary>Clamps of a tie, over both its ends.</summary>
    [Description("Clamps of a tie, over both its ends.")]
    public int? ClampsPerTie { get; init; }

    /// <summary>Bolts that hold a baseboard to each ground post.</summary>
    [Description("Bolts that hold a baseboard to each ground post.")]
    public int? BoltsPerPost { get; init; }

    /// <summary>Screws that hold two baseboards at a corner.</summary>
    [Description("Screws that hold two baseboards at a corner.")]
    public int? ScrewsPerCorner { get; init; }

    /// <summary>Mending plates over a joint of boards.</summary>
    [Description("Mending plates over a joint of boards.")]
    public int? PlatesPerJoint { get; init; }

    /// <summary>Screws of one mending plate.</summary>
    [Description("Screws of one mending plate.")]
    public int? ScrewsPerPlate { get; init; }

    /// <summary>Pins of reinforcing bar through the foot of each post in concrete.</summary>
    [Description("Pins of reinforcing bar through the foot of each post in concrete.")]
    public int? PinsPerPost { get; init; }

    /// <summary>Screws that hold the hip board to each bow.</summary>
    [Description("Screws that hold the hip board to each bow.")]
    public int? HipScrewsPerBow { get; init; }

    /// <summary>Lag screws at the top of an end-wall post.</summary>
    [Description("Lag screws at the top of an end-wall post.")]
    public int? LagsPerPost { get; init; }

    /// <summary>Lag screws at the top of a short post over a door.</summary>
    [Description("Lag screws at the top of a short post over a door.")]
    public int? LagsPerCripple { get; init; }

    /// <summary>Self-drilling screws that hold a post bracket to the bow.</summary>
    [Description("Self-drilling screws that hold a post bracket to the bow.")]
    public int? ScrewsPerBracket { get; init; }

    /// <summary>Screws at each end of a board between end-wall posts, and where a baseboard crosses one.</summary>
    [Description("Screws at each end of a board between end-wall posts, and where a baseboard crosses one.")]
    public int? ScrewsPerBoardEnd { get; init; }

    /// <summary>Screws at each end of each header board.</summary>
    [Description("Screws at each end of each header board.")]
    public int? ScrewsPerHeaderEnd { get; init; }

    /// <summary>The widest gap between the screws of a jamb.</summary>
    [Description("The widest gap between the screws of a jamb.")]
    public Written<Length>? JambScrewSpacing { get; init; }

    /// <summary>The widest gap between the screws round a rigid sheet.</summary>
    [Description("The widest gap between the screws round a rigid sheet.")]
    public Written<Length>? SheetScrewSpacing { get; init; }

    /// <summary>The widest gap between the clips that hold a curtain to its roll tube.</summary>
    [Description("The widest gap between the clips that hold a curtain to its roll tube.")]
    public Written<Length>? RollClipSpacing { get; init; }
}
