using System.Globalization;

namespace Hoopwright.Quantities;

/// <summary>
/// Reads quantities as people write them. Strict: a unit is always needed, a comma or an unknown unit is refused with the
/// right form beside it, nothing is guessed, and no text makes it throw. The same in every culture.
/// </summary>
public static partial class QuantityText
{
    private const string RatioExamples = "5 %, 1:20 or 0.05";
    private const string MoneyExamples = "12.08 or $12.08";
    private const string BearingExamples = "N, NE, ENE or 135°, clockwise from north";

    // The most that a ratio and a price can be, to catch a slipped key.
    private const decimal LargestRatio = 1_000_000m;
    private const decimal LargestAmount = 100_000_000m;

    private static readonly UnitTable<Area> Areas = new()
    {
        Noun = "an area",
        Examples = "1200 ft² or 110 m²",
        Smallest = Area.Zero,
        Largest = Area.FromSquareMetres(1e8),
        Units =
        [
            UnitTable<Area>.Unit(Area.FromSquareFeet, "ft²", "ft2", "sq ft", "sq. ft.", "square feet", "square foot"),
            UnitTable<Area>.Unit(Area.FromSquareInches, "in²", "in2", "sq in", "sq. in.", "square inches", "square inch"),
            UnitTable<Area>.Unit(Area.FromSquareMetres, "m²", "m2", "sq m", "square metres", "square meters"),
        ],
    };

    private static readonly UnitTable<Volume> Volumes = new()
    {
        Noun = "a volume",
        Examples = "0.6 ft³, 17 L or 0.5 m³",
        Smallest = Volume.Zero,
        Largest = Volume.FromCubicMetres(1e6),
        Units =
        [
            UnitTable<Volume>.Unit(Volume.FromCubicFeet, "ft³", "ft3", "cu ft", "cu. ft.", "cubic feet", "cubic foot"),
            UnitTable<Volume>.Unit(yards => Volume.FromCubicFeet(yards * 27), "yd³", "yd3", "cu yd", "cu. yd.", "cubic yards", "cubic yard"),
            UnitTable<Volume>.Unit(Volume.FromLitres, "L", "litre", "litres", "liter", "liters"),
            UnitTable<Volume>.Unit(Volume.FromCubicMetres, "m³", "m3", "cu m", "cubic metres", "cubic meters"),
        ],
    };

    private static readonly UnitTable<Angle> Angles = new()
    {
        Noun = "an angle",
        Examples = "12 deg or 12°",
        Smallest = Angle.FromDegrees(-360),
        Largest = Angle.FromDegrees(360),
        Units = [UnitTable<Angle>.Unit(Angle.FromDegrees, "°", "deg", "deg.", "degree", "degrees")],
    };

    private static readonly UnitTable<Mass> Masses = new()
    {
        Noun = "a mass",
        Examples = "80 lb or 25 kg",
        Smallest = Mass.Zero,
        Largest = Mass.FromKilograms(1e7),
        Units =
        [
            UnitTable<Mass>.Unit(Mass.FromPounds, "lb", "lbs", "lb.", "lbs.", "pound", "pounds"),
            UnitTable<Mass>.Unit(Mass.FromKilograms, "kg", "kilogram", "kilograms"),
            UnitTable<Mass>.Unit(grams => Mass.FromKilograms(grams / 1000), "g", "gram", "grams"),
        ],
    };

    private static readonly UnitTable<MassPerLength> MassesPerLength = new()
    {
        Noun = "a mass per length",
        Examples = "2.28 lb/ft or 3.4 kg/m",
        Smallest = MassPerLength.Zero,
        Largest = MassPerLength.FromKilogramsPerMetre(1e5),
        Units =
        [
            UnitTable<MassPerLength>.Unit(MassPerLength.FromPoundsPerFoot, "lb/ft", "lbs/ft", "plf"),
            UnitTable<MassPerLength>.Unit(MassPerLength.FromKilogramsPerMetre, "kg/m"),
        ],
    };

