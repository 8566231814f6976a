namespace Hoopwright.Quantities;

/// <summary>A force along a line, held in newtons a metre.</summary>
public readonly record struct ForcePerLength : IComparable<ForcePerLength>
{
    private ForcePerLength(double newtonsPerMetre) => NewtonsPerMetre = newtonsPerMetre;

    /// <summary>The value in newtons a metre.</summary>
    public double NewtonsPerMetre { get; }

    /// <summary>Nothing at all.</summary>
    public static ForcePerLength Zero => default;

    /// <summary>From newtons a metre.</summary>
    public static ForcePerLength FromNewtonsPerMetre(double newtonsPerMetre) => new(newtonsPerMetre);

    /// <summary>From pounds-force a foot: NIST SP 811 (2008), B.8.</summary>
    public static ForcePerLength FromPoundsPerFoot(double poundsPerFoot) => new(poundsPerFoot * 4.4482216152605 / 0.3048);

    /// <summary>The value in pounds-force a foot: NIST SP 811 (2008), B.8.</summary>
    public double PoundsPerFoot => NewtonsPerMetre * 0.3048 / 4.4482216152605;

    /// <summary>Sum.</summary>
    public static ForcePerLength operator +(ForcePerLength left, ForcePerLength right) => new(left.NewtonsPerMetre + right.NewtonsPerMetre);

    /// <summary>Difference.</summary>
    public static ForcePerLength operator -(ForcePerLength left, ForcePerLength right) => new(left.NewtonsPerMetre - right.NewtonsPerMetre);

    /// <summary>The same amount the other way.</summary>
    public static ForcePerLength operator -(ForcePerLength value) => new(-value.NewtonsPerMetre);

    /// <summary>So many times.</summary>
    public static ForcePerLength operator *(ForcePerLength value, double times) => new(value.NewtonsPerMetre * times);

    /// <summary>So many times.</summary>
    public static ForcePerLength operator *(double times, ForcePerLength value) => new(value.NewtonsPerMetre * times);

    /// <summary>An equal part.</summary>
    public static ForcePerLength operator /(ForcePerLength value, double parts) => new(value.NewtonsPerMetre / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(ForcePerLength left, ForcePerLength right) => left.NewtonsPerMetre / right.NewtonsPerMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator <(ForcePerLength left, ForcePerLength right) => left.NewtonsPerMetre < right.NewtonsPerMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator >(ForcePerLength left, ForcePerLength right) => left.NewtonsPerMetre > right.NewtonsPerMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(ForcePerLength left, ForcePerLength right) => left.NewtonsPerMetre <= right.NewtonsPerMetre;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(ForcePerLength left, ForcePerLength right) => left.NewtonsPerMetre >= right.NewtonsPerMetre;

    /// <summary>The force of a run.</summary>
    public static Force operator *(ForcePerLength each, Length run) => Force.FromNewtons(each.NewtonsPerMetre * run.Metres);

    /// <inheritdoc/>
    public int CompareTo(ForcePerLength other) => NewtonsPerMetre.CompareTo(other.NewtonsPerMetre);
}
