using System.Collections.Immutable;

namespace Hoopwright.Cutting.TwoStage;

/// <summary>Cuts rectangles from sheets at the least cost, and says what no plan can go below.</summary>
internal static class TwoStageCutter
{
    // Positions across and along a sheet: finer sizes are rounded to so many, down for the bound and up for the plan.
    private const long MostPositions = 8192;

    /// <summary>The plan; null when the sheets leave pieces over that may not be left out.</summary>
    /// <param name="job">Every piece must fit some sheet, or have a cost of being left out.</param>
    /// <param name="effort">How much work.</param>
    /// <param name="stopAsked">True when the work is to stop.</param>
    public static TwoStagePlan? Solve(TwoStageJob job, CutEffort effort, Func<bool>? stopAsked = null)
    {
        var meter = new WorkMeter(effort.Steps, stopAsked);
        if (job.Pieces.All(piece => piece.Count == 0))
            return new TwoStagePlan([], [.. job.Pieces.Select(_ => 0)], 0, 0);
        var (across, along) = Steps(job);
        if (across == 1 && along == 1)
            return Exact(job, meter);

        // With sizes rounded down no plan is lost, so the bound holds; with sizes rounded up every plan fits.
        var plan = Exact(job, new WorkMeter(0, null));
        var share = new WorkMeter(meter.Left / 2, () => meter.IsOver);
        var loose = Exact(Rounded(job, across, along, up: false), share);
        meter.Spend(share.Spent);
        if (loose is null)
            return plan;
        plan = Cheaper(plan, Fits(job, loose) ? loose : null);
        var above = Rounded(job, across, along, up: true);
        if (plan?.Cost != loose.Bound && above.Pieces.All(piece => piece.Count == 0 || above.Stock.Any(sheet => Holds(sheet, piece))))
            plan = Cheaper(plan, Exact(above, meter));
        return plan is null ? null : plan with { Bound = Math.Min(plan.Cost, Math.Max(MaterialBound(job), loose.Bound)) };
    }

    /// <summary>True when a sheet is large enough for a piece.</summary>
    public static bool Holds(TwoStageStock sheet, TwoStagePiece piece) =>
        (piece.Across <= sheet.Width && piece.Along <= sheet.Length) || (piece.MayTurn && piece.Along <= sheet.Width && piece.Across <= sheet.Length);

    private static long MaterialBound(TwoStageJob job)
    {
        var problem = SheetProblem.Of(job);
        return LeastCost.MaterialBound(problem) * problem.Coin;
    }

    private static TwoStagePlan? Cheaper(TwoStagePlan? plan, TwoStagePlan? other) => plan is null || (other is not null && other.Cost < plan.Cost) ? other : plan;

    private static TwoStagePlan? Exact(TwoStageJob job, WorkMeter meter)
    {
        var problem = SheetProblem.Of(job);
        var answer = SheetLeastCost.Solve(problem, meter);
        if (answer.Plan is null)
            return null;
        var sheets = ImmutableArray.CreateBuilder<TwoStageSheet>();
        var leftOut = new int[job.Pieces.Length];
        foreach (var (pattern, times) in answer.Plan.Parts.OrderByDescending(part => part.Pattern.Cost).ThenBy(part => part.Pattern, Pattern.InOrder))
        {
            if (problem.LeavesOut[pattern.Bar] is var type and >= 0)
                leftOut[problem.PieceOfType[type]] += times;
            else
                sheets.AddRange(Enumerable.Repeat(Named(problem, (SheetPattern)pattern), times));
        }

        var plan = new TwoStagePlan(sheets.ToImmutable(), [.. leftOut], answer.Plan.Cost * problem.Coin, answer.Bound * problem.Coin);
        Check(job, plan);
        return plan;
    }

    private static TwoStageSheet Named(SheetProblem problem, SheetPattern pattern) => new(
        problem.Bars[pattern.Bar].Line,
        [
            .. pattern.Levels.Select(level => level.Lays.SelectMany((lay, i) => Enumerable.Repeat(
                new TwoStagePlace(problem.PieceOfType[problem.Lays[lay].Type], problem.Lays[lay].Turned), level.Counts[i])).ToImmutableArray()),
        ]);

    /// <summary>Reckons a plan over again from the job's own numbers.</summary>
    private static void Check(TwoStageJob job, TwoStagePlan plan)
    {
        var cut = plan.LeftOut.ToArray();
        foreach (var place in plan.Sheets.SelectMany(sheet => sheet.Levels).SelectMany(level => level))
            cut[place.Piece]++;
        var cost = plan.Sheets.Sum(sheet => job.Stock[sheet.Stock].Price) + plan.LeftOut.Select((count, piece) => count * (job.Pieces[piece].LeftOut ?? 0)).Sum();
        if (!cut.SequenceEqual(job.Pieces.Select(piece => piece.Count)) || cost != plan.Cost || plan.Bound > plan.Cost || !Fits(job, plan)
            || plan.Sheets.GroupBy(sheet => sheet.Stock).Any(group => group.Count() > job.Stock[group.Key].Limit))
            throw new InvalidOperationException("A plan of sheets does not hold what its job asks for; this is a fault of the program.");
    }

    private static bool Fits(TwoStageJob job, TwoStagePlan plan) => plan.Sheets.All(sheet =>
        sheet.Levels.All(level => (job.Slit || level.Length == 1) && level.Sum(place => Across(job, place)) <= job.Stock[sheet.Stock].Width)
        && sheet.Levels.Sum(level => level.Max(place => Along(job, place))) <= job.Stock[sheet.Stock].Length
        && sheet.Levels.All(level => level.All(place => !place.Turned || job.Pieces[place.Piece].MayTurn)));

    private static long Across(TwoStageJob job, TwoStagePlace place) => place.Turned ? job.Pieces[place.Piece].Along : job.Pieces[place.Piece].Across;

    private static long Along(TwoStageJob job, TwoStagePlace place) => place.Turned ? job.Pieces[place.Piece].Across : job.Pieces[place.Piece].Along;

    /// <summary>How many units make one step across and along; 1 where the sizes have a common measure that leaves few enough positions.</summary>
    private static (long Across, long Along) Steps(TwoStageJob job)
    {
        var wanted = job.Pieces.Where(piece => piece.Count > 0).ToList();
        var turned = wanted.Where(piece => piece.MayTurn).ToList();
        var across = Step(wanted.Select(piece => piece.Across).Concat(turned.Select(piece => piece.Along)), job.Stock.Max(sheet => sheet.Width));
        var along = Step(wanted.Select(piece => piece.Along).Concat(turned.Select(piece => piece.Across)), job.Stock.Max(sheet => sheet.Length));
        // What may be turned has one measure for both ways.
        return turned.Count == 0 ? (across, along) : (Math.Max(across, along), Math.Max(across, along));
    }

    private static long Step(IEnumerable<long> sizes, long largest)
    {
        long[] all = [.. sizes];
        return largest / all.Aggregate(0L, WholeSolver.Divisor) <= MostPositions ? 1 : Math.Min((largest / MostPositions) + 1, all.Min());
    }

    private static TwoStageJob Rounded(TwoStageJob job, long across, long along, bool up) => job with
    {
        Pieces =
        [
            .. job.Pieces.Select(piece => piece with { Across = (piece.Across + (up ? across - 1 : 0)) / across, Along = (piece.Along + (up ? along - 1 : 0)) / along }),
        ],
        Stock = [.. job.Stock.Select(sheet => sheet with { Width = sheet.Width / across, Length = sheet.Length / along })],
    };
}
