namespace Hoopwright.Quantities;

/// <summary>A pure number, such as a slope, a waste allowance or a factor. 0.05 is five in a hundred.</summary>
public readonly record struct Ratio : IComparable<Ratio>
{
    private Ratio(double value) => Value = value;

    /// <summary>The number itself.</summary>
    public double Value { get; }

    /// <summary>Nothing at all.</summary>
    public static Ratio Zero => default;

    /// <summary>From the number itself.</summary>
    public static Ratio FromValue(double value) => new(value);

    /// <summary>From so many in a hundred.</summary>
    public static Ratio FromPercent(double percent) => new(percent / 100);

    /// <summary>The number as so many in a hundred.</summary>
    public double Percent => Value * 100;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Ratio left, Ratio right) => left.Value < right.Value;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Ratio left, Ratio right) => left.Value > right.Value;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Ratio left, Ratio right) => left.Value <= right.Value;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Ratio left, Ratio right) => left.Value >= right.Value;

    /// <inheritdoc/>
    public int CompareTo(Ratio other) => Value.CompareTo(other.Value);
}
