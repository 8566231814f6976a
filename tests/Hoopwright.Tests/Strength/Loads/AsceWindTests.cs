using CsCheck;
using Hoopwright.Plans;
using Hoopwright.Strength.Loads;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Loads;

public sealed class AsceWindTests
{
    private const string FromMemory = "ASCE/SEI 7-16 and 7-22, chapters 26 and 27, formulas from memory, evaluated by an independent program";
    private const string WorkedExample = "xcfem/xc verification tests after a public worked example of ASCE 7-16 wind (github.com)";
    private const double FootM = 0.3048;

    [Theory]
    [InlineData(LoadStandard.Asce7Of2016, Exposure.B, 15, 0.5747)]
    [InlineData(LoadStandard.Asce7Of2016, Exposure.B, 20, 0.6240)]
    [InlineData(LoadStandard.Asce7Of2016, Exposure.B, 25, 0.6650)]
    [InlineData(LoadStandard.Asce7Of2016, Exposure.B, 30, 0.7006)]
    [InlineData(LoadStandard.Asce7Of2016, Exposure.C, 15, 0.8489)]
    [InlineData(LoadStandard.Asce7Of2016, Exposure.C, 20, 0.9019)]
    [InlineData(LoadStandard.Asce7Of2016, Exposure.C, 25, 0.9453)]
    [InlineData(LoadStandard.Asce7Of2016, Exposure.C, 30, 0.9823)]
    [InlineData(LoadStandard.Asce7Of2016, Exposure.D, 15, 1.0302)]
    [InlineData(LoadStandard.Asce7Of2016, Exposure.D, 20, 1.0831)]
    [InlineData(LoadStandard.Asce7Of2016, Exposure.D, 25, 1.1259)]
    [InlineData(LoadStandard.Asce7Of2016, Exposure.D, 30, 1.1622)]
    [InlineData(LoadStandard.Asce7Of2022, Exposure.B, 15, 0.5729)]
    [InlineData(LoadStandard.Asce7Of2022, Exposure.B, 20, 0.6186)]
    [InlineData(LoadStandard.Asce7Of2022, Exposure.B, 25, 0.6565)]
    [InlineData(LoadStandard.Asce7Of2022, Exposure.B, 30, 0.6892)]
    [InlineData(LoadStandard.Asce7Of2022, Exposure.C, 15, 0.8512)]
    [InlineData(LoadStandard.Asce7Of2022, Exposure.C, 20, 0.9026)]
    [InlineData(LoadStandard.Asce7Of2022, Exposure.C, 25, 0.9447)]
    [InlineData(LoadStandard.Asce7Of2022, Exposure.C, 30, 0.9805)]
    [InlineData(LoadStandard.Asce7Of2022, Exposure.D, 15, 1.0350)]
    [InlineData(LoadStandard.Asce7Of2022, Exposure.D, 20, 1.0881)]
    [InlineData(LoadStandard.Asce7Of2022, Exposure.D, 25, 1.1312)]
    [InlineData(LoadStandard.Asce7Of2022, Exposure.D, 30, 1.1676)]
    public void Kz_is_that_of_the_edition(LoadStandard standard, Exposure exposure, double heightFt, double expected) =>
        Published.Check(FromMemory, $"Kz {standard} {exposure} {heightFt} ft", expected, AsceWind.Kz(standard, exposure, heightFt * FootM), 0.00006, "last printed digit");

    [Fact]
    public void Kz_below_fifteen_feet_is_that_at_fifteen_feet() =>
        Assert.Equal(AsceWind.Kz(LoadStandard.Asce7Of2016, Exposure.C, 15 * FootM), AsceWind.Kz(LoadStandard.Asce7Of2016, Exposure.C, 1));

