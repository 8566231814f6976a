using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Layout;

namespace Hoopwright.Inside.Light;

/// <summary>The tunnel as light and air meet it: strips of film along its length that follow the bow's real shape, and two upright ends.</summary>
internal sealed class InsideShape
{
    /// <summary>Strips across the film line. Twice as many move the light on the floor by less than 2 in 1000.</summary>
    internal const int Strips = 24;

    private InsideShape(double[] xM, double[] zM, double lengthM)
    {
        (XM, ZM, LengthM) = (xM, zM, lengthM);
        SpanM = xM[^1] - xM[0];
        double area = 0, film = 0;
        for (int strip = 0; strip < xM.Length - 1; strip++)
        {
            area += (xM[strip + 1] - xM[strip]) * (zM[strip] + zM[strip + 1]) / 2;
            film += StripM(strip);
        }
        (SectionM2, FilmLineM) = (area, film);
    }

    /// <summary>Corners of the strips across the tunnel, from the left ground line to the right, m.</summary>
    internal double[] XM { get; }

    /// <summary>Their heights, m.</summary>
    internal double[] ZM { get; }

    internal double LengthM { get; }

    internal double SpanM { get; }

    /// <summary>Area of an end, m².</summary>
    internal double SectionM2 { get; }

    /// <summary>Length of film over a bow, m.</summary>
    internal double FilmLineM { get; }

    internal double FloorM2 => SpanM * LengthM;

    internal double VolumeM3 => SectionM2 * LengthM;

    /// <summary>Film of the roof and both ends, m².</summary>
    internal double CoverM2 => (FilmLineM * LengthM) + (2 * SectionM2);

    /// <summary>Width of a strip across, m.</summary>
    internal double StripM(int strip) => Math.Sqrt(Math.Pow(XM[strip + 1] - XM[strip], 2) + Math.Pow(ZM[strip + 1] - ZM[strip], 2));

    /// <summary>Which way a strip faces: across to the right, and up. A unit vector out of the tunnel.</summary>
    internal (double X, double Z) Outward(int strip)
    {
        double length = StripM(strip);
        return (-(ZM[strip + 1] - ZM[strip]) / length, (XM[strip + 1] - XM[strip]) / length);
    }

    internal static InsideShape Of(Tunnel tunnel)
    {
        PlanePath line = tunnel.Bow.FilmLine;
        var points = ImmutableArray.CreateBuilder<PlanePoint>(Strips + 1);
        for (int corner = 0; corner <= Strips; corner++) points.Add(line.PointAt(line.Length * ((double)corner / Strips)));
        return new([.. points.Select(point => point.Across.Metres)], [.. points.Select(point => Math.Max(0, point.Up.Metres))], tunnel.Length.Metres);
    }

    /// <summary>A tunnel of one shape for checks against figures of others.</summary>
    /// <param name="corners">From the left ground line to the right, m.</param>
    /// <param name="lengthM">Length, m.</param>
    internal static InsideShape Of(IReadOnlyList<(double X, double Z)> corners, double lengthM) => new([.. corners.Select(corner => corner.X)], [.. corners.Select(corner => corner.Z)], lengthM);
}
