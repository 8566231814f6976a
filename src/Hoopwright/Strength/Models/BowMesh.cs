using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Models;

/// <summary>
/// A bow as straight chords between nodes on the middle of its tube, from the left foot to the right one, for the frame solvers.
/// </summary>
/// <remarks>
/// Mesh rule: no chord turns more than 7.5° (24 to a semicircle), which leaves 0.3 % in thrust and 1.6 % in the moment of a fixed foot,
/// falling with the square of the number of chords; and none is longer than a twentieth of the bow. Nodes are placed from both feet to
/// the middle, so that an even bow has even nodes.
/// </remarks>
internal sealed record BowMesh
{
    /// <summary>Most that a chord turns, rad.</summary>
    internal const double MostTurnRad = 7.5 * Math.PI / 180;

    private const double MostShare = 1.0 / 20;

    // Steps in which the path is walked; a node lies within one of them of where the rule would put it.
    private const int Steps = 2000;

    // An asked-for node takes the place of one this near to it, as a share of the longest chord.
    private const double SameShare = 0.3;

    // No bend turns that much within two tenths of a millimetre.
    private const double LeastCornerRad = 0.01;

    private BowMesh(BowShape bow, double[] alongM)
    {
        PlanePath path = bow.CentreLine;
        AlongM = [.. alongM];
        PlaneVector[] places = [.. alongM.Select(at => PlaneVector.Of(path.PointAt(Length.FromMetres(at))))];
        XM = [.. places.Select(place => place.XM)];
        ZM = [.. places.Select(place => place.YM)];
        double ratio = bow.FilmLine.Length.Metres / path.Length.Metres;
        bool paired = path.Segments.Length == bow.FilmLine.Segments.Length;
        FilmM = [.. alongM.Select(at => paired ? OnFilmM(path, bow.FilmLine, at) : at * ratio)];
    }

    /// <summary>Distance of each node along the middle of the tube, m.</summary>
    internal ImmutableArray<double> AlongM { get; }

    /// <summary>Distance along the film line of the place over each node, m.</summary>
    internal ImmutableArray<double> FilmM { get; }

    /// <summary>Place of each node across, m.</summary>
    internal ImmutableArray<double> XM { get; }

    /// <summary>Height of each node over the bow's ground line, m.</summary>
    internal ImmutableArray<double> ZM { get; }

    /// <summary>Chords.</summary>
    internal int Chords => AlongM.Length - 1;

    /// <summary>Length of a chord, m.</summary>
    internal double LengthM(int chord) => double.Hypot(XM[chord + 1] - XM[chord], ZM[chord + 1] - ZM[chord]);

    /// <summary>Direction of a chord, as cosine and sine of its angle up from across.</summary>
    internal (double Cos, double Sin) Direction(int chord)
    {
        double lengthM = LengthM(chord);
        return ((XM[chord + 1] - XM[chord]) / lengthM, (ZM[chord + 1] - ZM[chord]) / lengthM);
    }

    /// <summary>Meshes a bow.</summary>
    /// <param name="bow">The bow.</param>
    /// <param name="neededM">Distances along the middle of the tube that must be nodes: where purlins, ties and braces meet it.</param>
    internal static BowMesh Of(BowShape bow, IEnumerable<double> neededM)
    {
        double wholeM = bow.CentreLine.Length.Metres;
        double[] left = Walk(bow.CentreLine, wholeM / 2), right = Walk(bow.CentreLine.Reversed(), wholeM / 2);
        List<double> alongM = [.. left, .. right.Reverse().Select(at => wholeM - at).Skip(1)];
        double nearM = SameShare * MostShare * wholeM;
        foreach (double needed in neededM.Where(at => at > 0 && at < wholeM).Order())
        {
            int nearest = Enumerable.Range(0, alongM.Count).MinBy(at => Math.Abs(alongM[at] - needed));
            // What meets the bow at a corner, as a ridge purlin under a pointed ridge does, has its node there.
            if (Math.Abs(alongM[nearest] - needed) < nearM / 3 && IsCorner(bow.CentreLine, alongM[nearest])) continue;
            bool mayMove = nearest > 0 && nearest < alongM.Count - 1 && !neededM.Contains(alongM[nearest]);
            if (mayMove && Math.Abs(alongM[nearest] - needed) < nearM)
                alongM[nearest] = needed;
            else if (Math.Abs(alongM[nearest] - needed) > 1e-6)
                alongM.Insert(alongM[nearest] < needed ? nearest + 1 : nearest, needed);
        }
        return new BowMesh(bow, [.. alongM]);
    }

