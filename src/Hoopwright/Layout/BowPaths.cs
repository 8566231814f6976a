using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>What the layout asks of a path that runs over the tunnel from left to right.</summary>
public static class BowPaths
{
    /// <summary>The path a distance further in; null when a bend is used up. Walking left to right over the tunnel, inside is to the right.</summary>
    public static PlanePath? Inwards(this PlanePath path, Length distance) => path.Offset(distance, PathSide.Right);

    /// <summary>Height of its highest point.</summary>
    public static Length Highest(this PlanePath path) => path.Bounds().Most.Up;

    /// <summary>
    /// Distances across at which the path first and last stands at a height. A height under its ends gives its ends, one over
    /// its top gives the top twice.
    /// </summary>
    public static (Length Left, Length Right) AcrossAt(this PlanePath path, Length height)
    {
        if (height <= path.Start.Up) return (path.Start.Across, path.End.Across);
        var crossings = path.CrossingsAtHeight(height);
        if (crossings.IsEmpty)
        {
            PlanePoint top = path.PointAt(path.Length / 2);
            return (top.Across, top.Across);
        }
        return (crossings[0].Point.Across, crossings[^1].Point.Across);
    }

    /// <summary>Distance along the path from its start to where it first stands at a height; its middle when it never does.</summary>
    public static Length DistanceTo(this PlanePath path, Length height)
    {
        var crossings = path.CrossingsAtHeight(height);
        return crossings.IsEmpty ? path.Length / 2 : crossings[0].Distance;
    }
}