    private static readonly UnitTable<Pressure> Pressures = new()
    {
        Noun = "a pressure",
        Examples = "25 psf, 1.2 kPa, 1200 Pa, 50 ksi or 345 MPa",
        Smallest = Pressure.FromPascals(-1e12),
        Largest = Pressure.FromPascals(1e12),
        Units =
        [
            UnitTable<Pressure>.Unit(Pressure.FromPoundsPerSquareFoot, "psf", "lb/ft²", "lb/ft2", "lb/sq ft", "lbs/ft²", "lbs/ft2"),
            UnitTable<Pressure>.Unit(Pressure.FromPoundsPerSquareInch, "psi", "lb/in²", "lb/in2", "lb/sq in"),
            UnitTable<Pressure>.Unit(kips => Pressure.FromPoundsPerSquareInch(kips * 1000), "ksi"),
            UnitTable<Pressure>.Unit(Pressure.FromPascals, "Pa", "N/m²", "N/m2"),
            UnitTable<Pressure>.Unit(Pressure.FromKilopascals, "kPa", "kN/m²", "kN/m2"),
            // A small m in front would be a thousandth, so the capital is insisted on.
            UnitTable<Pressure>.ExactUnit(mega => Pressure.FromPascals(mega * 1e6), "MPa", "Mpa", "MPA", "N/mm²", "N/mm2"),
            UnitTable<Pressure>.Unit(giga => Pressure.FromPascals(giga * 1e9), "GPa"),
        ],
    };

    private static readonly UnitTable<Force> Forces = new()
    {
        Noun = "a force",
        Examples = "200 lb, 1.5 kN or 890 N",
        Smallest = Force.FromNewtons(-1e12),
        Largest = Force.FromNewtons(1e12),
        Units =
        [
            UnitTable<Force>.Unit(Force.FromPounds, "lb", "lbs", "lb.", "lbs.", "lbf", "pound", "pounds"),
            UnitTable<Force>.Unit(kips => Force.FromPounds(kips * 1000), "kip", "kips"),
            UnitTable<Force>.Unit(Force.FromNewtons, "N", "newton", "newtons"),
            UnitTable<Force>.Unit(Force.FromKilonewtons, "kN"),
        ],
    };

    private static readonly UnitTable<ForcePerLength> ForcesPerLength = new()
    {
        Noun = "a force per length",
        Examples = "60 lb/ft, 0.9 kN/m or 900 N/m",
        Smallest = ForcePerLength.FromNewtonsPerMetre(-1e12),
        Largest = ForcePerLength.FromNewtonsPerMetre(1e12),
        Units =
        [
            UnitTable<ForcePerLength>.Unit(ForcePerLength.FromPoundsPerFoot, "lb/ft", "lbs/ft", "lbf/ft", "plf"),
            UnitTable<ForcePerLength>.Unit(pounds => ForcePerLength.FromPoundsPerFoot(pounds * 12), "lb/in", "lbs/in", "lbf/in", "pli"),
            UnitTable<ForcePerLength>.Unit(ForcePerLength.FromNewtonsPerMetre, "N/m"),
            UnitTable<ForcePerLength>.Unit(kilo => ForcePerLength.FromNewtonsPerMetre(kilo * 1000), "kN/m", "N/mm"),
        ],
    };

    private static readonly UnitTable<Moment> Moments = new()
    {
        Noun = "a moment",
        Examples = "500 lb·ft, 0.7 kN·m or 700 N·m",
        Smallest = Moment.FromNewtonMetres(-1e12),
        Largest = Moment.FromNewtonMetres(1e12),
        Units =
        [
            UnitTable<Moment>.Unit(
                Moment.FromPoundFeet, "lb·ft", "lb-ft", "lb ft", "lbs-ft", "lbf·ft", "lbf-ft", "ft·lb", "ft-lb", "ft lb", "ft-lbs", "ft-lbf"),
            UnitTable<Moment>.Unit(
                Moment.FromPoundInches, "lb·in", "lb-in", "lb in", "lbs-in", "lbf·in", "lbf-in", "in·lb", "in-lb", "in lb", "in-lbs", "in-lbf"),
            UnitTable<Moment>.Unit(kips => Moment.FromPoundFeet(kips * 1000), "kip·ft", "kip-ft", "kip ft", "ft-kip"),
            UnitTable<Moment>.Unit(kips => Moment.FromPoundInches(kips * 1000), "kip·in", "kip-in", "kip in", "in-kip"),
            UnitTable<Moment>.Unit(Moment.FromNewtonMetres, "N·m", "N-m", "N m", "Nm"),
            UnitTable<Moment>.Unit(Moment.FromKilonewtonMetres, "kN·m", "kN-m", "kN m", "kNm"),
        ],
    };