    /// <summary>The node nearest to a distance along the middle of the tube.</summary>
    internal int NodeAt(double alongM) => Enumerable.Range(0, AlongM.Length).MinBy(at => Math.Abs(AlongM[at] - alongM));

    /// <summary>Where along a path a point lies, or the place nearest to it, m.</summary>
    internal static double NearestM(PlanePath path, PlanePoint point)
    {
        PlaneVector aim = PlaneVector.Of(point);
        double lengthM = path.Length.Metres, best = 0, bestM = double.PositiveInfinity, stepM = lengthM / Steps;
        for (int step = 0; step <= Steps; step++)
        {
            double awayM = AwayM(step * stepM);
            if (awayM < bestM)
                (best, bestM) = (step * stepM, awayM);
        }
        double lowM = Math.Max(0, best - stepM), highM = Math.Min(lengthM, best + stepM);
        for (int round = 0; round < 60; round++)
        {
            double a = lowM + ((highM - lowM) / 3), b = highM - ((highM - lowM) / 3);
            (lowM, highM) = AwayM(a) < AwayM(b) ? (lowM, b) : (a, highM);
        }
        return (lowM + highM) / 2;

        double AwayM(double atM) => (PlaneVector.Of(path.PointAt(Length.FromMetres(atM))) - aim).SizeM;
    }

    private static bool IsCorner(PlanePath path, double atM)
    {
        double hairM = 1e-4;
        if (atM <= hairM || atM >= path.Length.Metres - hairM) return false;
        double turnRad = path.DirectionAt(Length.FromMetres(atM + hairM)).Radians - path.DirectionAt(Length.FromMetres(atM - hairM)).Radians;
        return Math.Abs(Math.IEEERemainder(turnRad, 2 * Math.PI)) > LeastCornerRad;
    }

    private static double[] Walk(PlanePath path, double toM)
    {
        double stepM = toM / Steps, longestM = path.Length.Metres * MostShare;
        double turnedRad = 0, walkedM = 0, before = path.DirectionAt(Length.Zero).Radians;
        List<double> nodes = [0];
        for (int step = 1; step < Steps; step++)
        {
            double atM = step * stepM, direction = path.DirectionAt(Length.FromMetres(atM)).Radians;
            double turn = Math.Abs(Math.IEEERemainder(direction - before, 2 * Math.PI));
            before = direction;
            if (walkedM + stepM > longestM || (turnedRad + turn > MostTurnRad && walkedM > 2 * stepM))
            {
                nodes.Add(atM - stepM);
                (turnedRad, walkedM) = (0, 0);
            }
            turnedRad += turn;
            walkedM += stepM;
        }
        nodes.Add(toM);
        return [.. nodes];
    }

    private static double OnFilmM(PlanePath centre, PlanePath film, double atM)
    {
        double runM = 0, filmM = 0;
        for (int segment = 0; segment < centre.Segments.Length; segment++)
        {
            double lengthM = centre.Segments[segment].Length.Metres, overM = film.Segments[segment].Length.Metres;
            if (atM <= runM + lengthM || segment == centre.Segments.Length - 1)
                return filmM + (Math.Clamp((atM - runM) / lengthM, 0, 1) * overM);
            runM += lengthM;
            filmM += overM;
        }
        return filmM;
    }
}
