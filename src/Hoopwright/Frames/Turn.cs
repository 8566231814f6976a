namespace Hoopwright.Frames;

/// <summary>A turn in space as a rotation matrix, held by its three rows.</summary>
internal readonly record struct Turn(Vector3 Row1, Vector3 Row2, Vector3 Row3)
{
    // Under this angle the closed forms lose digits to differences of nearly equal numbers; their series are exact to the last one.
    private const double SmallRad = 1e-4;

    /// <summary>No turn.</summary>
    internal static Turn None { get; } = new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    /// <summary>The turn whose columns are three axes.</summary>
    internal static Turn FromColumns(Vector3 x, Vector3 y, Vector3 z) => new(new(x.X, y.X, z.X), new(x.Y, y.Y, z.Y), new(x.Z, y.Z, z.Z));

    /// <summary>The turn about a vector by its size in rad (Rodrigues).</summary>
    internal static Turn About(Vector3 v)
    {
        double angle2 = v.Dot(v), angle = Math.Sqrt(angle2);
        double a = angle < SmallRad ? 1 - (angle2 / 6) : Math.Sin(angle) / angle;
        double half = Math.Sin(angle / 2) / angle;
        double b = angle < SmallRad ? 0.5 - (angle2 / 24) : 2 * half * half;
        return new(
            new(1 - (b * ((v.Y * v.Y) + (v.Z * v.Z))), (b * v.X * v.Y) - (a * v.Z), (b * v.X * v.Z) + (a * v.Y)),
            new((b * v.X * v.Y) + (a * v.Z), 1 - (b * ((v.X * v.X) + (v.Z * v.Z))), (b * v.Y * v.Z) - (a * v.X)),
            new((b * v.X * v.Z) - (a * v.Y), (b * v.Y * v.Z) + (a * v.X), 1 - (b * ((v.X * v.X) + (v.Y * v.Y)))));
    }

    /// <summary>The turn vector, rad; its size is at most π. By the quaternion of the matrix (Spurrier, J. Spacecraft 15 (1978) 255).</summary>
    internal Vector3 ToVector()
    {
        double m11 = Row1.X, m22 = Row2.Y, m33 = Row3.Z, trace = m11 + m22 + m33;
        double w;
        Vector3 v;
        if (trace >= Math.Max(m11, Math.Max(m22, m33)))
        {
            w = Math.Sqrt(1 + trace) / 2;
            v = new Vector3(Row3.Y - Row2.Z, Row1.Z - Row3.X, Row2.X - Row1.Y) * (1 / (4 * w));
        }
        else if (m11 >= m22 && m11 >= m33)
        {
            double x = Math.Sqrt((m11 / 2) + ((1 - trace) / 4));
            (w, v) = ((Row3.Y - Row2.Z) / (4 * x), new(x, (Row2.X + Row1.Y) / (4 * x), (Row3.X + Row1.Z) / (4 * x)));
        }
        else if (m22 >= m33)
        {
            double y = Math.Sqrt((m22 / 2) + ((1 - trace) / 4));
            (w, v) = ((Row1.Z - Row3.X) / (4 * y), new((Row1.Y + Row2.X) / (4 * y), y, (Row3.Y + Row2.Z) / (4 * y)));
        }
        else
        {
            double z = Math.Sqrt((m33 / 2) + ((1 - trace) / 4));
            (w, v) = ((Row2.X - Row1.Y) / (4 * z), new((Row1.Z + Row3.X) / (4 * z), (Row2.Z + Row3.Y) / (4 * z), z));
        }
        double size = v.Size;
        if (size < SmallRad)
            return v * (2 * Math.Sign(w == 0 ? 1 : w));
        double angle = 2 * Math.Atan2(size, Math.Abs(w));
        return v * (angle / size * (w < 0 ? -1 : 1));
    }

    /// <summary>A vector turned.</summary>
    internal Vector3 Of(Vector3 v) => new(Row1.Dot(v), Row2.Dot(v), Row3.Dot(v));

    /// <summary>A vector turned back.</summary>
    internal Vector3 Back(Vector3 v) => (Row1 * v.X) + (Row2 * v.Y) + (Row3 * v.Z);

    /// <summary>This turn after another.</summary>
    internal Turn After(Turn first) => new(first.Back(Row1), first.Back(Row2), first.Back(Row3));

    /// <summary>The turn back.</summary>
    internal Turn Reverse => new(new(Row1.X, Row2.X, Row3.X), new(Row1.Y, Row2.Y, Row3.Y), new(Row1.Z, Row2.Z, Row3.Z));
}
