namespace Hoopwright.Quantities;

/// <summary>A mass, held in kilograms.</summary>
public readonly record struct Mass : IComparable<Mass>
{
    private Mass(double kilograms) => Kilograms = kilograms;

    /// <summary>The value in kilograms.</summary>
    public double Kilograms { get; }

    /// <summary>Nothing at all.</summary>
    public static Mass Zero => default;

    /// <summary>From kilograms.</summary>
    public static Mass FromKilograms(double kilograms) => new(kilograms);

    /// <summary>From pounds. 1 lb is exactly 0.45359237 kg: NIST SP 811 (2008), B.8.</summary>
    public static Mass FromPounds(double pounds) => new(pounds * 45_359_237 / 100_000_000);

    /// <summary>The value in pounds. 1 lb is exactly 0.45359237 kg: NIST SP 811 (2008), B.8.</summary>
    public double Pounds => Kilograms * 100_000_000 / 45_359_237;

    /// <summary>Sum.</summary>
    public static Mass operator +(Mass left, Mass right) => new(left.Kilograms + right.Kilograms);

    /// <summary>Difference.</summary>
    public static Mass operator -(Mass left, Mass right) => new(left.Kilograms - right.Kilograms);

    /// <summary>The same amount the other way.</summary>
    public static Mass operator -(Mass value) => new(-value.Kilograms);

    /// <summary>So many times.</summary>
    public static Mass operator *(Mass value, double times) => new(value.Kilograms * times);

    /// <summary>So many times.</summary>
    public static Mass operator *(double times, Mass value) => new(value.Kilograms * times);

    /// <summary>An equal part.</summary>
    public static Mass operator /(Mass value, double parts) => new(value.Kilograms / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Mass left, Mass right) => left.Kilograms / right.Kilograms;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Mass left, Mass right) => left.Kilograms < right.Kilograms;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Mass left, Mass right) => left.Kilograms > right.Kilograms;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Mass left, Mass right) => left.Kilograms <= right.Kilograms;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Mass left, Mass right) => left.Kilograms >= right.Kilograms;

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);
}
