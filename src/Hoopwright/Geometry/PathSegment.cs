using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>One piece of a path: a straight line or a circular arc, with a direction of travel.</summary>
public abstract record PathSegment
{
    private protected PathSegment()
    {
    }

    /// <summary>Where it begins.</summary>
    public abstract PlanePoint Start { get; }

    /// <summary>Where it ends.</summary>
    public abstract PlanePoint End { get; }

    /// <summary>Length along it.</summary>
    public abstract Length Length { get; }

    /// <summary>How far its direction turns from start to end; to the left is positive, 0 for a line.</summary>
    public abstract Angle Turned { get; }

    /// <summary>The point a distance along it; distances outside it are brought to its ends.</summary>
    public PlanePoint PointAt(Length distance) => PointAtM(Math.Clamp(distance.Metres, 0, Length.Metres)).ToPoint();

    /// <summary>The direction of travel a distance along it, counter-clockwise from across, more than -180° and at most 180°.</summary>
    public Angle DirectionAt(Length distance) =>
        Angle.FromRadians(DirectionAtRad(Math.Clamp(distance.Metres, 0, Length.Metres)));

    internal abstract PlaneVector StartM { get; }

    internal abstract PlaneVector EndM { get; }

    internal abstract double StartDirectionRad { get; }

    internal abstract double EndDirectionRad { get; }

    internal abstract PlaneVector PointAtM(double distanceM);

    internal abstract double DirectionAtRad(double distanceM);

    /// <summary>The part between two distances along it.</summary>
    internal abstract PathSegment Between(double fromM, double toM);

    /// <summary>The same piece mirrored about an upright line and walked the other way.</summary>
    internal abstract PathSegment Mirrored(double aboutXM);

    internal abstract PathSegment Reversed();

    /// <summary>The piece at a constant distance to the left; null when an arc's radius is used up.</summary>
    internal abstract PathSegment? OffsetLeft(double distanceM);

    /// <summary>The same line or circle, from another start to another end, both on it. Null when that would turn it round.</summary>
    internal abstract PathSegment? Retrimmed(PlaneVector start, PlaneVector end);

    /// <summary>Distances along it where it meets the upright line at x; both ends when it lies in that line.</summary>
    internal abstract IEnumerable<double> DistancesAtX(double xM);

    /// <summary>Distances along it where it meets the level line at y; both ends when it lies in that line.</summary>
    internal abstract IEnumerable<double> DistancesAtY(double yM);

    /// <summary>Area between it and the level line at height 0, counted positive where travel is to the right.</summary>
    internal abstract double AreaBelowM2();

    /// <summary>Points that with its ends hold its extremes.</summary>
    internal abstract IEnumerable<PlaneVector> Extremes();
}
