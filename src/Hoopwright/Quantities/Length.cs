namespace Hoopwright.Quantities;

/// <summary>A length, held in metres. Equal lengths are equal however they were written.</summary>
public readonly record struct Length : IComparable<Length>
{
    private Length(double metres) => Metres = metres;

    /// <summary>The value in metres.</summary>
    public double Metres { get; }

    /// <summary>Nothing at all.</summary>
    public static Length Zero => default;

    /// <summary>From metres.</summary>
    public static Length FromMetres(double metres) => new(metres);

    /// <summary>From millimetres.</summary>
    public static Length FromMillimetres(double millimetres) => new(millimetres / 1000);

    /// <summary>The value in millimetres.</summary>
    public double Millimetres => Metres * 1000;

    /// <summary>From centimetres.</summary>
    public static Length FromCentimetres(double centimetres) => new(centimetres / 100);

    /// <summary>The value in centimetres.</summary>
    public double Centimetres => Metres * 100;

    /// <summary>From inches. 1 in is exactly 0.0254 m: NIST SP 811 (2008), B.8. 254 times a tape fraction is exact, so only the division rounds.</summary>
    public static Length FromInches(double inches) => new(inches * 254 / 10_000);

    /// <summary>The value in inches. 1 in is exactly 0.0254 m: NIST SP 811 (2008), B.8. 254 times a tape fraction is exact, so only the division rounds.</summary>
    public double Inches => Metres * 10_000 / 254;

    /// <summary>From feet. 1 ft is exactly 0.3048 m: NIST SP 811 (2008), B.8.</summary>
    public static Length FromFeet(double feet) => new(feet * 3048 / 10_000);

    /// <summary>The value in feet. 1 ft is exactly 0.3048 m: NIST SP 811 (2008), B.8.</summary>
    public double Feet => Metres * 10_000 / 3048;

    /// <summary>Sum.</summary>
    public static Length operator +(Length left, Length right) => new(left.Metres + right.Metres);

    /// <summary>Difference.</summary>
    public static Length operator -(Length left, Length right) => new(left.Metres - right.Metres);

    /// <summary>The same amount the other way.</summary>
    public static Length operator -(Length value) => new(-value.Metres);

    /// <summary>So many times.</summary>
    public static Length operator *(Length value, double times) => new(value.Metres * times);

    /// <summary>So many times.</summary>
    public static Length operator *(double times, Length value) => new(value.Metres * times);

    /// <summary>An equal part.</summary>
    public static Length operator /(Length value, double parts) => new(value.Metres / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Length left, Length right) => left.Metres / right.Metres;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Length left, Length right) => left.Metres < right.Metres;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Length left, Length right) => left.Metres > right.Metres;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Length left, Length right) => left.Metres <= right.Metres;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Length left, Length right) => left.Metres >= right.Metres;

    /// <summary>An area.</summary>
    public static Area operator *(Length left, Length right) => Area.FromSquareMetres(left.Metres * right.Metres);

    /// <summary>The longer of two.</summary>
    public static Length Max(Length left, Length right) => left.Metres >= right.Metres ? left : right;

    /// <summary>The shorter of two.</summary>
    public static Length Min(Length left, Length right) => left.Metres <= right.Metres ? left : right;

    /// <summary>The length without its sign.</summary>
    public Length Abs() => new(Math.Abs(Metres));

    /// <inheritdoc/>
    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);
}
