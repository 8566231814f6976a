namespace Hoopwright.Quantities;

/// <summary>A flow of air, held in cubic metres a second.</summary>
public readonly record struct AirFlow : IComparable<AirFlow>
{
    private AirFlow(double cubicMetresPerSecond) => CubicMetresPerSecond = cubicMetresPerSecond;

    /// <summary>The value in cubic metres a second.</summary>
    public double CubicMetresPerSecond { get; }

    /// <summary>Nothing at all.</summary>
    public static AirFlow Zero => default;

    /// <summary>From cubic metres a second.</summary>
    public static AirFlow FromCubicMetresPerSecond(double cubicMetresPerSecond) => new(cubicMetresPerSecond);

    /// <summary>From cubic feet a minute. 1 ft is exactly 0.3048 m: NIST SP 811 (2008), B.8.</summary>
    public static AirFlow FromCubicFeetPerMinute(double cubicFeetPerMinute) => new(cubicFeetPerMinute * 0.3048 * 0.3048 * 0.3048 / 60);

    /// <summary>The value in cubic feet a minute.</summary>
    public double CubicFeetPerMinute => CubicMetresPerSecond * 60 / (0.3048 * 0.3048 * 0.3048);

    /// <summary>Compares by size.</summary>
    public static bool operator <(AirFlow left, AirFlow right) => left.CubicMetresPerSecond < right.CubicMetresPerSecond;

    /// <summary>Compares by size.</summary>
    public static bool operator >(AirFlow left, AirFlow right) => left.CubicMetresPerSecond > right.CubicMetresPerSecond;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(AirFlow left, AirFlow right) => left.CubicMetresPerSecond <= right.CubicMetresPerSecond;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(AirFlow left, AirFlow right) => left.CubicMetresPerSecond >= right.CubicMetresPerSecond;

    /// <inheritdoc/>
    public int CompareTo(AirFlow other) => CubicMetresPerSecond.CompareTo(other.CubicMetresPerSecond);
}
