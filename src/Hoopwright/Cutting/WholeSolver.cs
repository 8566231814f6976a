using System.Collections.Immutable;

namespace Hoopwright.Cutting;

/// <summary>Between a whole-number job and the engine: merges equal lengths, tells shortages, gives pieces their names back.</summary>
internal static class WholeSolver
{
    private const long MostTidying = 20_000_000;
    private const long MostCost = 1L << 60;

    /// <summary>The plan for a job whose every piece fits some bar.</summary>
    public static WholePlan Solve(WholeJob job, CutEffort effort, Func<bool>? stopAsked)
    {
        var meter = new WorkMeter(effort.Steps, stopAsked);
        var (problem, piecesOfType) = ProblemOf(job, withMissing: false);
        if (problem.Types == 0)
            return new WholePlan([], 0, 0, CutMethod.None) { Beyond = [.. job.Stock.Select(_ => 0)], BeyondIsLeast = true };
        var answer = problem.Bars.Length == 0 ? new LeastCostAnswer(null, 0) : LeastCost.Solve(problem, meter);
        if (answer.Plan is null)
        {
            // Greedy filling ran out of bars: allow bars beyond the limits at a price above any plan within them.
            (problem, piecesOfType) = ProblemOf(job, withMissing: true);
            answer = LeastCost.Solve(problem, meter);
        }

        var tidied = Tidying.Of(problem, answer.Plan!, new WorkMeter(Math.Min(effort.Steps / 8, MostTidying), stopAsked));
        return Named(job, problem, piecesOfType, answer with { Plan = tidied });
    }

    /// <summary>The job as the engine sees it, and which pieces of the job each of its lengths stands for.</summary>
    /// <param name="job">The job.</param>
    /// <param name="withMissing">True to allow bars beyond the limits, at a price above any plan within them.</param>
    internal static (CutProblem Problem, int[][] PiecesOfType) ProblemOf(WholeJob job, bool withMissing)
    {
        var wanted = job.Pieces.Select((piece, index) => (piece, index)).Where(entry => entry.piece.Count > 0)
            .GroupBy(entry => entry.piece.Length).OrderByDescending(group => group.Key).ToArray();
        var grain = wanted.Aggregate(0L, (divisor, group) => Divisor(divisor, group.Key + job.Kerf));
        long[] weight = [.. wanted.Select(group => (group.Key + job.Kerf) / grain)];
        int[] demand = [.. wanted.Select(group => group.Sum(entry => entry.piece.Count))];
        var total = weight.Zip(demand, (one, count) => (Int128)one * count).Aggregate(Int128.Zero, (a, b) => a + b);

        var pieces = demand.Sum(count => (long)count);
        var dear = (long)Int128.Min(AboveAnyPlan(job), MostCost / Math.Max(1, pieces));
        var bars = new List<CutBar>();
        for (var line = 0; line < job.Stock.Length; line++)
        {
            var stock = job.Stock[line];
            var usable = stock.Length - job.Trim;
            var capacity = weight.Length == 0 ? 0 : (long)Int128.Min(total, (usable + job.Kerf) / grain);
            if (usable <= 0 || weight.Length == 0 || capacity < weight[^1])
                continue;
            var limit = stock.Limit is { } most && most < pieces ? most : int.MaxValue;
            if (limit > 0)
                bars.Add(new CutBar(line, capacity, usable, stock.Price, limit, Missing: false));
            if (withMissing && limit != int.MaxValue)
                bars.Add(new CutBar(line, capacity, usable, stock.Price + dear, int.MaxValue, Missing: true));
        }

        var problem = new CutProblem
        {
            Weight = weight,
            Demand = demand,
            Bars = [.. bars],
            Grain = grain,
            Worth = job.Worth,
        };
        return (problem, [.. wanted.Select(group => group.Select(entry => entry.index).ToArray())]);
    }

    /// <summary>More than any plan within the limits can cost, or can bring in by its leftovers.</summary>
    private static Int128 AboveAnyPlan(WholeJob job) =>
        1 + (job.Pieces.Aggregate(Int128.Zero, (sum, piece) => sum + piece.Count)
            * job.Stock.Select(bar => bar.Price + (job.Worth?.Of(bar.Length) ?? 0)).DefaultIfEmpty(0).Max());

    private static WholePlan Named(WholeJob job, CutProblem problem, int[][] piecesOfType, LeastCostAnswer answer)
    {
        var plan = answer.Plan!;
        var beyond = new int[job.Stock.Length];
        var dear = 0L;
        foreach (var (pattern, times) in plan.Parts)
        {
            var bar = problem.Bars[pattern.Bar];
            if (!bar.Missing)
                continue;
            beyond[bar.Line] += times;
            dear = bar.Price - job.Stock[bar.Line].Price;
        }

        var cuts = Cuts(job, problem, piecesOfType, plan);
        var over = (long)beyond.Sum();
        return new WholePlan(cuts, plan.Cost - (over * dear), answer.Bound - (over * dear), plan.Method)
        {
            Beyond = [.. beyond],
            // A plan with one bar beyond fewer would cost less than so many such prices.
            BeyondIsLeast = over == 0 || (dear == AboveAnyPlan(job) && answer.Bound >= over * dear),
        };
    }

    /// <summary>Gives out the job's own pieces of each length, in the job's order, dearest and fullest bars first.</summary>
    private static ImmutableArray<WholeCut> Cuts(WholeJob job, CutProblem problem, int[][] piecesOfType, Mixture plan)
    {
        var left = piecesOfType.Select(indexes => new Handout(job, indexes)).ToArray();
        var cuts = new List<WholeCut>();
        foreach (var (pattern, times) in plan.Parts
            .OrderByDescending(part => problem.Bars[part.Pattern.Bar].Price).ThenBy(part => part.Pattern, Pattern.InOrder))
        {
            for (var done = 0; done < times;)
            {
                // Bars in a row get the same pieces for as long as the first id of every length lasts.
                var alike = times - done;
                for (var i = 0; i < pattern.Types.Length; i++)
                    alike = Math.Min(alike, Math.Max(1, left[pattern.Types[i]].Left / pattern.Counts[i]));
                var pieces = ImmutableArray.CreateBuilder<int>();
                for (var i = 0; i < pattern.Types.Length; i++)
                    left[pattern.Types[i]].Take(pattern.Counts[i], alike, pieces);
                cuts.Add(new WholeCut(problem.Bars[pattern.Bar].Line, alike, pieces.ToImmutable()));
                done += alike;
            }
        }

        return [.. cuts];
    }

    /// <summary>The greatest common divisor; the other number when one is 0.</summary>
    internal static long Divisor(long one, long other)
    {
        while (other != 0)
            (one, other) = (other, one % other);
        return one;
    }

    /// <summary>The job's pieces of one length, given out in the job's order.</summary>
    private sealed class Handout(WholeJob job, int[] indexes)
    {
        private int _at;

        /// <summary>How many are left of the piece that is being given out.</summary>
        public int Left { get; private set; } = job.Pieces[indexes[0]].Count;

        /// <summary>Gives out so many for each of so many bars.</summary>
        public void Take(int count, int bars, ImmutableArray<int>.Builder pieces)
        {
            for (var wanted = count; wanted > 0;)
            {
                var now = Math.Min(wanted, Left / bars);
                pieces.AddRange(Enumerable.Repeat(indexes[_at], now));
                wanted -= now;
                Left -= now * bars;
                if (Left == 0 && _at + 1 < indexes.Length)
                    Left = job.Pieces[indexes[++_at]].Count;
            }
        }
    }
}
