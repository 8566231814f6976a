using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>Which cases are taken together, with which factors.</summary>
internal static class Combinations
{
    /// <summary>One line of a list of combinations.</summary>
    private sealed record Rule(string Code, bool Strength, double Dead, double Crop, double Snow, double Wind, double Person, double Temperature, double Building, Citation Source);

    // Over the sea, m: table A1.1 of EN 1990 has more of the snow stay where another load leads.
    private const double HighM = 1000;

    public static ImmutableArray<LoadCombination> Of(LoadSite site, IReadOnlyList<LoadCase> cases)
    {
        ImmutableArray<Rule> rules = site.Standard switch
        {
            LoadStandard.Asce7Of2016 or LoadStandard.Asce7Of2022 => Asce(site),
            LoadStandard.En1991 => En(site),
        };
        return [.. rules.SelectMany(rule => Expand(rule, [.. cases.Where(each => each.Counts)]))];
    }

    // Snow of 7-22 is at strength level already: 0.7 of it is allowable, and its LRFD factors are lower.
    private static ImmutableArray<Rule> Asce(LoadSite site)
    {
        bool of2022 = site.Standard == LoadStandard.Asce7Of2022;
        Citation Asd(string place) => LoadSources.Asce7(site.Standard, "2.4.1, " + place);
        Citation Lrfd(string place) => LoadSources.Asce7(site.Standard, "2.3.1, " + place);
        Citation asdSelf = LoadSources.Asce7(site.Standard, "2.4.4"), lrfdSelf = LoadSources.Asce7(site.Standard, "2.3.4");
        Citation building = new("ASCE/SEI 37, Design Loads on Structures during Construction, with the factors of ASCE 7", "2.2", Standing.FromMemory);
        double s = of2022 ? 0.7 : 1, full = of2022 ? 1.0 : 1.6, along = of2022 ? 0.3 : 0.5;
        return
        [
            new("asd-1", false, 1, 1, 0, 0, 0, 0, 0, Asd("1")),
            new("asd-2", false, 1, 1, 0, 0, 1, 0, 0, Asd("2")),
            new("asd-3", false, 1, 1, s, 0, 0, 0, 0, Asd("3")),
            new("asd-5", false, 1, 1, 0, 0.6, 0, 0, 0, Asd("5")),
            new("asd-6", false, 1, 1, 0.75 * s, 0.45, 0, 0, 0, Asd("6")),
            new("asd-7", false, 0.6, 0, 0, 0.6, 0, 0, 0, Asd("7")),
            new("asd-t", false, 1, 1, 0, 0, 0, 1, 0, asdSelf),
            new("asd-st", false, 1, 1, 0.75 * s, 0, 0, 0.75, 0, asdSelf),
            new("asd-b5", false, 1, 0, 0, 0, 0, 0, 0.6, building),
            new("asd-b7", false, 0.6, 0, 0, 0, 0, 0, 0.6, building),
            new("lrfd-1", true, 1.4, 1.4, 0, 0, 0, 0, 0, Lrfd("1")),
            new("lrfd-2", true, 1.2, 1.2, 0, 0, 1.6, 0, 0, Lrfd("2")),
            new("lrfd-3", true, 1.2, 1.2, full, 0, 0, 0, 0, Lrfd("3")),
            new("lrfd-3w", true, 1.2, 1.2, full, 0.5, 0, 0, 0, Lrfd("3")),
            new("lrfd-4", true, 1.2, 1.2, along, 1, 0, 0, 0, Lrfd("4")),
            new("lrfd-5", true, 0.9, 0, 0, 1, 0, 0, 0, Lrfd("5")),
            new("lrfd-t", true, 1.2, 1.2, 0, 0, 0, 1.2, 0, lrfdSelf),
            new("lrfd-st", true, 1.2, 1.2, along, 0, 0, 1, 0, lrfdSelf),
            new("lrfd-b4", true, 1.2, 0, 0, 0, 0, 0, 1, building),
            new("lrfd-b5", true, 0.9, 0, 0, 0, 0, 0, 1, building),
        ];
    }

