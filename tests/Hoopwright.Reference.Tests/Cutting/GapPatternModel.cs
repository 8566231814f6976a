using System.Diagnostics;
using Google.OrTools.LinearSolver;
using Hoopwright.Cutting;

namespace Hoopwright.Reference.Tests.Cutting;

/// <summary>
/// The least cost of a job by an outside solver: patterns made as the prices of GLOP ask for them (Gilmore and Gomory,
/// Operations Research 9 (1961) 849-859), a plan from those by SCIP, then every pattern within the gap, and SCIP over them
/// (Baldacci, Coniglio, Cordeau, Furini, INFORMS J. Comput. 36 (2023) 141-162). It shares nothing with the engine but the job.
/// For whole lengths and prices, and leftovers that are never worth more than their bar.
/// </summary>
internal sealed class GapPatternModel
{
    private const int MostPatterns = 150_000;
    private const int MostRounds = 3_000;
    private const long MostCells = 12_000_000;
    private const double Slack = 1e-6;
    private static readonly double[] Shares = [1.0 / 32, 1.0 / 8, 1];
    private const int PlanMilliseconds = 3_000;
    private readonly UnitlessCutJob _job;
    private readonly int[] _weight;
    private readonly int[] _demand;
    private readonly int[] _capacity;
    private readonly int _longest;
    private readonly List<(int Bar, int[] Counts, double Cost)> _patterns = [];
    private readonly HashSet<string> _known = [];
    private readonly Stopwatch _clock;
    private readonly int _milliseconds;

    private GapPatternModel(UnitlessCutJob job, int milliseconds)
    {
        (_clock, _milliseconds) = (Stopwatch.StartNew(), milliseconds);
        _job = job;
        var pieces = job.Pieces.GroupBy(piece => piece.Length).OrderByDescending(group => group.Key).ToArray();
        _weight = [.. pieces.Select(group => (int)(group.Key + job.Kerf))];
        _demand = [.. pieces.Select(group => group.Sum(piece => piece.Count))];
        _capacity = [.. job.Stock.Select(bar => (int)(bar.Length - job.Trim + job.Kerf))];
        _longest = _capacity.Max();
    }

    /// <summary>The least cost; null when there are too many patterns, or a solver does not prove one in time.</summary>
    public static decimal? LeastCost(UnitlessCutJob job, int milliseconds) => new GapPatternModel(job, milliseconds).Solve();

    private bool IsLate => _clock.ElapsedMilliseconds > _milliseconds;

    private decimal? Solve()
    {
        if ((long)_weight.Length * _longest > MostCells)
            return null;
        for (var piece = 0; piece < _weight.Length; piece++)
        {
            for (var bar = 0; bar < _capacity.Length; bar++)
            {
                var counts = new int[_weight.Length];
                counts[piece] = Math.Min(_demand[piece], _capacity[bar] / _weight[piece]);
                if (counts[piece] > 0)
                    Add(bar, counts);
            }
        }

        if (Priced() is not var (pieces, bars, least) || Programme(Math.Min(PlanMilliseconds, _milliseconds), double.PositiveInfinity) is not { } plan)
            return null;
        // First the patterns nearest to the prices, for a better plan; every pattern within the gap proves it.
        foreach (var share in Shares)
        {
            if (Math.Ceiling(least - Slack) >= plan.Cost)
                break;
            if (IsLate || !AllWithin(pieces, bars, ((plan.Cost - 1 - least) * share) + Slack))
                return null;
            if (Programme((int)Math.Max(1, _milliseconds - _clock.ElapsedMilliseconds), plan.Cost - 1) is not { } found)
            {
                if (share == 1)
                    return null;
                continue;
            }

            plan = found.Cost < plan.Cost ? found : plan;
            if (share == 1 && !found.Proven)
                return null;
        }

        return (decimal)plan.Cost;
    }

    /// <summary>Prices of pieces and of limits, and the least cost of a mixture.</summary>
    private (double[] Pieces, double[] Bars, double Least)? Priced()
    {
        using var solver = Solver.CreateSolver("GLOP");
        var rows = _demand.Select(count => solver.MakeConstraint(count, double.PositiveInfinity)).ToArray();
        var limits = _job.Stock.Select(bar => bar.Limit is { } most ? solver.MakeConstraint(double.NegativeInfinity, most) : null).ToArray();
        foreach (var row in rows)
        {
            var missing = solver.MakeNumVar(0, double.PositiveInfinity, "");
            row.SetCoefficient(missing, 1);
            solver.Objective().SetCoefficient(missing, 10.0 * (double)_job.Stock.Max(bar => bar.Price));
        }

        solver.Objective().SetMinimization();
        var taken = 0;
        for (var round = 0; round < MostRounds && !IsLate; round++)
        {
            for (; taken < _patterns.Count; taken++)
            {
                var (bar, counts, cost) = _patterns[taken];
                var times = solver.MakeNumVar(0, double.PositiveInfinity, "");
                solver.Objective().SetCoefficient(times, cost);
                limits[bar]?.SetCoefficient(times, 1);
                for (var piece = 0; piece < counts.Length; piece++)
                {
                    if (counts[piece] > 0)
                        rows[piece].SetCoefficient(times, counts[piece]);
                }
            }

            if (solver.Solve() != Solver.ResultStatus.OPTIMAL)
                return null;
            double[] pieces = [.. rows.Select(row => Math.Max(0, row.DualValue()))], bars = [.. limits.Select(limit => limit?.DualValue() ?? 0)];
            var table = Table(pieces);
            var before = _patterns.Count;
            for (var bar = 0; bar < _capacity.Length; bar++)
            {
                var (least, at) = (double.PositiveInfinity, 0);
                for (var used = 1; used <= _capacity[bar]; used++)
                {
                    var excess = CostOf(bar, used) - bars[bar] - table[0][used];
                    if (excess < least)
                        (least, at) = (excess, used);
                }

                for (var first = 0; first < _weight.Length && least < -Slack; first++)
                {
                    if (CostOf(bar, at) - bars[bar] - table[first][at] < -Slack)
                        Add(bar, Traced(table, pieces, first, at));
                }
            }

            if (_patterns.Count == before)
                return (pieces, bars, solver.Objective().Value());
        }

        return null;
    }

