using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Sheets.Drawings;

/// <summary>A path on paper made of straight lines and true circular arcs.</summary>
/// <param name="Start">Where it starts.</param>
/// <param name="Pieces">The pieces in order.</param>
/// <param name="Closed">True when a straight line leads back to the start.</param>
public sealed record SheetPath(SheetPoint Start, ImmutableArray<PathPiece> Pieces, bool Closed = false)
{
    /// <summary>A path that has only its start so far.</summary>
    public static SheetPath From(SheetPoint start) => new(start, []);

    /// <summary>A line through points; at least one.</summary>
    public static SheetPath Through(params IEnumerable<SheetPoint> points)
    {
        SheetPoint[] all = [.. points];
        return new SheetPath(all[0], [.. all.Skip(1).Select(point => new PathPiece(point))]);
    }

    /// <summary>A closed outline through points; at least one.</summary>
    public static SheetPath Around(params IEnumerable<SheetPoint> points) => Through(points) with { Closed = true };

    /// <summary>A rectangle.</summary>
    public static SheetPath Rectangle(SheetBox box) => Around(
        new(box.LeftMm, box.TopMm), new(box.RightMm, box.TopMm), new(box.RightMm, box.BottomMm), new(box.LeftMm, box.BottomMm));

    /// <summary>An arc about a centre, from one angle on, angles anticlockwise as seen from the right.</summary>
    public static SheetPath Arc(SheetPoint centre, double radiusMm, Angle from, Angle sweep) =>
        From(centre.Away(radiusMm, from.Radians)).ArcAbout(centre, sweep);

    /// <summary>A whole circle.</summary>
    public static SheetPath Circle(SheetPoint centre, double radiusMm) =>
        Arc(centre, radiusMm, Angle.Zero, Angle.FromDegrees(180)).ArcAbout(centre, Angle.FromDegrees(180)).Close();

    /// <summary>Where the path ends so far.</summary>
    public SheetPoint End => Pieces.IsEmpty ? Start : Pieces[^1].End;

    /// <summary>On by a straight line.</summary>
    public SheetPath LineTo(SheetPoint end) => this with { Pieces = Pieces.Add(new PathPiece(end)) };

    /// <summary>On by an arc about a centre; anticlockwise as seen is positive.</summary>
    public SheetPath ArcAbout(SheetPoint centre, Angle sweep)
    {
        double radiusMm = centre.DistanceMm(End), startRad = centre.DirectionRad(End);
        SheetPoint end = centre.Away(radiusMm, startRad + sweep.Radians);
        return this with { Pieces = Pieces.Add(new PathPiece(end, centre, sweep.Radians)) };
    }

    /// <summary>The path closed by a straight line back to its start.</summary>
    public SheetPath Close() => this with { Closed = true };

    /// <summary>The path moved on the paper.</summary>
    public SheetPath Moved(double rightMm, double downMm) => new(
        Start.Moved(rightMm, downMm),
        [.. Pieces.Select(piece => piece with { End = piece.End.Moved(rightMm, downMm), Centre = piece.Centre?.Moved(rightMm, downMm) })],
        Closed);

    /// <summary>Points along the path so close that no chord leaves its arc by more than a twentieth of a millimetre.</summary>
    internal ImmutableArray<SheetPoint> Flattened()
    {
        const double SagMm = 0.05;
        ImmutableArray<SheetPoint>.Builder points = ImmutableArray.CreateBuilder<SheetPoint>();
        points.Add(Start);
        foreach (PathPiece piece in Pieces)
        {
            if (piece.Centre is { } centre)
            {
                double radiusMm = centre.DistanceMm(points[^1]), startRad = centre.DirectionRad(points[^1]);
                double stepRad = radiusMm <= SagMm ? Math.PI / 4 : 2 * Math.Acos(1 - (SagMm / radiusMm));
                int steps = Math.Max(2, (int)Math.Ceiling(Math.Abs(piece.SweepRad) / stepRad));
                for (int step = 1; step < steps; step++)
                    points.Add(centre.Away(radiusMm, startRad + (piece.SweepRad * step / steps)));
            }

            points.Add(piece.End);
        }

        if (Closed && points[^1] != Start)
            points.Add(Start);
        return points.ToImmutable();
    }
}
