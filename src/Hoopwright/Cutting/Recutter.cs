using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using Hoopwright.Diagnostics;

namespace Hoopwright.Cutting;

/// <summary>
/// Plans the rest of a job of which some bars are cut or turned out bad: at the least further cost, and among plans of that cost
/// with as many bars as can be left as they were planned. Bars of the earlier plan that are not cut yet are at hand and cost
/// nothing more; where leftovers have a worth, cutting one costs what it would be worth whole.
/// </summary>
public static class Recutter
{
    private const string AtHand = "\u0001";
    private const int MostTrials = 400;
    private const int TrialShare = 32;

    /// <summary>The plan for the rest, or what is wrong.</summary>
    /// <param name="job">The whole job, as it was before anything was cut. A piece to be made again is one more of its count.</param>
    /// <param name="earlier">The earlier plan, with what has become of its bars.</param>
    /// <param name="effort">How much work may be spent; <see cref="CutEffort.Usual"/> when null.</param>
    /// <param name="stopAsked">Asked now and then; true ends the work with the best plan so far. Null never stops.</param>
    public static RecutPlan Solve(UnitlessCutJob job, ImmutableArray<CutProgress> earlier, CutEffort? effort = null, Func<bool>? stopAsked = null) =>
        Solve(job, CutWords.Plain, worth: null, earlier, effort, stopAsked);

    internal static RecutPlan Solve(
        UnitlessCutJob job, CutWords words, (BigInteger, BigInteger)? worth, ImmutableArray<CutProgress> earlier, CutEffort? effort, Func<bool>? stopAsked)
    {
        ArgumentNullException.ThrowIfNull(job);
        earlier = [.. earlier.Select(bars => bars.Pieces.IsDefault ? bars with { Pieces = [] } : bars)];
        var read = JobReader.Read(job, words, worth);
        ImmutableArray<Diagnostic> found = read.Job is null ? read.Diagnostics : [.. Faults(job, earlier)];
        if (found.Any(each => each.Severity == Severity.Error))
            return Refused(found);
        var spent = effort ?? CutEffort.Usual;
        var rest = new Rest(job, read, earlier, WorthWhole(read, job));
        var least = Cut(rest.Job(earlier.Select(_ => 0)), spent);
        if (!least.Found)
            return Refused([.. least.Diagnostics.Select(each => each with { Message = Named(each.Message), Accepted = each.Accepted is { } more ? Named(more) : null })]);
        var plan = Nearest(rest, earlier, least, job => Cut(job, new CutEffort(spent.Steps / TrialShare)));
        return plan with { Plan = plan.Plan with { Diagnostics = [.. read.Diagnostics, .. found] } };

        static string Named(string text) => text.Replace(AtHand, "", StringComparison.Ordinal);

        UnitlessCutPlan Cut(UnitlessCutJob job, CutEffort some) => Cutter.Solve(job, words, worth, some, stopAsked);
    }

    /// <summary>Keeps all bars that wait, then all but one, all but two and so on, until the rest can be had at the least cost.</summary>
    private static RecutPlan Nearest(Rest rest, ImmutableArray<CutProgress> earlier, UnitlessCutPlan least, Func<UnitlessCutJob, UnitlessCutPlan> cut)
    {
        int[] all = [.. earlier.Select(bars => bars.Left)];
        var trials = 0;
        var certain = least.Proven;
        for (var released = 0; released <= all.Sum() && trials < MostTrials; released++)
        {
            foreach (var kept in Releases(all, 0, released))
            {
                if (trials++ == MostTrials)
                    break;
                if (rest.IsTooMuch(kept))
                    continue;
                var plan = cut(rest.Job(kept));
                if (plan.Found && plan.Cost + rest.CostOf(kept) <= least.Cost)
                    return rest.Whole(kept, plan, least.LowerBound, certain);
                certain &= !plan.Found || plan.LowerBound + rest.CostOf(kept) > least.Cost;
            }
        }

        return Some(rest, all, least, cut);
    }

    /// <summary>
    /// Where so many bars have to be let go of that not every way can be tried: fullest bars first, as many of each pattern as the least
    /// cost was found to allow beside those already kept. Another choice, or more work for each, might keep more.
    /// </summary>
    private static RecutPlan Some(Rest rest, int[] all, UnitlessCutPlan least, Func<UnitlessCutJob, UnitlessCutPlan> cut)
    {
        var (kept, best) = (new int[all.Length], least);
        for (var index = 0; index < all.Length; index++)
        {
            for (var more = all[index]; more > 0; more = Math.Min(more / 2, all[index] - kept[index]))
            {
                int[] now = [.. kept];
                now[index] += more;
                if (rest.IsTooMuch(now) || cut(rest.Job(now)) is not { Found: true } plan || plan.Cost + rest.CostOf(now) > least.Cost)
                    continue;
                (kept, best) = (now, plan);
            }
        }

        return rest.Whole(kept, best, least.LowerBound, fewest: false);
    }

