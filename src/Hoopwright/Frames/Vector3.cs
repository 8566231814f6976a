namespace Hoopwright.Frames;

/// <summary>Three plain numbers along x, y and z: a place in metres, a shift, a force or a direction, as the name beside it says.</summary>
internal readonly record struct Vector3(double X, double Y, double Z)
{
    internal static Vector3 Zero => default;

    internal double Size => Math.Sqrt((X * X) + (Y * Y) + (Z * Z));

    internal bool IsFinite => double.IsFinite(X) && double.IsFinite(Y) && double.IsFinite(Z);

    internal double this[int axis] => axis == 0 ? X : axis == 1 ? Y : Z;

    internal double Dot(Vector3 other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    internal Vector3 Cross(Vector3 other) =>
        new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    public static Vector3 operator +(Vector3 a, Vector3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vector3 operator -(Vector3 a, Vector3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vector3 operator -(Vector3 a) => new(-a.X, -a.Y, -a.Z);

    public static Vector3 operator *(Vector3 a, double times) => new(a.X * times, a.Y * times, a.Z * times);
}
