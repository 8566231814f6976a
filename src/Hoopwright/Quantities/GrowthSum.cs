namespace Hoopwright.Quantities;

/// <summary>Warmth over a base summed over days, held in kelvin days.</summary>
public readonly record struct GrowthSum : IComparable<GrowthSum>
{
    private GrowthSum(double kelvinDays) => KelvinDays = kelvinDays;

    /// <summary>The value in kelvin days.</summary>
    public double KelvinDays { get; }

    /// <summary>Nothing at all.</summary>
    public static GrowthSum Zero => default;

    /// <summary>From kelvin days.</summary>
    public static GrowthSum FromKelvinDays(double kelvinDays) => new(kelvinDays);

    /// <summary>The value in Fahrenheit degree days. 1 K is 1.8 °F: NIST SP 811 (2008), B.8.</summary>
    public double FahrenheitDays => KelvinDays * 9 / 5;

    /// <summary>Compares by size.</summary>
    public static bool operator <(GrowthSum left, GrowthSum right) => left.KelvinDays < right.KelvinDays;

    /// <summary>Compares by size.</summary>
    public static bool operator >(GrowthSum left, GrowthSum right) => left.KelvinDays > right.KelvinDays;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(GrowthSum left, GrowthSum right) => left.KelvinDays <= right.KelvinDays;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(GrowthSum left, GrowthSum right) => left.KelvinDays >= right.KelvinDays;

    /// <inheritdoc/>
    public int CompareTo(GrowthSum other) => KelvinDays.CompareTo(other.KelvinDays);
}