    /// <summary>Every way to let go of so many bars; the bars that are then kept.</summary>
    private static IEnumerable<int[]> Releases(int[] left, int from, int released)
    {
        if (released == 0)
        {
            yield return left;
            yield break;
        }

        for (var index = from; index < left.Length; index++)
        {
            if (left[index] == 0)
                continue;
            var fewer = (int[])left.Clone();
            fewer[index]--;
            foreach (var kept in Releases(fewer, index, released - 1))
                yield return kept;
        }
    }

    private static IEnumerable<Diagnostic> Faults(UnitlessCutJob job, ImmutableArray<CutProgress> earlier)
    {
        var stock = job.Stock.Select(bar => bar.Id).ToHashSet(StringComparer.Ordinal);
        var wanted = job.Pieces.ToDictionary(piece => piece.Id, piece => (long)piece.Count, StringComparer.Ordinal);
        for (var index = 0; index < earlier.Length; index++)
        {
            var bars = earlier[index];
            if (bars.Pieces.IsEmpty)
                continue;
            var path = string.Create(CultureInfo.InvariantCulture, $"patterns[{index}]");
            if (!stock.Contains(bars.StockId))
                yield return new Diagnostic("cut.earlier.stock-unknown", Severity.Error, path + ".stock", "The job has no stock line of this name.", SeenText.Shorten(bars.StockId), NearestWord.Accepted(bars.StockId, [.. stock]));
            if (bars.Done < 0 || bars.Bad < 0 || bars.Left < 0)
                yield return new Diagnostic("cut.earlier.too-many", Severity.Error, path, "More of these bars are cut or bad than there are.", string.Create(CultureInfo.InvariantCulture, $"{bars.Done} cut, {bars.Bad} bad"), string.Create(CultureInfo.InvariantCulture, $"{bars.Times} together"));
            foreach (var piece in bars.Pieces)
            {
                if (!wanted.ContainsKey(piece))
                    yield return new Diagnostic("cut.earlier.piece-unknown", Severity.Error, path + ".pieces", "The job has no piece of this name.", SeenText.Shorten(piece), NearestWord.Accepted(piece, [.. wanted.Keys.Take(200)]));
                else
                    wanted[piece] -= bars.Done;
            }

            if (bars.Left > 0 && stock.Contains(bars.StockId) && bars.Pieces.All(wanted.ContainsKey)
                && bars.Pieces.Sum(piece => job.Pieces.First(each => each.Id == piece).Length + job.Kerf) > job.Stock.First(bar => bar.Id == bars.StockId).Length - job.Trim + job.Kerf)
                yield return new Diagnostic("cut.earlier.does-not-fit", Severity.Error, path + ".pieces", "These pieces do not fit on the bar that they are planned on.", SeenText.Shorten(string.Join(", ", bars.Pieces)), "the answer to this job, or to one with the same lengths");
        }

        foreach (var (piece, left) in wanted)
        {
            if (left < 0)
                yield return new Diagnostic("cut.earlier.more-than-wanted", Severity.Warning, "patterns", $"More of piece {SeenText.Shorten(piece)} are cut than the job asks for.", string.Create(CultureInfo.InvariantCulture, $"{-left} more"), "none left to cut");
        }
    }

    /// <summary>What each stock line would be worth whole, as a leftover, in the job's money; at most its price.</summary>
    private static Dictionary<string, decimal> WorthWhole(ReadJob read, UnitlessCutJob job) => job.Stock.Select((bar, line) => (bar, line)).ToDictionary(
        entry => entry.bar.Id,
        entry => read.Job!.Worth is { } worth ? Math.Min(entry.bar.Price, MoneyOf(read, worth.Of(read.Job.Stock[entry.line].Length - read.Job.Trim))) : 0,
        StringComparer.Ordinal);

    private static decimal MoneyOf(ReadJob read, long whole) => whole * read.PricesToOne.Under / read.PricesToOne.Over;

    private static RecutPlan Refused(ImmutableArray<Diagnostic> found) =>
        new() { Plan = Cutter.PlainWithout(found), Kept = [], Further = [], Waiting = 0, FewestChanged = false };

    /// <summary>What is left of a job.</summary>
    private sealed class Rest(UnitlessCutJob job, ReadJob read, ImmutableArray<CutProgress> earlier, Dictionary<string, decimal> worthWhole)
    {
        private readonly Dictionary<string, decimal> _length = job.Pieces.ToDictionary(piece => piece.Id, piece => piece.Length, StringComparer.Ordinal);

        /// <summary>The pieces still wanted when so many bars of each earlier pattern are cut as planned.</summary>
        private Dictionary<string, long> Wanted(IEnumerable<int> kept)
        {
            var wanted = job.Pieces.ToDictionary(piece => piece.Id, piece => (long)piece.Count, StringComparer.Ordinal);
            foreach (var (bars, times) in earlier.Zip(kept))
            {
                foreach (var piece in bars.Pieces)
                    wanted[piece] -= bars.Done + times;
            }

            return wanted;
        }

