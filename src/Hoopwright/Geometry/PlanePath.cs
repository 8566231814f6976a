using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>
/// A path in an upright plane: a chain of lines and circular arcs, each beginning where the one before it ends. Everything
/// is computed in closed form; only <see cref="Outline"/> makes chords, for drawing.
/// </summary>
public sealed partial class PlanePath
{
    private readonly ImmutableArray<double> startsM;

    private PlanePath(ImmutableArray<PathSegment> segments)
    {
        Segments = segments;
        var starts = ImmutableArray.CreateBuilder<double>(segments.Length);
        double runM = 0;
        foreach (PathSegment segment in segments)
        {
            starts.Add(runM);
            runM += segment.Length.Metres;
        }

        startsM = starts.MoveToImmutable();
        Length = Length.FromMetres(runM);
    }

    /// <summary>The pieces in order; at least one, none without length.</summary>
    public ImmutableArray<PathSegment> Segments { get; }

    /// <summary>Length along the path.</summary>
    public Length Length { get; }

    /// <summary>Where it begins.</summary>
    public PlanePoint Start => Segments[0].Start;

    /// <summary>Where it ends.</summary>
    public PlanePoint End => Segments[^1].End;

    /// <summary>A path of the given pieces. Pieces shorter than a nanometre are left out.</summary>
    /// <exception cref="ArgumentException">Nothing is left, or a piece does not begin where the one before it ends.</exception>
    public static PlanePath Of(params IEnumerable<PathSegment> segments)
    {
        ImmutableArray<PathSegment> kept = [.. segments.Where(segment => segment.Length.Metres > Tolerances.SamePointM)];
        if (kept.IsEmpty) throw new ArgumentException("A path needs a piece that has a length.", nameof(segments));
        for (int i = 1; i < kept.Length; i++)
            if ((kept[i].StartM - kept[i - 1].EndM).SizeM > 4 * Tolerances.SamePointM)
                throw new ArgumentException($"Piece {i} of the path does not begin where piece {i - 1} ends.", nameof(segments));
        return new PlanePath(kept);
    }

    /// <summary>The point a distance along the path; distances outside it are brought to its ends.</summary>
    public PlanePoint PointAt(Length distance)
    {
        (int index, double intoM) = Locate(distance.Metres);
        return Segments[index].PointAtM(intoM).ToPoint();
    }

    /// <summary>
    /// The direction of travel a distance along the path, counter-clockwise from across. At a corner, the direction after it.
    /// </summary>
    public Angle DirectionAt(Length distance)
    {
        (int index, double intoM) = Locate(distance.Metres);
        return Angle.FromRadians(Segments[index].DirectionAtRad(intoM));
    }

    /// <summary>
    /// Every place where the path meets the upright line, in order along it. Where the path runs in that line, both ends of
    /// the stretch.
    /// </summary>
    public ImmutableArray<PathCrossing> CrossingsAtAcross(Length across) => Crossings(segment => segment.DistancesAtX(across.Metres));

    /// <summary>Every place where the path meets the level line, in order along it. Where the path runs in that line, both ends of the stretch.</summary>
    public ImmutableArray<PathCrossing> CrossingsAtHeight(Length up) => Crossings(segment => segment.DistancesAtY(up.Metres));

    /// <summary>The heights at a distance across; null where the path does not reach.</summary>
    public HeightRange? HeightRangeAt(Length across)
    {
        ImmutableArray<PathCrossing> crossings = CrossingsAtAcross(across);
        if (crossings.IsEmpty) return null;
        return new HeightRange(crossings.Min(crossing => crossing.Point.Up), crossings.Max(crossing => crossing.Point.Up));
    }

    /// <summary>The greatest height at a distance across; null where the path does not reach.</summary>
    public Length? HeightAt(Length across) => HeightRangeAt(across)?.Highest;

    /// <summary>
    /// How steeply the path rises to the right where it is highest at a distance across, from -90° to 90°; null where it does
    /// not reach. At a ridge, the slope before it.
    /// </summary>
    public Angle? SlopeAt(Length across)
    {
        PathCrossing? top = null;
        foreach (PathCrossing crossing in CrossingsAtAcross(across))
            if (top is null || crossing.Point.Up.Metres > top.Value.Point.Up.Metres + Tolerances.SamePointM)
                top = crossing;
        if (top is null) return null;

        (int index, double intoM) = Locate(top.Value.Distance.Metres);
        if (intoM <= Tolerances.SamePointM && index > 0) (index, intoM) = (index - 1, Segments[index - 1].Length.Metres);
        double directionRad = Segments[index].DirectionAtRad(intoM);
        double slopeRad = Math.Abs(directionRad) <= Math.PI / 2 ? directionRad : directionRad - (Math.Sign(directionRad) * Math.PI);
        return Angle.FromRadians(slopeRad);
    }

