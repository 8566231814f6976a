using Hoopwright.Cover;
using Hoopwright.Cover.Pull;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Cover;

/// <summary>How tight film is pulled.</summary>
public sealed class PullTests
{
    private const double ThicknessM = 150e-6, BayM = 1.2192;

    /// <summary>
    /// Film against steel from 60 °F, by the handbook expansions of polyethylene (Materials Handbook: 1 to 2·10⁻⁴ per kelvin, taken 2·10⁻⁴) and
    /// steel (1.2·10⁻⁵): strain in percent and inches in 100 ft.
    /// </summary>
    [Theory]
    [InlineData(-20, 0.836, 10.0)]
    [InlineData(0, 0.627, 7.5)]
    [InlineData(32, 0.292, 3.5)]
    [InlineData(95, -0.366, -4.4)]
    [InlineData(140, -0.836, -10.0)]
    public void Film_put_up_snug_at_60_degrees_is_strained_by_what_it_shrinks_more_than_steel(double fahrenheit, double percent, double inchesPer100Ft)
    {
        double strain = FilmSheet.StrainAt(Temperature.FromFahrenheit(fahrenheit).Kelvins, 0, Temperature.FromFahrenheit(60).Kelvins);
        // The steel of the frame solver lengthens by 1.17·10⁻⁵, which makes a sixth of a hundredth.
        Assert.Equal(percent, strain * 100, 0.0012);
        Assert.Equal(inchesPer100Ft, strain * 1200, 0.06);
    }

    /// <summary>f = L·√(3·e/8), the parabola of a shallow sag (mathematics handbook): 4 ft bay, 1.8 in at 95 °F and 2.7 in at 140 °F.</summary>
    [Theory]
    [InlineData(95, 1.8)]
    [InlineData(140, 2.7)]
    public void Slack_film_hangs_as_the_parabola_says(double fahrenheit, double inches)
    {
        double strain = FilmSheet.StrainAt(Temperature.FromFahrenheit(fahrenheit).Kelvins, 0, Temperature.FromFahrenheit(60).Kelvins);
        double sagM = FilmSheet.SagM(strain, 300, ThicknessM, BayM);
        Assert.Equal(inches, Length.FromMetres(sagM).Inches, 1);
        // Its weight stretches it a little beyond that.
        Assert.InRange(sagM, BayM * Math.Sqrt(3 * -strain / 8), BayM * Math.Sqrt(3 * -strain / 8) * 1.03);
    }

    [Fact]
    public void Taut_film_hangs_like_a_cable_of_that_pull_and_gives_less_the_tighter_it_is()
    {
        // w·s²/(8·T), the parabolic cable (mechanics handbook); film is laid so tight here that its sag does not stretch it.
        double pull = 0.01 * FilmSheet.YoungPa(296.15) * ThicknessM;
        Assert.Equal(ThicknessM * 920 * 9.80665 * BayM * BayM / (8 * pull), FilmSheet.SagM(0.01, 296.15, ThicknessM, BayM), 5);
        double[] gives = [.. new[] { -0.002, 0, 0.002, 0.01 }.Select(strain => FilmSheet.GiveM(44.5, strain, 296.15, ThicknessM, BayM))];
        Assert.Equal(gives.OrderDescending(), gives);
        Assert.Equal(44.5, 4 * gives[3] * FilmSheet.YoungPa(296.15) * ThicknessM * (0.01 + (2 * gives[3] * gives[3] / (BayM * BayM))), 6);
    }

    [Fact]
    public void The_warmth_of_a_film_is_balanced_and_that_of_its_airs_without_sun_or_cold_sky()
    {
        Assert.Equal(285, FilmWarmth.FilmK(285, 285, 0, 285, 2), 9);
        double night = FilmWarmth.FilmK(270, 270, 0, FilmWarmth.ClearSkyK(270), 0), day = FilmWarmth.FilmK(300, 300, 1000, FilmWarmth.ClearSkyK(300), 0);
        Assert.InRange(night, 266, 270);
        Assert.InRange(day, 300, 310);
        Assert.True(FilmWarmth.FilmK(300, 300, 1000, FilmWarmth.ClearSkyK(300), 5) < day);
    }

