namespace Hoopwright.Strength.Models;

/// <summary>
/// Bows and loads that mirror each other are used alike but for the last digits that a solver leaves, which are not the same on every
/// machine. Which of them is named must not hang on those: the first one is.
/// </summary>
internal static class Ties
{
    // Balance is iterated to 1e-8 of the greatest force; near buckling a use of strength carries a hundred times that.
    private const double Share = 1e-6;

    /// <summary>True when a use of strength is greater than another by more than the solver's last digits.</summary>
    internal static bool Exceeds(double use, double other) => use > other + (Share * Math.Abs(other));

    /// <summary>A value to sort and choose by: its first six digits.</summary>
    internal static double Key(double value)
    {
        if (value == 0 || !double.IsFinite(value)) return value;
        double scale = Math.Pow(10, 5 - Math.Floor(Math.Log10(Math.Abs(value))));
        return Math.Round(value * scale) / scale;
    }
}
