namespace Hoopwright.Quantities;

/// <summary>A difference of two temperatures, held in kelvins.</summary>
public readonly record struct TemperatureDifference : IComparable<TemperatureDifference>
{
    private TemperatureDifference(double kelvins) => Kelvins = kelvins;

    /// <summary>The value in kelvins.</summary>
    public double Kelvins { get; }

    /// <summary>Nothing at all.</summary>
    public static TemperatureDifference Zero => default;

    /// <summary>From kelvins.</summary>
    public static TemperatureDifference FromKelvins(double kelvins) => new(kelvins);

    /// <summary>The value in degrees Fahrenheit. 1 K is 1.8 °F: NIST SP 811 (2008), B.8.</summary>
    public double FahrenheitDegrees => Kelvins * 9 / 5;

    /// <summary>Compares by size.</summary>
    public static bool operator <(TemperatureDifference left, TemperatureDifference right) => left.Kelvins < right.Kelvins;

    /// <summary>Compares by size.</summary>
    public static bool operator >(TemperatureDifference left, TemperatureDifference right) => left.Kelvins > right.Kelvins;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(TemperatureDifference left, TemperatureDifference right) => left.Kelvins <= right.Kelvins;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(TemperatureDifference left, TemperatureDifference right) => left.Kelvins >= right.Kelvins;

    /// <inheritdoc/>
    public int CompareTo(TemperatureDifference other) => Kelvins.CompareTo(other.Kelvins);
}
