namespace Hoopwright.Sheets.Models;

/// <summary>A point or a direction of the tunnel, metres: x across, y along, z up.</summary>
internal readonly record struct Point3(double X, double Y, double Z)
{
    public static Point3 operator +(Point3 left, Point3 right) => new(left.X + right.X, left.Y + right.Y, left.Z + right.Z);

    public static Point3 operator -(Point3 left, Point3 right) => new(left.X - right.X, left.Y - right.Y, left.Z - right.Z);

    public static Point3 operator *(Point3 point, double times) => new(point.X * times, point.Y * times, point.Z * times);

    public double Size => Math.Sqrt((X * X) + (Y * Y) + (Z * Z));

    public Point3 Unit() => this * (1 / Size);

    public Point3 Cross(Point3 other) => new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));
}
