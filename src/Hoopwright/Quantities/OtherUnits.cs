using System.Globalization;

namespace Hoopwright.Quantities;

/// <summary>The same quantity written in the other system of units, for someone who has a tape of the other kind.</summary>
public static class OtherUnits
{
    /// <summary>
    /// Writes a quantity in the other system: feet and inches become metres or millimetres, pounds become newtons, and back.
    /// Metric lengths are written to a tenth of a millimetre, inches as a fraction where the tape has it and as a decimal otherwise.
    /// </summary>
    /// <param name="text">The quantity as typed, such as "26 ft" or "1.4 kPa".</param>
    /// <returns>The text in the other system; null when the text is no quantity with a unit, or one whose unit both systems share.</returns>
    public static string? Of(string text)
    {
        bool isMetric = IsMetric(text);
        if (QuantityText.ReadLength(text) is { IsRead: true } length) return isMetric ? Inches(length.Value) : Metres(length.Value);
        if (QuantityText.ReadPressure(text) is { IsRead: true } pressure)
        {
            // Steel is spoken of in thousands of pounds per square inch, loads in pounds per square foot.
            bool isStress = pressure.Value.Pascals >= 1e6;
            if (isMetric) return isStress ? Number(pressure.Value.PoundsPerSquareInch / 1000, 2) + " ksi" : Number(pressure.Value.PoundsPerSquareFoot, 2) + " psf";
            return isStress ? Number(pressure.Value.Pascals / 1e6, 1) + " MPa" : Number(pressure.Value.Kilopascals, 4) + " kPa";
        }
        if (QuantityText.ReadSpeed(text) is { IsRead: true } speed) return isMetric ? Number(speed.Value.MilesPerHour, 1) + " mph" : Number(speed.Value.MetresPerSecond, 2) + " m/s";
        if (QuantityText.ReadTemperature(text) is { IsRead: true } temperature)
            return text.TrimEnd().EndsWith('C') || text.Contains("els", StringComparison.OrdinalIgnoreCase)
                ? Number(temperature.Value.Fahrenheit, 1) + " °F" : Number(temperature.Value.Celsius, 1) + " °C";
        if (QuantityText.ReadForcePerLength(text) is { IsRead: true } line) return isMetric ? Number(line.Value.PoundsPerFoot, 2) + " lb/ft" : Number(line.Value.NewtonsPerMetre, 1) + " N/m";
        if (QuantityText.ReadForce(text) is { IsRead: true } force && text.TrimEnd().EndsWith('N')) return Number(force.Value.Pounds, 1) + " lb";
        if (QuantityText.ReadMass(text) is { IsRead: true } mass) return isMetric ? Number(mass.Value.Pounds, 1) + " lb" : Number(mass.Value.Kilograms, 2) + " kg";
        return null;
    }

    private static bool IsMetric(string text)
    {
        string unit = text.TrimEnd().TrimStart("0123456789./-+½¼¾⅛⅜⅝⅞ ".ToCharArray());
        return unit.StartsWith('m') && unit is not "mph" && !unit.StartsWith("mi", StringComparison.Ordinal)
            || unit.StartsWith("cm", StringComparison.Ordinal) || unit.EndsWith("Pa", StringComparison.Ordinal) || unit.StartsWith('k') && unit is not "ksi" && !unit.StartsWith("kip", StringComparison.Ordinal)
            || unit.StartsWith('N');
    }

    private static string Metres(Length length) => Math.Abs(length.Metres) < 0.5 ? Number(length.Metres * 1000, 1) + " mm" : Number(length.Metres, 4) + " m";

    private static string Inches(Length length)
    {
        double sixtyFourths = length.Inches * 64;
        if (Math.Abs(sixtyFourths - Math.Round(sixtyFourths)) < 1e-6) return TapeText.FeetAndInches(length, 64);
        return Math.Abs(length.Inches) < 12 ? Number(length.Inches, 3) + " in" : Number(length.Inches / 12, 4) + " ft";
    }

    private static string Number(double value, int decimals) => value.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
}
