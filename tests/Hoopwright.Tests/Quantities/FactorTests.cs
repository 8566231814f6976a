using Hoopwright.Quantities;
using Outside = UnitsNet;

namespace Hoopwright.Tests.Quantities;

/// <summary>
/// Every factor against a general-purpose units library, and against the figures printed in NIST Special Publication 811,
/// Guide for the Use of the International System of Units (2008), appendix B.8, from memory. Bold (exact) figures there are
/// written in full here; the others are printed to seven digits.
/// </summary>
public sealed class FactorTests
{
    private const double LastBits = 1e-14;

    // The outside library keeps these factors to nine digits only.
    private const double NineDigits = 5e-9;

    [Fact]
    public void Lengths_meet_the_outside_library()
    {
        Meets(Outside.Length.FromInches(66.5).Meters, Length.FromInches(66.5).Metres);
        Meets(Outside.Length.FromFeet(26).Meters, Length.FromFeet(26).Metres);
        Meets(Outside.Length.FromCentimeters(90).Meters, Length.FromCentimetres(90).Metres);
        Meets(Outside.Length.FromMillimeters(1689).Meters, Length.FromMillimetres(1689).Metres);
        Meets(Outside.Length.FromMils(6).Meters, QuantityText.ReadFilmThickness("6 mil").Value.Metres);
    }

    [Fact]
    public void Areas_and_volumes_meet_the_outside_library()
    {
        Meets(Outside.Area.FromSquareFeet(1872).SquareMeters, Area.FromSquareFeet(1872).SquareMetres);
        Meets(Outside.Area.FromSquareInches(0.624).SquareMeters, Area.FromSquareInches(0.624).SquareMetres);
        Meets(Outside.Volume.FromCubicFeet(0.6).CubicMeters, Volume.FromCubicFeet(0.6).CubicMetres);
        Meets(Outside.Volume.FromCubicYards(1.5).CubicMeters, QuantityText.ReadVolume("1.5 cu yd").Value.CubicMetres, NineDigits);
        Meets(Outside.Volume.FromLiters(17).CubicMeters, Volume.FromLitres(17).CubicMetres);
    }

    [Fact]
    public void Masses_pressures_and_speeds_meet_the_outside_library()
    {
        Meets(Outside.Mass.FromPounds(80).Kilograms, Mass.FromPounds(80).Kilograms);
        Meets(Outside.LinearDensity.FromPoundsPerFoot(2.28).KilogramsPerMeter, MassPerLength.FromPoundsPerFoot(2.28).KilogramsPerMetre, NineDigits);
        Meets(Outside.Pressure.FromPoundsForcePerSquareFoot(25).Pascals, Pressure.FromPoundsPerSquareFoot(25).Pascals);
        Meets(Outside.Pressure.FromPoundsForcePerSquareInch(50).Pascals, Pressure.FromPoundsPerSquareInch(50).Pascals);
        Meets(Outside.Pressure.FromKilopoundsForcePerSquareInch(50).Pascals, QuantityText.ReadPressure("50 ksi").Value.Pascals);
        Meets(Outside.Speed.FromMilesPerHour(90).MetersPerSecond, Speed.FromMilesPerHour(90).MetresPerSecond);
        Meets(Outside.Speed.FromKilometersPerHour(144).MetersPerSecond, Speed.FromKilometresPerHour(144).MetresPerSecond);
    }

    [Fact]
    public void Forces_moments_and_densities_meet_the_outside_library()
    {
        Meets(Outside.Force.FromPoundsForce(200).Newtons, Force.FromPounds(200).Newtons);
        Meets(Outside.Force.FromKilopoundsForce(1.5).Newtons, QuantityText.ReadForce("1.5 kip").Value.Newtons);
        Meets(Outside.Force.FromKilonewtons(1.5).Newtons, Force.FromKilonewtons(1.5).Newtons);
        Meets(Outside.ForcePerLength.FromPoundsForcePerFoot(60).NewtonsPerMeter, ForcePerLength.FromPoundsPerFoot(60).NewtonsPerMetre, NineDigits);
        Meets(Outside.ForcePerLength.FromPoundsForcePerInch(5).NewtonsPerMeter, QuantityText.ReadForcePerLength("5 lb/in").Value.NewtonsPerMetre, NineDigits);
        Meets(Outside.Torque.FromPoundForceFeet(521).NewtonMeters, Moment.FromPoundFeet(521).NewtonMetres, NineDigits);
        Meets(Outside.Torque.FromPoundForceInches(521).NewtonMeters, Moment.FromPoundInches(521).NewtonMetres, NineDigits);
        Meets(Outside.Torque.FromKilopoundForceFeet(1.5).NewtonMeters, QuantityText.ReadMoment("1.5 kip-ft").Value.NewtonMetres, NineDigits);
        Meets(Outside.Torque.FromKilopoundForceInches(1.5).NewtonMeters, QuantityText.ReadMoment("1.5 kip-in").Value.NewtonMetres, NineDigits);
        Meets(Outside.Density.FromPoundsPerCubicFoot(145).KilogramsPerCubicMeter, Density.FromPoundsPerCubicFoot(145).KilogramsPerCubicMetre, 1e-8);
    }

