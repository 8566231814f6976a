using Hoopwright.Sources;

namespace Hoopwright.Inside.Light;

/// <summary>
/// What of the light outside reaches the floor, point by point. From each point a line is followed towards where the light comes from, to the strip of film or
/// the end that it passes: there it loses by the angle at which it falls.
/// </summary>
internal sealed class FloorLight
{
    internal static readonly Formula Rule = new(
        "L(x)", "(1 - frame)·(1 - dirt)·[(B·sin e + A·D)·T(θ)·s + (1 - A)·D·∫T·s·cos ζ dω/π], A = B/E0 after Hay and Davies", "W/m²", Citation.Geometry);

    /// <summary>Points across the floor.</summary>
    internal const int Across = 9;

    // Along, as parts of the length from the middle. Three places stand for the whole floor, the ends with more light included.
    private static readonly double[] Along = [-1.0 / 3, 0, 1.0 / 3];

    // Rings of the sky of equal weight on level ground, and parts of a ring.
    private const int Rings = 12, Parts = 36;

    private readonly InsideShape _shape;
    private readonly FilmOptics _roof, _end;
    private readonly SiteShade _shade;
    private readonly double[][] _slopes, _offsets;
    private readonly (double X, double Z)[] _outward;

    internal FloorLight(InsideShape shape, Heading heading, FilmOptics roof, FilmOptics end, SiteShade shade)
    {
        (_shape, _roof, _end, _shade) = (shape, roof, end, shade);
        int strips = shape.XM.Length - 1;
        _outward = [.. Enumerable.Range(0, strips).Select(shape.Outward)];
        XM = [.. Enumerable.Range(0, Across).Select(point => shape.XM[0] + ((point + 0.5) / Across * shape.SpanM))];
        _slopes = new double[Across][];
        _offsets = new double[Across][];
        for (int point = 0; point < Across; point++)
        {
            double x = XM[point], highest = double.NegativeInfinity;
            double[] slopes = _slopes[point] = new double[strips + 1], offsets = _offsets[point] = new double[strips];
            for (int corner = 1; corner < strips; corner++)
            {
                // Seen from the floor the corners follow each other from left to right, also where the bow bulges out.
                highest = Math.Max(highest, (shape.XM[corner] - x) / Math.Max(shape.ZM[corner], 1e-9));
                slopes[corner] = highest;
            }
            (slopes[0], slopes[strips]) = (double.NegativeInfinity, double.PositiveInfinity);
            for (int strip = 0; strip < strips; strip++) offsets[strip] = (_outward[strip].X * (shape.XM[strip] - x)) + (_outward[strip].Z * shape.ZM[strip]);
        }
        Diffuse = new double[Across];
        DiffuseUnshaded = new double[Across];
        for (int ring = 0; ring < Rings; ring++)
        {
            double elevation = Math.Asin(Math.Sqrt((ring + 0.5) / Rings));
            for (int part = 0; part < Parts; part++)
            {
                Ray ray = heading.Towards(2 * Math.PI * (part + 0.5) / Parts, elevation);
                for (int point = 0; point < Across; point++)
                {
                    (double through, double unshaded) = Through(ray, point);
                    Diffuse[point] += through / (Rings * Parts);
                    DiffuseUnshaded[point] += unshaded / (Rings * Parts);
                }
            }
        }
    }

    /// <summary>Points of the floor, from the left ground line, m.</summary>
    internal double[] XM { get; }

    /// <summary>Part of the light of an evenly bright sky that reaches each point.</summary>
    internal double[] Diffuse { get; }

    /// <summary>The same if nothing stood around the tunnel.</summary>
    internal double[] DiffuseUnshaded { get; }

    /// <summary>Part of the light from a direction that reaches a point, mean of the places along; with the site's shade and without it.</summary>
    /// <param name="ray">Towards where the light comes from; above the level.</param>
    /// <param name="point">From 0, from the left.</param>
    internal (double Shaded, double Unshaded) Through(in Ray ray, int point)
    {
        double[] slopes = _slopes[point];
        double slope = ray.X / Math.Max(ray.Z, 1e-9);
        int low = 0, high = slopes.Length - 1;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            if (slopes[middle] <= slope) low = middle;
            else high = middle;
        }
        (double nx, double nz) = _outward[low];
        double cosine = (nx * ray.X) + (nz * ray.Z), reach = cosine > 1e-9 ? _offsets[point][low] / cosine : double.PositiveInfinity;
        double roof = double.NaN, end = double.NaN, shaded = 0, unshaded = 0;
        foreach (double part in Along)
        {
            double y = part * _shape.LengthM, outAt = y + (reach * ray.Y);
            bool byRoof = Math.Abs(outAt) <= _shape.LengthM / 2;
            double through;
            if (byRoof) through = double.IsNaN(roof) ? roof = _roof.Fast(cosine) : roof;
            else through = double.IsNaN(end) ? end = _end.Fast(Math.Abs(ray.Y)) : end;
            unshaded += through;
            shaded += through * _shade.Reaches(ray, XM[point], y);
        }
        return (shaded / Along.Length, unshaded / Along.Length);
    }
}
