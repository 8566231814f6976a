using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Loads;

public sealed class SnowFormulaTests
{
    private const string FromMemory = "ASCE/SEI 7-16 and 7-22, chapter 7, formulas from memory, evaluated by an independent program";
    private const string Tables = "ASCE/SEI 7-16 snow tables as held by xcfem/xc (github.com)";
    private const string En = "EN 1991-1-3, 5.3.5, formulas from memory";

    [Theory]
    [InlineData(Exposure.B, RoofExposure.Exposed, 0.9)]
    [InlineData(Exposure.B, RoofExposure.Partly, 1.0)]
    [InlineData(Exposure.B, RoofExposure.Sheltered, 1.2)]
    [InlineData(Exposure.C, RoofExposure.Exposed, 0.9)]
    [InlineData(Exposure.C, RoofExposure.Partly, 1.0)]
    [InlineData(Exposure.C, RoofExposure.Sheltered, 1.1)]
    [InlineData(Exposure.D, RoofExposure.Exposed, 0.8)]
    [InlineData(Exposure.D, RoofExposure.Partly, 0.9)]
    [InlineData(Exposure.D, RoofExposure.Sheltered, 1.0)]
    public void Exposure_factors_of_the_roof(Exposure exposure, RoofExposure roof, double expected) =>
        Published.Check(Tables, $"Ce {exposure} {roof}", expected, AsceSnow.Ce(exposure, roof), 0, "table value");

    [Fact]
    public void Flat_roof_snow_of_a_printed_case() => Published.Check(Tables, "pf, psf", 21.0,
        AsceSnow.FlatPa(AsceSnow.Ce(Exposure.B, RoofExposure.Partly), 1.0, AsceSnow.Is(LoadStandard.Asce7Of2016, RiskCategory.II), 30), 0.05, "three printed digits");

    [Theory]
    [InlineData(LoadStandard.Asce7Of2016, ThermalClass.Unheated, 20.160)]
    [InlineData(LoadStandard.Asce7Of2016, ThermalClass.HeatedGreenhouse, 14.280)]
    [InlineData(LoadStandard.Asce7Of2022, ThermalClass.Unheated, 25.200)]
    public void Flat_roof_snow_by_edition_and_heat(LoadStandard standard, ThermalClass thermal, double expected) => Published.Check(FromMemory, "pf, psf", expected,
        AsceSnow.FlatPa(AsceSnow.Ce(Exposure.C, RoofExposure.Partly), AsceSnow.Ct(standard, thermal), AsceSnow.Is(standard, RiskCategory.I), 30), 0.0006, "last printed digit");

    [Theory]
    [InlineData(1.0, true, 0.6154, 0.3846, 0.1538)]
    [InlineData(1.0, false, 1, 0.625, 0.25)]
    [InlineData(1.1, true, 0.6667, 0.4167, 0.1667)]
    [InlineData(1.1, false, 1, 0.7692, 0.3077)]
    [InlineData(1.2, true, 0.7273, 0.4545, 0.1818)]
    [InlineData(1.2, false, 1, 1, 0.4)]
    public void Slope_factors_at_30_45_and_60_degrees(double ct, bool slippery, double at30, double at45, double at60)
    {
        Published.Check(FromMemory, "Cs at 30°", at30, AsceSnow.Cs(ct, slippery, 30), 0.00006, "last printed digit");
        Published.Check(FromMemory, "Cs at 45°", at45, AsceSnow.Cs(ct, slippery, 45), 0.00006, "last printed digit");
        Published.Check(FromMemory, "Cs at 60°", at60, AsceSnow.Cs(ct, slippery, 60), 0.00006, "last printed digit");
        Assert.Equal(0, AsceSnow.Cs(ct, slippery, 70));
        Assert.Equal(0, AsceSnow.Cs(ct, slippery, 90));
    }

    [Fact]
    public void The_line_to_the_crown_and_the_eave_choose_the_unbalanced_case()
    {
        Assert.Equal(0, AsceSnow.UnbalancedCase(15, 9.9));
        Assert.Equal(1, AsceSnow.UnbalancedCase(29, 20));
        Assert.Equal(2, AsceSnow.UnbalancedCase(53.13, 26.6));
        Assert.Equal(3, AsceSnow.UnbalancedCase(90, 35));
        Assert.Equal(0, AsceSnow.UnbalancedCase(90, 61));
    }

