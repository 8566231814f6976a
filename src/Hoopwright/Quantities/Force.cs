namespace Hoopwright.Quantities;

/// <summary>A force, held in newtons.</summary>
public readonly record struct Force : IComparable<Force>
{
    private Force(double newtons) => Newtons = newtons;

    /// <summary>The value in newtons.</summary>
    public double Newtons { get; }

    /// <summary>Nothing at all.</summary>
    public static Force Zero => default;

    /// <summary>From newtons.</summary>
    public static Force FromNewtons(double newtons) => new(newtons);

    /// <summary>From kilonewtons.</summary>
    public static Force FromKilonewtons(double kilonewtons) => new(kilonewtons * 1000);

    /// <summary>The value in kilonewtons.</summary>
    public double Kilonewtons => Newtons / 1000;

    /// <summary>From pounds-force: 1 lbf is exactly 4.4482216152605 N, NIST SP 811 (2008), B.8.</summary>
    public static Force FromPounds(double pounds) => new(pounds * 4.4482216152605);

    /// <summary>The value in pounds-force: 1 lbf is exactly 4.4482216152605 N, NIST SP 811 (2008), B.8.</summary>
    public double Pounds => Newtons / 4.4482216152605;

    /// <summary>Sum.</summary>
    public static Force operator +(Force left, Force right) => new(left.Newtons + right.Newtons);

    /// <summary>Difference.</summary>
    public static Force operator -(Force left, Force right) => new(left.Newtons - right.Newtons);

    /// <summary>The same amount the other way.</summary>
    public static Force operator -(Force value) => new(-value.Newtons);

    /// <summary>So many times.</summary>
    public static Force operator *(Force value, double times) => new(value.Newtons * times);

    /// <summary>So many times.</summary>
    public static Force operator *(double times, Force value) => new(value.Newtons * times);

    /// <summary>An equal part.</summary>
    public static Force operator /(Force value, double parts) => new(value.Newtons / parts);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Force left, Force right) => left.Newtons / right.Newtons;

    /// <summary>Compares by size.</summary>
    public static bool operator <(Force left, Force right) => left.Newtons < right.Newtons;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Force left, Force right) => left.Newtons > right.Newtons;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Force left, Force right) => left.Newtons <= right.Newtons;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Force left, Force right) => left.Newtons >= right.Newtons;

    /// <summary>A moment about a point so far away.</summary>
    public static Moment operator *(Force force, Length arm) => Moment.FromNewtonMetres(force.Newtons * arm.Metres);

    /// <summary>The pressure of a force spread over an area.</summary>
    public static Pressure operator /(Force force, Area area) => Pressure.FromPascals(force.Newtons / area.SquareMetres);

    /// <inheritdoc/>
    public int CompareTo(Force other) => Newtons.CompareTo(other.Newtons);
}
