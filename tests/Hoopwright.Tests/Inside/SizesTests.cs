using Hoopwright.Inside.Air;
using Hoopwright.Inside.Heat;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Inside;

/// <summary>Heater, fans, vapour and sky, against worked values on a tunnel of 30 by 96 ft.</summary>
public sealed class SizesTests
{
    private const string Heating = "heating load of a tunnel of 30 by 96 ft by the handbook's U and air changes, from memory, worked out by an independent program";
    private const string Summer = "steady summer rise of a tunnel of 30 by 96 ft, worked out by an independent program";
    private const string Vapour = "FAO Irrigation and Drainage Paper 56, annex 2, table 2.3, saturation vapour pressure, from memory";
    private const string Infrared = "Clark and Allen's sky for EnergyPlus weather files, example of its support list";

    private const double FloorM2 = 267.56, CoverM2 = 439.25, VolumeM3 = 815.53;

    [Fact]
    public void The_heater_is_that_of_the_worked_loads()
    {
        Temperature outside = Temperature.FromFahrenheit(20), inside = Temperature.FromFahrenheit(60);
        HeaterSize single = HeaterSize.Of(inside, outside, 1.20 * 5.678263, CoverM2, VolumeM3, 1);
        Published.Check(Heating, "through one film, Btu/h", 226_944, single.ThroughFilm.BtuPerHour, 30, "areas rounded to 0.01 m²");
        Published.Check(Heating, "with air, Btu/h", 20_736, single.WithAir.BtuPerHour, 100, "0.335 Wh/m³K is 0.018 Btu/ft³°F to three digits");
        Published.Check(Heating, "under two films, Btu/h", 132_384, HeaterSize.Of(inside, outside, 0.70 * 5.678263, CoverM2, VolumeM3, 1).ThroughFilm.BtuPerHour, 20, "areas rounded");
        Temperature cold = Temperature.FromCelsius(0), warm = Temperature.FromCelsius(17);
        Published.Check(Heating, "one film, 17 K, kW", 55.4, HeaterSize.Of(warm, cold, HeaterSize.LossWPerM2K(1, false), CoverM2, VolumeM3, 1).Whole.Watts / 1000, 0.05, "the last printed digit");
        Published.Check(Heating, "two films, 17 K, kW", 33.4, HeaterSize.Of(warm, cold, HeaterSize.LossWPerM2K(2, false), CoverM2, VolumeM3, 0.75).Whole.Watts / 1000, 0.06, "the last printed digit");
        Assert.Equal(0, HeaterSize.Of(cold, warm, 6.8, CoverM2, VolumeM3, 1).Whole.Watts);
    }

    [Theory]
    [InlineData(0, 0.25, 27.85)]
    [InlineData(0, 1, 10.30)]
    [InlineData(0, 3, 3.84)]
    [InlineData(0.25, 0.5, 13.32)]
    [InlineData(0.25, 1.5, 5.44)]
    [InlineData(0.5, 0.25, 13.92)]
    [InlineData(0.5, 0.75, 6.52)]
    [InlineData(0.5, 3, 1.92)]
    public void The_summer_rise_is_the_worked_one(double vapour, double changesPerMinute, double rise)
    {
        double flow = changesPerMinute * VolumeM3 / 60, sun = 0.80 * 900;
        Published.Check(Summer, $"rise, K, {changesPerMinute} a minute", rise, FanSize.RiseK(sun, vapour, FloorM2, 6.8 * CoverM2, flow), 0.01, "the last printed digit");
        Assert.Equal(flow, FanSize.FlowM3PerS(sun, vapour, FloorM2, 6.8 * CoverM2, FanSize.RiseK(sun, vapour, FloorM2, 6.8 * CoverM2, flow)), 1e-9);
    }

    [Theory]
    [InlineData(10, 1.228)]
    [InlineData(15, 1.705)]
    [InlineData(20, 2.338)]
    [InlineData(25, 3.168)]
    [InlineData(30, 4.243)]
    public void Saturated_vapour_is_that_of_the_table(double celsius, double kilopascals) =>
        Published.Check(Vapour, $"at {celsius} °C, kPa", kilopascals, MoistAir.SaturationPa(celsius) / 1000, 6e-4, "the last printed digit");

    [Fact]
    public void The_slope_of_saturated_water_is_its_derivative()
    {
        foreach (double kelvins in new[] { 253.0, 273, 293, 313 })
        {
            double step = (MoistAir.Saturated(kelvins + 1e-3, 95_000).Ratio - MoistAir.Saturated(kelvins - 1e-3, 95_000).Ratio) / 2e-3;
            Assert.Equal(1, MoistAir.Saturated(kelvins, 95_000).PerK / step, 1e-6);
        }
    }

    [Fact]
    public void A_clear_sky_sends_what_the_example_says() => Published.Check(Infrared, "L, W/m²", 340.6, SkyInfrared.WPerM2(293, 283, 0), 0.6, "rounded there on the way, with 273 for 273.15");

    [Fact]
    public void Formulas_of_the_sky_part_join_where_they_meet()
    {
        foreach (double at in new[] { 0.22, 0.8 }) Assert.Equal(DiffusePart.Of(at - 1e-9), DiffusePart.Of(at + 1e-9), 2e-3);
        Assert.Equal(1, DiffusePart.Of(0));
    }
}
