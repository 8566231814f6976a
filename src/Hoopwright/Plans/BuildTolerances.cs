using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>How near to the plan is near enough where something was measured on site.</summary>
public sealed record BuildTolerances : PlanSection
{
    /// <summary>How much the two diagonals of the string rectangle may differ.</summary>
    [Description("How much the two diagonals of the string rectangle may differ.")]
    public Written<Length>? Diagonals { get; init; }

    /// <summary>Spans, marks of bows and posts, sides of the string rectangle, heights of boards.</summary>
    [Description("Spans, marks of bows and posts, sides of the string rectangle, heights of boards.")]
    public Written<Length>? Frame { get; init; }

    /// <summary>Length over the outside of a bow, and its height.</summary>
    [Description("Length over the outside of a bow, and its height.")]
    public Written<Length>? Bow { get; init; }

    /// <summary>Clear height at an end-wall post, against which it is cut.</summary>
    [Description("Clear height at an end-wall post, against which it is cut.")]
    public Written<Length>? Posts { get; init; }

    /// <summary>Openings of doors.</summary>
    [Description("Openings of doors.")]
    public Written<Length>? Doors { get; init; }

    /// <summary>Depth of posts in the ground; depth and diameter of holes.</summary>
    [Description("Depth of posts in the ground; depth and diameter of holes.")]
    public Written<Length>? Holes { get; init; }

    /// <summary>How near a reading of the tape is to the truth, nineteen times of twenty.</summary>
    [Description("How near a reading of the tape is to the truth, nineteen times of twenty.")]
    public Written<Length>? Tape { get; init; }
}