    private static readonly UnitTable<Density> Densities = new()
    {
        Noun = "a density",
        Examples = "145 lb/ft³ or 2300 kg/m³",
        Smallest = Density.Zero,
        Largest = Density.FromKilogramsPerCubicMetre(1e5),
        Units =
        [
            UnitTable<Density>.Unit(Density.FromPoundsPerCubicFoot, "lb/ft³", "lb/ft3", "lbs/ft³", "lbs/ft3", "lb/cu ft", "pcf"),
            UnitTable<Density>.Unit(Density.FromKilogramsPerCubicMetre, "kg/m³", "kg/m3"),
        ],
    };

    private static readonly UnitTable<Speed> Speeds = new()
    {
        Noun = "a speed",
        Examples = "90 mph, 40 m/s or 144 km/h",
        Smallest = Speed.Zero,
        Largest = Speed.FromMetresPerSecond(200),
        Units =
        [
            UnitTable<Speed>.Unit(Speed.FromMilesPerHour, "mph", "mi/h"),
            UnitTable<Speed>.Unit(Speed.FromMetresPerSecond, "m/s"),
            UnitTable<Speed>.Unit(Speed.FromKilometresPerHour, "km/h", "kph", "kmh"),
        ],
    };

    private static readonly UnitTable<Temperature> Temperatures = new()
    {
        Noun = "a temperature",
        Examples = "60 °F or -5 °C",
        Smallest = Temperature.FromCelsius(-100),
        Largest = Temperature.FromCelsius(1000),
        Units =
        [
            UnitTable<Temperature>.Unit(Temperature.FromFahrenheit, "°F", "° F", "F", "deg F", "degF", "fahrenheit", "degrees F"),
            UnitTable<Temperature>.Unit(Temperature.FromCelsius, "°C", "° C", "C", "deg C", "degC", "celsius", "degrees C"),
        ],
    };

    private static readonly UnitTable<Length> FilmThicknesses = new()
    {
        Noun = "a film thickness",
        Examples = "6 mil, 150 μm or 0.15 mm",
        Smallest = Length.Zero,
        Largest = Length.FromMillimetres(10),
        Units =
        [
            UnitTable<Length>.Unit(mils => Length.FromInches(mils / 1000), "mil", "mils"),
            UnitTable<Length>.Unit(micrometres => Length.FromMetres(micrometres / 1e6), "μm", "um", "micron", "microns"),
            UnitTable<Length>.Unit(Length.FromMillimetres, "mm"),
            UnitTable<Length>.Unit(Length.FromInches, "in", "\""),
        ],
    };

    private static readonly string[] CompassPoints =
        ["N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"];

    /// <summary>Reads an area in ft², in² or m²; not negative.</summary>
    public static Reading<Area> ReadArea(string? text) => Areas.Read(text);

    /// <summary>Reads a volume in ft³, yd³, L or m³; not negative.</summary>
    public static Reading<Volume> ReadVolume(string? text) => Volumes.Read(text);

    /// <summary>Reads an angle in degrees, at most a full turn either way.</summary>
    public static Reading<Angle> ReadAngle(string? text) => Angles.Read(text);

    /// <summary>Reads a mass in lb, kg or g; not negative.</summary>
    public static Reading<Mass> ReadMass(string? text) => Masses.Read(text);

    /// <summary>Reads a mass per length in lb/ft or kg/m; not negative.</summary>
    public static Reading<MassPerLength> ReadMassPerLength(string? text) => MassesPerLength.Read(text);

    /// <summary>Reads a pressure or a stress in psf, psi, ksi, Pa, kPa, MPa or GPa; suction is negative.</summary>
    public static Reading<Pressure> ReadPressure(string? text) => Pressures.Read(text);

    /// <summary>Reads a force in lb (pounds-force), kip, N or kN; signed.</summary>
    public static Reading<Force> ReadForce(string? text) => Forces.Read(text);

    /// <summary>Reads a force per length in lb/ft, lb/in, N/m or kN/m; signed.</summary>
    public static Reading<ForcePerLength> ReadForcePerLength(string? text) => ForcesPerLength.Read(text);

    /// <summary>Reads a moment or a torque in lb·ft, lb·in, kip·ft, kip·in, N·m or kN·m; signed.</summary>
    public static Reading<Moment> ReadMoment(string? text) => Moments.Read(text);

    /// <summary>Reads a density in lb/ft³ or kg/m³; not negative.</summary>
    public static Reading<Density> ReadDensity(string? text) => Densities.Read(text);

