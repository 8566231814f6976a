using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Cover;

/// <summary>Distances along the film line, from the left ground line, at which the film begins and ends.</summary>
internal static class CoverEdges
{
    /// <summary>
    /// Where the roof film leaves the bow on a side: at the middle of the hip board, or at the ground line of a fixed side,
    /// whose film runs down over the baseboard.
    /// </summary>
    internal static Length RoofEdge(this Tunnel tunnel, SideWall side) => side.Kind switch
    {
        SideKind.Fixed => tunnel.Bow.AtHeight(side, Length.Zero),
        SideKind.RollUp or SideKind.Drop => tunnel.Bow.AtHeight(side, side.HipHeight),
    };

    /// <summary>Where film can last be held on the bow itself: the hip board, or the top of the baseboard of a fixed side.</summary>
    internal static Length LockEdge(this BowShape bow, SideWall side) => side.Kind switch
    {
        SideKind.Fixed => bow.AtHeight(side, side.BaseboardHeight),
        SideKind.RollUp or SideKind.Drop => bow.AtHeight(side, side.HipHeight),
    };

    /// <summary>
    /// Where the film line stands at a height on one side. Heights at or under its foot give the foot, heights over its top
    /// the middle.
    /// </summary>
    internal static Length AtHeight(this BowShape bow, SideWall side, Length height)
    {
        PlanePath film = bow.FilmLine;
        Length foot = side.IsLeft ? film.Start.Up : film.End.Up;
        if (height <= foot) return side.IsLeft ? Length.Zero : film.Length;
        var crossings = film.CrossingsAtHeight(height);
        if (crossings.IsEmpty) return film.Length / 2;
        return side.IsLeft ? crossings[0].Distance : crossings[^1].Distance;
    }

    /// <summary>Length of film line between the edges of the roof.</summary>
    internal static Length RoofArc(this Tunnel tunnel) => tunnel.RoofEdge(tunnel.Right) - tunnel.RoofEdge(tunnel.Left);
}
