using System.Collections.Immutable;
using Hoopwright.Cutting;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts;

/// <summary>The cheapest way found of placing the joints of all runs of one item and size, and of cutting the pieces.</summary>
/// <param name="Layouts">The layout of each run, in the order of the runs.</param>
/// <param name="Plan">How to cut.</param>
/// <param name="LowerBound">No layout considered can count for less.</param>
/// <param name="Considered">How many ways of placing the joints were considered.</param>
/// <param name="Whole">False when some ways were left out because there were too many.</param>
/// <param name="Rooms">The room that pieces were given.</param>
internal sealed record CutChoice(ImmutableArray<JointLayout> Layouts, CutPlan Plan, Money LowerBound, int Considered, bool Whole, CutRooms Rooms);

/// <summary>
/// Searches the ways of joining runs together with the ways of cutting: each way of joining is a cutting job. Jobs are taken
/// by their own lower bounds, least first, until no other can be cheaper than the best so far.
/// </summary>
internal sealed class CutSearch(ImmutableArray<StockOffer> offers, CutRooms rooms, Length trim, CutEffort effort, CutMemory? memory = null)
{
    private const int MostWays = 4000;
    private const int MostJobs = 40;
    private const int FewestJobs = 20;
    private const long StepsAJob = 5_000_000;

    private static readonly ImmutableArray<int> LayoutsKept = [12, 8, 5, 3, 2, 1];

    private readonly Dictionary<JointLayout, double> bounds = new(ReferenceEqualityComparer.Instance);

    /// <summary>What the best bought stock gives for its price, per metre of piece and saw cut.</summary>
    private readonly double dearestPerM = offers.Where(offer => !offer.OnHand)
        .Max(offer => (double)offer.CostInPlan.Amount / (offer.Length - trim + rooms.Kerf).Metres);

    /// <summary>Searches.</summary>
    /// <param name="single">Exact lengths of the pieces that are not joined.</param>
    /// <param name="runs">For each run its ways of joining; at least one each.</param>
    /// <param name="runsKey">What the runs are, exactly, so that their ways need not be listed twice; null to list them anyway.</param>
    public CutChoice Best(ImmutableArray<Length> single, ImmutableArray<ImmutableArray<JointLayout>> runs, string? runsKey = null)
    {
        (ImmutableArray<RunKind> kinds, List<Way> ways, bool whole) = memory is null || runsKey is null ? Listed(runs) : memory.Kept(WaysKey(runsKey), () => Listed(runs));
        double singleBound = single.Sum(WorthOf);
        double onHandWorth = offers.Where(offer => offer.OnHand).Sum(offer => (offer.Limit ?? 0) * dearestPerM * (offer.Length - trim + rooms.Kerf).Metres);
        // By their bounds, the least first; a sum of doubles may be a hair off, which the safe bound below allows for.
        IEnumerable<(Way Way, double Bound)> ordered = ways.Select(way => (way, Math.Max(0, singleBound + way.Bound - onHandWorth)));

        // The effort is for the whole search: half of it to compare the ways, the rest for the one chosen.
        // Under the work of one job there is nothing to compare ways with: the one of the least bound is taken.
        int jobs = effort.Steps < StepsAJob ? 1 : (int)Math.Clamp(effort.Steps / 2 / StepsAJob, FewestJobs, MostJobs);
        var share = new CutEffort(effort.Steps / 2 / jobs);
        List<(Way Way, CutPlan Plan)> tried = [];
        int best = 0;
        decimal untriedBound = decimal.MaxValue;
        foreach ((Way way, double bound) in ordered)
        {
            // A hair under the bound, which is a sum of doubles.
            decimal safeBound = Reachable(Math.Max(0, (decimal)(bound * (1 - 1e-9)) - 0.0001m));
            if (tried.Count > 0 && ((tried[best].Plan.Found && safeBound >= tried[best].Plan.Cost.Amount) || tried.Count == jobs))
            {
                untriedBound = safeBound;
                break;
            }
            tried.Add((way, Solve(Job(single, way), ways.Count == 1 ? effort : share)));
            if (Better(tried[^1], tried[best])) best = tried.Count - 1;
        }
        if (ways.Count > 1 && !tried[best].Plan.Proven)
        {
            CutPlan again = Solve(Job(single, tried[best].Way), new CutEffort(effort.Steps / 2));
            tried[best] = (tried[best].Way, again.Cost <= tried[best].Plan.Cost ? again : tried[best].Plan);
        }
        decimal cost = tried[best].Plan.Cost.Amount;
        decimal lowerBound = Math.Min(untriedBound, tried.Min(each => each.Plan.LowerBound.Amount));
        return new CutChoice(LayoutsOf(runs.Length, kinds, tried[best].Way), tried[best].Plan, new Money(Math.Min(cost, lowerBound)), ways.Count, whole, rooms);
    }

