using System.Globalization;
using CsCheck;
using Hoopwright.Quantities;

namespace Hoopwright.Tests.Quantities;

public sealed class TapeTextTests
{
    private static readonly Gen<Length> Lengths = Gen.Double[-300, 300].Select(Length.FromMetres);

    private static readonly Gen<UnitSystem> Systems = Gen.OneOf(UnitSystem.UsCustomary, UnitSystem.Metric);

    [Theory]
    [InlineData(312, "26' 0\"")]
    [InlineData(66.5, "5' 6-1/2\"")]
    [InlineData(6.5, "6-1/2\"")]
    [InlineData(0.5, "1/2\"")]
    [InlineData(12.0625, "1' 0-1/16\"")]
    [InlineData(11.99, "1' 0\"")]
    [InlineData(0, "0\"")]
    [InlineData(-0.01, "0\"")]
    [InlineData(-66.5, "-5' 6-1/2\"")]
    [InlineData(5.03125, "5-1/16\"")]
    public void A_length_reads_as_a_tape_does(double inches, string text) =>
        Assert.Equal(text, TapeText.Of(Length.FromInches(inches), UnitSystem.UsCustomary));

    [Fact]
    public void The_finest_fraction_can_be_chosen()
    {
        var length = Length.FromInches(5.03125);
        Assert.Equal("5-1/32\"", TapeText.FeetAndInches(length, 32));
        Assert.Equal("5-1/32\"", TapeText.FeetAndInches(length, 64));
        Assert.Equal("5\"", TapeText.FeetAndInches(length, 8));
        Assert.Throws<ArgumentOutOfRangeException>(() => TapeText.FeetAndInches(length, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => TapeText.FeetAndInches(length, 128));
    }

    [Fact]
    public void A_metric_length_is_whole_millimetres()
    {
        Assert.Equal("1689 mm", TapeText.Of(Length.FromInches(66.5), UnitSystem.Metric));
        Assert.Equal("0 mm", TapeText.Of(Length.FromMillimetres(-0.2), UnitSystem.Metric));
        Assert.Equal("-3 mm", TapeText.Of(Length.FromMillimetres(-2.5), UnitSystem.Metric));
    }

    [Fact]
    public void A_shown_length_read_again_is_the_rounded_one() =>
        Gen.Select(Lengths, Systems).Sample((length, units) =>
            QuantityText.ReadLength(TapeText.Of(length, units)).Value == TapeText.RoundForMember(length, units));

    [Fact]
    public void Rounding_twice_is_rounding_once() =>
        Gen.Select(Lengths, Systems).Sample((length, units) =>
        {
            foreach (Func<Length, UnitSystem, Length> round in (Func<Length, UnitSystem, Length>[])
                [TapeText.RoundForMember, TapeText.RoundToMark, TapeText.RoundUpForFilm, TapeText.RoundUpForOpening,
                    TapeText.RoundUpForHole, TapeText.RoundDownForLimit, TapeText.RoundUpForLimit])
                if (round(round(length, units), units) != round(length, units))
                    return false;
            return true;
        });

    [Fact]
    public void Film_openings_and_holes_never_come_out_short() =>
        Gen.Select(Lengths, Systems).Sample((length, units) =>
        {
            double hairM = 1.1e-9, exactM = length.Metres;
            double inchM = units == UnitSystem.UsCustomary ? 0.0254 : 0.010;
            double fineM = units == UnitSystem.UsCustomary ? 0.0254 / 16 : 0.001;
            double filmM = TapeText.RoundUpForFilm(length, units).Metres - exactM;
            double holeM = TapeText.RoundUpForHole(length, units).Metres - exactM;
            double openingM = TapeText.RoundUpForOpening(length, units).Metres - exactM;
            double memberM = TapeText.RoundForMember(length, units).Metres - exactM;
            double limitM = exactM - TapeText.RoundDownForLimit(length, units).Metres;
            return filmM > -hairM && filmM < inchM && holeM > -hairM && holeM < inchM && openingM > -hairM && openingM < fineM
                && Math.Abs(memberM) <= (fineM / 2) + hairM && limitM > -hairM && limitM < fineM;
        });

    [Theory]
    [InlineData(0.5e-9, 16)]
    [InlineData(-0.5e-9, 16)]
    [InlineData(2e-9, 17)]
    [InlineData(-2e-9, 16)]
    public void A_value_within_a_billionth_of_a_metre_of_a_mark_is_on_it(double offM, int expectedInches)
    {
        var nearMark = Length.FromMetres((16 * 0.0254) + offM);
        Assert.Equal(Length.FromInches(expectedInches), TapeText.RoundUpForFilm(nearMark, UnitSystem.UsCustomary));
    }

    [Fact]
    public void Other_quantities_are_shown_with_their_unit_in_either_system()
    {
        Assert.Equal("1872.0 ft²", TapeText.Of(Area.FromSquareFeet(1872), UnitSystem.UsCustomary));
        Assert.Equal("173.9 m²", TapeText.Of(Area.FromSquareFeet(1872), UnitSystem.Metric));
        Assert.Equal("12.35 ft³", TapeText.Of(Volume.FromCubicFeet(12.346), UnitSystem.UsCustomary));
        Assert.Equal("0.350 m³", TapeText.Of(Volume.FromCubicFeet(12.346), UnitSystem.Metric));
        Assert.Equal("17.0 L", TapeText.Of(Volume.FromLitres(17), UnitSystem.Metric));
        Assert.Equal("80.0 lb", TapeText.Of(Mass.FromPounds(80), UnitSystem.UsCustomary));
        Assert.Equal("36.3 kg", TapeText.Of(Mass.FromPounds(80), UnitSystem.Metric));
        Assert.Equal("2.28 lb/ft", TapeText.Of(MassPerLength.FromPoundsPerFoot(2.28), UnitSystem.UsCustomary));
        Assert.Equal("3.39 kg/m", TapeText.Of(MassPerLength.FromPoundsPerFoot(2.28), UnitSystem.Metric));
        Assert.Equal("25.0 psf", TapeText.Of(Pressure.FromPoundsPerSquareFoot(25), UnitSystem.UsCustomary));
        Assert.Equal("1.20 kPa", TapeText.Of(Pressure.FromPoundsPerSquareFoot(25), UnitSystem.Metric));
        Assert.Equal("50.0 ksi", TapeText.OfStress(Pressure.FromPoundsPerSquareInch(50_000), UnitSystem.UsCustomary));
        Assert.Equal("345 MPa", TapeText.OfStress(Pressure.FromPoundsPerSquareInch(50_000), UnitSystem.Metric));
        Assert.Equal("200 lb", TapeText.Of(Force.FromPounds(200.4), UnitSystem.UsCustomary));
        Assert.Equal("890 N", TapeText.Of(Force.FromPounds(200), UnitSystem.Metric));
        Assert.Equal("1.00 kN", TapeText.Of(Force.FromNewtons(999.7), UnitSystem.Metric));
        Assert.Equal("-1.50 kN", TapeText.Of(Force.FromKilonewtons(-1.5), UnitSystem.Metric));
        Assert.Equal("60.0 lb/ft", TapeText.Of(ForcePerLength.FromPoundsPerFoot(60), UnitSystem.UsCustomary));
        Assert.Equal("0.88 kN/m", TapeText.Of(ForcePerLength.FromPoundsPerFoot(60), UnitSystem.Metric));
        Assert.Equal("521 lb·ft", TapeText.Of(Moment.FromPoundInches(521 * 12), UnitSystem.UsCustomary));
        Assert.Equal("0.71 kN·m", TapeText.Of(Moment.FromPoundFeet(521), UnitSystem.Metric));
        Assert.Equal("17.9 lb/ft³", TapeText.Of(Density.FromPoundsPerCubicFoot(17.9), UnitSystem.UsCustomary));
        Assert.Equal("287 kg/m³", TapeText.Of(Density.FromPoundsPerCubicFoot(17.9), UnitSystem.Metric));
        Assert.Equal("90 mph", TapeText.Of(Speed.FromMilesPerHour(90), UnitSystem.UsCustomary));
        Assert.Equal("40.2 m/s", TapeText.Of(Speed.FromMilesPerHour(90), UnitSystem.Metric));
        Assert.Equal("60 °F", TapeText.Of(Temperature.FromFahrenheit(60), UnitSystem.UsCustomary));
        Assert.Equal("0 °C", TapeText.Of(Temperature.FromCelsius(-0.2), UnitSystem.Metric));
        Assert.Equal("12.0°", TapeText.Of(Angle.FromDegrees(12)));
        Assert.Equal("5.0 %", TapeText.OfPercent(Ratio.FromValue(0.05)));
    }

    [Fact]
    public void Forces_and_lengths_make_what_they_make()
    {
        Assert.Equal(Moment.FromNewtonMetres(6), Force.FromNewtons(2) * Length.FromMetres(3));
        Assert.Equal(Pressure.FromPascals(2), Force.FromNewtons(6) / Area.FromSquareMetres(3));
        Assert.Equal(Force.FromNewtons(6), ForcePerLength.FromNewtonsPerMetre(2) * Length.FromMetres(3));
        Assert.Equal(Mass.FromKilograms(6), Density.FromKilogramsPerCubicMetre(2) * Volume.FromCubicMetres(3));
    }

    [Theory]
    [InlineData(0.006, "0.006 in", "0.15 mm")]
    [InlineData(0.065, "0.065 in", "1.65 mm")]
    [InlineData(0.25, "1/4\"", "6.35 mm")]
    [InlineData(12, "1' 0\"", "305 mm")]
    [InlineData(0, "0\"", "0 mm")]
    public void A_thickness_that_a_tape_would_lose_shows_in_decimals(double inches, string us, string metric)
    {
        Assert.Equal(us, TapeText.OfThickness(Length.FromInches(inches), UnitSystem.UsCustomary));
        Assert.Equal(metric, TapeText.OfThickness(Length.FromInches(inches), UnitSystem.Metric));
    }

    [Fact]
    public void The_last_digits_of_what_was_worked_out_change_no_text()
    {
        Assert.Equal("0\"", TapeText.OfThickness(Length.FromMetres(1e-17), UnitSystem.UsCustomary));
        foreach (double metres in (double[])[0.0015875, Math.BitIncrement(0.0015875), Math.BitDecrement(0.0015875)])
            Assert.Equal("1/16\"", TapeText.OfThickness(Length.FromMetres(metres), UnitSystem.UsCustomary));
    }

    [Fact]
    public void Every_shown_quantity_can_be_read_again_to_within_what_was_shown() =>
        Gen.Select(Gen.Double[0, 90], Systems).Sample((number, units) =>
            Near(QuantityText.ReadArea(TapeText.Of(Area.FromSquareMetres(number), units)).Value.SquareMetres, number, 0.051)
            && Near(QuantityText.ReadVolume(TapeText.Of(Volume.FromCubicMetres(number), units)).Value.CubicMetres, number, 0.001)
            && Near(QuantityText.ReadMass(TapeText.Of(Mass.FromKilograms(number), units)).Value.Kilograms, number, 0.051)
            && Near(QuantityText.ReadPressure(TapeText.Of(Pressure.FromPascals(number), units)).Value.Pascals, number, 5.1)
            && Near(QuantityText.ReadForce(TapeText.Of(Force.FromNewtons(100 * number), units)).Value.Newtons, 100 * number, 5.1)
            && Near(QuantityText.ReadForcePerLength(TapeText.Of(ForcePerLength.FromNewtonsPerMetre(number), units)).Value.NewtonsPerMetre, number, 5.1)
            && Near(QuantityText.ReadMoment(TapeText.Of(Moment.FromNewtonMetres(number), units)).Value.NewtonMetres, number, 5.1)
            && Near(QuantityText.ReadDensity(TapeText.Of(Density.FromKilogramsPerCubicMetre(number), units)).Value.KilogramsPerCubicMetre, number, 0.81)
            && Near(QuantityText.ReadSpeed(TapeText.Of(Speed.FromMetresPerSecond(number), units)).Value.MetresPerSecond, number, 0.3)
            && Near(QuantityText.ReadTemperature(TapeText.Of(Temperature.FromCelsius(number), units)).Value.Celsius, number, 0.51)
            && Near(QuantityText.ReadAngle(TapeText.Of(Angle.FromDegrees(number))).Value.Degrees, number, 0.051));

    [Fact]
    public void A_german_machine_shows_the_same_text()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE") { NumberFormat = { NumberDecimalSeparator = "," } };
            Assert.Equal("12.35 ft³", TapeText.Of(Volume.FromCubicFeet(12.346), UnitSystem.UsCustomary));
            Assert.Equal(Length.FromFeet(5.5), QuantityText.ReadLength("5.5 ft").Value);
            Assert.Equal("5' 6-1/2\"", TapeText.Of(Length.FromInches(66.5), UnitSystem.UsCustomary));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static bool Near(double actual, double expected, double within) => Math.Abs(actual - expected) <= within;

    [Theory]
    [InlineData(49.24, "162 ft", "49.3 m")]
    [InlineData(0.3048, "1 ft", "0.4 m")]
    [InlineData(30.48, "100 ft", "30.5 m")]
    [InlineData(0, "0 ft", "0.0 m")]
    public void What_is_bought_by_the_length_goes_up_to_a_foot_or_a_tenth_of_a_metre(double metres, string us, string metric)
    {
        Assert.Equal(us, TapeText.OfRun(Length.FromMetres(metres), UnitSystem.UsCustomary));
        Assert.Equal(metric, TapeText.OfRun(Length.FromMetres(metres), UnitSystem.Metric));
    }

    [Theory]
    [InlineData(100, "230 lb", "100 kg")]
    [InlineData(7801.788764, "17200 lb", "7805 kg")]
    public void A_load_goes_up_to_ten_pounds_or_five_kilograms(double kilograms, string us, string metric)
    {
        Assert.Equal(us, TapeText.OfLoad(Mass.FromKilograms(kilograms), UnitSystem.UsCustomary));
        Assert.Equal(metric, TapeText.OfLoad(Mass.FromKilograms(kilograms), UnitSystem.Metric));
    }
}
