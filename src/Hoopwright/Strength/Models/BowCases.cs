using System.Collections.Immutable;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Strength.Models;

/// <summary>The combinations that bows are tried on: at the site, and with one snow or wind to look for.</summary>
internal sealed class BowCases
{
    private readonly TunnelLoads _loads;
    private readonly Dictionary<string, int> _index;

    internal BowCases(TunnelLoads loads)
    {
        _loads = loads;
        _index = loads.Cases.Select((load, at) => (load.Code, at)).ToDictionary(pair => pair.Code, pair => pair.at, StringComparer.Ordinal);
    }

    /// <summary>Combinations at strength level whose every load the plan gives.</summary>
    internal IEnumerable<LoadedCase> AtSite() => _loads.Combinations
        .Where(combination => combination.IsStrengthLevel && combination.Terms.All(term => IsKnown(Case(term)))).Select(Loaded);

    /// <summary>
    /// Combinations that posts, wood and film are held against, whose every load the plan gives: those of allowable strength design, or
    /// those at strength level where the standard has no others (EN 1990), which asks for more.
    /// </summary>
    internal ImmutableArray<LoadCombination> ForGround()
    {
        bool hasAllowable = GroundMethod == DesignMethod.Asd;
        return
        [
            .. _loads.Combinations.Where(combination => combination.IsStrengthLevel != hasAllowable && combination.Terms.All(term => IsKnown(Case(term))))
                .Select(combination => hasAllowable ? combination : combination with { Words = combination.Words + " (at strength level: the standard has no other)" }),
        ];
    }

    /// <summary>At which level those are.</summary>
    internal DesignMethod GroundMethod => _loads.Combinations.Any(combination => !combination.IsStrengthLevel) ? DesignMethod.Asd : DesignMethod.Lrfd;

    /// <summary>A combination with the loads of the site.</summary>
    internal LoadedCase Loaded(LoadCombination combination) => new(combination.Code, combination.Words, [.. combination.Terms.Select(AtSite)], []);

    /// <summary>Loads in which one snow or one wind is looked for.</summary>
    /// <param name="scale">Snow or wind.</param>
    /// <param name="level">With the factors of the code, or the load once.</param>
    internal IEnumerable<LoadedCase> Scaled(LoadScale scale, StrengthLevel level)
    {
        LoadKind kind = scale == LoadScale.Snow ? LoadKind.Snow : LoadKind.Wind;
        foreach (LoadCase load in _loads.Cases.Where(load => load.Scale == scale && load.Kind == kind && load.Counts))
        {
            IEnumerable<LoadedCase> found = level switch
            {
                StrengthLevel.Code => WithFactors(load),
                StrengthLevel.Storm => Once(load),
            };
            foreach (LoadedCase each in found)
                yield return each;
        }
    }

    // Dead load stays; what else varies is left out, and of the rest the combinations with the greatest factor on the load count.
    private IEnumerable<LoadedCase> WithFactors(LoadCase load)
    {
        var holding = _loads.Combinations.Where(combination => combination.IsStrengthLevel && combination.Terms.Any(term => term.CaseCode == load.Code)).ToArray();
        if (holding.Length == 0) yield break;
        double most = holding.Max(combination => FactorOf(combination, load));
        HashSet<string> said = new(StringComparer.Ordinal);
        foreach (LoadCombination combination in holding.Where(each => FactorOf(each, load) > most - 1e-9))
        {
            CombinationTerm[] stay = [.. combination.Terms.Where(term => Case(term).Scale == LoadScale.Fixed && Case(term).Kind is LoadKind.Dead or LoadKind.Crop)];
            string key = string.Join(';', stay.Select(term => FormattableString.Invariant($"{term.CaseCode} {term.Factor.Value:R}")));
            if (said.Add(key))
                yield return new LoadedCase(load.Code, load.Words, [.. stay.Select(AtSite)], [new BowTerm(_index[load.Code], most)]);
        }
    }

    /// <summary>One case once, with the dead load; and with the crops hung besides, where there are any.</summary>
    internal IEnumerable<LoadedCase> Once(LoadCase load)
    {
        BowTerm[] dead = [.. _loads.Cases.Where(each => each.Kind == LoadKind.Dead).Select(each => new BowTerm(_index[each.Code], 1))];
        BowTerm[] crop = [.. _loads.Cases.Where(each => each.Kind == LoadKind.Crop).Select(each => new BowTerm(_index[each.Code], 1))];
        yield return new LoadedCase(load.Code, load.Words, [.. dead], [new BowTerm(_index[load.Code], 1)]);
        if (crop.Length > 0)
            yield return new LoadedCase(load.Code, load.Words + ", crops hung", [.. dead, .. crop], [new BowTerm(_index[load.Code], 1)]);
    }

    private static double FactorOf(LoadCombination combination, LoadCase load) => combination.Terms.First(term => term.CaseCode == load.Code).Factor.Value;

    private LoadCase Case(CombinationTerm term) => _loads.Cases[_index[term.CaseCode]];

    private static bool IsKnown(LoadCase load) => load.Scale == LoadScale.Fixed || load.SiteReference is not null;

    private BowTerm AtSite(CombinationTerm term)
    {
        LoadCase load = Case(term);
        double reference = load.Scale == LoadScale.Fixed ? 1 : load.SiteReference?.Pascals ?? 0;
        return new BowTerm(_index[term.CaseCode], term.Factor.Value * reference);
    }
}
