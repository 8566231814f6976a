namespace Hoopwright.Quantities;

/// <summary>Light that plants can use, summed over a time, held in moles of photons over a square metre.</summary>
public readonly record struct LightSum : IComparable<LightSum>
{
    private LightSum(double molesPerSquareMetre) => MolesPerSquareMetre = molesPerSquareMetre;

    /// <summary>The value in moles of photons over a square metre.</summary>
    public double MolesPerSquareMetre { get; }

    /// <summary>Nothing at all.</summary>
    public static LightSum Zero => default;

    /// <summary>From moles of photons over a square metre.</summary>
    public static LightSum FromMolesPerSquareMetre(double molesPerSquareMetre) => new(molesPerSquareMetre);

    /// <summary>Compares by size.</summary>
    public static bool operator <(LightSum left, LightSum right) => left.MolesPerSquareMetre < right.MolesPerSquareMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator >(LightSum left, LightSum right) => left.MolesPerSquareMetre > right.MolesPerSquareMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(LightSum left, LightSum right) => left.MolesPerSquareMetre <= right.MolesPerSquareMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(LightSum left, LightSum right) => left.MolesPerSquareMetre >= right.MolesPerSquareMetre;

    /// <inheritdoc/>
    public int CompareTo(LightSum other) => MolesPerSquareMetre.CompareTo(other.MolesPerSquareMetre);
}