    [Theory]
    [InlineData(LoadStandard.Asce7Of2016, 5, 0.865028, 1202.905)]
    [InlineData(LoadStandard.Asce7Of2016, 6.5, 0.914152, 1271.217)]
    [InlineData(LoadStandard.Asce7Of2022, 5, 0.866796, 1205.363)]
    [InlineData(LoadStandard.Asce7Of2022, 6.5, 0.914472, 1271.662)]
    public void Velocity_pressure_of_a_worked_example(LoadStandard standard, double heightM, double kzExpected, double qExpected)
    {
        double kz = AsceWind.Kz(standard, Exposure.C, heightM), ke = AsceWind.Ke(110);
        Published.Check(WorkedExample, "Ke at 110 m", 0.986995, ke, 0.0000006, "last printed digit");
        bool of2022 = standard == LoadStandard.Asce7Of2022;
        Published.Check(WorkedExample, "Kz", kzExpected, kz, of2022 ? 0.00005 : 0.000002, "last printed digit; for 7-22 the example rounds zg to 750 m, which is 2460 ft");
        Published.Check(WorkedExample, "q", qExpected, AsceWind.VelocityPressurePa(kz, 1, 0.85, ke, 52), of2022 ? 0.08 : 0.003, "last printed digits; the same zg");
    }

    [Theory]
    [InlineData(0.18, 6.036, -22.737, -12.337)]
    [InlineData(-0.18, 13.377, -15.396, -4.996)]
    [InlineData(0.55, -1.509, -30.282, -19.882)]
    [InlineData(-0.55, 20.922, -7.851, 2.549)]
    [InlineData(0, 9.707, -19.066, -8.667)]
    public void Pressures_on_an_arch_from_the_ground(double gcpi, double windward, double centre, double leeward)
    {
        // The printed case takes q in psf from 0.00256 V², which SI rounds to 0.613.
        const double qPsf = 0.00256 * 0.85 * 0.85 * 105 * 105;
        Published.Check(FromMemory, "qh, psf", 20.392, qPsf, 0.0006, "last printed digit");
        Published.Check(FromMemory, "qh by the SI form, psf", 20.392, AsceWind.VelocityPressurePa(0.85, 1, 0.85, 1, 105 * 0.44704) / AsceWind.PaPerPsf, 0.02,
            "0.613 is 0.00256 rounded");
        Published.Check(FromMemory, "windward", windward, AsceWind.NetPa(qPsf, AsceWindShapes.WindwardQuarterOnGround(0.4), gcpi), 0.0006, "last printed digit");
        Published.Check(FromMemory, "centre", centre, AsceWind.NetPa(qPsf, AsceWindShapes.CentreHalf(0.4), gcpi), 0.0006, "last printed digit");
        Published.Check(FromMemory, "leeward", leeward, AsceWind.NetPa(qPsf, AsceWindShapes.LeewardQuarter, gcpi), 0.0006, "last printed digit");
    }

    [Theory]
    [InlineData(0.2, 0.28, -0.9)]
    [InlineData(0.3, 0.42, -1.0)]
    [InlineData(0.4, 0.56, -1.1)]
    [InlineData(0.5, 0.70, -1.2)]
    [InlineData(0.6, 0.84, -1.3)]
    public void Coefficients_of_an_arch_from_the_ground(double rise, double windward, double centre)
    {
        Published.Check(FromMemory, "windward quarter", windward, AsceWindShapes.WindwardQuarterOnGround(rise), 1e-9, "exact");
        Published.Check(FromMemory, "centre half", centre, AsceWindShapes.CentreHalf(rise), 1e-9, "exact");
    }

    [Theory]
    [InlineData(0.3, 0.125)]
    [InlineData(0.4, 0.40)]
    [InlineData(0.5, 0.675)]
    public void Coefficients_of_an_arch_on_legs(double rise, double windward) =>
        Published.Check(FromMemory, "windward quarter on legs", windward, Assert.Single(AsceWindShapes.WindwardQuarterOnLegs(rise)), 1e-9, "exact");

