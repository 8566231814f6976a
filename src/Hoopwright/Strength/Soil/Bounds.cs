namespace Hoopwright.Strength.Soil;

/// <summary>A value known only between two ends.</summary>
/// <param name="Least">Lower end.</param>
/// <param name="Most">Upper end; at least the lower.</param>
internal readonly record struct Bounds(double Least, double Most)
{
    /// <summary>Both ends added.</summary>
    public static Bounds operator +(Bounds left, Bounds right) => new(left.Least + right.Least, left.Most + right.Most);

    /// <summary>Both ends times a factor of 0 or more.</summary>
    public static Bounds operator *(Bounds value, double times) => new(value.Least * times, value.Most * times);
}
