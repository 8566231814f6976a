namespace Hoopwright.Quantities;

/// <summary>An angle, held in radians.</summary>
public readonly record struct Angle : IComparable<Angle>
{
    private Angle(double radians) => Radians = radians;

    /// <summary>The value in radians.</summary>
    public double Radians { get; }

    /// <summary>Nothing at all.</summary>
    public static Angle Zero => default;

    /// <summary>From radians.</summary>
    public static Angle FromRadians(double radians) => new(radians);

    /// <summary>From degrees.</summary>
    public static Angle FromDegrees(double degrees) => new(degrees * Math.PI / 180);

    /// <summary>The value in degrees.</summary>
    public double Degrees => Radians * 180 / Math.PI;

    /// <summary>Sum.</summary>
    public static Angle operator +(Angle left, Angle right) => new(left.Radians + right.Radians);

    /// <summary>Difference.</summary>
    public static Angle operator -(Angle left, Angle right) => new(left.Radians - right.Radians);

    /// <summary>The same amount the other way.</summary>
    public static Angle operator -(Angle value) => new(-value.Radians);

    /// <summary>So many times.</summary>
    public static Angle operator *(Angle value, double times) => new(value.Radians * times);

    /// <summary>So many times.</summary>
    public static Angle operator *(double times, Angle value) => new(value.Radians * times);

    /// <summary>An equal part.</summary>
    public static Angle operator /(Angle value, double parts) => new(value.Radians / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Angle left, Angle right) => left.Radians / right.Radians;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Angle left, Angle right) => left.Radians < right.Radians;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Angle left, Angle right) => left.Radians > right.Radians;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Angle left, Angle right) => left.Radians <= right.Radians;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Angle left, Angle right) => left.Radians >= right.Radians;

    /// <inheritdoc/>
    public int CompareTo(Angle other) => Radians.CompareTo(other.Radians);
}
