using Hoopwright.Sun;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Sun;

/// <summary>Light of sun and sky, against values that the tests of a general-purpose solar library quote, and tables made with it.</summary>
public sealed class SkyLightTests
{
    private const string Clear = "clear-sky table by pvlib-python: Ineichen-Perez and Haurwitz by zenith, height and turbidity";
    private const string Quoted = "clear-sky and tilted-plane values quoted by the tests of pvlib-python";
    private const string Tilted = "tilted-plane table by pvlib-python: four skies by seventeen planes";
    private const string Digit = "the last printed digit";

    [Fact]
    public void Every_row_of_the_clear_sky_table_is_met()
    {
        foreach (CsvRows row in Rows("clear_sky.csv"))
        {
            double zenith = row.Number("apparent_zenith_deg");
            Published.Check(Clear, "air mass", row.Number("relative_airmass_ky"), ClearSky.AirMass(zenith), 1e-5 * row.Number("relative_airmass_ky"), Digit);
            SkyLight light = ClearSky.Ineichen(zenith, row.Number("absolute_airmass"), row.Number("linke_turbidity"), row.Number("altitude_m"), 1364);
            Published.Check(Clear, $"global at {zenith}", row.Number("ineichen_ghi"), light.GlobalWPerM2, 0.01, "air mass is printed to five digits");
            Published.Check(Clear, $"beam at {zenith}", row.Number("ineichen_dni"), light.BeamNormalWPerM2, 0.02, "air mass is printed to five digits");
            Published.Check(Clear, $"diffuse at {zenith}", row.Number("ineichen_dhi"), light.DiffuseWPerM2, 0.02, "air mass is printed to five digits");
            Published.Check(Clear, $"Haurwitz at {zenith}", row.Number("haurwitz_ghi"), ClearSky.HaurwitzWPerM2(zenith), 1, "cut to whole W/m² there");
        }
    }

    [Theory]
    [InlineData(10, 1, 0, 1364, 1038.159, 942.208, 110.265)]
    [InlineData(10, 1, 0, 1370, 1042.726, 946.353, 110.750)]
    [InlineData(10, 1, 2000, 1364, 1134.243, 994.954, 154.405)]
    [InlineData(82.854570, 6.979355, 0, 1364, 65.494, 321.161, 25.546)]
    [InlineData(46.046760, 1.323555, 0, 1364, 704.697, 888.901, 87.736)]
    [InlineData(10.564136, 0.935277, 0, 1364, 1044.123, 953.249, 107.031)]
    [InlineData(72.416871, 3.016141, 0, 1364, 251.994, 655.449, 53.990)]
    public void Ineichen_and_Perez_give_the_quoted_light(double zenith, double airMass, double heightM, double outside, double global, double beam, double diffuse)
    {
        SkyLight light = ClearSky.Ineichen(zenith, airMass, 3, heightM, outside);
        Published.Check(Quoted, "global", global, light.GlobalWPerM2, 0.01, Digit);
        Published.Check(Quoted, "beam", beam, light.BeamNormalWPerM2, 0.01, Digit);
        Published.Check(Quoted, "diffuse", diffuse, light.DiffuseWPerM2, 0.01, Digit);
    }

    [Theory]
    [InlineData(5, 48.630)]
    [InlineData(10, 135.742)]
    [InlineData(30, 487.894)]
    [InlineData(50, 778.767)]
    [InlineData(90, 1035.092)]
    public void Haurwitz_gives_the_quoted_light(double elevation, double global) => Published.Check(Quoted, "Haurwitz", global, ClearSky.HaurwitzWPerM2(90 - elevation), 0.001, Digit);

    [Fact]
    public void Every_row_of_the_tilted_plane_table_is_met()
    {
        var rows = Rows("transposition.csv");
        Assert.Equal(68, rows.Count);
        foreach (CsvRows row in rows)
        {
            double zenith = row.Number("zenith_deg"), tilt = row.Number("tilt_deg"), cos = TiltedSky.CosIncidence(zenith, row.Number("sun_azimuth_deg"), tilt, row.Number("surface_azimuth_deg"));
            var light = new SkyLight(row.Number("dni"), row.Number("dhi"), row.Number("ghi"));
            string what = $"{row.Text("case")}, {tilt} to {row.Text("surface_azimuth_deg")}: ";
            Published.Check(Tilted, what + "incidence, deg", row.Number("aoi_deg"), Math.Acos(cos) * 180 / Math.PI, 1e-3, Digit);
            Published.Check(Tilted, what + "beam", row.Number("beam_on_surface"), TiltedSky.BeamWPerM2(light.BeamNormalWPerM2, cos), 0.01, Digit);
            Published.Check(Tilted, what + "ground", row.Number("ground_albedo_0.2"), TiltedSky.GroundWPerM2(light.GlobalWPerM2, 0.2, tilt), 0.001, Digit);
            Published.Check(Tilted, what + "even sky", row.Number("sky_isotropic"), TiltedSky.EvenSkyWPerM2(light.DiffuseWPerM2, tilt), 0.001, Digit);
            Published.Check(Tilted, what + "Hay and Davies", row.Number("sky_hay_davies"), TiltedSky.HayDaviesWPerM2(light, row.Number("dni_extra"), zenith, cos, tilt), 0.001, Digit);
            Published.Check(Tilted, what + "Perez", row.Number("sky_perez1990"), TiltedSky.PerezWPerM2(light, row.Number("dni_extra"), row.Number("relative_airmass"), zenith, cos, tilt), 0.001, Digit);
        }
    }

    [Theory]
    [InlineData(40.461, 316.195, 82.855, 66.714, 35.728, 27.178)]
    [InlineData(118.458, 939.955, 10.564, 144.766, 104.601, 102.995)]
    [InlineData(62.034, 646.229, 72.417, 287.041, 54.777, 33.191)]
    public void A_roof_of_forty_degrees_to_the_south_gets_the_quoted_light(double diffuse, double beam, double zenith, double azimuth, double even, double hayDavies)
    {
        double cos = TiltedSky.CosIncidence(zenith, azimuth, 40, 180);
        var light = new SkyLight(beam, diffuse, 0);
        Published.Check(Quoted, "even sky", even, TiltedSky.EvenSkyWPerM2(diffuse, 40), 0.001, Digit);
        Published.Check(Quoted, "Hay and Davies", hayDavies, TiltedSky.HayDaviesWPerM2(light, 1321.17, zenith, cos, 40), 0.002, "inputs are printed to 0.001");
        Published.Check(Quoted, "ground", 26.32000, TiltedSky.GroundWPerM2(900, 0.25, 40), 1e-5, Digit);
    }

    [Theory]
    [InlineData(40.461, 316.195, 82.855, 66.714, 7.588, 31.460)]
    [InlineData(62.034, 646.229, 72.417, 287.041, 3.279, 45.455)]
    public void Perez_gives_the_quoted_light(double diffuse, double beam, double zenith, double azimuth, double airMass, double sky) =>
        Published.Check(Quoted, "Perez", sky, TiltedSky.PerezWPerM2(new(beam, diffuse, 0), 1321.17, airMass, zenith, TiltedSky.CosIncidence(zenith, azimuth, 40, 180), 40), 0.01, "inputs are printed to 0.001");

    private static IReadOnlyList<CsvRows> Rows(string name) => CsvRows.Of(Path.Combine(SamplePlans.Root, "tests", "Hoopwright.Tests", "Sun", "Data", name));
}
