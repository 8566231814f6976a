namespace Hoopwright.Quantities;

/// <summary>A power, such as that of a heater, held in watts.</summary>
public readonly record struct Power : IComparable<Power>
{
    private Power(double watts) => Watts = watts;

    /// <summary>The value in watts.</summary>
    public double Watts { get; }

    /// <summary>Nothing at all.</summary>
    public static Power Zero => default;

    /// <summary>From watts.</summary>
    public static Power FromWatts(double watts) => new(watts);

    /// <summary>From British thermal units an hour. 1 Btu is 1055.05585262 J (International Table): NIST SP 811 (2008), B.8.</summary>
    public static Power FromBtuPerHour(double btuPerHour) => new(btuPerHour * 1055.05585262 / 3600);

    /// <summary>The value in British thermal units an hour.</summary>
    public double BtuPerHour => Watts * 3600 / 1055.05585262;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Power left, Power right) => left.Watts < right.Watts;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Power left, Power right) => left.Watts > right.Watts;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Power left, Power right) => left.Watts <= right.Watts;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Power left, Power right) => left.Watts >= right.Watts;

    /// <inheritdoc/>
    public int CompareTo(Power other) => Watts.CompareTo(other.Watts);
}
