using System.Globalization;
using System.Numerics;

namespace Hoopwright.Quantities;

/// <summary>Shows quantities to people, the same in every culture. Everything shown here can be read back.</summary>
public static partial class TapeText
{
    /// <summary>The finest tape fraction shown unless asked otherwise: sixteenths.</summary>
    public const int UsualDenominator = 16;

    // As near as this to a mark is on it: what is worked out ends in other last digits on other machines.
    private const double OnMarkM = 1e-9;

    /// <summary>A length as a tape reads it: feet, inches and sixteenths, or whole millimetres.</summary>
    public static string Of(Length length, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => FeetAndInches(length),
        UnitSystem.Metric => WholeMillimetres(length),
    };

    /// <summary>
    /// A tube wall, a film thickness or the like, which a tape would lose: <c>0.065 in</c>, <c>0.15 mm</c>. What lies on a mark
    /// of the tape, or is 80 mm or more, shows as the tape reads it.
    /// </summary>
    public static string OfThickness(Length thickness, UnitSystem units)
    {
        if (thickness.Metres is <= 0 or >= 0.08 || (RoundToMark(thickness, units) - thickness).Abs().Metres <= OnMarkM) return Of(thickness, units);
        return units switch
        {
            UnitSystem.UsCustomary => thickness.Inches.ToString("0.####", CultureInfo.InvariantCulture) + " in",
            UnitSystem.Metric => thickness.Millimetres.ToString("0.##", CultureInfo.InvariantCulture) + " mm",
        };
    }

    /// <summary>
    /// Feet, inches and a fraction: <c>26' 0"</c>, <c>5' 6-1/2"</c>; under a foot inches alone: <c>6-1/2"</c>. Nearest mark,
    /// halves away from zero.
    /// </summary>
    /// <param name="length">Any finite length.</param>
    /// <param name="denominator">The finest fraction: 1, 2, 4, 8, 16, 32 or 64.</param>
    public static string FeetAndInches(Length length, int denominator = UsualDenominator)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(denominator, 64);
        if (!BitOperations.IsPow2(denominator)) throw new ArgumentOutOfRangeException(nameof(denominator), "A tape halves its marks.");

        Length rounded = Nearest(length, Step.OfInches(1, denominator));
        string sign = rounded < Length.Zero ? "-" : "";
        long marks = (long)Math.Round(rounded.Abs().Inches * denominator);
        long feet = marks / (12L * denominator);
        long whole = marks / denominator % 12;
        long top = marks % denominator, bottom = denominator;
        while (top > 0 && top % 2 == 0) (top, bottom) = (top / 2, bottom / 2);

