namespace Hoopwright.Quantities;

/// <summary>A moment or a torque, held in newton metres.</summary>
public readonly record struct Moment : IComparable<Moment>
{
    private Moment(double newtonMetres) => NewtonMetres = newtonMetres;

    /// <summary>The value in newton metres.</summary>
    public double NewtonMetres { get; }

    /// <summary>Nothing at all.</summary>
    public static Moment Zero => default;

    /// <summary>From newton metres.</summary>
    public static Moment FromNewtonMetres(double newtonMetres) => new(newtonMetres);

    /// <summary>From kilonewton metres.</summary>
    public static Moment FromKilonewtonMetres(double kilonewtonMetres) => new(kilonewtonMetres * 1000);

    /// <summary>The value in kilonewton metres.</summary>
    public double KilonewtonMetres => NewtonMetres / 1000;

    /// <summary>From pound-force feet: NIST SP 811 (2008), B.8.</summary>
    public static Moment FromPoundFeet(double poundFeet) => new(poundFeet * (4.4482216152605 * 0.3048));

    /// <summary>The value in pound-force feet: NIST SP 811 (2008), B.8.</summary>
    public double PoundFeet => NewtonMetres / (4.4482216152605 * 0.3048);

    /// <summary>From pound-force inches: NIST SP 811 (2008), B.8.</summary>
    public static Moment FromPoundInches(double poundInches) => new(poundInches * (4.4482216152605 * 0.0254));

    /// <summary>The value in pound-force inches: NIST SP 811 (2008), B.8.</summary>
    public double PoundInches => NewtonMetres / (4.4482216152605 * 0.0254);

    /// <summary>Sum.</summary>
    public static Moment operator +(Moment left, Moment right) => new(left.NewtonMetres + right.NewtonMetres);

    /// <summary>Difference.</summary>
    public static Moment operator -(Moment left, Moment right) => new(left.NewtonMetres - right.NewtonMetres);

    /// <summary>The same amount the other way.</summary>
    public static Moment operator -(Moment value) => new(-value.NewtonMetres);

    /// <summary>So many times.</summary>
    public static Moment operator *(Moment value, double times) => new(value.NewtonMetres * times);

    /// <summary>So many times.</summary>
    public static Moment operator *(double times, Moment value) => new(value.NewtonMetres * times);

    /// <summary>An equal part.</summary>
    public static Moment operator /(Moment value, double parts) => new(value.NewtonMetres / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Moment left, Moment right) => left.NewtonMetres / right.NewtonMetres;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Moment left, Moment right) => left.NewtonMetres < right.NewtonMetres;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Moment left, Moment right) => left.NewtonMetres > right.NewtonMetres;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Moment left, Moment right) => left.NewtonMetres <= right.NewtonMetres;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Moment left, Moment right) => left.NewtonMetres >= right.NewtonMetres;

    /// <inheritdoc/>
    public int CompareTo(Moment other) => NewtonMetres.CompareTo(other.NewtonMetres);
}
