namespace Hoopwright.Quantities;

/// <summary>A pressure or a load on an area, held in pascals.</summary>
public readonly record struct Pressure : IComparable<Pressure>
{
    private Pressure(double pascals) => Pascals = pascals;

    /// <summary>The value in pascals.</summary>
    public double Pascals { get; }

    /// <summary>Nothing at all.</summary>
    public static Pressure Zero => default;

    /// <summary>From pascals.</summary>
    public static Pressure FromPascals(double pascals) => new(pascals);

    /// <summary>From kilopascals.</summary>
    public static Pressure FromKilopascals(double kilopascals) => new(kilopascals * 1000);

    /// <summary>The value in kilopascals.</summary>
    public double Kilopascals => Pascals / 1000;

    /// <summary>From pounds-force a square foot: pound-force 4.4482216152605 N over 0.09290304 m², NIST SP 811 (2008), B.8.</summary>
    public static Pressure FromPoundsPerSquareFoot(double poundsPerSquareFoot) => new(poundsPerSquareFoot * 4.4482216152605 / 0.09290304);

    /// <summary>The value in pounds-force a square foot: pound-force 4.4482216152605 N over 0.09290304 m², NIST SP 811 (2008), B.8.</summary>
    public double PoundsPerSquareFoot => Pascals * 0.09290304 / 4.4482216152605;

    /// <summary>From pounds-force a square inch: NIST SP 811 (2008), B.8.</summary>
    public static Pressure FromPoundsPerSquareInch(double poundsPerSquareInch) => new(poundsPerSquareInch * 4.4482216152605 / 0.00064516);

    /// <summary>The value in pounds-force a square inch: NIST SP 811 (2008), B.8.</summary>
    public double PoundsPerSquareInch => Pascals * 0.00064516 / 4.4482216152605;

    /// <summary>Sum.</summary>
    public static Pressure operator +(Pressure left, Pressure right) => new(left.Pascals + right.Pascals);

    /// <summary>Difference.</summary>
    public static Pressure operator -(Pressure left, Pressure right) => new(left.Pascals - right.Pascals);

    /// <summary>The same amount the other way.</summary>
    public static Pressure operator -(Pressure value) => new(-value.Pascals);

    /// <summary>So many times.</summary>
    public static Pressure operator *(Pressure value, double times) => new(value.Pascals * times);

    /// <summary>So many times.</summary>
    public static Pressure operator *(double times, Pressure value) => new(value.Pascals * times);

    /// <summary>An equal part.</summary>
    public static Pressure operator /(Pressure value, double parts) => new(value.Pascals / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Pressure left, Pressure right) => left.Pascals / right.Pascals;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Pressure left, Pressure right) => left.Pascals < right.Pascals;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Pressure left, Pressure right) => left.Pascals > right.Pascals;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Pressure left, Pressure right) => left.Pascals <= right.Pascals;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Pressure left, Pressure right) => left.Pascals >= right.Pascals;

    /// <inheritdoc/>
    public int CompareTo(Pressure other) => Pascals.CompareTo(other.Pascals);
}
