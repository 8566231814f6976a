using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>A place on the film line.</summary>
/// <param name="SM">Distance along it from the left foot, m.</param>
/// <param name="XM">Across, m.</param>
/// <param name="ZM">Height, m.</param>
/// <param name="SlopeDeg">How steep it is there, degrees from the level, 0 to 90.</param>
internal readonly record struct FilmPoint(double SM, double XM, double ZM, double SlopeDeg);

/// <summary>
/// The film line of a bow as the load rules ask about it: where it is how steep, where legs end, where quarters of the span lie.
/// On an arc the slope is straight in the distance, so between these points all that depends on slope alone is exact.
/// </summary>
internal sealed class FilmLine
{
    // Film steeper than this from the ground up counts as a wall, where the bow is measured and has no legs by name.
    private const double WallDeg = 80;

    // A measured bow without upright legs springs from the ground, however steep its foot: walls lower than this part of the span are none.
    private const double LeastWallPerSpan = 0.1;

    // Slopes at which some rule bends, and steps between them fine enough for what is straight across and not along.
    private static readonly double[] SlopesDeg = [0, 2.5, 5, 7.5, 10, 12.5, 15, 17.5, 20, 22.5, 25, 27.5, 30, 32.5, 35, 37.5, 40, 42.5, 45, 47.5, 50, 52.5, 55, 57.5, 60, 62.5, 65, 67.5, 70, 75, 80, 85];

    private const double SameSlopeDeg = 1e-7;

    private readonly PlanePath path;
    private readonly double? namedLegM;

    public FilmLine(BowShape bow)
        : this(bow.FilmLine, bow.Kind == BowKind.Offsets ? null : bow.SideHeight.Metres)
    {
    }

    // Legs of a measured bow are found, and may differ; the roof stands on legs when both sides have one.
    private FilmLine(PlanePath path, double? legM)
    {
        this.path = path;
        namedLegM = legM;
        LengthM = path.Length.Metres;
        StartM = path.Start.Across.Metres;
        EndM = path.End.Across.Metres;
        Points = Sampled(path);
        double highestM = Points.Max(point => point.ZM);
        ImmutableArray<FilmPoint> top = [.. Points.Where(point => point.ZM >= highestM - 1e-9)];
        Crown = PointAt((top[0].SM + top[^1].SM) / 2);
        double leftM = legM ?? SteepFootM(Points), rightM = legM ?? SteepFootM(Points.Reverse());
        if (leftM == 0 || rightM == 0) (leftM, rightM) = (0, 0);
        LegM = (leftM + rightM) / 2;
        LeftEaveM = leftM > 0 ? path.DistanceTo(Length.FromMetres(leftM)).Metres : 0;
        RightEaveM = rightM > 0 ? LengthM - path.Reversed().DistanceTo(Length.FromMetres(rightM)).Metres : LengthM;
    }

    /// <summary>The bow seen from behind, on which its right is left; profiles made on it are <see cref="LoadProfile.Mirrored"/> back.</summary>
    public FilmLine FromBehind() => new(path.Mirrored(Length.FromMetres((StartM + EndM) / 2)), namedLegM);

    /// <summary>Length of the film line, m.</summary>
    public double LengthM { get; }

    /// <summary>Across at the left foot, m.</summary>
    public double StartM { get; }

    /// <summary>Across at the right foot, m.</summary>
    public double EndM { get; }

    /// <summary>Places along it in order; where the slope jumps, two with one distance.</summary>
    public ImmutableArray<FilmPoint> Points { get; }

    /// <summary>The highest place; of a level stretch, its middle.</summary>
    public FilmPoint Crown { get; }

    /// <summary>Height of the legs, of two that differ the mean, m; 0 when it springs from the ground.</summary>
    public double LegM { get; }

    /// <summary>True when the roof stands on legs.</summary>
    public bool IsOnLegs => LegM > 0;

    /// <summary>Where the left leg ends, m along; 0 without legs.</summary>
    public double LeftEaveM { get; }

    /// <summary>Where the right leg begins, m along; the whole length without legs.</summary>
    public double RightEaveM { get; }

    /// <summary>Rise of the roof over the legs, as a part of the span.</summary>
    public double Rise => (Crown.ZM - LegM) / (EndM - StartM);

    /// <summary>Mean height of the roof, m: halfway from eave to crown.</summary>
    public double MeanHeightM => (Crown.ZM + LegM) / 2;