        string inches = (top, whole, feet) switch
        {
            (0, _, _) => Invariant($"{whole}\""),
            (_, 0, 0) => Invariant($"{top}/{bottom}\""),
            _ => Invariant($"{whole}-{top}/{bottom}\""),
        };
        return feet == 0 ? sign + inches : Invariant($"{sign}{feet}' {inches}");
    }

    /// <summary>To the inch or the centimetre, for what nobody knows closer: the depth of snow, the place where a bow gives way.</summary>
    public static string Rough(Length length, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => FeetAndInches(length, 1),
        UnitSystem.Metric => WholeMillimetres(Nearest(length, Step.OfMillimetres(10))),
    };

    /// <summary>What a truck carries, up to ten pounds or five kilograms: "22670 lb".</summary>
    public static string OfLoad(Mass load, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(Math.Ceiling((load.Pounds / 10) - 1e-6) * 10, 0) + " lb",
        UnitSystem.Metric => Fixed(Math.Ceiling((load.Kilograms / 5) - 1e-6) * 5, 0) + " kg",
    };

    /// <summary>To the eighth of an inch or the millimetre, for how far something moves under load.</summary>
    public static string OfMovement(Length length, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => FeetAndInches(length, 8),
        UnitSystem.Metric => WholeMillimetres(length),
    };

    /// <summary>What is bought by the length, up to a whole foot or tenth of a metre: "162 ft", "49.3 m".</summary>
    public static string OfRun(Length run, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(Math.Round(Up(run, Step.OfInches(12, 1)).Feet), 0) + " ft",
        UnitSystem.Metric => Fixed(Up(run, Step.OfMillimetres(100)).Metres, 1) + " m",
    };

    /// <summary>Whole millimetres: <c>1689 mm</c>. Nearest, halves away from zero.</summary>
    public static string WholeMillimetres(Length length) =>
        Fixed(Math.Round(Nearest(length, Step.OfMillimetres(1)).Millimetres), 0) + " mm";

    /// <summary>An area to a tenth: <c>1872.0 ft²</c> or <c>173.9 m²</c>.</summary>
    public static string Of(Area area, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(area.SquareFeet, 1) + " ft²",
        UnitSystem.Metric => Fixed(area.SquareMetres, 1) + " m²",
    };

    /// <summary>A volume: <c>12.35 ft³</c>; metric in litres to a tenth below 100 L, else in m³ to the litre.</summary>
    public static string Of(Volume volume, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(volume.CubicFeet, 2) + " ft³",
        UnitSystem.Metric when Math.Abs(volume.Litres) < 100 => Fixed(volume.Litres, 1) + " L",
        UnitSystem.Metric => Fixed(volume.CubicMetres, 3) + " m³",
    };

    /// <summary>A mass to a tenth: <c>80.0 lb</c> or <c>36.3 kg</c>.</summary>
    public static string Of(Mass mass, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(mass.Pounds, 1) + " lb",
        UnitSystem.Metric => Fixed(mass.Kilograms, 1) + " kg",
    };

    /// <summary>A mass per length to a hundredth: <c>2.28 lb/ft</c> or <c>3.39 kg/m</c>.</summary>
    public static string Of(MassPerLength mass, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(mass.PoundsPerFoot, 2) + " lb/ft",
        UnitSystem.Metric => Fixed(mass.KilogramsPerMetre, 2) + " kg/m",
    };

    /// <summary>A load on a surface: <c>25.0 psf</c> or <c>1.20 kPa</c>.</summary>
    public static string Of(Pressure pressure, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(pressure.PoundsPerSquareFoot, 1) + " psf",
        UnitSystem.Metric => Fixed(pressure.Kilopascals, 2) + " kPa",
    };

    /// <summary>A stress inside a material: <c>50.0 ksi</c> or <c>345 MPa</c>.</summary>
    public static string OfStress(Pressure stress, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(stress.PoundsPerSquareInch / 1000, 1) + " ksi",
        UnitSystem.Metric => Fixed(stress.Pascals / 1e6, 0) + " MPa",
    };

    /// <summary>A force: whole <c>200 lb</c>; metric in whole newtons below a kilonewton, else <c>1.50 kN</c>.</summary>
    public static string Of(Force force, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(force.Pounds, 0) + " lb",
        UnitSystem.Metric when Math.Abs(force.Newtons) < 999.5 => Fixed(force.Newtons, 0) + " N",
        UnitSystem.Metric => Fixed(force.Kilonewtons, 2) + " kN",
    };

    /// <summary>A force per length: <c>60.0 lb/ft</c> or <c>0.88 kN/m</c>.</summary>
    public static string Of(ForcePerLength force, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(force.PoundsPerFoot, 1) + " lb/ft",
        UnitSystem.Metric => Fixed(force.NewtonsPerMetre / 1000, 2) + " kN/m",
    };

    /// <summary>A moment: whole <c>521 lb·ft</c> or <c>0.71 kN·m</c>.</summary>
    public static string Of(Moment moment, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(moment.PoundFeet, 0) + " lb·ft",
        UnitSystem.Metric => Fixed(moment.KilonewtonMetres, 2) + " kN·m",
    };

    /// <summary>A density: <c>17.9 lb/ft³</c> or whole <c>287 kg/m³</c>.</summary>
    public static string Of(Density density, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(density.PoundsPerCubicFoot, 1) + " lb/ft³",
        UnitSystem.Metric => Fixed(density.KilogramsPerCubicMetre, 0) + " kg/m³",
    };

    /// <summary>A speed: whole <c>90 mph</c>, or <c>40.2 m/s</c>.</summary>
    public static string Of(Speed speed, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(speed.MilesPerHour, 0) + " mph",
        UnitSystem.Metric => Fixed(speed.MetresPerSecond, 1) + " m/s",
    };

    /// <summary>A temperature in whole degrees: <c>60 °F</c> or <c>-5 °C</c>.</summary>
    public static string Of(Temperature temperature, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(temperature.Fahrenheit, 0) + " °F",
        UnitSystem.Metric => Fixed(temperature.Celsius, 0) + " °C",
    };

    /// <summary>A difference of temperatures to a tenth, with its sign: <c>+2.3 °F</c> or <c>+1.3 K</c>.</summary>
    public static string Of(TemperatureDifference difference, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Signed(difference.FahrenheitDegrees) + " °F",
        UnitSystem.Metric => Signed(difference.Kelvins) + " K",
    };

    /// <summary>Warmth summed over days: <c>2450 °F·d</c> or <c>1361 K·d</c>.</summary>
    public static string Of(GrowthSum sum, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(sum.FahrenheitDays, 0) + " °F·d",
        UnitSystem.Metric => Fixed(sum.KelvinDays, 0) + " K·d",
    };

    /// <summary>A flow of air: <c>8500 cfm</c>, or <c>4.0 m³/s</c>.</summary>
    public static string Of(AirFlow flow, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(Math.Round(flow.CubicFeetPerMinute / 10) * 10, 0) + " cfm",
        UnitSystem.Metric => Fixed(flow.CubicMetresPerSecond, 2) + " m³/s",
    };

    /// <summary>A power of a heater: <c>247700 Btu/h</c>, or <c>72.6 kW</c>.</summary>
    public static string Of(Power power, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Fixed(Math.Round(power.BtuPerHour / 100) * 100, 0) + " Btu/h",
        UnitSystem.Metric => Fixed(power.Watts / 1000, 1) + " kW",
    };

    /// <summary>An angle in degrees to a tenth: <c>12.0°</c>.</summary>
    public static string Of(Angle angle) => Fixed(angle.Degrees, 1) + "°";

    /// <summary>A ratio in percent to a tenth: <c>5.0 %</c>.</summary>
    public static string OfPercent(Ratio ratio) => Fixed(ratio.Percent, 1) + " %";

    private static string Fixed(double value, int decimals)
    {
        // Rounding first keeps "-0.0" off the page.
        double rounded = Math.Round(Finite(value), decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    private static string Signed(double value) => (Math.Round(value, 1, MidpointRounding.AwayFromZero) >= 0 ? "+" : "") + Fixed(value, 1);

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
