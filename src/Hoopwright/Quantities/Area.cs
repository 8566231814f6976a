namespace Hoopwright.Quantities;

/// <summary>An area, held in square metres.</summary>
public readonly record struct Area : IComparable<Area>
{
    private Area(double squareMetres) => SquareMetres = squareMetres;

    /// <summary>The value in square metres.</summary>
    public double SquareMetres { get; }

    /// <summary>Nothing at all.</summary>
    public static Area Zero => default;

    /// <summary>From square metres.</summary>
    public static Area FromSquareMetres(double squareMetres) => new(squareMetres);

    /// <summary>From square feet. 1 ft² is exactly 0.09290304 m²: NIST SP 811 (2008), B.8.</summary>
    public static Area FromSquareFeet(double squareFeet) => new(squareFeet * 9_290_304 / 100_000_000);

    /// <summary>The value in square feet. 1 ft² is exactly 0.09290304 m²: NIST SP 811 (2008), B.8.</summary>
    public double SquareFeet => SquareMetres * 100_000_000 / 9_290_304;

    /// <summary>From square inches. 1 in² is exactly 6.4516e-4 m²: NIST SP 811 (2008), B.8.</summary>
    public static Area FromSquareInches(double squareInches) => new(squareInches * 64_516 / 100_000_000);

    /// <summary>The value in square inches. 1 in² is exactly 6.4516e-4 m²: NIST SP 811 (2008), B.8.</summary>
    public double SquareInches => SquareMetres * 100_000_000 / 64_516;

    /// <summary>Sum.</summary>
    public static Area operator +(Area left, Area right) => new(left.SquareMetres + right.SquareMetres);

    /// <summary>Difference.</summary>
    public static Area operator -(Area left, Area right) => new(left.SquareMetres - right.SquareMetres);

    /// <summary>The same amount the other way.</summary>
    public static Area operator -(Area value) => new(-value.SquareMetres);

    /// <summary>So many times.</summary>
    public static Area operator *(Area value, double times) => new(value.SquareMetres * times);

    /// <summary>So many times.</summary>
    public static Area operator *(double times, Area value) => new(value.SquareMetres * times);

    /// <summary>An equal part.</summary>
    public static Area operator /(Area value, double parts) => new(value.SquareMetres / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Area left, Area right) => left.SquareMetres / right.SquareMetres;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Area left, Area right) => left.SquareMetres < right.SquareMetres;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Area left, Area right) => left.SquareMetres > right.SquareMetres;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Area left, Area right) => left.SquareMetres <= right.SquareMetres;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Area left, Area right) => left.SquareMetres >= right.SquareMetres;

    /// <summary>A volume.</summary>
    public static Volume operator *(Area area, Length length) => Volume.FromCubicMetres(area.SquareMetres * length.Metres);

    /// <inheritdoc/>
    public int CompareTo(Area other) => SquareMetres.CompareTo(other.SquareMetres);
}
