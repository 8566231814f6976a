using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Cover.Pull;

/// <summary>
/// Works out how tight to pull the roof film. Two limits bound the pull: on the hottest day it may hang no further than a part of
/// the bay, on the coldest it may be stressed no higher than a part of where it starts to stretch for good. Stiffness and yield
/// rise alike in the cold, so that the second is a strain.
/// </summary>
internal sealed class PullPlanner
{
    private const double SnugStrain = 2.5e-4;

    /// <summary>What one person pulls and holds steadily, round in the units of the plan: common practice, no source.</summary>
    internal static Force OneHandIn(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Force.FromPounds(50),
        UnitSystem.Metric => Force.FromNewtons(220),
    };

    private readonly Tunnel tunnel;
    private readonly double thicknessM, bayM, arcM, coldestK, hottestK, coldStrain, hotSlack, looseStrain, handStrainPerPa;
    private readonly Temperature install;
    private readonly Force gauge, oneHand;
    private readonly int hands;

    /// <param name="tunnel">The tunnel.</param>
    /// <param name="ropes">Ropes that pull the roof film.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    public PullPlanner(Tunnel tunnel, PullingRopes ropes, Answers answers)
    {
        this.tunnel = tunnel;
        oneHand = OneHandIn(answers.Units);
        gauge = answers.Units switch { UnitSystem.UsCustomary => Force.FromPounds(10), UnitSystem.Metric => Force.FromNewtons(50) };
        Plans.Cover cover = tunnel.Plan.Cover;
        LoadRules loads = tunnel.Plan.Loads;
        install = answers.Take("loads.installTemperature", CoverDefaults.Install, loads.InstallTemperature);
        double coldK = answers.Take("loads.coldest", CoverDefaults.Coldest, loads.Coldest).Kelvins;
        double hotK = answers.Take("loads.hottest", CoverDefaults.Hottest, loads.Hottest).Kelvins;
        double coldPart = answers.Take("cover.coldPart", CoverDefaults.ColdPart, cover.ColdPart).Value;
        double hotSag = answers.Take("cover.hotSag", CoverDefaults.HotSag(answers.Units), cover.HotSag).Value;
        double looseSag = answers.Take("cover.looseSag", CoverDefaults.LooseSag(answers.Units), cover.LooseSag).Value;
        coldestK = FilmWarmth.FilmK(coldK, coldK, 0, FilmWarmth.ClearSkyK(coldK), 0);
        hottestK = FilmWarmth.FilmK(hotK, hotK, FilmWarmth.FullSunWPerM2, FilmWarmth.ClearSkyK(hotK), 0);
        coldStrain = coldPart * FilmStrength.Yield.LeastPa * (1 - FilmMaterial.Poisson) / FilmMaterial.YoungPa;
        (hotSlack, looseStrain) = (FilmSheet.SlackOf(hotSag), -FilmSheet.SlackOf(looseSag));
        thicknessM = RoofFilm.ThicknessM(tunnel);
        bayM = RoofFilm.WidestBayM(tunnel);
        arcM = tunnel.Bow.FilmLine.Length.Metres;
        hands = Math.Max(LeastHands, ropes.Count);
        handStrainPerPa = hands * oneHand.Newtons * (1 - FilmMaterial.Poisson) / (thicknessM * tunnel.Length.Metres);
    }

    /// <summary>People whom it takes at least: someone at each end and one at the middle.</summary>
    internal const int LeastHands = 3;

    private double BestK => ((coldestK + hottestK) / 2) + ((coldStrain - hotSlack) / (2 * FilmSheet.PerK));

    /// <summary>The coldest that the film gets.</summary>
    public Temperature Coldest => Temperature.FromKelvins(coldestK);

    /// <summary>How to pull it on the day of the plan.</summary>
    public PullRow Planned => Row(install.Kelvins);

    /// <summary>The air in which film can be pulled midway between both limits.</summary>
    public PullBand Band()
    {
        // Hands stretch warmer film further, and it needs less.
        (double low, double high) = (CoolestK, BestK);
        for (int halving = 0; halving < 60; halving++)
        {
            double middle = (low + high) / 2;
            if (ByHand(middle) < MidwayAt(middle)) low = middle;
            else high = middle;
        }
        return new PullBand(Temperature.FromKelvins(high), Temperature.FromKelvins(AirInSunK(BestK - (looseStrain / FilmSheet.PerK))));
    }

    private const double CoolestK = 200;

    private double MidwayAt(double filmK) => FilmSheet.PerK * (BestK - filmK);

    private bool HasRoom => coldStrain + hotSlack >= FilmSheet.PerK * (hottestK - coldestK);

    /// <summary>How tight to pull, by temperature.</summary>
    public PullPlan Plan() => new()
    {
        Coldest = Coldest,
        Hottest = Temperature.FromKelvins(hottestK),
        ColdLimit = Ratio.FromValue(coldStrain),
        HotLimit = Ratio.FromValue(hotSlack),
        Best = Temperature.FromKelvins(BestK),
        HasRoom = HasRoom,
        GaugePush = gauge,
        OneHand = oneHand,
        Hands = hands,
        Planned = Planned,
        Rows = [.. Temperatures().Select(each => Row(each.Kelvins))],
        RowAt = film => Row(film.Kelvins),
        Loosest = Ratio.FromValue(looseStrain),
        Bay = Length.FromMetres(bayM),
        Arc = Length.FromMetres(arcM),
    };

