namespace Hoopwright.Quantities;

/// <summary>The second moment of area of a section, held in metres to the fourth.</summary>
public readonly record struct SecondMoment : IComparable<SecondMoment>
{
    private SecondMoment(double metres4) => Metres4 = metres4;

    /// <summary>The value in metres to the fourth.</summary>
    public double Metres4 { get; }

    /// <summary>Nothing at all.</summary>
    public static SecondMoment Zero => default;

    /// <summary>From metres to the fourth.</summary>
    public static SecondMoment FromMetres4(double metres4) => new(metres4);

    /// <summary>From inches to the fourth.</summary>
    public static SecondMoment FromInches4(double inches4) => new(inches4 * (0.0254 * 0.0254 * 0.0254 * 0.0254));

    /// <summary>The value in inches to the fourth.</summary>
    public double Inches4 => Metres4 / (0.0254 * 0.0254 * 0.0254 * 0.0254);

    /// <summary>Sum.</summary>
    public static SecondMoment operator +(SecondMoment left, SecondMoment right) => new(left.Metres4 + right.Metres4);

    /// <summary>Difference.</summary>
    public static SecondMoment operator -(SecondMoment left, SecondMoment right) => new(left.Metres4 - right.Metres4);

    /// <summary>The same amount the other way.</summary>
    public static SecondMoment operator -(SecondMoment value) => new(-value.Metres4);

    /// <summary>So many times.</summary>
    public static SecondMoment operator *(SecondMoment value, double times) => new(value.Metres4 * times);

    /// <summary>So many times.</summary>
    public static SecondMoment operator *(double times, SecondMoment value) => new(value.Metres4 * times);

    /// <summary>An equal part.</summary>
    public static SecondMoment operator /(SecondMoment value, double parts) => new(value.Metres4 / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(SecondMoment left, SecondMoment right) => left.Metres4 / right.Metres4;

    /// <summary>Compares by size.</summary>
    public static bool operator <(SecondMoment left, SecondMoment right) => left.Metres4 < right.Metres4;

    /// <summary>Compares by size.</summary>
    public static bool operator >(SecondMoment left, SecondMoment right) => left.Metres4 > right.Metres4;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(SecondMoment left, SecondMoment right) => left.Metres4 <= right.Metres4;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(SecondMoment left, SecondMoment right) => left.Metres4 >= right.Metres4;

    /// <inheritdoc/>
    public int CompareTo(SecondMoment other) => Metres4.CompareTo(other.Metres4);
}
