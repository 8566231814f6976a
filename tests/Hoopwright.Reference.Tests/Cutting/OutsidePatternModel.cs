using Google.OrTools.LinearSolver;
using Hoopwright.Cutting;

namespace Hoopwright.Reference.Tests.Cutting;

/// <summary>
/// The least cost of a job by an outside solver: an integer programme over every pattern there is, given to SCIP. Exact, and
/// shares nothing with the engine but the job.
/// </summary>
internal static class OutsidePatternModel
{
    /// <summary>The least cost; null when there are more patterns than allowed, or the solver does not prove one.</summary>
    public static decimal? LeastCost(UnitlessCutJob job, int mostPatterns)
    {
        var patterns = new List<(int Bar, int[] Counts, decimal Cost)>();
        for (var bar = 0; bar < job.Stock.Length; bar++)
        {
            if (!Enumerate(job, bar, 0, job.Stock[bar].Length - job.Trim + job.Kerf, new int[job.Pieces.Length], patterns, mostPatterns))
                return null;
        }

        using var solver = Solver.CreateSolver("SCIP");
        var times = patterns.Select((_, index) => solver.MakeIntVar(0, double.PositiveInfinity, $"x{index}")).ToArray();
        for (var piece = 0; piece < job.Pieces.Length; piece++)
        {
            var row = solver.MakeConstraint(job.Pieces[piece].Count, job.Pieces[piece].Count);
            for (var index = 0; index < times.Length; index++)
            {
                if (patterns[index].Counts[piece] > 0)
                    row.SetCoefficient(times[index], patterns[index].Counts[piece]);
            }
        }

        for (var bar = 0; bar < job.Stock.Length; bar++)
        {
            if (job.Stock[bar].Limit is not { } limit)
                continue;
            var row = solver.MakeConstraint(0, limit);
            for (var index = 0; index < times.Length; index++)
            {
                if (patterns[index].Bar == bar)
                    row.SetCoefficient(times[index], 1);
            }
        }

        for (var index = 0; index < times.Length; index++)
            solver.Objective().SetCoefficient(times[index], (double)patterns[index].Cost);
        solver.Objective().SetMinimization();
        using var exact = new MPSolverParameters();
        exact.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        solver.SetTimeLimit(5_000);
        return solver.Solve(exact) == Solver.ResultStatus.OPTIMAL ? Math.Round((decimal)solver.Objective().Value()) : null;
    }

    private static bool Enumerate(
        UnitlessCutJob job, int bar, int piece, decimal room, int[] counts, List<(int Bar, int[] Counts, decimal Cost)> patterns, int most)
    {
        if (piece == counts.Length)
        {
            if (counts.All(count => count == 0))
                return true;
            var rest = Math.Max(0, room - job.Kerf);
            var worth = job.Leftover is { } rule && rest >= rule.MinLength ? Math.Floor(rest * rule.ValuePer1000 / 1000) : 0;
            patterns.Add((bar, (int[])counts.Clone(), job.Stock[bar].Price - worth));
            return patterns.Count < most;
        }

        var one = job.Pieces[piece].Length + job.Kerf;
        for (var count = 0; count <= job.Pieces[piece].Count && count * one <= room; count++)
        {
            counts[piece] = count;
            if (!Enumerate(job, bar, piece + 1, room - (count * one), counts, patterns, most))
                return false;
        }

        counts[piece] = 0;
        return true;
    }
}
