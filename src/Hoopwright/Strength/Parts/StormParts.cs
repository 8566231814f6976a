using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Models;

namespace Hoopwright.Strength.Parts;

/// <summary>The wind and snow at which posts, ends and film reach what is allowed: the load once.</summary>
internal static class StormParts
{
    // A gust of about 125 m/s and 20 kPa of ground snow are beyond anything on record.
    private const double MostWindPa = 10_000, MostSnowPa = 20_000;

    // The use of a part is near to straight in the load, so the second size is where the worst of them would be used to the full.
    private const double LeastStep = 1.0 / 16, MostStep = 4, NearStep = 0.8;

    /// <summary>Every part of every state that the plan enters a load for, weakest first.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="study">Its bows.</param>
    /// <param name="loads">Its loads.</param>
    internal static ImmutableArray<StormPart> Of(Tunnel tunnel, BowStudy study, TunnelLoads loads) =>
    [
        .. new[] { StormState.SnowEven, StormState.SnowOneSide, StormState.Shut, StormState.Open }
            .SelectMany(state => Of(tunnel, study, loads, state))
            .OrderBy(part => part.State).ThenBy(part => part.LeastWind?.MetresPerSecond ?? part.LeastSnow?.Pascals ?? (part.IsKnown ? double.MaxValue : -1)).ThenBy(part => part.Code, StringComparer.Ordinal),
    ];

    private static IEnumerable<StormPart> Of(Tunnel tunnel, BowStudy study, TunnelLoads loads, StormState state)
    {
        bool isSnow = state is StormState.SnowEven or StormState.SnowOneSide;
        ImmutableArray<LoadCase> cases = [.. BowStudy.CasesOf(state, loads)];
        if ((isSnow ? loads.GroundSnow?.Pascals : loads.Wind is { } wind ? loads.ReferenceOf(wind).Pascals : null) is not (> 0 and var enteredPa) || cases.IsEmpty) return [];
        SortedDictionary<double, ImmutableArray<PartStrength>> tried = [];
        PartStrength[] first = [.. Try(enteredPa)];
        if (first.Length == 0) return [];
        double worst = first.Max(part => part.AtWeakest?.Value ?? 0), times = worst > 0 ? Math.Clamp(1 / worst, LeastStep, MostStep) : MostStep;
        Try(enteredPa * (Math.Abs(times - 1) < 1 - NearStep ? NearStep : times));
        double mostPa = isSnow ? MostSnowPa : MostWindPa;
        if (first.Select(part => Root(part.Code, each => each.AtWeakest)).Min() is { } nearestPa && nearestPa < mostPa) Try(nearestPa);
        return first.Select(Limit).Where(part => !part.IsKnown || (part.LeastWind, part.LeastSnow) is not (null, null));

        ImmutableArray<PartStrength> Try(double pa)
        {
            if (!tried.TryGetValue(pa, out ImmutableArray<PartStrength> found))
            {
                TunnelLoads at = At(loads, cases, isSnow, Pressure.FromPascals(pa));
                BowStudy under = study.Under(at);
                tried.Add(pa, found = TunnelParts.Of(tunnel, at, under, under.FootLoads(softest: false), new Answers(tunnel.Units)));
            }
            return found;
        }

        StormPart Limit(PartStrength part)
        {
            double? leastPa = Root(part.Code, each => each.AtWeakest), greatestPa = Root(part.Code, each => each.AtStrongest);
            bool known = tried.Values.Any(parts => Of(parts, part.Code)?.AtWeakest is not null);
            var limit = new StormPart { State = state, Kind = part.Kind, Code = part.Code, Words = part.Words, Governs = part.Governs, IsKnown = known };
            return isSnow
                ? limit with { LeastSnow = InReach(leastPa) is { } least ? Pressure.FromPascals(least) : null, MostSnow = InReach(greatestPa) is { } most ? Pressure.FromPascals(most) : null }
                : limit with { LeastWind = InReach(leastPa) is { } slowest ? loads.WindOf(Pressure.FromPascals(slowest)) : null, MostWind = InReach(greatestPa) is { } fastest ? loads.WindOf(Pressure.FromPascals(fastest)) : null };
        }

        double? InReach(double? pa) => pa < mostPa ? pa : null;

        // Where the line through the sizes that were tried meets 1; what cannot be counted on at a size is past it.
        double? Root(string code, Func<PartStrength, Ratio?> use)
        {
            (double Pa, double Use)[] points = [.. tried.Select(each => (each.Key, Of(each.Value, code) is { } part ? use(part)?.Value ?? double.PositiveInfinity : 0))];
            int past = Array.FindIndex(points, point => point.Use > 1);
            if (past == 0 && double.IsInfinity(points[0].Use)) return null;
            (int low, int high) = past < 0 ? (points.Length - 2, points.Length - 1) : past == 0 ? (0, 1) : (past - 1, past);
            if (double.IsInfinity(points[high].Use)) return past > 0 ? points[low].Pa : points[0].Pa / points[0].Use;
            double slope = (points[high].Use - points[low].Use) / (points[high].Pa - points[low].Pa);
            if (slope <= 0) return past == 0 ? points[0].Pa / points[0].Use : null;
            double atPa = points[low].Pa + ((1 - points[low].Use) / slope);
            return atPa > 0 ? atPa : points[0].Pa / points[0].Use;
        }
    }

    private static PartStrength? Of(ImmutableArray<PartStrength> parts, string code) => parts.FirstOrDefault(part => part.Code == code);

    /// <summary>Each case by itself with the dead load, and snow with the crops that may hang then too; at the level that posts, wood and film are held at.</summary>
    private static TunnelLoads At(TunnelLoads loads, ImmutableArray<LoadCase> cases, bool isSnow, Pressure reference)
    {
        bool strengthOnly = loads.Combinations.All(combination => combination.IsStrengthLevel);
        HashSet<string> codes = [.. cases.Select(load => load.Code)];
        CombinationTerm[] stay = [.. loads.Cases.Where(load => load.Kind == LoadKind.Dead || (isSnow && load.Kind == LoadKind.Crop)).Select(load => new CombinationTerm(load.Code, Ratio.FromValue(1)))];
        return loads with
        {
            Cases = [.. loads.Cases.Select(load => codes.Contains(load.Code) ? load with { SiteReference = reference } : load)],
            Combinations =
            [
                .. cases.Select(load => new LoadCombination
                {
                    Code = "storm-" + load.Code, Words = load.Words, IsStrengthLevel = strengthOnly, Terms = [.. stay, new(load.Code, Ratio.FromValue(1))], Source = Citation.CommonPractice,
                }),
            ],
        };
    }
}
