using System.Globalization;

namespace Hoopwright.Quantities;

/// <summary>How a number was written.</summary>
internal enum NumberForm
{
    /// <summary>Digits alone.</summary>
    Whole,

    /// <summary>With a decimal point.</summary>
    Decimal,

    /// <summary>With a tape fraction.</summary>
    Fraction,
}

/// <summary>A number read from text without loss.</summary>
/// <param name="Value">The number; at most 24 digits, so that a unit factor of up to five digits keeps it exact.</param>
/// <param name="Form">How it was written.</param>
internal readonly record struct ExactNumber(decimal Value, NumberForm Form)
{
    /// <summary>
    /// The nearest double. The framework's cast divides two rounded doubles and can miss it by one place for long numbers;
    /// its parser cannot.
    /// </summary>
    internal static double ToDouble(decimal exact) =>
        double.Parse(exact.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
