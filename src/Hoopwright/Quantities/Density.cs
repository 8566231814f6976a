namespace Hoopwright.Quantities;

/// <summary>A mass per volume, held in kilograms a cubic metre.</summary>
public readonly record struct Density : IComparable<Density>
{
    private Density(double kilogramsPerCubicMetre) => KilogramsPerCubicMetre = kilogramsPerCubicMetre;

    /// <summary>The value in kilograms a cubic metre.</summary>
    public double KilogramsPerCubicMetre { get; }

    /// <summary>Nothing at all.</summary>
    public static Density Zero => default;

    /// <summary>From kilograms a cubic metre.</summary>
    public static Density FromKilogramsPerCubicMetre(double kilogramsPerCubicMetre) => new(kilogramsPerCubicMetre);

    /// <summary>From pounds a cubic foot: 0.45359237 kg over 0.028316846592 m³, NIST SP 811 (2008), B.8.</summary>
    public static Density FromPoundsPerCubicFoot(double poundsPerCubicFoot) => new(poundsPerCubicFoot * 0.45359237 / 0.028316846592);

    /// <summary>The value in pounds a cubic foot: 0.45359237 kg over 0.028316846592 m³, NIST SP 811 (2008), B.8.</summary>
    public double PoundsPerCubicFoot => KilogramsPerCubicMetre * 0.028316846592 / 0.45359237;

    /// <summary>Sum.</summary>
    public static Density operator +(Density left, Density right) => new(left.KilogramsPerCubicMetre + right.KilogramsPerCubicMetre);

    /// <summary>Difference.</summary>
    public static Density operator -(Density left, Density right) => new(left.KilogramsPerCubicMetre - right.KilogramsPerCubicMetre);

    /// <summary>The same amount the other way.</summary>
    public static Density operator -(Density value) => new(-value.KilogramsPerCubicMetre);

    /// <summary>So many times.</summary>
    public static Density operator *(Density value, double times) => new(value.KilogramsPerCubicMetre * times);

    /// <summary>So many times.</summary>
    public static Density operator *(double times, Density value) => new(value.KilogramsPerCubicMetre * times);

    /// <summary>An equal part.</summary>
    public static Density operator /(Density value, double parts) => new(value.KilogramsPerCubicMetre / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Density left, Density right) => left.KilogramsPerCubicMetre / right.KilogramsPerCubicMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Density left, Density right) => left.KilogramsPerCubicMetre < right.KilogramsPerCubicMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Density left, Density right) => left.KilogramsPerCubicMetre > right.KilogramsPerCubicMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Density left, Density right) => left.KilogramsPerCubicMetre <= right.KilogramsPerCubicMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Density left, Density right) => left.KilogramsPerCubicMetre >= right.KilogramsPerCubicMetre;

    /// <summary>The mass of a volume.</summary>
    public static Mass operator *(Density density, Volume volume) => Mass.FromKilograms(density.KilogramsPerCubicMetre * volume.CubicMetres);

    /// <inheritdoc/>
    public int CompareTo(Density other) => KilogramsPerCubicMetre.CompareTo(other.KilogramsPerCubicMetre);
}
