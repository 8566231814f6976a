namespace Hoopwright.Quantities;

/// <summary>A volume, held in cubic metres.</summary>
public readonly record struct Volume : IComparable<Volume>
{
    private Volume(double cubicMetres) => CubicMetres = cubicMetres;

    /// <summary>The value in cubic metres.</summary>
    public double CubicMetres { get; }

    /// <summary>Nothing at all.</summary>
    public static Volume Zero => default;

    /// <summary>From cubic metres.</summary>
    public static Volume FromCubicMetres(double cubicMetres) => new(cubicMetres);

    /// <summary>From cubic feet. 1 ft is exactly 0.3048 m: NIST SP 811 (2008), B.8.</summary>
    public static Volume FromCubicFeet(double cubicFeet) => new(cubicFeet * 28_316_846_592 / 1e12);

    /// <summary>The value in cubic feet. 1 ft is exactly 0.3048 m: NIST SP 811 (2008), B.8.</summary>
    public double CubicFeet => CubicMetres * 1e12 / 28_316_846_592;

    /// <summary>From litres.</summary>
    public static Volume FromLitres(double litres) => new(litres / 1000);

    /// <summary>The value in litres.</summary>
    public double Litres => CubicMetres * 1000;

    /// <summary>Sum.</summary>
    public static Volume operator +(Volume left, Volume right) => new(left.CubicMetres + right.CubicMetres);

    /// <summary>Difference.</summary>
    public static Volume operator -(Volume left, Volume right) => new(left.CubicMetres - right.CubicMetres);

    /// <summary>The same amount the other way.</summary>
    public static Volume operator -(Volume value) => new(-value.CubicMetres);

    /// <summary>So many times.</summary>
    public static Volume operator *(Volume value, double times) => new(value.CubicMetres * times);

    /// <summary>So many times.</summary>
    public static Volume operator *(double times, Volume value) => new(value.CubicMetres * times);

    /// <summary>An equal part.</summary>
    public static Volume operator /(Volume value, double parts) => new(value.CubicMetres / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Volume left, Volume right) => left.CubicMetres / right.CubicMetres;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Volume left, Volume right) => left.CubicMetres < right.CubicMetres;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Volume left, Volume right) => left.CubicMetres > right.CubicMetres;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Volume left, Volume right) => left.CubicMetres <= right.CubicMetres;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Volume left, Volume right) => left.CubicMetres >= right.CubicMetres;

    /// <inheritdoc/>
    public int CompareTo(Volume other) => CubicMetres.CompareTo(other.CubicMetres);
}
