using Hoopwright.Plans;
using Hoopwright.Sun;

namespace Hoopwright.Inside.Light;

/// <summary>
/// What stands between the tunnel and the sky: hills as a horizon, trees and buildings by where they stand, and tunnels alongside. Trees may let a part
/// of the light through, and so do tunnels, which are covered with film.
/// </summary>
internal sealed class SiteShade
{
    // Light through both sides of a neighbour: two films and two rows of bows.
    private const double ThroughFrame = 0.9;

    private readonly (double AzimuthRad, double Slope)[] _horizon;
    private readonly (double FromRad, double WidthRad, double DistanceM, double HeightM, double Lets)[] _obstacles;
    private readonly (double Side, double GapM)[] _neighbours;
    private readonly double _throughNeighbour;
    private readonly double _rightRad;
    private readonly InsideShape _shape;

    /// <param name="site">Horizon, obstacles and neighbours.</param>
    /// <param name="shape">The tunnel; its neighbours count as like it.</param>
    /// <param name="heading">How it lies.</param>
    /// <param name="filmDiffuse">Part of diffuse light that the film lets through.</param>
    internal SiteShade(Site site, InsideShape shape, Heading heading, double filmDiffuse)
    {
        _shape = shape;
        _rightRad = GeocentricSun.Rad(heading.RightFacesDeg);
        _throughNeighbour = Math.Pow(filmDiffuse * ThroughFrame, 2);
        _horizon = [.. site.Horizon.Where(point => point is { Direction: not null, Rises: not null })
            .Select(point => (GeocentricSun.Rad(GeocentricSun.Wrapped(point.Direction!.Value.Value.Degrees)), Math.Tan(point.Rises!.Value.Value.Radians))).OrderBy(point => point.Item1)];
        _obstacles = [.. site.Obstacles.Where(each => each is { From: not null, To: not null, Distance: not null, Height: not null })
            .Select(each => (
                GeocentricSun.Rad(each.From!.Value.Value.Degrees), GeocentricSun.Rad(GeocentricSun.Wrapped((each.To!.Value.Value - each.From.Value.Value).Degrees)),
                each.Distance!.Value.Value.Metres, each.Height!.Value.Value.Metres, each.Lets?.Value.Value ?? 0))];
        _neighbours = [.. new[] { (-1.0, site.NeighbourLeft), (1.0, site.NeighbourRight) }.Where(each => each.Item2 is not null).Select(each => (each.Item1, each.Item2!.Value.Value.Metres))];
    }

    /// <summary>True when nothing shades the tunnel.</summary>
    internal bool IsOpen => _horizon.Length == 0 && _obstacles.Length == 0 && _neighbours.Length == 0;

    /// <summary>Part of the light from a direction that reaches a point of the floor, the tunnel's own film not counted.</summary>
    /// <param name="ray">Towards where the light comes from; above the level.</param>
    /// <param name="xM">Across, from the left ground line.</param>
    /// <param name="yM">Along, from the middle of the tunnel.</param>
    internal double Reaches(in Ray ray, double xM, double yM)
    {
        if (IsOpen) return 1;
        double level = Math.Sqrt((ray.X * ray.X) + (ray.Y * ray.Y));
        if (level < 1e-9) return 1;
        double slope = ray.Z / level;
        if (slope < HorizonSlope(ray.AzimuthRad)) return 0;
        double through = 1;
        foreach (var (fromRad, widthRad, distanceM, heightM, lets) in _obstacles)
        {
            double turn = ray.AzimuthRad - fromRad;
            if (turn - (2 * Math.PI * Math.Floor(turn / (2 * Math.PI))) > widthRad) continue;
            // Distances are from the middle of the tunnel; a point beside it is nearer or farther by its place in that direction.
            double nearerM = (((xM - (_shape.SpanM / 2)) * ray.X) + (yM * ray.Y)) / level;
            if (slope * Math.Max(0.5, distanceM - nearerM) < heightM) through *= lets;
        }
        foreach ((double side, double gapM) in _neighbours)
        {
            if (ray.X * side <= 1e-9) continue;
            double fromSideM = side > 0 ? _shape.SpanM - xM : xM, rise = ray.Z / Math.Abs(ray.X);
            bool crosses = false;
            for (int corner = 0; corner < _shape.XM.Length && !crosses; corner++)
            {
                double awayM = fromSideM + gapM + (side > 0 ? _shape.XM[corner] : _shape.SpanM - _shape.XM[corner]);
                // It ends where this one does: light that passes beyond its end is free.
                crosses = awayM * rise < _shape.ZM[corner] && Math.Abs(yM + (awayM / Math.Abs(ray.X) * ray.Y)) < _shape.LengthM / 2;
            }
            if (crosses) through *= _throughNeighbour;
        }
        return through;
    }

    private double HorizonSlope(double azimuthRad)
    {
        if (_horizon.Length == 0) return double.NegativeInfinity;
        if (_horizon.Length == 1) return _horizon[0].Slope;
        double at = azimuthRad - (2 * Math.PI * Math.Floor(azimuthRad / (2 * Math.PI)));
        int after = Array.FindIndex(_horizon, point => point.AzimuthRad > at);
        var (before, next) = after switch { > 0 => (_horizon[after - 1], _horizon[after]), _ => (_horizon[^1], _horizon[0]) };
        double gap = next.AzimuthRad - before.AzimuthRad, into = at - before.AzimuthRad;
        if (gap <= 0) gap += 2 * Math.PI;
        if (into < 0) into += 2 * Math.PI;
        return before.Slope + ((next.Slope - before.Slope) * into / gap);
    }
}
