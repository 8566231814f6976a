using Hoopwright.Plans;
using Hoopwright.Strength.Loads;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Loads;

public sealed class EnWindTests
{
    private const string FromMemory = "EN 1991-1-4, 4.3 to 4.5, formulas from memory, evaluated by an independent program";
    private const string PublicExample = "public worked example of EN 1991-1-4 wind, terrain IV (studylib.net)";

    [Fact]
    public void Peak_pressure_in_open_country()
    {
        Published.Check(FromMemory, "cr", 0.83259, EnWind.Cr(TerrainCategory.II, 4), 0.000006, "last printed digit");
        Published.Check(FromMemory, "Iv", 0.22820, EnWind.Iv(TerrainCategory.II, 4), 0.000006, "last printed digit");
        Published.Check(FromMemory, "qp, Pa", 760.73, EnWind.PeakPressurePa(TerrainCategory.II, 4, 26), 0.006, "last printed digit");
    }

    [Fact]
    public void Peak_pressure_in_town_below_the_least_height()
    {
        Published.Check(PublicExample, "kr", 0.234, EnWind.Kr(TerrainCategory.IV), 0.0006, "three printed digits");
        Published.Check(PublicExample, "cr", 0.54, EnWind.Cr(TerrainCategory.IV, 9), 0.006, "two printed digits");
        Published.Check(PublicExample, "Iv", 0.434, EnWind.Iv(TerrainCategory.IV, 9), 0.0006, "three printed digits");
        Published.Check(PublicExample, "qb, kPa", 0.422, EnWind.BasicPressurePa(26) / 1000, 0.0006, "three printed digits");
        Published.Check(PublicExample, "ce", 1.18, EnWind.Ce(TerrainCategory.IV, 9), 0.006, "three printed digits");
        Published.Check(PublicExample, "qp, kPa", 0.497, EnWind.PeakPressurePa(TerrainCategory.IV, 9, 26) / 1000, 0.002, "printed from rounded steps");
    }

    [Fact]
    public void Headline_values_of_the_vaulted_roof()
    {
        Published.Check("EN 1991-1-4, Fig. 7.11, headline values from memory", "A on the ground, f/d 0.5", 0.8, EnWind.VaultWindward(0.5, 0), 1e-9, "headline value");
        Published.Check("EN 1991-1-4, Fig. 7.11, headline values from memory", "A on the ground, f/d 0.05", 0.1, EnWind.VaultWindward(0.05, 0), 1e-9, "headline value");
        Published.Check("EN 1991-1-4, Fig. 7.11, headline values from memory", "A on legs, f/d 0.05", -1.2, EnWind.VaultWindward(0.05, 0.5), 1e-9, "headline value");
        Published.Check("EN 1991-1-4, Fig. 7.11, headline values from memory", "B, f/d 0.5", -1.2, EnWind.VaultCentre(0.5), 1e-9, "headline value");
        Published.Check("EN 1991-1-4, Fig. 7.11, headline values from memory", "B, f/d 0.1", -0.8, EnWind.VaultCentre(0.1), 1e-9, "headline value");
        Published.Check("EN 1991-1-4, Fig. 7.11, headline values from memory", "C", -0.4, EnWind.VaultLeeward, 1e-9, "headline value");
    }
}