    // EN 1990, 6.10, with ψ0 of 0.5 for snow, 0.7 higher than 1000 m, and 0.6 for wind; what is unfavourable times K_FI of the class.
    private static ImmutableArray<Rule> En(LoadSite site)
    {
        double k = site.Risk switch { RiskCategory.I => 0.9, RiskCategory.II => 1.0, RiskCategory.III => 1.1, RiskCategory.IV => 1.1 };
        double g = 1.35 * k, q = 1.5 * k, along = site.ElevationM > HighM ? 0.7 : 0.5;
        Citation source = LoadSources.En1990("6.4.3.2 (6.10), Tables A1.1, A1.2(B) and B3; K_FI 0.9, 1.0, 1.1 by class");
        return
        [
            new("en-g", true, g, g, 0, 0, 0, 0, 0, source),
            new("en-s", true, g, g, q, 0, 0, 0, 0, source),
            new("en-sw", true, g, g, q, q * 0.6, 0, 0, 0, source),
            new("en-ws", true, g, g, q * along, q, 0, 0, 0, source),
            new("en-w", true, g, g, 0, q, 0, 0, 0, source),
            new("en-w-lift", true, 1, 0, 0, q, 0, 0, 0, source),
            new("en-p", true, g, g, 0, 0, q, 0, 0, source),
            new("en-t", true, g, g, 0, 0, 0, q, 0, source),
            new("en-ts", true, g, g, q, 0, 0, q * 0.6, 0, source),
            new("en-b", true, g, 0, 0, 0, 0, 0, q, source),
            new("en-b-lift", true, 1, 0, 0, 0, 0, 0, q, source),
        ];
    }

    private static IEnumerable<LoadCombination> Expand(Rule rule, ImmutableArray<LoadCase> cases)
    {
        ImmutableArray<LoadCase> Those(double factor, LoadKind kind) => factor == 0 ? [] : [.. cases.Where(each => each.Kind == kind)];
        // Snow that fills a gap lies long after the storm, and the least wind of a code stands for itself: neither meets the other action.
        bool both = rule.Snow != 0 && rule.Wind != 0;
        ImmutableArray<LoadCase> snows = [.. Those(rule.Snow, LoadKind.Snow).Where(each => !both || !each.Code.StartsWith("snow-gap", StringComparison.Ordinal))];
        ImmutableArray<LoadCase> winds = [.. Those(rule.Wind, LoadKind.Wind).Where(each => !both || each.Scale != LoadScale.Fixed)];
        ImmutableArray<LoadCase> people = Those(rule.Person, LoadKind.Person), weathers = Those(rule.Temperature, LoadKind.Temperature), buildings = Those(rule.Building, LoadKind.Construction);
        if ((rule.Snow != 0 && snows.IsEmpty) || (rule.Wind != 0 && winds.IsEmpty) || (rule.Person != 0 && people.IsEmpty) || (rule.Building != 0 && buildings.IsEmpty)) yield break;
        foreach (LoadCase? snow in OrNone(snows))
        {
            foreach (LoadCase? wind in OrNone(winds))
            {
                foreach (LoadCase? other in OrNone([.. people, .. weathers, .. buildings]))
                {
                    List<(LoadCase Case, double Factor, string Letter)> terms = [];
                    foreach (LoadCase dead in cases.Where(each => each.Kind == LoadKind.Dead && (rule.Building == 0 || each.SelfWeight))) terms.Add((dead, rule.Dead, "D"));
                    if (rule.Crop != 0) terms.AddRange(cases.Where(each => each.Kind == LoadKind.Crop).Select(crop => (crop, rule.Crop, "crop")));
                    if (snow is not null) terms.Add((snow, rule.Snow, "S"));
                    if (wind is not null) terms.Add((wind, rule.Wind, "W"));
                    if (other is not null) terms.Add((other, rule.Person + rule.Temperature + rule.Building, other.Kind == LoadKind.Person ? "L" : other.Kind == LoadKind.Temperature ? "T" : "W"));
                    yield return new LoadCombination
                    {
                        Code = string.Join('-', [rule.Code, .. new[] { snow?.Code, wind?.Code, other?.Code }.OfType<string>()]),
                        Words = Words(terms),
                        IsStrengthLevel = rule.Strength,
                        Terms = [.. terms.Select(term => new CombinationTerm(term.Case.Code, Ratio.FromValue(term.Factor)))],
                        Source = rule.Source,
                    };
                }
            }
        }
    }

    private static ImmutableArray<LoadCase?> OrNone(ImmutableArray<LoadCase> cases) => cases.IsEmpty ? [null] : [.. cases];

    private static string Words(List<(LoadCase Case, double Factor, string Letter)> terms)
    {
        string sum = string.Join(" + ", terms.Select(term => (term.Letter, term.Factor)).Distinct()
            .Select(term => term.Factor == 1 ? term.Letter : FormattableString.Invariant($"{term.Factor:0.###} {term.Letter}")));
        string what = string.Join("; ", terms.Where(term => term.Letter is not ("D" or "crop")).Select(term => term.Case.Words));
        return what.Length == 0 ? sum : $"{sum}: {what}";
    }
}