    [Fact]
    public void Temperatures_angles_and_section_values_meet_the_outside_library()
    {
        Meets(Outside.Temperature.FromDegreesFahrenheit(60).Kelvins, Temperature.FromFahrenheit(60).Kelvins);
        Meets(Outside.Temperature.FromDegreesCelsius(-5).Kelvins, Temperature.FromCelsius(-5).Kelvins);
        Meets(Outside.Angle.FromDegrees(22.5).Radians, Angle.FromDegrees(22.5).Radians);
        Meets(Outside.AreaMomentOfInertia.FromInchesToTheFourth(0.251).MetersToTheFourth, SecondMoment.FromInches4(0.251).Metres4, 1e-12);
        Meets(Outside.Volume.FromCubicInches(0.264).CubicMeters, SectionModulus.FromInches3(0.264).Metres3, 1e-12);
    }

    [Theory]
    [InlineData("1 in", 0.0254, 0)]
    [InlineData("1 ft", 0.3048, 0)]
    public void Lengths_meet_the_printed_factor(string text, double printed, double relative) =>
        Meets(printed, QuantityText.ReadLength(text).Value.Metres, relative);

    [Fact]
    public void Other_units_meet_the_printed_factor()
    {
        const double sevenDigits = 5e-7;
        Meets(0.45359237, Mass.FromPounds(1).Kilograms);
        Meets(0.44704, Speed.FromMilesPerHour(1).MetresPerSecond);
        Meets(0.09290304, Area.FromSquareFeet(1).SquareMetres);
        Meets(6.4516e-4, Area.FromSquareInches(1).SquareMetres);
        Meets(2.831685e-2, Volume.FromCubicFeet(1).CubicMetres, sevenDigits);
        Meets(0.7645549, QuantityText.ReadVolume("1 cu yd").Value.CubicMetres, sevenDigits);
        Meets(47.88026, Pressure.FromPoundsPerSquareFoot(1).Pascals, sevenDigits);
        Meets(6894.757, Pressure.FromPoundsPerSquareInch(1).Pascals, sevenDigits);
        Meets(6.894757e6, QuantityText.ReadPressure("1 ksi").Value.Pascals, sevenDigits);
        Meets(1.488164, MassPerLength.FromPoundsPerFoot(1).KilogramsPerMetre, sevenDigits);
        Meets(4.448222, Force.FromPounds(1).Newtons, sevenDigits);
        Meets(4448.222, QuantityText.ReadForce("1 kip").Value.Newtons, sevenDigits);
        Meets(14.59390, ForcePerLength.FromPoundsPerFoot(1).NewtonsPerMetre, sevenDigits);
        Meets(175.1268, QuantityText.ReadForcePerLength("1 lb/in").Value.NewtonsPerMetre, sevenDigits);
        Meets(1.355818, Moment.FromPoundFeet(1).NewtonMetres, sevenDigits);
        Meets(0.1129848, Moment.FromPoundInches(1).NewtonMetres, sevenDigits);
        Meets(16.01846, Density.FromPoundsPerCubicFoot(1).KilogramsPerCubicMetre, sevenDigits);
        Meets(0.2777778, Speed.FromKilometresPerHour(1).MetresPerSecond, sevenDigits);
        Meets(4.162314e-7, SecondMoment.FromInches4(1).Metres4, sevenDigits);
        Meets(1.638706e-5, SectionModulus.FromInches3(1).Metres3, sevenDigits);
    }

    private static void Meets(double expected, double actual, double relative = LastBits) =>
        Assert.True(Math.Abs(actual - expected) <= Math.Abs(expected) * relative, FormattableString.Invariant($"{actual:R} is not {expected:R}"));
}
