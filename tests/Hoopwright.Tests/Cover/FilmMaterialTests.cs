using Hoopwright.Cover.Pull;

namespace Hoopwright.Tests.Cover;

/// <summary>What film is made of, against published ranges of low-density polyethylene.</summary>
public sealed class FilmMaterialTests
{
    /// <summary>Materials Handbook, as cited by matmake.com: 912 to 925 kg/m³, 1 to 2·10⁻⁴ per kelvin; greensutra.in: to 2.2·10⁻⁴; E 200 to 300 MPa: designerdata.nl, makeitfrom.com.</summary>
    [Fact]
    public void Density_expansion_and_stiffness_lie_within_what_is_published()
    {
        Assert.InRange(FilmMaterial.KgM3, 912, 925);
        Assert.InRange(FilmMaterial.PerK, 1.0e-4, 2.2e-4);
        Assert.InRange(FilmMaterial.YoungPa, 200e6, 300e6);
        Assert.Equal(FilmMaterial.YoungPa, FilmSheet.YoungPa(FilmSheet.MeasuredAtK), 1e-3);
    }

    /// <summary>Steel of a frame lengthens by 1.2·10⁻⁵ per kelvin (mechanics handbook): film by some sixteen times as much.</summary>
    [Fact]
    public void Film_lengthens_sixteen_times_as_much_as_steel() => Assert.InRange(FilmMaterial.PerK / 1.2e-5, 16, 17.5);
}
