using System.Collections.Immutable;
using Hoopwright.Geometry;

namespace Hoopwright.Layout;

/// <summary>
/// A smooth curve of circular arcs through measured points: the direction at each point is that of the circle through it
/// and its neighbours, and two arcs join each pair of points. Points of one circle give that circle back exactly.
/// </summary>
internal static class SmoothCurve
{
    /// <summary>The curve; null when two points are one.</summary>
    public static PlanePath? Through(ImmutableArray<PlaneVector> points)
    {
        var directions = new double[points.Length];
        for (int index = 1; index < points.Length - 1; index++) directions[index] = CircleDirectionRad(points[index - 1], points[index], points[index + 1]);
        // At an end the direction is that of the circle of its three points: the chord's mirror image of the neighbour's.
        directions[0] = (2 * (points[1] - points[0]).DirectionRad) - directions[1];
        directions[^1] = (2 * (points[^1] - points[^2]).DirectionRad) - directions[^2];
        var segments = new List<PathSegment>();
        for (int index = 0; index + 1 < points.Length; index++)
        {
            if ((points[index + 1] - points[index]).SizeM <= Tolerances.PlaceM) return null;
            AddPair(segments, points[index], directions[index], points[index + 1], directions[index + 1]);
        }
        return segments.Count == 0 ? null : PlanePath.Of(segments);
    }

    /// <summary>Direction at the middle one of three points of the circle through them: the chords' directions, each turned by the other's half angle.</summary>
    private static double CircleDirectionRad(PlaneVector before, PlaneVector at, PlaneVector after)
    {
        double inRad = (at - before).DirectionRad;
        double turnRad = Math.IEEERemainder((after - at).DirectionRad - inRad, Math.Tau);
        double inM = (at - before).SizeM, outM = (after - at).SizeM;
        // The angle between a chord and the tangent is half the arc over the chord; by the inscribed angle the two halves share
        // the turn so that sin(half arc) goes as the chord.
        double halfInRad = Math.Atan2(inM * Math.Sin(turnRad), outM + (inM * Math.Cos(turnRad)));
        return inRad + halfInRad;
    }

    /// <summary>Two arcs, tangent where they join, with equal tangent lengths at both ends.</summary>
    private static void AddPair(List<PathSegment> segments, PlaneVector start, double startRad, PlaneVector end, double endRad)
    {
        PlaneVector chord = end - start;
        PlaneVector startUnit = PlaneVector.Polar(1, startRad), endUnit = PlaneVector.Polar(1, endRad);
        // d: |start + d·u − (end − d·v)| = 2d, with v the end direction: (1 − u·v)·2·d² + 2·d·chord·(u + v) − chord² = 0.
        double quadratic = 2 * (1 - startUnit.Dot(endUnit));
        double linear = 2 * chord.Dot(startUnit + endUnit);
        double constant = -chord.Dot(chord);
        double distanceM = Math.Abs(quadratic) < 1e-12
            ? -constant / linear
            : (-linear + Math.Sqrt((linear * linear) - (4 * quadratic * constant))) / (2 * quadratic);
        PlaneVector joint = ((start + (startUnit * distanceM)) + (end - (endUnit * distanceM))) * 0.5;
        AddArc(segments, start, startRad, joint);
        AddArc(segments, joint, segments[^1].EndDirectionRad, end);
    }

    private static void AddArc(List<PathSegment> segments, PlaneVector start, double startRad, PlaneVector end)
    {
        PlaneVector chord = end - start;
        double halfRad = Math.IEEERemainder(chord.DirectionRad - startRad, Math.Tau);
        if (Math.Abs(halfRad) < 1e-9)
        {
            segments.Add(new LineSegment(start, end));
            return;
        }
        double radiusM = chord.SizeM / (2 * Math.Sin(Math.Abs(halfRad)));
        PlaneVector centre = start + (PlaneVector.Polar(radiusM, startRad + (Math.Sign(halfRad) * Math.PI / 2)));
        PlaneVector out0 = start - centre;
        segments.Add(new ArcSegment(centre, radiusM, out0.DirectionRad, 2 * halfRad));
    }
}