    [Fact]
    public void A_low_arch_on_legs_is_sucked_and_a_middling_one_is_tried_both_ways()
    {
        Assert.Equal([-0.9], AsceWindShapes.WindwardQuarterOnLegs(0.15));
        Assert.Equal([(1.5 * 0.25) - 0.3, (6 * 0.25) - 2.1], AsceWindShapes.WindwardQuarterOnLegs(0.25));
    }

    [Fact]
    public void Walls_in_the_lee_feel_less_the_longer_the_tunnel_is_along_the_wind()
    {
        Assert.Equal([-0.5, -0.5, -0.4, -0.3, -0.25, -0.2, -0.2], new[] { 0.3, 1, 1.5, 2, 3, 4, 9 }.Select(AsceWindShapes.LeewardWall).Select(cp => Math.Round(cp, 12)));
    }

    [Theory]
    [InlineData(30, 0.25, -0.2, 0.3)]
    [InlineData(20, 0.5, -0.4, 0.0)]
    [InlineData(45, 0.2, 0.4, 0.4)]
    [InlineData(70, 0.5, 0.7, 0.7)]
    [InlineData(52.5, 1.0, 0.3, 0.45)]
    public void Gable_slopes_read_between_the_rows_of_the_table(double slopeDeg, double depth, double suction, double pressure)
    {
        (double actualSuction, double actualPressure) = AsceWindShapes.GableWindward(slopeDeg, depth);
        Published.Check(FromMemory, "gable suction", suction, actualSuction, 1e-9, "table value, or halfway between two");
        Published.Check(FromMemory, "gable pressure", pressure, actualPressure, 1e-9, "table value, or halfway between two");
    }

    [Fact]
    public void Doubling_the_wind_quadruples_q() => Gen.Double[1, 100].Sample(windMps => Assert.Equal(
        4 * AsceWind.VelocityPressurePa(0.85, 1, 0.85, 1, windMps), AsceWind.VelocityPressurePa(0.85, 1, 0.85, 1, 2 * windMps), 1e-9 * windMps * windMps));

    [Fact]
    public void A_tunnel_with_one_end_open_is_partially_enclosed_and_with_both_ends_open_it_is_not()
    {
        WallOpening open = new(20, 60), shut = new(0, 60), side = new(0, 80);
        Assert.Equal(EnclosureClass.PartiallyEnclosed, Enclosure.Of(open, [shut, side, side], 250));
        Assert.Equal(EnclosureClass.Enclosed, Enclosure.Of(shut, [open, side, side], 250));
        Assert.Equal(EnclosureClass.PartiallyOpen, Enclosure.Of(open, [open, side, side], 250));
        Assert.Equal(EnclosureClass.Enclosed, Enclosure.Of(shut, [shut, side, side], 250));
    }

    [Fact]
    public void Four_walls_open_by_four_fifths_are_open_and_three_are_not()
    {
        WallOpening open = new(50, 60), half = new(30, 60);
        Assert.Equal(EnclosureClass.Open, Enclosure.Of(open, [open, open, open], 200));
        Assert.Equal(EnclosureClass.PartiallyOpen, Enclosure.Of(open, [open, open, half], 200));
    }

    [Fact]
    public void A_small_opening_leaves_a_tunnel_enclosed()
    {
        // 4 ft², or 1 % of the wall where that is less.
        Assert.Equal(EnclosureClass.Enclosed, Enclosure.Of(new WallOpening(0.37, 60), [new WallOpening(0, 60), new WallOpening(0, 80), new WallOpening(0, 80)], 200));
        Assert.Equal(EnclosureClass.PartiallyEnclosed, Enclosure.Of(new WallOpening(0.38, 60), [new WallOpening(0, 60), new WallOpening(0, 80), new WallOpening(0, 80)], 200));
        Assert.Equal(EnclosureClass.PartiallyEnclosed, Enclosure.Of(new WallOpening(0.21, 20), [new WallOpening(0, 20), new WallOpening(0, 80), new WallOpening(0, 80)], 200));
    }
}
