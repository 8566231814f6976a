using CsCheck;
using Google.OrTools.LinearSolver;
using Hoopwright.Cutting;

namespace Hoopwright.Reference.Tests.Cutting;

/// <summary>The linear programme behind the search against Google OR-Tools 9.15 (GLOP): solved afresh, after a change of its rows, with a further row.</summary>
public sealed class SimplexTests
{
    private const double Tolerance = 1e-4;

    private static readonly Gen<Case> Cases =
        from rows in Gen.Int[2, 9]
        from columns in Gen.Int[0, 3].Array[rows].Array[rows, 4 * rows]
        from costs in Gen.Int[1, 20].Array[columns.Length]
        from wanted in Gen.Int[0, 30].Array[rows]
        from later in Gen.Int[0, 30].Array[rows]
        from added in Gen.Int[0, 2].Array[columns.Length]
        from atLeast in Gen.Bool
        select new Case(rows, columns, costs, wanted, later, added, atLeast);

    [Fact]
    public void Programme_costs_what_an_outside_solver_finds_before_and_after_its_rows_change() => Cases.Sample(
        each =>
        {
            var simplex = each.Programme();
            Assert.True(simplex.Solve());
            Near(each.Outside(each.Wanted, row: null)!.Value, simplex.Cost);
            simplex.SetRightSide([.. each.Later.Select(count => (double)count)]);
            Assert.True(simplex.Solve());
            Assert.False(simplex.MissesRows);
            Near(each.Outside(each.Later, row: null)!.Value, simplex.Cost);
        },
        iter: 2_000,
        threads: 1);

    [Fact]
    public void Further_row_raises_the_cost_by_what_an_outside_solver_finds_and_by_no_more_when_cut_short() => Cases.Sample(
        each =>
        {
            var simplex = each.Programme();
            Assert.True(simplex.Solve());
            var first = simplex.Columns - each.Columns.Length;
            double[] coefficients = [.. new double[first], .. each.Added.Select(count => (double)count)];
            var now = each.Added.Select((count, index) => count * simplex.AmountOf(first + index)).Sum();
            // Half a unit above or below what the solution has: every one of these rows is broken by it.
            var (sense, side) = each.AtLeast ? (RowSense.AtLeast, Math.Floor(now) + 1.5) : (RowSense.AtMost, Math.Ceiling(now) - 1.5);
            var whole = simplex.RiseBy(sense, side, coefficients, steps: 1_000);
            var few = simplex.RiseBy(sense, side, coefficients, steps: 2);
            if (each.Outside(each.Wanted, (sense, side)) is not { } least)
            {
                Assert.True(double.IsPositiveInfinity(whole));
                return;
            }

            Near(least, simplex.Cost + whole);
            Assert.InRange(few, -Tolerance, whole + Tolerance);
        },
        iter: 2_000,
        threads: 1);

    private static void Near(double expected, double actual) => Assert.InRange(actual, expected - (Tolerance * (1 + expected)), expected + (Tolerance * (1 + expected)));

    /// <summary>Rows that ask for at least so much; a dear column serves each alone, so that any of them can be served.</summary>
    private sealed record Case(int Rows, int[][] Columns, int[] Costs, int[] Wanted, int[] Later, int[] Added, bool AtLeast)
    {
        private const double Dear = 50;

        public Simplex Programme()
        {
            var simplex = new Simplex(
                [.. Enumerable.Repeat(RowSense.AtLeast, Rows)], [.. Wanted.Select(count => (double)count)], penalty: 1_000, new WorkMeter(long.MaxValue, stopAsked: null));
            for (var row = 0; row < Rows; row++)
                simplex.AddColumn([row], [1], Dear);
            for (var column = 0; column < Columns.Length; column++)
            {
                int[] served = [.. Enumerable.Range(0, Rows).Where(row => Columns[column][row] > 0)];
                simplex.AddColumn(served, [.. served.Select(row => (double)Columns[column][row])], Costs[column]);
            }

            return simplex;
        }

        public double? Outside(int[] wanted, (RowSense Sense, double RightSide)? row)
        {
            using var solver = Solver.CreateSolver("GLOP");
            var alone = solver.MakeNumVarArray(Rows, 0, double.PositiveInfinity);
            var mixed = solver.MakeNumVarArray(Columns.Length, 0, double.PositiveInfinity);
            for (var of = 0; of < Rows; of++)
            {
                var served = solver.MakeConstraint(wanted[of], double.PositiveInfinity);
                served.SetCoefficient(alone[of], 1);
                solver.Objective().SetCoefficient(alone[of], Dear);
                for (var column = 0; column < Columns.Length; column++)
                    served.SetCoefficient(mixed[column], Columns[column][of]);
            }

            if (row is { } further)
            {
                var added = further.Sense == RowSense.AtLeast
                    ? solver.MakeConstraint(further.RightSide, double.PositiveInfinity)
                    : solver.MakeConstraint(double.NegativeInfinity, further.RightSide);
                for (var column = 0; column < Columns.Length; column++)
                    added.SetCoefficient(mixed[column], Added[column]);
            }

            for (var column = 0; column < Columns.Length; column++)
                solver.Objective().SetCoefficient(mixed[column], Costs[column]);
            solver.Objective().SetMinimization();
            return solver.Solve() == Solver.ResultStatus.OPTIMAL ? solver.Objective().Value() : null;
        }
    }
}
