using System.Collections.Immutable;
using Hoopwright.Cover.Pull;
using Hoopwright.Layout;
using Hoopwright.Strength.Film;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Strength.Parts;

/// <summary>
/// The roof film as the cold pulls it, on every length of its edges. At the lower end nothing of the pull has crept away; at the upper
/// end a third is left, as where the cold comes slowly.
/// </summary>
/// <param name="Combination">The combination that takes most of the cold.</param>
/// <param name="WholeNPerM">The pull at its factor, whole.</param>
/// <param name="CreptNPerM">What is left of it at the least.</param>
/// <param name="YieldTimes">How many times the yield at 23 °C film has so cold: yield and stiffness rise alike.</param>
internal sealed record ColdFilm(LoadCombination Combination, double WholeNPerM, double CreptNPerM, double YieldTimes)
{
    /// <summary>The film in the cold; null where the cold does not stretch it.</summary>
    internal static ColdFilm? Of(TunnelLoads loads, ImmutableArray<LoadCombination> combinations)
    {
        LoadCase cold = loads.Case(OtherCases.Cold);
        double FactorOf(LoadCombination each) => each.Terms.Where(term => term.CaseCode == OtherCases.Cold).Sum(term => term.Factor.Value);
        if (cold.FilmPull is not { Steady.NewtonsPerMetre: > 0 and var pullNPerM } || combinations.MaxBy(FactorOf) is not { } most || FactorOf(most) is not (> 0 and var factor)) return null;
        return new ColdFilm(most, factor * pullNPerM, factor * pullNPerM * FilmStrength.LastingYoungPart.Least, cold.Coefficients.First(each => each.Formula == FilmSheet.Stiffening).Value.Value / FilmMaterial.YoungPa);
    }

    /// <summary>The line of the film itself.</summary>
    internal PartStrength Part(Tunnel tunnel)
    {
        FilmStrength yield = FilmStrength.Yield with { LeastPa = FilmStrength.Yield.LeastPa * YieldTimes };
        double thicknessM = RoofFilm.ThicknessM(tunnel);
        FilmCheck weak = FilmCheck.Of(WholeNPerM, thicknessM, yield, FilmSheet.Pull);
        return new PartStrength
        {
            Kind = PartKind.Film,
            Code = "film-cold",
            Words = "roof film stretched by the cold",
            Where = "all over, put up as planned",
            AtWeakest = PartStrength.Shown(weak.Utilisation),
            AtStrongest = PartStrength.Shown(CreptNPerM / thicknessM / (FilmStrength.Yield.MostPa * YieldTimes)),
            Governs = weak.Governs,
            LoadCode = Combination.Code,
            LoadWords = Combination.Words,
            Checks = [weak],
        };
    }
}