    /// <summary>The place where the roof stands at a part of the span, as a distance along, m.</summary>
    /// <param name="part">0 at the left, 1 at the right.</param>
    public double AtPartOfSpanM(double part)
    {
        var across = Length.FromMetres(StartM + ((EndM - StartM) * part));
        var crossings = path.CrossingsAtAcross(across);
        return crossings.IsEmpty ? LengthM * part : crossings.MaxBy(crossing => crossing.Point.Up).Distance.Metres;
    }

    /// <summary>The first place from the left at a height, as a distance along, m; the middle for a height over the crown.</summary>
    public double AtHeightM(double heightM) => path.DistanceTo(Length.FromMetres(heightM)).Metres;

    /// <summary>The place a distance along; at a jump of slope, what comes after.</summary>
    public FilmPoint PointAt(double sM) => At(path, sM, after: true);

    /// <summary>A profile of a value at every place and at some more.</summary>
    /// <param name="valuePa">The value in Pa.</param>
    /// <param name="alsoM">Further places, m along, at which the value may bend.</param>
    public LoadProfile Profile(Func<FilmPoint, double> valuePa, params ReadOnlySpan<double> alsoM)
    {
        List<FilmPoint> places = [.. Points];
        foreach (double atM in alsoM) places.Add(PointAt(Math.Clamp(atM, 0, LengthM)));
        return LoadProfile.Of([.. places.Select((place, index) => (place, index)).OrderBy(each => each.place.SM).ThenBy(each => each.index)
            .Select(each => (each.place.SM, valuePa(each.place)))]);
    }

    /// <summary>A profile that is level from place to place.</summary>
    /// <param name="zones">End of each zone, m along, and its value in Pa; the first begins at the left foot.</param>
    public LoadProfile Zones(params ReadOnlySpan<(double ToM, double Pa)> zones)
    {
        List<(double, double)> points = [];
        double fromM = 0;
        foreach ((double toM, double pa) in zones)
        {
            double endM = Math.Clamp(toM, fromM, LengthM);
            if (endM - fromM > 1e-9)
            {
                points.Add((fromM, pa));
                points.Add((endM, pa));
                fromM = endM;
            }
        }
        return LoadProfile.Of(points);
    }

    private static ImmutableArray<FilmPoint> Sampled(PlanePath path)
    {
        var points = ImmutableArray.CreateBuilder<FilmPoint>();
        double startM = 0;
        foreach (PathSegment segment in path.Segments)
        {
            double lengthM = segment.Length.Metres;
            SortedSet<double> intoM = [0, lengthM];
            if (segment is ArcSegment arc)
            {
                double fromRad = segment.StartDirectionRad;
                foreach (double slopeDeg in SlopesDeg)
                {
                    foreach (double directionRad in (ReadOnlySpan<double>)[slopeDeg * Math.PI / 180, -slopeDeg * Math.PI / 180])
                    {
                        double atM = (directionRad - fromRad) / arc.Sweep.Radians * lengthM;
                        if (atM > 1e-9 && atM < lengthM - 1e-9) intoM.Add(atM);
                    }
                }
            }
            foreach (double atM in intoM)
            {
                PlaneVector at = segment.PointAtM(atM);
                points.Add(new FilmPoint(startM + atM, at.XM, at.YM, SlopeDegOf(segment.DirectionAtRad(atM))));
            }
            startM += lengthM;
        }
        return points.ToImmutable();
    }

    private static FilmPoint At(PlanePath path, double sM, bool after)
    {
        Length at = Length.FromMetres(after ? sM : Math.Max(0, sM - 1e-9));
        PlanePoint point = path.PointAt(at);
        return new FilmPoint(sM, point.Across.Metres, point.Up.Metres, SlopeDegOf(path.DirectionAt(at).Radians));
    }

    // Walking left to right, the way goes up on the left and down on the right; a bow that turns back is upright there.
    private static double SlopeDegOf(double directionRad)
    {
        double deg = Math.Min(90, Math.Abs(directionRad) * 180 / Math.PI);
        foreach (double slopeDeg in SlopesDeg)
            if (Math.Abs(deg - slopeDeg) <= SameSlopeDeg)
                return slopeDeg;
        return deg;
    }

    private double SteepFootM(IEnumerable<FilmPoint> fromFoot)
    {
        double steepM = 0;
        foreach (FilmPoint point in fromFoot)
        {
            if (point.SlopeDeg < WallDeg) break;
            steepM = point.ZM;
        }
        return steepM >= LeastWallPerSpan * (EndM - StartM) ? steepM : 0;
    }
}
