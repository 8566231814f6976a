namespace Hoopwright.Layout;

/// <summary>Where the layout branches on a computed number, this is how near counts as equal, and why.</summary>
internal static class Tolerances
{
    /// <summary>A quotient of two typed lengths is a whole number within this: doubles leave about 1e-15 of it.</summary>
    public const double WholeNumber = 1e-9;

    /// <summary>Two places are the same within this, metres: a hundredth of the thinnest mark a tape has.</summary>
    public const double PlaceM = 1e-6;
}
