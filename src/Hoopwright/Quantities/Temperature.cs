namespace Hoopwright.Quantities;

/// <summary>A temperature, held in kelvins.</summary>
public readonly record struct Temperature : IComparable<Temperature>
{
    private Temperature(double kelvins) => Kelvins = kelvins;

    /// <summary>The value in kelvins.</summary>
    public double Kelvins { get; }

    /// <summary>Nothing at all.</summary>
    public static Temperature Zero => default;

    /// <summary>From kelvins.</summary>
    public static Temperature FromKelvins(double kelvins) => new(kelvins);

    /// <summary>From degrees Celsius. 0 °C is 273.15 K: NIST SP 811 (2008), B.8.</summary>
    public static Temperature FromCelsius(double celsius) => new(celsius + 273.15);

    /// <summary>The value in degrees Celsius. 0 °C is 273.15 K: NIST SP 811 (2008), B.8.</summary>
    public double Celsius => Kelvins - 273.15;

    /// <summary>From degrees Fahrenheit: NIST SP 811 (2008), B.8.</summary>
    public static Temperature FromFahrenheit(double fahrenheit) => new(((fahrenheit - 32) * 5 / 9) + 273.15);

    /// <summary>The value in degrees Fahrenheit: NIST SP 811 (2008), B.8.</summary>
    public double Fahrenheit => ((Kelvins - 273.15) * 9 / 5) + 32;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Temperature left, Temperature right) => left.Kelvins < right.Kelvins;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Temperature left, Temperature right) => left.Kelvins > right.Kelvins;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Temperature left, Temperature right) => left.Kelvins <= right.Kelvins;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Temperature left, Temperature right) => left.Kelvins >= right.Kelvins;

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Kelvins.CompareTo(other.Kelvins);
}
