namespace Hoopwright.Sheets.Models;

/// <summary>A body or a surface as triangles, seen from outside anticlockwise, each corner with the direction that its surface faces.</summary>
internal sealed class Solid
{
    private const int Around = 16;
    private readonly List<(Point3 At, Point3 Facing)> _corners = [];
    private readonly List<int> _triangles = [];

    public IReadOnlyList<(Point3 At, Point3 Facing)> Corners => _corners;

    /// <summary>Numbers of corners, three to a triangle.</summary>
    public IReadOnlyList<int> Triangles => _triangles;

    /// <summary>A flat face around points that lie in a plane and bulge nowhere inwards; without area it is left out.</summary>
    public Solid Face(params ReadOnlySpan<Point3> around)
    {
        // Newell's normal does for any number of corners, also where some fall together.
        Point3 normal = default;
        for (int index = 0; index < around.Length; index++)
        {
            Point3 a = around[index], b = around[(index + 1) % around.Length];
            normal += new Point3((a.Y - b.Y) * (a.Z + b.Z), (a.Z - b.Z) * (a.X + b.X), (a.X - b.X) * (a.Y + b.Y));
        }
        if (normal.Size < 1e-9) return this;
        Point3 facing = normal.Unit();
        int first = _corners.Count;
        foreach (Point3 point in around) _corners.Add((point, facing));
        for (int index = 2; index < around.Length; index++) Triangle(first, first + index - 1, first + index);
        return this;
    }

    /// <summary>An outline across the tunnel, seen anticlockwise from the front (x to the right, z up), with a thickness along it.</summary>
    public Solid Prism(ReadOnlySpan<(double X, double Z)> outline, double fromY, double toY)
    {
        Point3[] front = new Point3[outline.Length], back = new Point3[outline.Length];
        for (int index = 0; index < outline.Length; index++)
        {
            front[index] = new Point3(outline[index].X, fromY, outline[index].Z);
            back[outline.Length - 1 - index] = new Point3(outline[index].X, toY, outline[index].Z);
        }
        Face(front).Face(back);
        for (int index = 0; index < front.Length; index++)
        {
            Point3 a = front[index], b = front[(index + 1) % front.Length];
            Face(b, a, a with { Y = toY }, b with { Y = toY });
        }
        return this;
    }

    /// <summary>A straight bar with a rectangle for a section, about the line from zero to its end.</summary>
    /// <param name="end">The end of its middle line.</param>
    /// <param name="side">A direction square to the line.</param>
    /// <param name="halfSide">Half its size in that direction, m.</param>
    /// <param name="halfOther">Half its size in the third direction, m.</param>
    public Solid Bar(Point3 end, Point3 side, double halfSide, double halfOther)
    {
        Point3 u = side.Unit() * halfSide, v = end.Cross(side).Unit() * halfOther;
        Point3[] ring = [u + v, (u * -1) + v, (u * -1) - v, u - v];
        // v is end × side, so u, v and the way are right-handed in that order and the ring runs anticlockwise as seen from the end.
        Face([.. ring.Reverse()]).Face([.. ring.Select(corner => corner + end)]);
        for (int index = 0; index < ring.Length; index++)
        {
            Point3 a = ring[index], b = ring[(index + 1) % ring.Length];
            Face(a, b, b + end, a + end);
        }
        return this;
    }

    /// <summary>A round tube about a line of points, its outside.</summary>
    /// <param name="line">The points of its middle line; two or more.</param>
    /// <param name="side">A direction square to the whole line.</param>
    /// <param name="radius">The outside radius, m.</param>
    public Solid Tube(IReadOnlyList<(Point3 At, Point3 Way, double Stretch)> line, Point3 side, double radius)
    {
        int first = _corners.Count;
        foreach ((Point3 at, Point3 way, double stretch) in line)
        {
            Point3 outward = side.Cross(way).Unit();
            for (int step = 0; step <= Around; step++)
            {
                double turn = 2 * Math.PI * step / Around;
                Point3 facing = (outward * Math.Cos(turn)) + (side * Math.Sin(turn));
                _corners.Add((at + (outward * (Math.Cos(turn) * radius * stretch)) + (side * (Math.Sin(turn) * radius)), facing.Unit()));
            }
        }
        for (int ring = 0; ring + 1 < line.Count; ring++)
        {
            for (int step = 0; step < Around; step++)
            {
                int a = first + (ring * (Around + 1)) + step, b = a + Around + 1;
                Triangle(a, a + 1, b);
                Triangle(a + 1, b + 1, b);
            }
        }
        Cap(first, reversed: true);
        Cap(first + ((line.Count - 1) * (Around + 1)), reversed: false);
        return this;
    }

    /// <summary>A body turned about an upright line through zero.</summary>
    /// <param name="profile">Radius and height from the foot on its line to the top on its line, m.</param>
    public Solid Turned(params ReadOnlySpan<(double Radius, double Z)> profile)
    {
        const int Steps = 24;
        for (int part = 0; part + 1 < profile.Length; part++)
        {
            ((double low, double from), (double high, double to)) = (profile[part], profile[part + 1]);
            double run = high - low, rise = to - from, size = Math.Sqrt((run * run) + (rise * rise));
            if (size < 1e-9) continue;
            int first = _corners.Count;
            for (int step = 0; step <= Steps; step++)
            {
                double turn = 2 * Math.PI * step / Steps, cos = Math.Cos(turn), sin = Math.Sin(turn);
                Point3 facing = new Point3(cos * rise / size, sin * rise / size, -run / size).Unit();
                _corners.Add((new Point3(low * cos, low * sin, from), facing));
                _corners.Add((new Point3(high * cos, high * sin, to), facing));
            }
            for (int step = 0; step < Steps; step++)
            {
                int a = first + (2 * step);
                if (low > 0) Triangle(a, a + 2, a + 1);
                if (high > 0) Triangle(a + 1, a + 2, a + 3);
            }
        }
        return this;
    }

    private void Cap(int ring, bool reversed)
    {
        Point3[] around = [.. Enumerable.Range(0, Around).Select(step => _corners[ring + step].At)];
        if (reversed) Array.Reverse(around);
        Face(around);
    }

    private void Triangle(int a, int b, int c) => _triangles.AddRange([a, b, c]);
}
