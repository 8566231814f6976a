using CsCheck;
using Hoopwright.Days;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Days;

/// <summary>Wind brought from a mast to the bows.</summary>
public sealed class SiteWindTests
{
    private const string Log = "the logarithmic law of micrometeorology, from memory";

    // Terrain I has a roughness of 0.01 m and terrain II of 0.05 m; kr of I is 0.19·(0.01/0.05)^0.07 = 0.16976, of II 0.19.
    [Theory]
    [InlineData("I", 3, 0.826 * 6.9078 * 0.16976 / (5.2983 * 0.19))]
    [InlineData("I", 2, 0.767 * 6.9078 * 0.16976 / (5.2983 * 0.19))]
    [InlineData("II", 10, 1)]
    public void Terrain_and_height_of_the_European_standard_follow_the_log_law(string terrain, double heightM, double ratio) =>
        Published.Check(Log, $"terrain {terrain}, {heightM} m", ratio, Of($"\"standard\": \"en1991\", \"terrain\": \"{terrain}\"", heightM).Mean.Value, 6e-4, "three printed digits");

    [Theory]
    [InlineData("C", 10, 1, 1)]
    [InlineData("C", 4.57, 0.88653, 0.9207)]
    [InlineData("B", 3, 0.67690, 0.7577)]
    public void Exposures_of_the_American_standard_are_those_of_its_tables(string exposure, double heightM, double mean, double gust)
    {
        // (4.57/10)^(1/6.5); 0.45·(9.14/10)^(1/4)/0.65; the square root of Kz 0.85 and 0.575 over 1.003.
        SiteWind found = Of($"\"standard\": \"asce7-16\", \"exposure\": \"{exposure}\"", heightM);
        Assert.Equal(mean, found.Mean.Value, 1e-4);
        Assert.Equal(gust, found.Gust.Value, 2e-3);
    }

    [Fact]
    public void Shelter_and_lower_bows_never_raise_the_wind() =>
        Gen.Select(Gen.Double[1, 10], Gen.Double[0, 5], Gen.Double[0.2, 1], Gen.OneOf("\"exposure\": \"B\"", "\"exposure\": \"C\"", "\"exposure\": \"D\"", "\"standard\": \"en1991\"")).Sample((height, more, shelter, loads) =>
        {
            SiteWind low = Of(loads, height, shelter), high = Of(loads, height + more), open = Of(loads, height);
            Assert.True(low.Mean.Value <= open.Mean.Value + 1e-12 && open.Mean.Value <= high.Mean.Value + 1e-12);
            Assert.True(low.Gust.Value <= open.Gust.Value + 1e-12 && open.Gust.Value <= high.Gust.Value + 1e-12);
        });

    [Fact]
    public void Near_the_ground_gusts_fall_off_less_than_the_mean() =>
        Gen.Double[1, 9.9].Sample(height => Assert.True(Of("\"exposure\": \"C\"", height) is var found && found.Gust.Value >= found.Mean.Value));

    private static SiteWind Of(string loads, double heightM, double shelter = 1)
    {
        Plan plan = SamplePlans.Simple(rest: $"\"loads\": {{ {loads} }}, \"coverDay\": {{ \"shelter\": \"{shelter.ToString("0.######", System.Globalization.CultureInfo.InvariantCulture)}\" }}");
        return SiteWind.Of(plan, new Answers(UnitSystem.Metric), Length.FromMetres(heightM), Length.FromMetres(10));
    }
}
