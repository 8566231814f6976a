using System.Text;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>The kinds of quantities that stand in a plan.</summary>
internal static class PlanQuantities
{
    private const string Number = @"^[^,]*[0-9½¼¾⅛⅜⅝⅞][^,]*";

    private static readonly string[] LengthUnits =
        ["ft", "foot", "feet", "in", "inch", "inches", "m", "metre", "metres", "meter", "meters", "cm", "mm", "['\"`´‘’“”‟′″]"];

    /// <summary>Any length.</summary>
    public static QuantityKind<Length> Length { get; } = new("a length", QuantityText.ReadLength, NumberWith(LengthUnits));

    /// <summary>The wall of a tube, which may be a gauge.</summary>
    public static QuantityKind<Length> Wall { get; } = new(
        "the wall of a tube", ReadWall, NumberWith([.. LengthUnits, "ga", "gauge", "gage", "bwg"]));

    /// <summary>The thickness of film, which may be in thousandths of an inch.</summary>
    public static QuantityKind<Length> FilmThickness { get; } = new(
        "a film thickness", QuantityText.ReadFilmThickness, NumberWith("mil", "mils", "[µμ]m", "um", "micron", "microns", "mm", "in", "[\"”″]"));

    /// <summary>A direction on the compass.</summary>
    public static QuantityKind<Angle> Bearing { get; } = new(
        "a direction", QuantityText.ReadBearing,
        @"^\s*(?:[NESWnesw]{1,3}|[^,]*[0-9][^,]*(?:[°º]|[Dd][Ee][Gg]\.?|[Dd][Ee][Gg][Rr][Ee][Ee][Ss]?))\s*$");

    /// <summary>An angle in degrees.</summary>
    public static QuantityKind<Angle> Angle { get; } = new("an angle", QuantityText.ReadAngle, NumberWith("[°º]", "deg\\.?", "degrees?"));

    /// <summary>A pure number, a percentage or one in so many.</summary>
    public static QuantityKind<Ratio> Ratio { get; } = new(
        "a number", QuantityText.ReadRatio, @"^\s*[-−‐‑‒–]?\s*[0-9.][0-9.]*\s*(?:%|[:∶]\s*[0-9.]+)?\s*$")
    { HasUnit = false };

    /// <summary>A percentage; the same as a pure number, but a bare number is most likely meant in hundredths.</summary>
    public static QuantityKind<Ratio> Percentage { get; } = Ratio with { Noun = "a percentage", HasUnit = true };

    /// <summary>A load over an area.</summary>
    public static QuantityKind<Pressure> Pressure { get; } = new(
        "a load", QuantityText.ReadPressure,
        NumberWith("psf", "lbs?/ft[²2]", "lb/sq ft", "psi", "lb/in[²2]", "lb/sq in", "ksi", "[kM]?pa", "gpa", "k?n/m[²2]", "n/mm[²2]"));

    /// <summary>A wind speed.</summary>
    public static QuantityKind<Speed> Speed { get; } = new(
        "a speed", QuantityText.ReadSpeed, NumberWith("mph", "mi/h", "m/s", "km/h", "kph", "kmh"));

    /// <summary>A mass.</summary>
    public static QuantityKind<Mass> Mass { get; } = new(
        "a mass", QuantityText.ReadMass, NumberWith("lbs?\\.?", "pounds?", "kg", "kilograms?", "g", "grams?"));

    /// <summary>A force.</summary>
    public static QuantityKind<Force> Force { get; } = new(
        "a force", QuantityText.ReadForce, NumberWith("lbs?\\.?", "lbf", "pounds?", "kips?", "k?n", "newtons?"));

    /// <summary>A force along a line.</summary>
    public static QuantityKind<ForcePerLength> ForcePerLength { get; } = new(
        "a force per length", QuantityText.ReadForcePerLength, NumberWith("lbs?/ft", "lbf/ft", "plf", "lbs?/in", "lbf/in", "pli", "k?n/m", "n/mm"));

    /// <summary>A temperature.</summary>
    public static QuantityKind<Temperature> Temperature { get; } = new(
        "a temperature", QuantityText.ReadTemperature, NumberWith("°? ?[FC]", "deg ?[FC]", "degrees [FC]", "fahrenheit", "celsius"));

    /// <summary>An amount of money.</summary>
    public static QuantityKind<Money> Money { get; } = new(
        "an amount of money", QuantityText.ReadMoney, @"^\s*[$€£]?\s*[0-9.]+\s*$")
    { HasUnit = false };

    private static Reading<Length> ReadWall(string? text)
    {
        var wall = QuantityText.ReadTubeWall(text);
        return new Reading<Length>(wall.IsRead, wall.Value.Thickness, wall.Problem, wall.Accepted);
    }

    /// <summary>A number followed by one of some units in any case.</summary>
    private static string NumberWith(params ReadOnlySpan<string> units)
    {
        var pattern = new StringBuilder(Number).Append("(?:");
        for (var unit = 0; unit < units.Length; unit++)
        {
            if (unit > 0)
                pattern.Append('|');
            AppendInAnyCase(pattern, units[unit]);
        }

        return pattern.Append(@")\s*$").ToString();
    }

    // The regular expressions of JSON Schema have no flag for it.
    private static void AppendInAnyCase(StringBuilder pattern, string unit)
    {
        var inSet = false;
        foreach (var letter in unit)
        {
            inSet = letter switch { '[' => true, ']' => false, _ => inSet };
            if (inSet || !char.IsAsciiLetter(letter))
                pattern.Append(letter);
            else
                pattern.Append('[').Append(char.ToUpperInvariant(letter)).Append(char.ToLowerInvariant(letter)).Append(']');
        }
    }
}
