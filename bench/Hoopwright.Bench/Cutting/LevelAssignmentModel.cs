using Google.OrTools.Sat;
using Hoopwright.Cutting.TwoStage;

namespace Hoopwright.Bench.Cutting;

/// <summary>Two-stage cutting of few pieces for CP-SAT: pieces to levels, levels to sheets. A level is named after its first piece.</summary>
internal static class LevelAssignmentModel
{
    /// <summary>The least cost; null when CP-SAT does not prove one in time.</summary>
    public static decimal? LeastCost(TwoStageJob job, int milliseconds)
    {
        var pieces = job.Pieces.SelectMany(piece => Enumerable.Repeat(piece, piece.Count)).OrderByDescending(piece => piece.Along).ToArray();
        var longest = job.Stock.Max(sheet => sheet.Length);
        var model = new CpModel();
        var sheets = job.Stock.SelectMany(sheet => Enumerable.Range(0, Math.Min(sheet.Limit ?? int.MaxValue, pieces.Length))
            .Select(copy => (Stock: sheet, Copy: copy, Used: model.NewBoolVar("")))).ToArray();
        for (var sheet = 1; sheet < sheets.Length; sheet++)
        {
            if (sheets[sheet].Copy > 0)
                model.AddImplication(sheets[sheet].Used, sheets[sheet - 1].Used);
        }

        var places = pieces.Select(_ => new List<ILiteral>()).ToArray();
        var along = sheets.Select(_ => LinearExpr.NewBuilder()).ToArray();
        for (var level = 0; level < pieces.Length; level++)
        {
            var length = model.NewIntVar(0, longest, "");
            var open = model.NewBoolVar("");
            var across = LinearExpr.NewBuilder();
            for (var piece = level; piece < pieces.Length; piece++)
            {
                foreach (var turned in pieces[piece].MayTurn ? new[] { false, true } : [false])
                {
                    var here = model.NewBoolVar("");
                    var (wide, tall) = turned ? (pieces[piece].Along, pieces[piece].Across) : (pieces[piece].Across, pieces[piece].Along);
                    places[piece].Add(here);
                    across.AddTerm(here, wide);
                    model.Add(length >= tall * here);
                    model.AddImplication(here, open);
                }
            }

            var on = sheets.Select(_ => model.NewBoolVar("")).ToArray();
            model.Add(LinearExpr.Sum(on) == open);
            model.Add(across <= LinearExpr.WeightedSum(on, sheets.Select(sheet => sheet.Stock.Width)));
            for (var sheet = 0; sheet < sheets.Length; sheet++)
            {
                var taken = model.NewIntVar(0, longest, "");
                model.Add(taken >= length - (longest * (1 - (LinearExpr)on[sheet])));
                along[sheet].Add(taken);
                model.AddImplication(on[sheet], sheets[sheet].Used);
            }
        }

        for (var piece = 0; piece < pieces.Length; piece++)
            model.AddExactlyOne(places[piece]);
        for (var sheet = 0; sheet < sheets.Length; sheet++)
            model.Add(along[sheet] <= sheets[sheet].Stock.Length);
        model.Minimize(LinearExpr.WeightedSum(sheets.Select(sheet => sheet.Used), sheets.Select(sheet => sheet.Stock.Price)));
        var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:1 max_time_in_seconds:{milliseconds / 1000.0}") };
        return solver.Solve(model) == CpSolverStatus.Optimal ? Math.Round((decimal)solver.ObjectiveValue) : null;
    }
}
