using Hoopwright.Cover;
using Hoopwright.Cover.Pull;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using Hoopwright.Tests.Strength.Kept;
using static Hoopwright.Testing.KeptText;

namespace Hoopwright.Tests.Cover;

/// <summary>How tight to pull film, and what that rests on, as it was when somebody last looked. HOOPWRIGHT_ACCEPT=1 writes it anew.</summary>
public sealed class KeptPullTests
{
    private static readonly double[] Airs = [240, 273.15, 300], Suns = [0, 600, 1000], Winds = [0, 4];

    public static TheoryData<string> Names => [.. KeptTunnels.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_pull_of_a_tunnel_is_what_it_was(string name)
    {
        Tunnel tunnel = KeptTunnels.Of(name);
        PullPlanner planner = CoverPlanner.PullOf(tunnel, new Answers(tunnel.Units));
        PullPlan plan = planner.Plan();
        PullBand band = planner.Band();
        KeptText text = new();
        text.Line($"film {Number(plan.Coldest.Kelvins)} to {Number(plan.Hottest.Kelvins)} K, best {Number(plan.Best.Kelvins)} K, strain {Number(plan.ColdLimit.Value)} cold, slack {Number(plan.HotLimit.Value)} hot, loosest {Number(plan.Loosest.Value)}, room {plan.HasRoom}");
        text.Line($"band {Number(band.Coldest.Kelvins)} to {Number(band.Warmest.Kelvins)} K, {plan.Hands} people of {Number(plan.OneHand.Newtons)} N, gauge {Number(plan.GaugePush.Newtons)} N, bay {Number(plan.Bay.Metres)} m, arc {Number(plan.Arc.Metres)} m");
        foreach (PullRow row in plan.Rows.Prepend(plan.Planned).Append(plan.At(Temperature.FromKelvins(283.15))))
        {
            text.Line($"at {Number(row.Film.Kelvins)} K (air {Number(row.AirInSun.Kelvins)} K) {row.Advice}: {Number(row.Least.Value)} to {Number(row.Most.Value)}, aim {Number(row.Target.Value)}, by hand {Number(row.ByHand.Value)}; "
                + $"past snug {Number(row.PastSnugPerBay.Metres)} {Number(row.PastSnugAlong.Metres)} {Number(row.PastSnugOverBow.Metres)} m, sag {Number(row.Sag.Metres)} m, give {Number(row.Give.Metres)} m, pull {Number(row.HandPull.Newtons)} N; "
                + $"cold {Number(row.ColdPull.NewtonsPerMetre)} {Number(row.ColdPullCrept.NewtonsPerMetre)} N/m, hot sag {Number(row.HotSag.Metres)} {Number(row.HotSagCrept.Metres)} m");
        }
        foreach (var found in planner.Found()) text.Line($"says {found.Code}: {found.Seen}, {found.Accepted}");
        Golden.Match(text.ToString(), $"Hoopwright.Tests/Cover/Kept/{name}.txt");
    }

    [Fact]
    public void What_is_known_of_film_is_what_it_was()
    {
        KeptText text = new();
        foreach (FilmStrength row in FilmStrength.All) text.Line($"{row.Name}: {Number(row.LeastPa)} to {Number(row.MostPa)} Pa, E {Number(row.LeastYoungPa)} to {Number(row.MostYoungPa)} Pa; {row.Source.Title}, {row.Source.Place}");
        text.Line($"expansion {Number(FilmStrength.ExpansionPerK.Least)} to {Number(FilmStrength.ExpansionPerK.Most)} 1/K, lasting E {Number(FilmStrength.LastingYoungPart.Least)} to {Number(FilmStrength.LastingYoungPart.Most)}");
        foreach (double airK in Airs) text.Line($"E at {airK} K {Number(FilmSheet.YoungPa(airK))} Pa, clear sky {Number(FilmWarmth.ClearSkyK(airK))} K");
        Golden.Match(text.ToString(), "Hoopwright.Tests/Cover/Kept/film.txt");
    }

    /// <summary>The balance of warmth written out once more, with the numbers of its formula: Stefan-Boltzmann law and convection, any handbook of heat transfer, from memory.</summary>
    [Fact]
    public void A_film_as_warm_as_it_is_said_to_be_gives_what_it_takes()
    {
        foreach (double airK in Airs)
        {
            foreach (double sun in Suns)
            {
                foreach (double wind in Winds)
                {
                    double insideK = airK + 5, skyK = airK - 20, filmK = FilmWarmth.FilmK(airK, insideK, sun, skyK, wind);
                    double takes = (0.10 * sun) + (0.35 * 5.670374419e-8 * (Math.Pow(skyK, 4) + Math.Pow(insideK, 4)));
                    double gives = ((5.7 + (3.8 * wind)) * (filmK - airK)) + (4 * (filmK - insideK)) + (2 * 0.35 * 5.670374419e-8 * Math.Pow(filmK, 4));
                    Assert.Equal(takes, gives, 1e-9 * takes);
                }
            }
        }
    }

    /// <summary>T³ - T0·T² = E·t·p²·s²/24 put in again: the parabolic membrane held with a pull, any handbook of mechanics, from memory.</summary>
    [Fact]
    public void Film_with_a_pull_in_it_pulls_what_its_equation_says()
    {
        foreach (double before in Winds.Select(each => 300 * each))
        {
            foreach (double pressurePa in Suns.Skip(1))
            {
                double pull = FilmTension.ElasticNPerM(30_000, pressurePa, 1.22, before), right = 30_000 * pressurePa * pressurePa * 1.22 * 1.22 / 24;
                Assert.Equal(right, (pull * pull * pull) - (before * pull * pull), 1e-9 * right);
                Assert.True(pull > before);
            }
        }
        Assert.Equal(700, FilmTension.ElasticNPerM(30_000, 0, 1.22, 700), 1e-9);
    }
}
