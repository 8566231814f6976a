using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A door in an end wall.</summary>
public sealed record Door : PlanSection
{
    /// <summary>side, double, sliding or overhead.</summary>
    [Description("side, double, sliding or overhead.")]
    public DoorKind? Kind { get; init; }

    /// <summary>Clear width between the jambs.</summary>
    [Description("Clear width between the jambs.")]
    public Written<Length>? Width { get; init; }

    /// <summary>Clear height from the ground to the underside of the header.</summary>
    [Description("Clear height from the ground to the underside of the header.")]
    public Written<Length>? Height { get; init; }

    /// <summary>Middle of the door from the left ground line; leave out for the middle of the span.</summary>
    [Description("Middle of the door from the left ground line; leave out for the middle of the span.")]
    public Written<Length>? Centre { get; init; }

    /// <summary>out or in, for hinged doors.</summary>
    [Description("out or in, for hinged doors.")]
    public DoorSwing? Swing { get; init; }

    /// <summary>left or right, for a side door: the side it is hinged at, left being the side from which distances across start.</summary>
    [Description("left or right, for a side door: the side it is hinged at, left being the side from which distances across start.")]
    public HingeSide? Hinge { get; init; }

    /// <summary>film, sheet or none (a door bought whole).</summary>
    [Description("film, sheet or none (a door bought whole).")]
    public LeafCover? LeafCover { get; init; }

    /// <summary>The board of the door leaf's own frame.</summary>
    [Description("The board of the door leaf's own frame.")]
    public Board LeafBoard { get; init; } = new();

    /// <summary>Gap at the sides and top of a hinged leaf.</summary>
    [Description("Gap at the sides and top of a hinged leaf.")]
    public Written<Length>? Gap { get; init; }

    /// <summary>Gap under a leaf.</summary>
    [Description("Gap under a leaf.")]
    public Written<Length>? BottomGap { get; init; }

    /// <summary>Clear height of a vent over the door; leave out for none.</summary>
    [Description("Clear height of a vent over the door; leave out for none.")]
    public Written<Length>? VentHeight { get; init; }
}
