using Hoopwright.Inside.Heat;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Inside;

/// <summary>The heat balance on steady dry nights, against the same equations solved by another program.</summary>
public sealed class NightModelTests
{
    private const string Nights = "81 steady nights of a three-node model of a tunnel, solved by an independent program";

    [Fact]
    public void Every_night_of_the_table_is_met()
    {
        var rows = CsvRows.Of(Path.Combine(SamplePlans.Root, "tests", "Hoopwright.Tests", "Inside", "Data", "night_model_cases.csv"));
        Assert.Equal(81, rows.Count);
        foreach (CsvRows row in rows)
        {
            var balance = new HeatBalance(new HeatHouse
            {
                CoverOverFloor = row.Number("cover_to_floor_area"),
                HeightM = row.Number("volume_to_floor_m"),
                FloorM2 = 100,
                Layers = 1,
                Film = new FilmWarmthRays(row.Number("tau_ir"), row.Number("rho_ir")),
                CropCover = 0,
                LeakPerHour = row.Number("air_changes_per_h"),
                Damp = false,
            });
            balance.Start(row.Number("t_out_K"));
            balance.Solve(new HeatHour
            {
                OutsideK = row.Number("t_out_K"),
                WindMps = row.Number("wind_ms"),
                SkyWPerM2 = WarmthExchange.StefanBoltzmann * Math.Pow(row.Number("t_sky_K"), 4),
                SoilConductance = row.Number("soil_k_over_d_W_m2K"),
                SoilK = row.Number("t_deep_K"),
                AirBeforeK = double.NaN,
                HeatToK = double.NaN,
            });
            string night = "night " + row.Text("case");
            Published.Check(Nights, night + ", ground, °C", row.Number("t_soil_C"), balance.GroundK - 273.15, 6e-4, "rounded there, another constant of Stefan and Boltzmann");
            Published.Check(Nights, night + ", air, °C", row.Number("t_air_C"), balance.AirK - 273.15, 6e-4, "rounded there");
            Published.Check(Nights, night + ", film, °C", row.Number("t_cover_C"), balance.FilmK - 273.15, 6e-4, "rounded there");
        }
    }
}