    /// <summary>Common practice, no source: the best covering temperature is about 60 °F, some say 50.</summary>
    [Fact]
    public void The_best_day_to_pull_comes_out_between_50_and_60_degrees_without_being_put_in()
    {
        foreach (string cold in (string[])["-25 °F", "-20 °F", "-10 °F"])
            Assert.InRange(PlanOf($"\"loads\": {{ \"coldest\": \"{cold}\", \"hottest\": \"120 °F\" }}").Plan.Pull.Best.Fahrenheit, 48, 62);
    }

    /// <summary>Common practice, no source: hotter days call for a looser pull.</summary>
    [Fact]
    public void A_hotter_day_is_never_pulled_tighter_and_a_colder_year_never_tighter_either()
    {
        PullPlan mild = PlanOf("\"loads\": { \"coldest\": \"0 °F\" }").Plan.Pull, cold = PlanOf("\"loads\": { \"coldest\": \"-30 °F\" }").Plan.Pull;
        foreach (PullPlan plan in (PullPlan[])[mild, cold])
        {
            // Where hands set the limit, softer film is stretched a little more by them.
            Assert.All(plan.Rows.Zip(plan.Rows.Skip(1)), pair => Assert.True(pair.Second.Most < pair.First.Most && pair.Second.Least < pair.First.Least));
            PullRow[] free = [.. plan.Rows.SkipWhile(row => row.Target.Value < (row.Least.Value + row.Most.Value) / 2)];
            Assert.NotEmpty(free);
            Assert.All(free.Zip(free.Skip(1)), pair => Assert.True(pair.Second.Target <= pair.First.Target));
        }
        Assert.All(mild.Rows.Zip(cold.Rows), pair => Assert.True(pair.Second.Target <= pair.First.Target));
        Assert.True(cold.Best < mild.Best);
    }

    [Fact]
    public void Within_the_limits_both_of_them_are_kept()
    {
        PullPlan plan = PlanOf("\"loads\": { \"coldest\": \"10 °F\", \"hottest\": \"105 °F\" }").Plan.Pull;
        Assert.True(plan.HasRoom);
        Assert.All(plan.Rows.Where(row => row.Target >= row.Least && row.Target <= row.Most), row =>
        {
            Assert.True(row.HotSag.Metres <= 0.0625 * BayM * 1.05, row.Film.ToString());
            double cold = FilmSheet.StrainAt(plan.Coldest.Kelvins, row.Target.Value, row.Film.Kelvins);
            Assert.True(cold <= plan.ColdLimit.Value + 1e-12);
            Assert.Equal(FilmSheet.PullNPerM(cold, plan.Coldest.Kelvins, 0.1524e-3), row.ColdPull.NewtonsPerMetre, 6);
        });
    }

    [Theory]
    [InlineData("-5 °F", "cover.pull.too-cold")]
    [InlineData("135 °F", "cover.pull.too-hot")]
    [InlineData("60 °F", null)]
    public void A_day_that_is_too_cold_or_too_hot_is_told(string install, string? code)
    {
        CoverOutcome outcome = PlanOf($"\"loads\": {{ \"coldest\": \"0 °F\", \"installTemperature\": \"{install}\" }}");
        Diagnostic? told = outcome.Diagnostics.FirstOrDefault(found => found.Code.StartsWith("cover.pull.too", StringComparison.Ordinal));
        Assert.Equal(code, told?.Code);
    }

    [Fact]
    public void A_year_wider_than_the_film_is_told()
    {
        CoverOutcome outcome = PlanOf("\"loads\": { \"coldest\": \"-60 °F\", \"hottest\": \"140 °F\" }");
        Assert.False(outcome.Plan.Pull.HasRoom);
        Assert.Contains(outcome.Diagnostics, found => found.Code == "cover.pull.no-room");
    }

    private static CoverOutcome PlanOf(string rest)
    {
        Plan plan = SamplePlans.Simple(frame: "\"bowSpacing\": \"4 ft\"", rest: rest);
        return CoverPlanner.Plan(SamplePlans.LayOut(plan), new Answers(UnitSystem.UsCustomary));
    }
}