    private IEnumerable<Temperature> Temperatures() => tunnel.Units switch
    {
        UnitSystem.UsCustomary => Enumerable.Range(1, 11).Select(ten => Temperature.FromFahrenheit(10 * ten)),
        UnitSystem.Metric => Enumerable.Range(-2, 13).Select(five => Temperature.FromCelsius(5 * five)),
    };

    private (double Least, double Most, double Target, PullAdvice Advice) Aim(double filmK)
    {
        double least = (FilmSheet.PerK * (hottestK - filmK)) - hotSlack, most = coldStrain - (FilmSheet.PerK * (filmK - coldestK));
        double byHand = ByHand(filmK);
        double target = Math.Clamp((least + most) / 2, looseStrain, byHand);
        PullAdvice advice = most < looseStrain ? PullAdvice.TooHot
            : least > byHand ? PullAdvice.TooCold
            : target > SnugStrain ? PullAdvice.PastSnug
            : target < -SnugStrain ? PullAdvice.Loose
            : PullAdvice.Snug;
        return (least, most, target, advice);
    }

    private double ByHand(double filmK) => handStrainPerPa / FilmSheet.YoungPa(filmK);

    private PullRow Row(double filmK)
    {
        (double least, double most, double target, PullAdvice advice) = Aim(filmK);
        double hot = FilmSheet.StrainAt(hottestK, target, filmK), cold = FilmSheet.StrainAt(coldestK, target, filmK);
        double coldPull = FilmSheet.PullNPerM(cold, coldestK, thicknessM);
        return new PullRow
        {
            Film = Temperature.FromKelvins(filmK),
            AirInSun = Temperature.FromKelvins(AirInSunK(filmK)),
            Least = Ratio.FromValue(least),
            Most = Ratio.FromValue(most),
            Target = Ratio.FromValue(target),
            ByHand = Ratio.FromValue(ByHand(filmK)),
            Advice = advice,
            PastSnugPerBay = Length.FromMetres(target * bayM),
            PastSnugAlong = Length.FromMetres(target * tunnel.Length.Metres),
            PastSnugOverBow = Length.FromMetres(target * arcM),
            Sag = Length.FromMetres(FilmSheet.SagM(target, filmK, thicknessM, bayM)),
            Give = Length.FromMetres(FilmSheet.GiveM(gauge.Newtons, target, filmK, thicknessM, bayM)),
            HandPull = Force.FromNewtons(FilmSheet.PullNPerM(target, filmK, thicknessM) * tunnel.Length.Metres),
            ColdPull = ForcePerLength.FromNewtonsPerMetre(coldPull),
            ColdPullCrept = ForcePerLength.FromNewtonsPerMetre(coldPull * FilmStrength.LastingYoungPart.Least),
            HotSag = Length.FromMetres(FilmSheet.SagM(hot, hottestK, thicknessM, bayM)),
            HotSagCrept = Length.FromMetres(FilmSheet.SagM(FilmSheet.StrainAt(hottestK, Math.Min(0, target), filmK), hottestK, thicknessM, bayM)),
        };
    }

    // The air under which film in full sun, open on both sides, has that temperature: the balance rises with the air, so that a few steps settle it.
    private static double AirInSunK(double filmK)
    {
        double airK = filmK;
        for (int step = 0; step < 40; step++)
        {
            double off = filmK - FilmWarmth.FilmK(airK, airK, FilmWarmth.FullSunWPerM2, FilmWarmth.ClearSkyK(airK), 0);
            airK += off;
            if (Math.Abs(off) < 1e-9) break;
        }
        return airK;
    }

    /// <summary>What is to be said of the year and of the planned day.</summary>
    public ImmutableArray<Diagnostic> Found()
    {
        string best = TapeText.Of(Temperature.FromKelvins(BestK), tunnel.Units);
        PullAdvice advice = Aim(install.Kelvins).Advice;
        var found = ImmutableArray.CreateBuilder<Diagnostic>();
        if (!HasRoom)
        {
            found.Add(new Diagnostic("cover.pull.no-room", Severity.Warning, "loads.coldest",
                "Between the coldest and the hottest film no pull keeps both limits: it will stretch for good in the cold, or hang and flap in the heat.",
                $"{TapeText.Of(Temperature.FromKelvins(coldestK), tunnel.Units)} to {TapeText.Of(Temperature.FromKelvins(hottestK), tunnel.Units)}",
                "sides that let the film be pulled again in the first warm weeks, ropes over it, closer bows"));
        }
        string near = $"a day near {best}";
        if (advice == PullAdvice.TooCold)
        {
            found.Add(new Diagnostic("cover.pull.too-cold", Severity.Warning, "loads.installTemperature",
                "So cold, film cannot be pulled by hand as tight as it must be: it hangs and flaps on the hottest day.", TapeText.Of(install, tunnel.Units), near));
        }
        if (advice == PullAdvice.TooHot)
        {
            found.Add(new Diagnostic("cover.pull.too-hot", Severity.Warning, "loads.installTemperature",
                "So hot, film would have to be left hanging further than it can be laid evenly, or it is too tight on the coldest day.", TapeText.Of(install, tunnel.Units), near));
        }
        return found.ToImmutable();
    }
}