    /// <summary>An integer programme over the patterns at hand.</summary>
    private (double Cost, bool Proven)? Programme(int milliseconds, double below)
    {
        using var solver = Solver.CreateSolver("SCIP");
        var times = _patterns.Select(_ => solver.MakeIntVar(0, double.PositiveInfinity, "")).ToArray();
        var rows = _demand.Select(count => solver.MakeConstraint(count, double.PositiveInfinity)).ToArray();
        var limits = _job.Stock.Select(bar => bar.Limit is { } most ? solver.MakeConstraint(double.NegativeInfinity, most) : null).ToArray();
        var cheaper = double.IsFinite(below) ? solver.MakeConstraint(double.NegativeInfinity, below) : null;
        for (var index = 0; index < times.Length; index++)
        {
            var (bar, counts, cost) = _patterns[index];
            solver.Objective().SetCoefficient(times[index], cost);
            cheaper?.SetCoefficient(times[index], cost);
            limits[bar]?.SetCoefficient(times[index], 1);
            for (var piece = 0; piece < counts.Length; piece++)
            {
                if (counts[piece] > 0)
                    rows[piece].SetCoefficient(times[index], counts[piece]);
            }
        }

        solver.Objective().SetMinimization();
        solver.SetTimeLimit(milliseconds);
        using var exact = new MPSolverParameters();
        exact.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        return solver.Solve(exact) switch
        {
            Solver.ResultStatus.OPTIMAL => (Math.Round(solver.Objective().Value()), true),
            Solver.ResultStatus.FEASIBLE => (Math.Round(solver.Objective().Value()), false),
            Solver.ResultStatus.INFEASIBLE when cheaper is not null => (double.PositiveInfinity, true),
            _ => null,
        };
    }

    private bool AllWithin(double[] pieces, double[] bars, double gap)
    {
        _patterns.Clear();
        _known.Clear();
        for (var bar = 0; bar < _capacity.Length; bar++)
        {
            // The cost depends on where a bar's pieces end: it is put at the end of the table.
            var capacity = _capacity[bar];
            var end = new double[_longest + 1];
            for (var room = 0; room <= capacity; room++)
                end[room] = -CostOf(bar, capacity - room);
            if (!Extend(Table(pieces, end), bar, 0, capacity, 0, new int[_weight.Length]))
                return false;
        }

        return true;

        bool Extend(double[][] table, int bar, int piece, int room, double value, int[] counts)
        {
            if (piece == counts.Length)
            {
                if (room < _capacity[bar])
                    _patterns.Add((bar, (int[])counts.Clone(), CostOf(bar, _capacity[bar] - room)));
                return _patterns.Count <= MostPatterns && !IsLate;
            }

            for (var count = Math.Min(_demand[piece], room / _weight[piece]); count >= 0; count--)
            {
                var rest = room - (count * _weight[piece]);
                var worth = value + (count * pieces[piece]);
                if (-bars[bar] - worth - table[piece + 1][rest] > gap)
                    continue;
                counts[piece] = count;
                var within = Extend(table, bar, piece + 1, rest, worth, counts);
                counts[piece] = 0;
                if (!within)
                    return false;
            }

            return true;
        }
    }

    /// <summary>table[first][room]: the most value of pieces from the first on.</summary>
    private double[][] Table(double[] pieces, double[]? end = null)
    {
        var table = new double[_weight.Length + 1][];
        table[^1] = end ?? new double[_longest + 1];
        for (var piece = _weight.Length - 1; piece >= 0; piece--)
        {
            var row = (double[])table[piece + 1].Clone();
            var left = _demand[piece];
            for (var part = 1; left > 0; part *= 2)
            {
                var count = Math.Min(part, left);
                left -= count;
                for (var room = _longest; room >= (long)count * _weight[piece]; room--)
                    row[room] = Math.Max(row[room], row[room - (count * _weight[piece])] + (count * pieces[piece]));
            }

            table[piece] = row;
        }

        return table;
    }

    private int[] Traced(double[][] table, double[] pieces, int first, int room)
    {
        var counts = new int[_weight.Length];
        for (var piece = first; piece < counts.Length; piece++)
        {
            while (counts[piece] < _demand[piece] && room >= _weight[piece] && table[piece][room + (counts[piece] * _weight[piece])] > table[piece + 1][room] + (counts[piece] * pieces[piece]) + 1e-9)
            {
                counts[piece]++;
                room -= _weight[piece];
            }
        }

        return counts;
    }

    private void Add(int bar, int[] counts)
    {
        var used = counts.Zip(_weight, (count, weight) => count * weight).Sum();
        if (used > 0 && _known.Add($"{bar}:{string.Join(',', counts)}"))
            _patterns.Add((bar, counts, CostOf(bar, used)));
    }

    private double CostOf(int bar, int used)
    {
        var rest = Math.Max(0, _capacity[bar] - (int)_job.Kerf - used);
        var worth = _job.Leftover is { } rule && rest >= rule.MinLength ? Math.Floor(rest * rule.ValuePer1000 / 1000) : 0;
        return (double)(_job.Stock[bar].Price - worth);
    }
}
