using CsCheck;
using Hoopwright.Plans;
using Hoopwright.Strength.Loads;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Loads;

public sealed class ReturnPeriodTests
{
    private const string AsceCommentary = "ASCE/SEI 7-10 commentary C26.5 after Peterka and Shahid (1998), formula from memory";
    private const string EnWindAnnex = "EN 1991-1-4, 4.2, formula from memory";
    private const string EnSnowAnnex = "EN 1991-1-3, Annex D, formula from memory";
    private const string Independent = "probability of independent years";

    [Theory]
    [InlineData(10, 0.8387)]
    [InlineData(15, 0.8793)]
    [InlineData(20, 0.9081)]
    [InlineData(25, 0.9304)]
    [InlineData(50, 0.9997)]
    [InlineData(100, 1.0690)]
    [InlineData(300, 1.1789)]
    [InlineData(700, 1.2636)]
    public void Wind_of_a_return_period_over_that_of_fifty_years(int years, double expected) =>
        Published.Check(AsceCommentary, $"V_{years}/V_50", expected, ReturnPeriods.AsceWindRatio(years), 0.00006, "last printed digit");

    [Fact]
    public void Category_one_takes_seven_eighths_of_the_pressure_of_category_two()
    {
        double ratio = ReturnPeriods.AsceWindRatio(ReturnPeriods.WindOf(LoadStandard.Asce7Of2016, RiskCategory.I))
            / ReturnPeriods.AsceWindRatio(ReturnPeriods.WindOf(LoadStandard.Asce7Of2016, RiskCategory.II));
        Published.Check(AsceCommentary, "V_300/V_700", 0.933, ratio, 0.0006, "last printed digit");
        Published.Check(AsceCommentary, "pressure", 0.870, ratio * ratio, 0.0006, "last printed digit");
    }

    [Theory]
    [InlineData(5, 0.8545)]
    [InlineData(10, 0.9025)]
    [InlineData(15, 0.9285)]
    [InlineData(25, 0.9597)]
    [InlineData(50, 1)]
    [InlineData(100, 1.0385)]
    public void Probability_factor_of_wind(int years, double expected) =>
        Published.Check(EnWindAnnex, $"c_prob, {years} years", expected, ReturnPeriods.EnWindRatio(years), 0.00006, "last printed digit");

    [Theory]
    [InlineData(5, 0.6322)]
    [InlineData(10, 0.7471)]
    [InlineData(15, 0.8119)]
    [InlineData(25, 0.8923)]
    [InlineData(50, 1)]
    [InlineData(100, 1.1069)]
    public void Snow_of_a_return_period_over_that_of_fifty_years(int years, double expected) =>
        Published.Check(EnSnowAnnex, $"s_{years}/s_50", expected, ReturnPeriods.SnowRatio(years, 0.4), 0.00006, "last printed digit");

    [Theory]
    [InlineData(50, 10, 0.1829)]
    [InlineData(10, 10, 0.6513)]
    [InlineData(25, 25, 0.6396)]
    [InlineData(300, 25, 0.0801)]
    public void Chance_that_a_load_is_passed_in_the_life_of_a_tunnel(int years, int life, double expected) =>
        Published.Check(Independent, $"T {years}, N {life}", expected, ReturnPeriods.ChanceOfExceedance(years, life), 0.00006, "last printed digit");

    [Fact]
    public void A_longer_return_period_never_has_less_wind_or_snow() => Gen.Select(Gen.Double[2, 5000], Gen.Double[1, 10], Gen.Double[0.1, 1]).Sample((years, times, variation) =>
    {
        Assert.True(ReturnPeriods.AsceWindRatio(years * times) >= ReturnPeriods.AsceWindRatio(years));
        Assert.True(ReturnPeriods.EnWindRatio(years * times) >= ReturnPeriods.EnWindRatio(years));
        Assert.True(ReturnPeriods.SnowRatio(years * times, variation) >= ReturnPeriods.SnowRatio(years, variation));
    });
}