    private CutPlan Solve(CutJob job, CutEffort work) => memory is null ? Cutter.Solve(job, work) : memory.Solve(job, work);

    private static bool Better((Way Way, CutPlan Plan) one, (Way Way, CutPlan Plan) best)
    {
        if (!one.Plan.Found) return false;
        if (!best.Plan.Found) return true;
        return one.Plan.Cost < best.Plan.Cost || (one.Plan.Cost == best.Plan.Cost && one.Way.Pieces < best.Way.Pieces);
    }

    private CutJob Job(ImmutableArray<Length> single, Way way) => new()
    {
        Stock = [.. offers.Select((offer, index) => new CutStock(FormattableString.Invariant($"{index}"), offer.Length, offer.CostInPlan, offer.Limit))],
        Pieces =
        [
            .. single.Concat(way.Layouts.SelectMany(layouts => layouts).SelectMany(layout => layout.Pieces)).Select(rooms.Of)
                .GroupBy(JointLayout.GrainsOf).OrderByDescending(group => group.Key)
                .Select(group => new CutPiece(FormattableString.Invariant($"{group.Key}"), group.First(), group.Count())),
        ],
        Kerf = rooms.Kerf,
        Trim = trim,
    };

    /// <summary>Where one stock length is bought, only whole ones of it can be paid for.</summary>
    private decimal Reachable(decimal bound) =>
        offers.Where(offer => !offer.OnHand).ToList() is [{ CostInPlan.Amount: > 0 and var price }] ? Math.Ceiling(bound / price) * price : bound;

    /// <summary>
    /// What a piece must at least count for: its share of the bought stock that serves it best. Shares of the pieces of one
    /// bar never come to more than the bar, so their sum is a lower bound (a feasible solution of the dual).
    /// </summary>
    private double WorthOf(Length piece) => offers
        .Where(offer => !offer.OnHand && (offer.Length - trim).Metres >= rooms.Of(piece).Metres - 1e-7)
        .Select(offer => (double)offer.CostInPlan.Amount * (rooms.Of(piece) + rooms.Kerf).Metres / (offer.Length - trim + rooms.Kerf).Metres)
        .DefaultIfEmpty(0).Min();

    /// <summary>Runs that can be joined alike are alike: only how many of them take each layout matters.</summary>
    private ImmutableArray<RunKind> KindsOf(ImmutableArray<ImmutableArray<JointLayout>> runs) =>
    [
        .. runs.Select((layouts, run) => (layouts, run))
            .GroupBy(item => string.Join('|', item.layouts.Select(layout => layout.SamePieces)), StringComparer.Ordinal)
            .Select(group => new RunKind(
                [.. group.First().layouts.OrderBy(Bound).ThenBy(layout => layout.Pieces.Length)], [.. group.Select(item => item.run)])),
    ];

    private AllWays Listed(ImmutableArray<ImmutableArray<JointLayout>> runs)
    {
        ImmutableArray<RunKind> kinds = KindsOf(runs);
        (List<Way> ways, bool whole) = Ways(kinds);
        return new AllWays(kinds, [.. ways.OrderBy(way => way.Bound).ThenBy(way => way.Pieces)], whole);
    }

