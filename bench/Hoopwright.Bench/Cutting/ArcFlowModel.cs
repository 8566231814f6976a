using Google.OrTools.LinearSolver;
using Hoopwright.Cutting;

namespace Hoopwright.Bench.Cutting;

/// <summary>
/// The arc-flow model of Valério de Carvalho (Annals of Operations Research 86 (1999) 629-659) for several stock lengths,
/// solved by SCIP: a bar is a path over the positions that longest-first cutting can reach. For jobs without limits and
/// leftovers.
/// </summary>
internal static class ArcFlowModel
{
    public static decimal? LeastCost(UnitlessCutJob job, int milliseconds)
    {
        var pieces = job.Pieces.OrderByDescending(piece => piece.Length).ToArray();
        var stock = job.Stock.Select(bar => (Capacity: (int)(bar.Length - job.Trim + job.Kerf), bar.Price)).ToArray();
        var capacity = stock.Max(bar => bar.Capacity);
        using var solver = Solver.CreateSolver("SCIP");
        var into = new List<Variable>[capacity + 1];
        var outOf = new List<Variable>[capacity + 1];
        for (var at = 0; at <= capacity; at++)
            (into[at], outOf[at]) = ([], []);
        var reachable = new bool[capacity + 1];
        reachable[0] = true;
        foreach (var piece in pieces)
        {
            var length = (int)(piece.Length + job.Kerf);
            var served = solver.MakeConstraint(piece.Count, piece.Count);
            var copies = new int[capacity + 1];
            for (var at = 0; at + length <= capacity; at++)
            {
                if (!reachable[at] || copies[at] == piece.Count)
                    continue;
                var arc = solver.MakeIntVar(0, piece.Count, "");
                served.SetCoefficient(arc, 1);
                outOf[at].Add(arc);
                into[at + length].Add(arc);
                if (!reachable[at + length])
                    copies[at + length] = copies[at] + 1;
                reachable[at + length] = true;
            }
        }

        for (var at = 1; at <= capacity; at++)
        {
            if (into[at].Count == 0)
                continue;
            var end = solver.MakeIntVar(0, double.PositiveInfinity, "");
            solver.Objective().SetCoefficient(end, (double)stock.Where(bar => bar.Capacity >= at).Min(bar => bar.Price));
            var balance = solver.MakeConstraint(0, 0);
            into[at].ForEach(arc => balance.SetCoefficient(arc, 1));
            outOf[at].ForEach(arc => balance.SetCoefficient(arc, -1));
            balance.SetCoefficient(end, -1);
        }

        solver.Objective().SetMinimization();
        solver.SetTimeLimit(milliseconds);
        return solver.Solve() == Solver.ResultStatus.OPTIMAL ? Math.Round((decimal)solver.Objective().Value()) : null;
    }
}
