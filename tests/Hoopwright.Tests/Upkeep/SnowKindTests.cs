using Hoopwright.Quantities;
using Hoopwright.Testing;
using Hoopwright.Upkeep;

namespace Hoopwright.Tests.Upkeep;

/// <summary>Densities of the storm card against published figures.</summary>
public sealed class SnowKindTests
{
    private const string Vermont = "Prevent Greenhouse Collapse, University of Vermont Extension, 12 in of light or 3 to 4 in of wet snow are 1 in of water, 5.2 psf";

    [Fact]
    public void An_inch_of_water_weighs_as_much_as_the_extension_service_says() =>
        Published.Check(Vermont, "1 in of water, psf", 5.2, SnowKind.OfWater(Length.FromInches(1)).PoundsPerSquareFoot, 0.05, "rounded to a tenth in print");

    [Fact]
    public void A_foot_of_light_snow_weighs_what_is_published_or_a_little_more() =>
        Published.Check(Vermont, "12 in of light snow, psf", 5.2 * 1.1, Kind("light").WeightOf(Length.FromInches(12)).PoundsPerSquareFoot, 5.2 * 0.12, "EN 1991-1-3 has fresh snow a fifth heavier, which is on the careful side");

    [Fact]
    public void So_much_wet_snow_makes_an_inch_of_water_as_is_published_or_a_little_less() =>
        Published.Check(Vermont, "wet snow of 5.2 psf, in", 3, Kind("wet").DepthOf(Pressure.FromPoundsPerSquareFoot(5.2)).Inches, 0.55, "3 to 4 in print; EN 1991-1-3 has wet snow a fifth heavier, which is on the careful side");

    [Fact]
    public void A_foot_of_soaked_snow_weighs_the_high_side_of_what_growers_say() =>
        Published.Check("common practice, no source: a foot of wet snow weighs 30 to 40 psf", "1 ft of soaked snow, psf", 40, Kind("soaked").WeightOf(Length.FromFeet(1)).PoundsPerSquareFoot, 0.01, "the high side is taken");

    [Fact]
    public void No_kind_errs_on_the_light_side_of_what_is_published()
    {
        Assert.True(Kind("light").WeightOf(Length.FromInches(12)).PoundsPerSquareFoot >= 5.2);
        Assert.True(Kind("wet").DepthOf(Pressure.FromPoundsPerSquareFoot(5.2)) <= Length.FromInches(3));
        Assert.Equal(SnowKind.All.OrderBy(kind => kind.Density), SnowKind.All);
    }

    private static SnowKind Kind(string id) => SnowKind.All.Single(kind => kind.Id == id);
}
