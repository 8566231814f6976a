using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Sheets.Drawings;

/// <summary>A path in the drawn thing's own measures, made of straight lines and true circular arcs.</summary>
public sealed record ModelPath
{
    private readonly ImmutableArray<(PlanePoint End, PlanePoint? Centre, Angle Sweep)> pieces;

    private ModelPath(PlanePoint start, ImmutableArray<(PlanePoint, PlanePoint?, Angle)> pieces, bool closed) =>
        (Start, this.pieces, Closed) = (start, pieces, closed);

    /// <summary>Where it starts.</summary>
    public PlanePoint Start { get; }

    /// <summary>True when a straight line leads back to the start.</summary>
    public bool Closed { get; }

    /// <summary>Where it ends so far.</summary>
    public PlanePoint End => pieces.IsEmpty ? Start : pieces[^1].End;

    /// <summary>A path that has only its start so far.</summary>
    public static ModelPath From(PlanePoint start) => new(start, [], false);

    /// <summary>A line through points; at least one.</summary>
    public static ModelPath Through(params IEnumerable<PlanePoint> points)
    {
        PlanePoint[] all = [.. points];
        return new ModelPath(all[0], [.. all.Skip(1).Select(point => (point, (PlanePoint?)null, Angle.Zero))], false);
    }

    /// <summary>A closed outline through points; at least one.</summary>
    public static ModelPath Around(params IEnumerable<PlanePoint> points) => Through(points).Close();

    /// <summary>An upright rectangle between two opposite corners.</summary>
    public static ModelPath Rectangle(PlanePoint corner, PlanePoint opposite) => Around(
        corner, new PlanePoint(opposite.Across, corner.Up), opposite, new PlanePoint(corner.Across, opposite.Up));

    /// <summary>An arc about a centre, from one angle on, angles anticlockwise from the right.</summary>
    public static ModelPath Arc(PlanePoint centre, Length radius, Angle from, Angle sweep) =>
        From(On(centre, radius, from)).ArcAbout(centre, sweep);

    /// <summary>A whole circle.</summary>
    public static ModelPath Circle(PlanePoint centre, Length radius) =>
        Arc(centre, radius, Angle.Zero, Angle.FromDegrees(180)).ArcAbout(centre, Angle.FromDegrees(180)).Close();

    /// <summary>On by a straight line.</summary>
    public ModelPath LineTo(PlanePoint end) => new(Start, pieces.Add((end, null, Angle.Zero)), Closed);

    /// <summary>On by an arc about a centre, anticlockwise positive.</summary>
    public ModelPath ArcAbout(PlanePoint centre, Angle sweep)
    {
        double acrossM = End.Across.Metres - centre.Across.Metres, upM = End.Up.Metres - centre.Up.Metres;
        double cos = Math.Cos(sweep.Radians), sin = Math.Sin(sweep.Radians);
        PlanePoint end = new(
            Length.FromMetres(centre.Across.Metres + (acrossM * cos) - (upM * sin)),
            Length.FromMetres(centre.Up.Metres + (acrossM * sin) + (upM * cos)));
        return new ModelPath(Start, pieces.Add((end, centre, sweep)), Closed);
    }

    /// <summary>The path closed by a straight line back to its start.</summary>
    public ModelPath Close() => new(Start, pieces, true);

    /// <summary>The path on paper, seen through a view.</summary>
    public SheetPath On(ModelView view) => new(
        view.At(Start),
        [.. pieces.Select(piece => new PathPiece(view.At(piece.End), piece.Centre is { } centre ? view.At(centre) : null, piece.Sweep.Radians))],
        Closed);

    private static PlanePoint On(PlanePoint centre, Length radius, Angle angle) => new(
        centre.Across + (radius * Math.Cos(angle.Radians)), centre.Up + (radius * Math.Sin(angle.Radians)));
}
