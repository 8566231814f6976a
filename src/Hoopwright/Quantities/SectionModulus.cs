namespace Hoopwright.Quantities;

/// <summary>The modulus of a section, held in metres cubed.</summary>
public readonly record struct SectionModulus : IComparable<SectionModulus>
{
    private SectionModulus(double metres3) => Metres3 = metres3;

    /// <summary>The value in metres cubed.</summary>
    public double Metres3 { get; }

    /// <summary>Nothing at all.</summary>
    public static SectionModulus Zero => default;

    /// <summary>From metres cubed.</summary>
    public static SectionModulus FromMetres3(double metres3) => new(metres3);

    /// <summary>From inches cubed.</summary>
    public static SectionModulus FromInches3(double inches3) => new(inches3 * (0.0254 * 0.0254 * 0.0254));

    /// <summary>The value in inches cubed.</summary>
    public double Inches3 => Metres3 / (0.0254 * 0.0254 * 0.0254);

    /// <summary>Sum.</summary>
    public static SectionModulus operator +(SectionModulus left, SectionModulus right) => new(left.Metres3 + right.Metres3);

    /// <summary>Difference.</summary>
    public static SectionModulus operator -(SectionModulus left, SectionModulus right) => new(left.Metres3 - right.Metres3);

    /// <summary>The same amount the other way.</summary>
    public static SectionModulus operator -(SectionModulus value) => new(-value.Metres3);

    /// <summary>So many times.</summary>
    public static SectionModulus operator *(SectionModulus value, double times) => new(value.Metres3 * times);

    /// <summary>So many times.</summary>
    public static SectionModulus operator *(double times, SectionModulus value) => new(value.Metres3 * times);

    /// <summary>An equal part.</summary>
    public static SectionModulus operator /(SectionModulus value, double parts) => new(value.Metres3 / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(SectionModulus left, SectionModulus right) => left.Metres3 / right.Metres3;

    /// <summary>Compares by size.</summary>
    public static bool operator <(SectionModulus left, SectionModulus right) => left.Metres3 < right.Metres3;

    /// <summary>Compares by size.</summary>
    public static bool operator >(SectionModulus left, SectionModulus right) => left.Metres3 > right.Metres3;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(SectionModulus left, SectionModulus right) => left.Metres3 <= right.Metres3;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(SectionModulus left, SectionModulus right) => left.Metres3 >= right.Metres3;

    /// <inheritdoc/>
    public int CompareTo(SectionModulus other) => Metres3.CompareTo(other.Metres3);
}