    // What the list of ways depends on besides the runs.
    private string WaysKey(string runsKey)
    {
        ExactKey key = new();
        key.Add(trim).Add(rooms.Kerf).Add(rooms.Key);
        foreach (StockOffer offer in offers) key.Add(offer.Length).Add((double)offer.CostInPlan.Amount).Add(offer.OnHand ? 1 : 0).Add(offer.Limit ?? -1);
        return key + runsKey;
    }

    private (List<Way> Ways, bool Whole) Ways(ImmutableArray<RunKind> kinds)
    {
        foreach (int kept in LayoutsKept)
        {
            double count = 1;
            foreach (RunKind kind in kinds) count *= Choices(Math.Min(kept, kind.Layouts.Length), kind.Runs.Length);
            if (count > MostWays && kept > 1) continue;
            List<Way> ways = [new Way([], 0, 0)];
            foreach (RunKind kind in kinds)
            {
                ImmutableArray<JointLayout> taken = [.. kind.Layouts.Take(kept)];
                ways = [.. ways.SelectMany(way => Repeated(taken, kind.Runs.Length, 0).Select(chosen => way.With(chosen, chosen.Sum(Bound))))];
            }
            return (ways, kinds.All(kind => kind.Layouts.Length <= kept));
        }
        throw new InvalidOperationException("The last entry keeps one layout a run.");
    }

    /// <summary>What the pieces of a layout must at least count for; asked for each of thousands of ways, so it is kept.</summary>
    private double Bound(JointLayout layout)
    {
        if (!bounds.TryGetValue(layout, out double bound)) bounds.Add(layout, bound = layout.Pieces.Sum(WorthOf));
        return bound;
    }

    /// <summary>How many ways there are to give so many alike runs one of some layouts each.</summary>
    private static double Choices(int layouts, int runs)
    {
        double count = 1;
        for (int run = 1; run <= runs; run++) count = count * (layouts + run - 1) / run;
        return count;
    }

    private static IEnumerable<ImmutableArray<JointLayout>> Repeated(ImmutableArray<JointLayout> layouts, int times, int from)
    {
        if (times == 0)
        {
            yield return [];
            yield break;
        }
        for (int index = from; index < layouts.Length; index++)
        {
            foreach (ImmutableArray<JointLayout> rest in Repeated(layouts, times - 1, index)) yield return rest.Insert(0, layouts[index]);
        }
    }

    /// <summary>Deals the layouts of a way out to the runs.</summary>
    private static ImmutableArray<JointLayout> LayoutsOf(int runs, ImmutableArray<RunKind> kinds, Way way)
    {
        var dealt = new JointLayout[runs];
        foreach ((RunKind kind, ImmutableArray<JointLayout> layouts) in kinds.Zip(way.Layouts))
        {
            foreach ((int run, JointLayout layout) in kind.Runs.Zip(layouts)) dealt[run] = layout;
        }
        return [.. dealt];
    }

    /// <summary>Everything there is to choose from in joining the runs.</summary>
    /// <param name="Kinds">The runs by kind.</param>
    /// <param name="Ways">The ways of joining them all, those of the least bound first, then those of the fewest pieces.</param>
    /// <param name="Whole">False when some ways were left out because there are too many.</param>
    private sealed record AllWays(ImmutableArray<RunKind> Kinds, List<Way> Ways, bool Whole);

    /// <summary>Alike runs.</summary>
    /// <param name="Layouts">Their ways of joining, the cheapest by bound first.</param>
    /// <param name="Runs">Their numbers.</param>
    private sealed record RunKind(ImmutableArray<JointLayout> Layouts, ImmutableArray<int> Runs);

    /// <summary>A way of joining all runs.</summary>
    /// <param name="Layouts">For each kind a layout for each of its runs.</param>
    /// <param name="Bound">What their pieces must at least count for.</param>
    /// <param name="Pieces">How many pieces that makes.</param>
    private sealed record Way(ImmutableArray<ImmutableArray<JointLayout>> Layouts, double Bound, int Pieces)
    {
        public Way With(ImmutableArray<JointLayout> chosen, double bound) =>
            new(Layouts.Add(chosen), Bound + bound, Pieces + chosen.Sum(layout => layout.Pieces.Length));
    }
}