        /// <summary>True when the bars kept would make more of a piece than is wanted.</summary>
        public bool IsTooMuch(int[] kept)
        {
            var wanted = Wanted(kept);
            return earlier.Zip(kept).Any(entry => entry.Second > 0 && entry.First.Pieces.Any(piece => wanted[piece] < 0));
        }

        /// <summary>The job that is left when so many bars of each earlier pattern are cut as planned: bars at hand, and bars to buy.</summary>
        public UnitlessCutJob Job(IEnumerable<int> kept)
        {
            int[] times = [.. kept];
            var wanted = Wanted(times);
            int AtHandOf(string id) => earlier.Zip(times).Where(entry => entry.First.StockId == id).Sum(entry => entry.First.Left - entry.Second);
            int TakenOf(string id) => earlier.Where(bars => bars.StockId == id).Sum(bars => bars.Times);
            return job with
            {
                Pieces = [.. job.Pieces.Select(piece => piece with { Count = (int)Math.Max(0, wanted[piece.Id]) })],
                Stock =
                [
                    .. job.Stock.Select(bar => bar with { Id = AtHand + bar.Id, Price = worthWhole[bar.Id], Limit = AtHandOf(bar.Id) }),
                    .. job.Stock.Select(bar => bar with { Limit = bar.Limit is { } most ? Math.Max(0, most - TakenOf(bar.Id)) : null }),
                ],
            };
        }

        /// <summary>What cutting the kept bars as planned costs: what they would be worth whole, less their leftovers.</summary>
        public decimal CostOf(int[] kept) => earlier.Zip(kept).Where(entry => entry.Second > 0).Sum(entry => entry.Second * Alone(entry.First).Cost);

        /// <summary>The plan of the kept bars and of the rest together. Bars at hand that the rest cuts as they were planned are kept too.</summary>
        public RecutPlan Whole(int[] kept, UnitlessCutPlan plan, decimal lowerBound, bool fewest)
        {
            int[] asBefore = [.. kept];
            var parts = new List<(UnitlessCutPattern Pattern, int Kept, int Further)>();
            foreach (var pattern in plan.Patterns)
            {
                if (!pattern.StockId.StartsWith(AtHand, StringComparison.Ordinal))
                {
                    parts.Add((pattern, 0, pattern.Times));
                    continue;
                }

                var named = pattern with { StockId = pattern.StockId[AtHand.Length..] };
                for (var index = 0; index < earlier.Length && named.Times > 0; index++)
                {
                    if (asBefore[index] == earlier[index].Left || !IsCutAlike(named, earlier[index]))
                        continue;
                    var alike = Math.Min(named.Times, earlier[index].Left - asBefore[index]);
                    asBefore[index] += alike;
                    named = named with { Times = named.Times - alike };
                }

                if (named.Times > 0)
                    parts.Add((named, 0, 0));
            }

            parts.InsertRange(0, earlier.Zip(asBefore).Where(entry => entry.Second > 0).Select(entry => (Alone(entry.First).Pattern with { Times = entry.Second }, entry.Second, 0)));
            var cost = plan.Cost + CostOf(kept);
            return new RecutPlan
            {
                Plan = plan with
                {
                    Patterns = [.. parts.Select(part => part.Pattern)],
                    Cost = cost,
                    Bars = plan.Bars + kept.Sum(),
                    LowerBound = Math.Min(cost, lowerBound),
                    Proven = cost == lowerBound,
                },
                Kept = [.. parts.Select(part => part.Kept)],
                Further = [.. parts.Select(part => part.Further)],
                Waiting = earlier.Sum(bars => bars.Left),
                FewestChanged = fewest,
            };
        }

        private static bool IsCutAlike(UnitlessCutPattern pattern, CutProgress bars) =>
            pattern.StockId == bars.StockId && pattern.Pieces.Order(StringComparer.Ordinal).SequenceEqual(bars.Pieces.Order(StringComparer.Ordinal));

        /// <summary>One bar of an earlier pattern, cut as planned, and what that costs.</summary>
        private (UnitlessCutPattern Pattern, decimal Cost) Alone(CutProgress bars)
        {
            ImmutableArray<string> pieces = [.. bars.Pieces.OrderByDescending(piece => _length[piece])];
            var usable = job.Stock.Single(bar => bar.Id == bars.StockId).Length - job.Trim;
            var made = pieces.Sum(piece => _length[piece]);
            var left = Math.Max(0, usable - made - (job.Kerf * pieces.Length));
            var worth = read.Job!.Worth is { } rule ? MoneyOf(read, rule.Of((long)(left * read.LengthsToOne))) : 0;
            return (new UnitlessCutPattern(bars.StockId, 1, pieces, left, usable - made - left), worthWhole[bars.StockId] - worth);
        }
    }
}
