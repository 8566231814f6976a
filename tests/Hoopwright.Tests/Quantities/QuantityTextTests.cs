using CsCheck;
using Hoopwright.Quantities;

namespace Hoopwright.Tests.Quantities;

public sealed class QuantityTextTests
{
    [Theory]
    [InlineData("26 ft", 26 * 12)]
    [InlineData("26'", 26 * 12)]
    [InlineData("26ft", 26 * 12)]
    [InlineData("26 FEET", 26 * 12)]
    [InlineData("5' 6-1/2\"", 66.5)]
    [InlineData("5'-6 1/2\"", 66.5)]
    [InlineData("5'-6-1/2\"", 66.5)]
    [InlineData("5' - 6 1/2\"", 66.5)]
    [InlineData("5'6.5\"", 66.5)]
    [InlineData("5 ft 6 1/2 in", 66.5)]
    [InlineData("5 ft. 6-1/2 in.", 66.5)]
    [InlineData("5ft6-1/2in", 66.5)]
    [InlineData("66.5 in", 66.5)]
    [InlineData("66-1/2\"", 66.5)]
    [InlineData("66 1/2 inches", 66.5)]
    [InlineData("5.5 ft", 66)]
    [InlineData("5-1/2 ft", 66)]
    [InlineData("1-3/8 in", 1.375)]
    [InlineData("7/8\"", 0.875)]
    [InlineData("5/4 in", 1.25)]
    [InlineData("63/64 in", 0.984375)]
    [InlineData(".5 in", 0.5)]
    [InlineData("0 ft", 0)]
    [InlineData("5′ 6½″", 66.5)]
    [InlineData("5’ 6½”", 66.5)]
    [InlineData("5‘ 6 ½“", 66.5)]
    [InlineData("5'\u00A06\u202F1⁄2''", 66.5)]
    [InlineData("6¾ in", 6.75)]
    [InlineData("⅝″", 0.625)]
    [InlineData("−5' 6\"", -66)]
    [InlineData("–18 in", -18)]
    [InlineData("-1/2 in", -0.5)]
    [InlineData("+2 in", 2)]
    public void A_length_in_feet_and_inches_is_read_as_it_is_written(string text, double inches) =>
        Assert.Equal(Reading.Of(Length.FromInches(inches)), QuantityText.ReadLength(text));

    [Theory]
    [InlineData("7.9 m", 7900)]
    [InlineData("7.9m", 7900)]
    [InlineData("90 cm", 900)]
    [InlineData("1200 mm", 1200)]
    [InlineData("1200 MM", 1200)]
    [InlineData("-0.45 metres", -450)]
    public void A_metric_length_is_read_as_it_is_written(string text, double millimetres) =>
        Assert.Equal(Reading.Of(Length.FromMillimetres(millimetres)), QuantityText.ReadLength(text));

