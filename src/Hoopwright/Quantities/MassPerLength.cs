namespace Hoopwright.Quantities;

/// <summary>A mass per length, held in kilograms a metre.</summary>
public readonly record struct MassPerLength : IComparable<MassPerLength>
{
    private MassPerLength(double kilogramsPerMetre) => KilogramsPerMetre = kilogramsPerMetre;

    /// <summary>The value in kilograms a metre.</summary>
    public double KilogramsPerMetre { get; }

    /// <summary>Nothing at all.</summary>
    public static MassPerLength Zero => default;

    /// <summary>From kilograms a metre.</summary>
    public static MassPerLength FromKilogramsPerMetre(double kilogramsPerMetre) => new(kilogramsPerMetre);

    /// <summary>From pounds a foot: NIST SP 811 (2008), B.8.</summary>
    public static MassPerLength FromPoundsPerFoot(double poundsPerFoot) => new(poundsPerFoot * 45_359_237 / 30_480_000);

    /// <summary>The value in pounds a foot: NIST SP 811 (2008), B.8.</summary>
    public double PoundsPerFoot => KilogramsPerMetre * 30_480_000 / 45_359_237;

    /// <summary>Sum.</summary>
    public static MassPerLength operator +(MassPerLength left, MassPerLength right) => new(left.KilogramsPerMetre + right.KilogramsPerMetre);

    /// <summary>Difference.</summary>
    public static MassPerLength operator -(MassPerLength left, MassPerLength right) => new(left.KilogramsPerMetre - right.KilogramsPerMetre);

    /// <summary>The same amount the other way.</summary>
    public static MassPerLength operator -(MassPerLength value) => new(-value.KilogramsPerMetre);

    /// <summary>So many times.</summary>
    public static MassPerLength operator *(MassPerLength value, double times) => new(value.KilogramsPerMetre * times);

    /// <summary>So many times.</summary>
    public static MassPerLength operator *(double times, MassPerLength value) => new(value.KilogramsPerMetre * times);

    /// <summary>An equal part.</summary>
    public static MassPerLength operator /(MassPerLength value, double parts) => new(value.KilogramsPerMetre / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(MassPerLength left, MassPerLength right) => left.KilogramsPerMetre / right.KilogramsPerMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator <(MassPerLength left, MassPerLength right) => left.KilogramsPerMetre < right.KilogramsPerMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator >(MassPerLength left, MassPerLength right) => left.KilogramsPerMetre > right.KilogramsPerMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(MassPerLength left, MassPerLength right) => left.KilogramsPerMetre <= right.KilogramsPerMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(MassPerLength left, MassPerLength right) => left.KilogramsPerMetre >= right.KilogramsPerMetre;

    /// <summary>The mass of a run.</summary>
    public static Mass operator *(MassPerLength each, Length run) => Mass.FromKilograms(each.KilogramsPerMetre * run.Metres);

    /// <inheritdoc/>
    public int CompareTo(MassPerLength other) => KilogramsPerMetre.CompareTo(other.KilogramsPerMetre);
}
