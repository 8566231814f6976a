namespace Hoopwright.Quantities;

/// <summary>A speed, held in metres a second.</summary>
public readonly record struct Speed : IComparable<Speed>
{
    private Speed(double metresPerSecond) => MetresPerSecond = metresPerSecond;

    /// <summary>The value in metres a second.</summary>
    public double MetresPerSecond { get; }

    /// <summary>Nothing at all.</summary>
    public static Speed Zero => default;

    /// <summary>From metres a second.</summary>
    public static Speed FromMetresPerSecond(double metresPerSecond) => new(metresPerSecond);

    /// <summary>From miles an hour. 1 mi is exactly 1609.344 m: NIST SP 811 (2008), B.8.</summary>
    public static Speed FromMilesPerHour(double milesPerHour) => new(milesPerHour * 1_609_344 / 3_600_000);

    /// <summary>The value in miles an hour. 1 mi is exactly 1609.344 m: NIST SP 811 (2008), B.8.</summary>
    public double MilesPerHour => MetresPerSecond * 3_600_000 / 1_609_344;

    /// <summary>From kilometres an hour.</summary>
    public static Speed FromKilometresPerHour(double kilometresPerHour) => new(kilometresPerHour / 3.6);

    /// <summary>The value in kilometres an hour.</summary>
    public double KilometresPerHour => MetresPerSecond * 3.6;

    /// <summary>Sum.</summary>
    public static Speed operator +(Speed left, Speed right) => new(left.MetresPerSecond + right.MetresPerSecond);

    /// <summary>Difference.</summary>
    public static Speed operator -(Speed left, Speed right) => new(left.MetresPerSecond - right.MetresPerSecond);

    /// <summary>The same amount the other way.</summary>
    public static Speed operator -(Speed value) => new(-value.MetresPerSecond);

    /// <summary>So many times.</summary>
    public static Speed operator *(Speed value, double times) => new(value.MetresPerSecond * times);

    /// <summary>So many times.</summary>
    public static Speed operator *(double times, Speed value) => new(value.MetresPerSecond * times);

    /// <summary>An equal part.</summary>
    public static Speed operator /(Speed value, double parts) => new(value.MetresPerSecond / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Speed left, Speed right) => left.MetresPerSecond / right.MetresPerSecond;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Speed left, Speed right) => left.MetresPerSecond < right.MetresPerSecond;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Speed left, Speed right) => left.MetresPerSecond > right.MetresPerSecond;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Speed left, Speed right) => left.MetresPerSecond <= right.MetresPerSecond;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Speed left, Speed right) => left.MetresPerSecond >= right.MetresPerSecond;

    /// <inheritdoc/>
    public int CompareTo(Speed other) => MetresPerSecond.CompareTo(other.MetresPerSecond);
}