    [Fact]
    public void Snow_gets_no_heavier_than_thirty_pounds_a_cubic_foot()
    {
        const double nPerM3 = AsceWind.PaPerPsf / 0.3048;
        Published.Check(FromMemory, "γ at 30 psf, lb/ft³", 17.9, AsceSnow.WeightNPerM3(30 * AsceWind.PaPerPsf) / nPerM3, 1e-9, "exact");
        Published.Check(FromMemory, "γ at 200 psf, lb/ft³", 30, AsceSnow.WeightNPerM3(200 * AsceWind.PaPerPsf) / nPerM3, 1e-9, "the cap");
    }

    [Fact]
    public void A_drift_by_the_winter_wind_is_that_of_the_later_edition()
    {
        // The numbers were worked out apart from this program, with a general-purpose calculator; the formula is from memory.
        Published.Check(FromMemory, "hd at 30 psf, 100 ft, W2 0.55, ft", 3.7628, AsceSnow.DriftByWindM(100 * 0.3048, 30 * AsceWind.PaPerPsf, 0.55) / 0.3048, 5e-5, "last digit");
        Published.Check(FromMemory, "hd at 50 psf, 13 ft counted as 20 ft, W2 0.35, ft", 1.6468, AsceSnow.DriftByWindM(13 * 0.3048, 50 * AsceWind.PaPerPsf, 0.35) / 0.3048, 5e-5, "last digit");
    }

    [Theory]
    [InlineData("asce7-16", false)]
    [InlineData("asce7-22", true)]
    public void Only_the_later_edition_asks_how_windy_the_winter_is_and_only_where_snow_drifts(string standard, bool asks)
    {
        Assert.Equal(asks, Asked(standard, "\"shape\": \"peaked\", \"sideHeight\": \"6 ft\", \"peakHeight\": \"10 ft\""));
        Assert.False(Asked(standard, "\"shape\": \"round\", \"sideHeight\": \"0 ft\", \"peakHeight\": \"10 ft\""));

        static bool Asked(string standard, string bow)
        {
            Plan plan = SamplePlans.Simple(bow: bow, rest: $"\"site\": {{ \"groundSnow\": \"30 psf\" }}, \"loads\": {{ \"standard\": \"{standard}\" }}");
            Answers answers = new(UnitSystem.UsCustomary);
            LoadPlanner.Plan(SamplePlans.LayOut(plan), answers);
            return answers.Assumptions.Any(each => each.Path == "loads.winterWind");
        }
    }

    [Fact]
    public void The_least_snow_of_a_flat_roof_stops_growing_at_twenty_psf()
    {
        Published.Check(FromMemory, "pm at 15 psf", 12, AsceSnow.MinimumPa(0.8, 15 * AsceWind.PaPerPsf) / AsceWind.PaPerPsf, 1e-9, "exact");
        Published.Check(FromMemory, "pm at 40 psf", 16, AsceSnow.MinimumPa(0.8, 40 * AsceWind.PaPerPsf) / AsceWind.PaPerPsf, 1e-9, "exact");
    }

    [Theory]
    [InlineData(0.05, 0.7)]
    [InlineData(0.10, 1.2)]
    [InlineData(0.18, 2.0)]
    [InlineData(0.50, 2.0)]
    public void Mu3_by_rise_over_span(double rise, double expected) => Published.Check(En, "μ3", expected, EnSnow.Mu3Of(rise), 1e-9, "exact");

    [Fact]
    public void Uneven_snow_of_a_semicircle_peaks_at_the_quarter_points()
    {
        Published.Check(En, "even, kPa", 0.52, EnSnow.Even * 0.65, 1e-9, "exact");
        Published.Check(En, "half side, kPa", 0.65, 0.65 * EnSnow.Uneven(EnSnow.Mu3Of(0.5), 0.25), 1e-9, "exact");
        Published.Check(En, "full side, kPa", 1.30, 0.65 * EnSnow.Uneven(EnSnow.Mu3Of(0.5), 0.75), 1e-9, "exact");
        Assert.Equal([0.0, 0.0, 0.0], new[] { 0, 0.5, 1 }.Select(part => EnSnow.Uneven(2, part)));
    }
}