    /// <summary>Area between the path and a level line, where travel to the right counts positive.</summary>
    public Area AreaAbove(Length up)
    {
        double sumM2 = 0;
        foreach (PathSegment segment in Segments) sumM2 += segment.AreaBelowM2();
        return Area.FromSquareMetres(sumM2 - (up.Metres * (End.Across - Start.Across).Metres));
    }

    /// <summary>The smallest upright rectangle around the path.</summary>
    public PlaneBounds Bounds()
    {
        double leastX = double.MaxValue, leastY = double.MaxValue, mostX = double.MinValue, mostY = double.MinValue;
        foreach (PlaneVector point in Segments.SelectMany(segment => segment.Extremes().Append(segment.StartM).Append(segment.EndM)))
        {
            (leastX, mostX) = (Math.Min(leastX, point.XM), Math.Max(mostX, point.XM));
            (leastY, mostY) = (Math.Min(leastY, point.YM), Math.Max(mostY, point.YM));
        }

        return new PlaneBounds(new PlaneVector(leastX, leastY).ToPoint(), new PlaneVector(mostX, mostY).ToPoint());
    }

    /// <summary>The stretches that turn, in order; neighbouring arcs of one radius that turn on are one bend.</summary>
    public ImmutableArray<PathBend> Bends()
    {
        var bends = ImmutableArray.CreateBuilder<PathBend>();
        for (int i = 0; i < Segments.Length; i++)
        {
            if (Segments[i] is not ArcSegment arc) continue;
            var from = Length.FromMetres(startsM[i]);
            var bend = new PathBend(arc.Radius, arc.Sweep, from, from + arc.Length);
            bool goesOn = i > 0 && Segments[i - 1] is ArcSegment before && arc.Sweep / before.Sweep > 0
                && (before.CentreM - arc.CentreM).SizeM <= Tolerances.SamePointM * 10
                && Math.Abs(before.RadiusM - arc.RadiusM) <= Tolerances.SamePointM * 10;
            if (goesOn)
                bends[^1] = bends[^1] with { Turned = bends[^1].Turned + bend.Turned, To = bend.To };
            else
                bends.Add(bend);
        }

        return bends.ToImmutable();
    }

    /// <summary>
    /// Points along the path for drawing: every joint, and points on the arcs so that no chord leaves its arc by more than the
    /// tolerance. The only approximation here.
    /// </summary>
    /// <param name="tolerance">The most a chord may leave its arc; above 0.</param>
    public ImmutableArray<PlanePoint> Outline(Length tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(tolerance.Metres, 0, nameof(tolerance));
        var points = ImmutableArray.CreateBuilder<PlanePoint>();
        points.Add(Start);
        foreach (PathSegment segment in Segments)
        {
            int chords = 1;
            if (segment is ArcSegment arc)
            {
                double stepRad = 2 * Math.Acos(Math.Max(0, 1 - (tolerance.Metres / arc.RadiusM)));
                chords = (int)Math.Clamp(Math.Ceiling(Math.Abs(arc.Sweep.Radians) / stepRad), 1, 10_000);
            }

            for (int i = 1; i < chords; i++) points.Add(segment.PointAtM(segment.Length.Metres * i / chords).ToPoint());
            points.Add(segment.End);
        }

        return points.ToImmutable();
    }

    /// <summary>Whether another path runs through the same points at the same distances, within a tolerance.</summary>
    public bool Matches(PlanePath other, Length within)
    {
        if ((Length - other.Length).Abs() > within) return false;
        foreach (double atM in startsM.Concat(other.startsM).Append(Length.Metres).Order())
        {
            PlaneVector here = PlaneVector.Of(PointAt(Length.FromMetres(atM))), there = PlaneVector.Of(other.PointAt(Length.FromMetres(atM)));
            if ((here - there).SizeM > within.Metres) return false;
        }

        return true;
    }

    private ImmutableArray<PathCrossing> Crossings(Func<PathSegment, IEnumerable<double>> distancesIn)
    {
        var crossings = ImmutableArray.CreateBuilder<PathCrossing>();
        double lastM = double.NegativeInfinity;
        for (int i = 0; i < Segments.Length; i++)
        {
            foreach (double intoM in distancesIn(Segments[i]))
            {
                double atM = startsM[i] + intoM;
                if (atM - lastM <= 2 * Tolerances.SamePointM) continue;
                lastM = atM;
                crossings.Add(new PathCrossing(Length.FromMetres(atM), Segments[i].PointAtM(intoM).ToPoint()));
            }
        }

        return crossings.ToImmutable();
    }

    private (int Index, double IntoM) Locate(double distanceM)
    {
        double atM = Math.Clamp(distanceM, 0, Length.Metres);
        int index = startsM.BinarySearch(atM);
        if (index < 0) index = ~index - 1;
        return (index, Math.Min(atM - startsM[index], Segments[index].Length.Metres));
    }
}
