using Hoopwright.Cover.Pull;
using Hoopwright.Strength.Film;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Film;

public sealed class FilmCheckTests
{
    private const string Blown = "Advances in Materials Science and Engineering 2019, article 1692126, table 5";

    [Fact]
    public void Film_that_must_last_is_held_against_its_yield()
    {
        FilmCheck check = FilmCheck.Of(FilmTension.HoopNPerM(500, 3.048), 150e-6, FilmStrength.Yield, FilmTension.Hoop);
        // 10.16 MPa against 8 MPa: a free arc at 500 Pa stretches for good, though new film breaks at twice that.
        Assert.Equal(1.27, check.Utilisation, 1e-9);
        Assert.True(FilmCheck.Of(FilmTension.HoopNPerM(500, 3.048), 150e-6, FilmStrength.ThreeLayer, FilmTension.Hoop).Utilisation < 1);
        Checks.SaysWhy(check);
    }

    [Fact]
    public void New_film_has_the_measured_strength_and_stiffness()
    {
        Published.Check(Blown, "one layer, least strength, MPa", 30.4, FilmStrength.Monolayer.LeastPa / 1e6, 1e-9, "exact");
        Published.Check(Blown, "one layer, greatest strength, MPa", 32.1, FilmStrength.Monolayer.MostPa / 1e6, 1e-9, "exact");
        Published.Check(Blown, "three layers, least strength, MPa", 17.8, FilmStrength.ThreeLayer.LeastPa / 1e6, 1e-9, "exact");
        Published.Check(Blown, "three layers, greatest E, MPa", 299, FilmStrength.ThreeLayer.MostYoungPa / 1e6, 1e-9, "exact");
        Assert.All(FilmStrength.All, row => Assert.True(row.LeastPa <= row.MostPa && row.LeastYoungPa <= row.MostYoungPa));
        Assert.True(FilmStrength.ExpansionPerK.Least < FilmStrength.ExpansionPerK.Most && FilmStrength.LastingYoungPart.Most < 1);
    }

    [Fact]
    public void Thinner_film_is_used_more()
    {
        double thick = FilmCheck.Of(1000, 200e-6, FilmStrength.Yield, FilmTension.Hoop).Utilisation;
        Assert.Equal(2, FilmCheck.Of(1000, 100e-6, FilmStrength.Yield, FilmTension.Hoop).Utilisation / thick, 1e-12);
    }
}