    [Theory]
    [InlineData("26", "26 ft or 26 in or 26 m or 26 mm")]
    [InlineData("5-1/2", "5-1/2 in")]
    [InlineData("1,200 mm", "1200 mm")]
    [InlineData("1,5 m", "1.5 m")]
    [InlineData("1.200,5 m", "1200.5 m")]
    [InlineData("1,200,000 mm", "1200000 mm")]
    [InlineData("1,200.5 mm", "1200.5 mm")]
    [InlineData("1 200 mm", "1200 mm")]
    [InlineData("5' 12\"", "less than 12", true)]
    [InlineData("5' 6", "5' 6\"")]
    [InlineData("5.5' 3\"", "5.5 ft")]
    [InlineData("1/3 in", "1/64")]
    [InlineData("1/128 in", "1/64")]
    [InlineData("1/0 in", "1/64")]
    [InlineData("2-17/16 in", "less than one", true)]
    [InlineData("26 furlongs", "one of ft, in, m, cm, mm")]
    [InlineData("26 ft long", "5' 6-1/2\"")]
    [InlineData("7 m 90 cm", "7.9 m")]
    [InlineData("20000 m", "10000 m")]
    [InlineData("1e3 mm", "one of ft, in")]
    [InlineData("", "26 ft")]
    [InlineData("   ", "26 ft")]
    [InlineData(null, "26 ft")]
    [InlineData("ft", "26 ft")]
    [InlineData("NaN m", "26 ft")]
    [InlineData("∞ m", "26 ft")]
    [InlineData("--5 m", "26 ft")]
    [InlineData("٣ m", "26 ft")]
    [InlineData("9999999999999999999999999999999999999999 m", "26 ft")]
    public void A_length_that_could_be_misread_is_refused_with_the_right_form(string? text, string says, bool inProblem = false)
    {
        Reading<Length> reading = QuantityText.ReadLength(text);
        Assert.False(reading.IsRead);
        Assert.Contains(says, inProblem ? reading.Problem : reading.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_first_form_that_a_refusal_offers_can_itself_be_read()
    {
        foreach (string text in (string[])["26", "1,200 mm", "1,5 m", "1.200,5 m", "1,200.5 mm", "5' 6"])
        {
            string offered = QuantityText.ReadLength(text).Accepted!.Split(" or ")[0].Split(';')[0];
            Assert.True(QuantityText.ReadLength(offered).IsRead, offered);
        }
    }

    [Fact]
    public void Text_past_the_limit_is_refused_and_text_at_the_limit_is_looked_at()
    {
        Assert.True(QuantityText.ReadLength("26 ft" + new string(' ', 95)).IsRead);
        Assert.False(QuantityText.ReadLength("26 ft" + new string(' ', 96)).IsRead);
    }

    [Fact]
    public void Equal_lengths_are_equal_however_they_were_written() =>
        Gen.Int[0, 2000 * 64].Sample(marks =>
        {
            Length expected = Length.FromInches(marks / 64.0);
            int whole = marks / 64, part = marks % 64;
            string inches = FormattableString.Invariant($"{whole}-{part}/64 in");
            string feet = FormattableString.Invariant($"{whole / 12}' {whole % 12} {part}/64\"");
            string point = FormattableString.Invariant($"{marks / 64m} in");
            string metric = FormattableString.Invariant($"{marks / 64m * 25.4m} mm");
            return QuantityText.ReadLength(inches).Value == expected && QuantityText.ReadLength(feet).Value == expected
                && QuantityText.ReadLength(point).Value == expected && QuantityText.ReadLength(metric).Value == expected;
        });

    [Fact]
    public void Twelve_inches_are_a_foot_and_sixteen_sixteenths_an_inch()
    {
        Assert.Equal(QuantityText.ReadLength("1 ft"), QuantityText.ReadLength("12 in"));
        Assert.Equal(QuantityText.ReadLength("1 in").Value, QuantityText.ReadLength("1/16 in").Value * 16);
        Assert.Equal(QuantityText.ReadLength("1 ft"), QuantityText.ReadLength("30.48 cm"));
    }

    [Theory]
    [InlineData("25 psf", 1197.0064745)]
    [InlineData("25 lb/ft²", 1197.0064745)]
    [InlineData("1.2 kPa", 1200)]
    [InlineData("1200 Pa", 1200)]
    [InlineData("-12 psf", -574.5631078)]
    [InlineData("50 ksi", 344_737_864.66)]
    [InlineData("345 MPa", 345e6)]
    [InlineData("345 N/mm²", 345e6)]
    [InlineData("200 GPa", 200e9)]
    public void A_pressure_is_read_with_its_unit(string text, double pascals) =>
        Assert.Equal(pascals, QuantityText.ReadPressure(text).Value.Pascals, Math.Abs(pascals) * 1e-9);

    [Theory]
    [InlineData("200 lb", 889.644323052)]
    [InlineData("-200 lbf", -889.644323052)]
    [InlineData("1.5 kip", 6672.33242289)]
    [InlineData("1.5 kN", 1500)]
    [InlineData("890 N", 890)]
    public void A_force_is_read_with_its_unit(string text, double newtons) =>
        Assert.Equal(newtons, QuantityText.ReadForce(text).Value.Newtons, 1e-8);

    [Theory]
    [InlineData("60 lb/ft", 875.634176)]
    [InlineData("60 plf", 875.634176)]
    [InlineData("5 lb/in", 875.634176)]
    [InlineData("0.9 kN/m", 900)]
    [InlineData("-900 N/m", -900)]
    public void A_force_per_length_is_read_with_its_unit(string text, double newtonsPerMetre) =>
        Assert.Equal(newtonsPerMetre, QuantityText.ReadForcePerLength(text).Value.NewtonsPerMetre, 1e-6);

    [Theory]
    [InlineData("500 lb·ft", 677.9089741)]
    [InlineData("500 lb⋅ft", 677.9089741)]
    [InlineData("500 ft-lb", 677.9089741)]
    [InlineData("6000 lb-in", 677.9089741)]
    [InlineData("0.5 kip-ft", 677.9089741)]
    [InlineData("6 kip·in", 677.9089741)]
    [InlineData("0.7 kN·m", 700)]
    [InlineData("-700 Nm", -700)]
    public void A_moment_is_read_with_its_unit(string text, double newtonMetres) =>
        Assert.Equal(newtonMetres, QuantityText.ReadMoment(text).Value.NewtonMetres, 1e-6);

    [Theory]
    [InlineData("145 pcf", 2322.677)]
    [InlineData("145 lb/ft³", 2322.677)]
    [InlineData("2300 kg/m³", 2300)]
    public void A_density_is_read_with_its_unit(string text, double kilogramsPerCubicMetre) =>
        Assert.Equal(kilogramsPerCubicMetre, QuantityText.ReadDensity(text).Value.KilogramsPerCubicMetre, 1e-3);

    [Theory]
    [InlineData("200")]
    [InlineData("200 ft")]
    [InlineData("1,5 kN")]
    [InlineData("")]
    public void A_force_that_is_none_is_refused(string text)
    {
        Assert.False(QuantityText.ReadForce(text).IsRead);
        Assert.False(QuantityText.ReadMoment(text).IsRead);
        Assert.False(QuantityText.ReadForcePerLength(text).IsRead);
        Assert.False(QuantityText.ReadDensity(text).IsRead);
    }

    [Fact]
    public void A_thousandth_of_a_pascal_is_not_taken_for_a_million()
    {
        Assert.False(QuantityText.ReadPressure("345 mPa").IsRead);
        Assert.True(QuantityText.ReadPressure("345 MPA").IsRead);
    }

    [Theory]
    [InlineData("90 mph", 40.2336)]
    [InlineData("40 m/s", 40)]
    [InlineData("144 km/h", 40)]
    public void A_speed_is_read_with_its_unit(string text, double metresPerSecond) =>
        Assert.Equal(metresPerSecond, QuantityText.ReadSpeed(text).Value.MetresPerSecond, 1e-12);

    [Theory]
    [InlineData("60 °F", 15.5555555556)]
    [InlineData("60 F", 15.5555555556)]
    [InlineData("60℉", 15.5555555556)]
    [InlineData("-40 °F", -40)]
    [InlineData("-5 °C", -5)]
    [InlineData("−5 ºC", -5)]
    [InlineData("-5 deg C", -5)]
    public void A_temperature_is_read_with_its_unit(string text, double celsius) =>
        Assert.Equal(celsius, QuantityText.ReadTemperature(text).Value.Celsius, 1e-9);

    [Theory]
    [InlineData("12 deg", 12)]
    [InlineData("12°", 12)]
    [InlineData("-22.5 degrees", -22.5)]
    [InlineData("22-1/2°", 22.5)]
    public void An_angle_is_read_in_degrees(string text, double degrees) =>
        Assert.Equal(degrees, QuantityText.ReadAngle(text).Value.Degrees, 1e-12);

    [Theory]
    [InlineData("N", 0)]
    [InlineData("nw", 315)]
    [InlineData("ENE", 67.5)]
    [InlineData("135°", 135)]
    [InlineData("360 deg", 0)]
    public void A_bearing_turns_clockwise_from_north(string text, double degrees) =>
        Assert.Equal(degrees, QuantityText.ReadBearing(text).Value.Degrees, 1e-12);

    [Theory]
    [InlineData("NEN")]
    [InlineData("-10°")]
    [InlineData("135")]
    [InlineData("400°")]
    public void A_direction_that_is_none_is_refused(string text) => Assert.False(QuantityText.ReadBearing(text).IsRead);

    [Theory]
    [InlineData("80 lb", 36.28738960)]
    [InlineData("80 lbs", 36.28738960)]
    [InlineData("25 kg", 25)]
    [InlineData("250 g", 0.25)]
    public void A_mass_is_read_with_its_unit(string text, double kilograms) =>
        Assert.Equal(kilograms, QuantityText.ReadMass(text).Value.Kilograms, 1e-9);

    [Theory]
    [InlineData("1200 ft²", 111.483648)]
    [InlineData("1200 sq ft", 111.483648)]
    [InlineData("110 m2", 110)]
    public void An_area_is_read_with_its_unit(string text, double squareMetres) =>
        Assert.Equal(squareMetres, QuantityText.ReadArea(text).Value.SquareMetres, 1e-9);

    [Theory]
    [InlineData("0.6 ft³", 16.990107955)]
    [InlineData("1 cu yd", 764.554857984)]
    [InlineData("17 L", 17)]
    [InlineData("0.5 m³", 500)]
    public void A_volume_is_read_with_its_unit(string text, double litres) =>
        Assert.Equal(litres, QuantityText.ReadVolume(text).Value.Litres, 1e-8);

    [Theory]
    [InlineData("6 mil", 0.1524)]
    [InlineData("150 µm", 0.15)]
    [InlineData("0.2 mm", 0.2)]
    public void A_film_thickness_is_read_with_its_unit(string text, double millimetres) =>
        Assert.Equal(millimetres, QuantityText.ReadFilmThickness(text).Value.Millimetres, 1e-12);

    [Theory]
    [InlineData("5 %", 0.05)]
    [InlineData("5%", 0.05)]
    [InlineData("0.1 %", 0.001)]
    [InlineData("1:20", 0.05)]
    [InlineData("1 : 20", 0.05)]
    [InlineData("0.05", 0.05)]
    [InlineData("1.5", 1.5)]
    [InlineData("-2 %", -0.02)]
    public void A_ratio_reads_the_same_in_each_of_its_forms(string text, double value) =>
        Assert.Equal(value, QuantityText.ReadRatio(text).Value.Value);

    [Theory]
    [InlineData("1:0")]
    [InlineData("5 % more")]
    [InlineData("five")]
    [InlineData("0,05")]
    public void A_ratio_that_is_none_is_refused(string text) => Assert.False(QuantityText.ReadRatio(text).IsRead);

    [Fact]
    public void Money_is_exact_and_never_negative()
    {
        Assert.Equal(new Money(12.08m), QuantityText.ReadMoney("12.08").Value);
        Assert.Equal(new Money(12.08m), QuantityText.ReadMoney("$ 12.08").Value);
        Assert.Equal(new Money(0.0375m), QuantityText.ReadMoney("€0.0375").Value);
        Assert.Contains("1200.50", QuantityText.ReadMoney("$1,200.50").Accepted, StringComparison.Ordinal);
        Assert.False(QuantityText.ReadMoney("-3").IsRead);
        Assert.False(QuantityText.ReadMoney("12.08 dollars").IsRead);
    }

    [Fact]
    public void Masses_areas_speeds_and_volumes_below_nothing_are_refused()
    {
        Assert.False(QuantityText.ReadMass("-1 kg").IsRead);
        Assert.False(QuantityText.ReadArea("-1 m²").IsRead);
        Assert.False(QuantityText.ReadSpeed("-1 m/s").IsRead);
        Assert.False(QuantityText.ReadVolume("-1 L").IsRead);
        Assert.False(QuantityText.ReadDensity("-1 kg/m³").IsRead);
        Assert.False(QuantityText.ReadTemperature("-300 °C").IsRead);
    }

    // Gauge walls: Machinery's Handbook, Birmingham wire gauge, from memory.
    [Theory]
    [InlineData("18 ga", 0.049)]
    [InlineData("16 gauge", 0.065)]
    [InlineData("14 ga", 0.083)]
    [InlineData("14 BWG", 0.083)]
    [InlineData("12 gage", 0.109)]
    [InlineData("10ga", 0.134)]
    public void A_tube_wall_by_number_comes_from_the_tube_gauge_and_says_so(string text, double inches)
    {
        TubeWall wall = QuantityText.ReadTubeWall(text).Value;
        Assert.Equal(Length.FromInches(inches), wall.Thickness);
        Assert.Contains("BWG", wall.Table, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tube_wall_by_measure_names_no_table()
    {
        Assert.Equal(new TubeWall(Length.FromMetres(0.0021), null), QuantityText.ReadTubeWall("2.1 mm").Value);
        Assert.Null(QuantityText.ReadTubeWall("0.083 in").Value.Table);
        Assert.False(QuantityText.ReadTubeWall("0 in").IsRead);
        Assert.False(QuantityText.ReadTubeWall("2 ft").IsRead);
        Assert.Contains("14 ga", QuantityText.ReadTubeWall("14").Accepted, StringComparison.Ordinal);
        Assert.Contains("10 to 20 ga", QuantityText.ReadTubeWall("8 ga").Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_or_unknown_unit_names_the_accepted_ones()
    {
        Assert.Contains("90 mph or 90 m/s", QuantityText.ReadSpeed("90").Accepted, StringComparison.Ordinal);
        Assert.Contains("psf, psi, ksi, Pa, kPa, MPa, GPa", QuantityText.ReadPressure("25 bar").Accepted, StringComparison.Ordinal);
        Assert.Contains("bar", QuantityText.ReadPressure("25 bar").Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void No_text_throws_and_every_value_is_finite()
    {
        const string alphabet = "0123456789.,-+/'\"′″’”½¼⅞⁄ \u00A0\u2009°ftinmcFCPakshNW%:$€lbgaE∞\u0000\uD800";
        Gen<string> mangled = Gen.Char[alphabet].Array[0, 30].Select(parts => new string(parts));
        Gen<string> written = Gen.OneOf("26 ft", "5' 6-1/2\"", "1,200 mm", "7.9 m", "25 psf", "14 ga", "1:20", "$12.08", "-5 °C", "NW");
        Gen<string> edited = Gen.Select(written, mangled, Gen.Int[0, 9]).Select((text, extra, at) =>
            text.Insert(Math.Min(at, text.Length), extra[..Math.Min(2, extra.Length)]));
        Gen.OneOf(Gen.String, mangled, edited).Sample(ReadsOrRefuses, iter: 20_000);
    }

    private static bool ReadsOrRefuses(string text) =>
        Sound(QuantityText.ReadLength(text), value => value.Metres)
        && Sound(QuantityText.ReadArea(text), value => value.SquareMetres)
        && Sound(QuantityText.ReadVolume(text), value => value.CubicMetres)
        && Sound(QuantityText.ReadAngle(text), value => value.Radians)
        && Sound(QuantityText.ReadBearing(text), value => value.Radians)
        && Sound(QuantityText.ReadMass(text), value => value.Kilograms)
        && Sound(QuantityText.ReadMassPerLength(text), value => value.KilogramsPerMetre)
        && Sound(QuantityText.ReadPressure(text), value => value.Pascals)
        && Sound(QuantityText.ReadForce(text), value => value.Newtons)
        && Sound(QuantityText.ReadForcePerLength(text), value => value.NewtonsPerMetre)
        && Sound(QuantityText.ReadMoment(text), value => value.NewtonMetres)
        && Sound(QuantityText.ReadDensity(text), value => value.KilogramsPerCubicMetre)
        && Sound(QuantityText.ReadSpeed(text), value => value.MetresPerSecond)
        && Sound(QuantityText.ReadTemperature(text), value => value.Kelvins)
        && Sound(QuantityText.ReadFilmThickness(text), value => value.Metres)
        && Sound(QuantityText.ReadRatio(text), value => value.Value)
        && Sound(QuantityText.ReadMoney(text), value => (double)value.Amount)
        && Sound(QuantityText.ReadTubeWall(text), value => value.Thickness.Metres);

    private static bool Sound<T>(Reading<T> reading, Func<T, double> number)
        where T : struct => reading.IsRead
            ? double.IsFinite(number(reading.Value)) && reading.Problem is null && reading.Accepted is null
            : reading is { Problem.Length: > 0, Accepted.Length: > 0 };
}