    /// <summary>Reads a speed in mph, m/s or km/h; not negative, at most 200 m/s.</summary>
    public static Reading<Speed> ReadSpeed(string? text) => Speeds.Read(text);

    /// <summary>Reads a temperature in °F or °C, from -100 °C to 1000 °C.</summary>
    public static Reading<Temperature> ReadTemperature(string? text) => Temperatures.Read(text);

    /// <summary>Reads the thickness of film in mil (thousandths of an inch), μm, mm or in; not negative.</summary>
    public static Reading<Length> ReadFilmThickness(string? text) => FilmThicknesses.Read(text);

    /// <summary>Reads a pure number: <c>5 %</c>, <c>1:20</c> or <c>0.05</c>. The three forms of one number read equal.</summary>
    public static Reading<Ratio> ReadRatio(string? text)
    {
        (string? clean, string? problem, string? accepted) = CleanText.Of(text, RatioExamples);
        if (clean is null) return Reading.Fault<Ratio>(problem!, accepted!);
        var cursor = new TextCursor(clean);
        bool negative = cursor.Take('-');
        cursor.SkipSpaces();
        if (cursor.TakeDecimal() is not ExactNumber number)
            return Reading.Fault<Ratio>("There is no number that can be read as a ratio.", RatioExamples);

        decimal value = number.Value;
        cursor.SkipSpaces();
        if (cursor.Take('%'))
        {
            value /= 100;
        }
        else if (cursor.Take(':'))
        {
            cursor.SkipSpaces();
            if (cursor.TakeDecimal() is not { Value: > 0 } parts)
                return Reading.Fault<Ratio>("After the colon comes a number above nothing.", RatioExamples);
            value /= parts.Value;
        }

        if (!cursor.AtEnd) return Reading.Fault<Ratio>("There is something after the number.", RatioExamples);
        return value > LargestRatio
            ? Reading.Fault<Ratio>("That is out of range for a ratio.", RatioExamples)
            : Reading.Of(Ratio.FromValue(ExactNumber.ToDouble(negative && value != 0 ? -value : value)));
    }

    /// <summary>Reads an amount of money: a plain decimal, with or without $, € or £ in front; not negative.</summary>
    public static Reading<Money> ReadMoney(string? text)
    {
        (string? clean, string? problem, string? accepted) = CleanText.Of(text, MoneyExamples);
        if (clean is null) return Reading.Fault<Money>(problem!, accepted!);
        var cursor = new TextCursor(clean);
        if (!cursor.Take('$') && !cursor.Take('€')) cursor.Take('£');
        cursor.SkipSpaces();
        if (cursor.TakeDecimal() is not ExactNumber number)
            return Reading.Fault<Money>("There is no number that can be read as an amount of money.", MoneyExamples);
        if (!cursor.AtEnd) return Reading.Fault<Money>("There is something after the amount.", MoneyExamples);
        return number.Value > LargestAmount
            ? Reading.Fault<Money>("That is out of range for an amount of money.", MoneyExamples)
            : Reading.Of(new Money(number.Value));
    }

    /// <summary>Reads a direction on the compass, as a point (<c>NW</c>) or in degrees clockwise from north.</summary>
    /// <returns>An angle from 0 up to but not including a full turn; 360° reads as 0.</returns>
    public static Reading<Angle> ReadBearing(string? text)
    {
        (string? clean, string? problem, string? accepted) = CleanText.Of(text, BearingExamples);
        if (clean is null) return Reading.Fault<Angle>(problem!, accepted!);
        int point = Array.IndexOf(CompassPoints, clean.ToUpper(CultureInfo.InvariantCulture));
        if (point >= 0) return Reading.Of(Angle.FromDegrees(point * 22.5));
        if (clean.All(char.IsLetter))
            return Reading.Fault<Angle>($"“{clean}” is not a point of the compass.", BearingExamples);

        Reading<Angle> degrees = Angles.Read(clean);
        if (!degrees.IsRead) return Reading.Fault<Angle>(degrees.Problem!, BearingExamples);
        if (degrees.Value < Angle.Zero)
            return Reading.Fault<Angle>("A bearing turns clockwise from north, so it is not negative.", BearingExamples);
        return Reading.Of(degrees.Value == Angle.FromDegrees(360) ? Angle.Zero : degrees.Value);
    }
}
