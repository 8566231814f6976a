namespace Hoopwright.Geometry;

/// <summary>Where the lines or circles that carry two neighbouring pieces meet.</summary>
internal static class Meeting
{
    /// <summary>The meeting point nearest to the gap or overlap between two pieces; null when their carriers do not meet.</summary>
    internal static PlaneVector? Of(PathSegment before, PathSegment after)
    {
        PlaneVector near = (before.EndM + after.StartM) * 0.5;
        IEnumerable<PlaneVector> candidates = (before, after) switch
        {
            (LineSegment a, LineSegment b) => LineAndLine(a, b),
            (LineSegment a, ArcSegment b) => LineAndCircle(a, b),
            (ArcSegment a, LineSegment b) => LineAndCircle(b, a),
            (ArcSegment a, ArcSegment b) => CircleAndCircle(a.CentreM, a.RadiusM, b.CentreM, b.RadiusM),
            _ => [],
        };
        PlaneVector? nearest = null;
        foreach (PlaneVector candidate in candidates)
            if (nearest is null || (candidate - near).SizeM < (nearest.Value - near).SizeM)
                nearest = candidate;
        return nearest;
    }

    /// <summary>The points at given distances from two centres: none, or two, which may be the same; the first lies to the right of the way from one centre to the other.</summary>
    internal static IEnumerable<PlaneVector> CircleAndCircle(PlaneVector oneM, double oneRadiusM, PlaneVector otherM, double otherRadiusM)
    {
        PlaneVector between = otherM - oneM;
        double distanceM = between.SizeM;
        if (distanceM <= Tolerances.SamePointM) return [];
        double alongM = ((distanceM * distanceM) + ((oneRadiusM - otherRadiusM) * (oneRadiusM + otherRadiusM))) / (2 * distanceM);
        double asideM2 = (oneRadiusM - alongM) * (oneRadiusM + alongM);
        if (asideM2 < -Tolerances.SamePointM * oneRadiusM) return [];
        PlaneVector unit = between * (1 / distanceM);
        PlaneVector aside = unit.TurnedLeft * Math.Sqrt(Math.Max(0, asideM2));
        PlaneVector foot = oneM + (unit * alongM);
        return [foot - aside, foot + aside];
    }

    private static IEnumerable<PlaneVector> LineAndLine(LineSegment a, LineSegment b)
    {
        PlaneVector alongA = a.EndM - a.StartM, alongB = b.EndM - b.StartM;
        double cross = alongA.Cross(alongB);
        if (Math.Abs(cross) <= Tolerances.SameDirectionRad * alongA.SizeM * alongB.SizeM) return [];
        return [a.StartM + (alongA * ((b.StartM - a.StartM).Cross(alongB) / cross))];
    }

    private static IEnumerable<PlaneVector> LineAndCircle(LineSegment line, ArcSegment arc)
    {
        PlaneVector unit = (line.EndM - line.StartM) * (1 / (line.EndM - line.StartM).SizeM);
        PlaneVector fromCentre = line.StartM - arc.CentreM;
        double asideM = unit.Cross(fromCentre);
        double halfChordM2 = (arc.RadiusM - asideM) * (arc.RadiusM + asideM);
        if (halfChordM2 < -Tolerances.SamePointM * arc.RadiusM) return [];
        double halfChordM = Math.Sqrt(Math.Max(0, halfChordM2));
        PlaneVector foot = line.StartM - (unit * fromCentre.Dot(unit));
        return [foot - (unit * halfChordM), foot + (unit * halfChordM)];
    }
}
