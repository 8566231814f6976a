using Hoopwright.Inside.Light;
using Hoopwright.Sun;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Inside;

/// <summary>Light through film by angle.</summary>
public sealed class FilmOpticsTests
{
    private const string Table = "light through one and two films by angle, by Fresnel's equations in an independent program";

    [Fact]
    public void Every_row_of_the_table_is_met()
    {
        FilmOptics one = new(0.89, 1), two = new(0.89, 2);
        var rows = CsvRows.Of(Path.Combine(SamplePlans.Root, "tests", "Hoopwright.Tests", "Inside", "Data", "film_transmittance_by_angle.csv"));
        Assert.True(rows.Count > 15);
        foreach (CsvRows row in rows.Where(row => char.IsAsciiDigit(row.Text("incidence_deg")[0])))
        {
            double angle = row.Number("incidence_deg"), cosine = Math.Cos(GeocentricSun.Rad(angle));
            Published.Check(Table, $"one film at {angle}°", row.Number("single"), one.At(cosine), 1e-5, "the last printed digit");
            Published.Check(Table, $"two films at {angle}°", row.Number("double"), two.At(cosine), 1e-5, "the last printed digit");
            Published.Check(Table, $"one film at {angle}°, from the table within", row.Number("single"), one.Fast(cosine), angle > 85 ? 2e-3 : 1e-4, "straight lines between 512 cosines");
        }
    }

    [Fact]
    public void Light_from_all_over_the_sky_is_that_of_the_independent_program()
    {
        Published.Check(Table, "one film, diffuse", 0.8158, new FilmOptics(0.89, 1).Diffuse, 1e-4, "the last printed digit");
        Published.Check(Table, "two films, diffuse", 0.7088, new FilmOptics(0.89, 2).Diffuse, 1e-4, "the last printed digit");
        // Without loss within the film both faces alone let 0.9207 through.
        Published.Check(Table, "without loss", 0.9207, new FilmOptics(0.92068, 1).At(1), 1e-4, "the last printed digit");
    }
}
