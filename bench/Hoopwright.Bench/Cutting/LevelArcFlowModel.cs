using Google.OrTools.LinearSolver;
using Hoopwright.Cutting.TwoStage;

namespace Hoopwright.Bench.Cutting;

/// <summary>
/// Two-stage cutting as flows, solved by SCIP: a graph of positions across for each length and width of a level, one of positions
/// along for each kind of sheet, and a row that fills no more levels than the sheets have (Macedo, Alves, Valério de Carvalho,
/// Computers and Operations Research 37 (2010) 991-1001).
/// </summary>
internal static class LevelArcFlowModel
{
    private const int MostArcs = 120_000;

    /// <summary>The least cost; null when the model is too large or SCIP does not prove one in time.</summary>
    public static decimal? LeastCost(TwoStageJob job, int milliseconds)
    {
        var lays = job.Pieces.SelectMany((piece, index) => piece.MayTurn && piece.Across != piece.Along
            ? new[] { (Piece: index, piece.Across, piece.Along), (Piece: index, Across: piece.Along, Along: piece.Across) }
            : [(Piece: index, piece.Across, piece.Along)]).OrderByDescending(lay => lay.Across).ToArray();
        var lengths = lays.Select(lay => lay.Along).Distinct().OrderDescending().ToArray();
        using var solver = Solver.CreateSolver("SCIP");
        var served = job.Pieces.Select(piece => solver.MakeConstraint(piece.Count, double.PositiveInfinity)).ToArray();
        for (var piece = 0; piece < served.Length; piece++)
        {
            if (job.Pieces[piece].LeftOut is not { } cost)
                continue;
            var leftOut = solver.MakeIntVar(0, job.Pieces[piece].Count, "");
            served[piece].SetCoefficient(leftOut, 1);
            solver.Objective().SetCoefficient(leftOut, cost);
        }

        var filled = new Dictionary<(long Width, long Length), Constraint>();
        foreach (var width in job.Stock.Select(sheet => sheet.Width).Distinct())
        {
            foreach (var length in lengths)
            {
                // Levels filled less levels there are: at most 0.
                filled[(width, length)] = solver.MakeConstraint(double.NegativeInfinity, 0);
                var fitting = lays.Where(lay => lay.Along <= length && lay.Across <= width).Select(lay => (lay.Across, job.Pieces[lay.Piece].Count, Row: served[lay.Piece])).ToArray();
                filled[(width, length)].SetCoefficient(Flow(solver, (int)width, fitting), 1);
                if (solver.NumVariables() > MostArcs)
                    return null;
            }
        }

        foreach (var sheet in job.Stock)
        {
            var fitting = lengths.Where(length => length <= sheet.Length).Select(length => (length, int.MaxValue, filled[(sheet.Width, length)])).ToArray();
            var sheets = Flow(solver, (int)sheet.Length, fitting, sign: -1);
            solver.Objective().SetCoefficient(sheets, sheet.Price);
            if (sheet.Limit is { } most)
                solver.MakeConstraint(0, most).SetCoefficient(sheets, 1);
            if (solver.NumVariables() > MostArcs)
                return null;
        }

        solver.Objective().SetMinimization();
        solver.SetTimeLimit(milliseconds);
        using var exact = new MPSolverParameters();
        exact.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        return solver.Solve(exact) == Solver.ResultStatus.OPTIMAL ? Math.Round((decimal)solver.Objective().Value()) : null;
    }

    /// <summary>A graph of the positions that largest-first filling reaches; gives how many paths run through it.</summary>
    private static Variable Flow(Solver solver, int room, (long Size, int Count, Constraint Row)[] items, int sign = 1)
    {
        var paths = solver.MakeIntVar(0, double.PositiveInfinity, "");
        var balance = new Constraint?[room + 1];
        Constraint At(int position) => balance[position] ??= solver.MakeConstraint(0, 0);
        At(0).SetCoefficient(paths, 1);
        var reachable = new bool[room + 1];
        reachable[0] = true;
        foreach (var (size, count, row) in items)
        {
            var copies = new int[room + 1];
            for (var at = 0; at + size <= room; at++)
            {
                if (!reachable[at] || copies[at] == count)
                    continue;
                var to = at + (int)size;
                var arc = solver.MakeIntVar(0, double.PositiveInfinity, "");
                row.SetCoefficient(arc, sign);
                At(at).SetCoefficient(arc, -1);
                At(to).SetCoefficient(arc, 1);
                if (!reachable[to])
                    copies[to] = copies[at] + 1;
                reachable[to] = true;
            }
        }

        for (var at = 0; at <= room; at++)
        {
            if (reachable[at])
                At(at).SetCoefficient(solver.MakeIntVar(0, double.PositiveInfinity, ""), -1);
        }

        return paths;
    }
}
