using CsCheck;
using Hoopwright.Cutting;

namespace Hoopwright.Tests.Cutting;

/// <summary>
/// What a least-cost solution of a linear programme must hold (duality, any textbook of linear programming, from memory), so
/// that it needs no second solver: amounts that serve the rows, prices that no column undercuts, and both at the same cost.
/// </summary>
public sealed class SimplexTests
{
    private const double Penalty = 1_000, Dear = 50, Tolerance = 1e-4;

    private static readonly Gen<Case> Cases =
        from rows in Gen.Int[1, 40]
        from columns in Gen.Int[-4, 3].Array[rows].Array[rows, 4 * rows]
        from costs in Gen.Int[1, 20].Array[columns.Length]
        from senses in Gen.Int[0, 5].Array[rows]
        from wanted in Gen.Int[0, 30].Array[rows]
        from later in Gen.Int[0, 30].Array[rows]
        from added in Gen.Int[0, 2].Array[columns.Length]
        from atLeast in Gen.Bool
        select new Case([.. senses.Select(sense => sense == 5 ? RowSense.Exactly : sense == 4 ? RowSense.AtMost : RowSense.AtLeast)], columns, costs, wanted, later, added, atLeast);

    [Fact]
    public void A_solution_serves_its_rows_at_prices_that_no_column_undercuts() => Cases.Sample(
        each =>
        {
            Programme programme = new(each, each.Columns.Length);
            programme.IsBest(each.Wanted);
            programme.Simplex.SetRightSide([.. each.Later.Select(count => (double)count)]);
            programme.IsBest(each.Later);
            // From no basis it comes to the same cost, and from that of a solution too.
            int[] basis = programme.Simplex.Basis.ToArray();
            programme.Simplex.SetBasis([]);
            programme.IsBest(each.Later);
            programme.Simplex.SetBasis(basis);
            programme.IsBest(each.Later);
        },
        iter: 400, threads: 1);

    [Fact]
    public void Columns_that_come_later_lower_the_cost_to_that_of_all_at_once() => Cases.Sample(
        each =>
        {
            Programme all = new(each, each.Columns.Length), some = new(each, each.Columns.Length / 2);
            double most = some.Least();
            some.Add(each.Columns.Length);
            double least = some.Least();
            Near(all.Least(), least);
            Assert.True(least <= most + (Tolerance * (1 + most)));
            some.IsBest(each.Wanted);
        },
        iter: 300, threads: 1);

    [Fact]
    public void A_further_row_raises_the_cost_to_that_of_the_programme_with_it() => Cases.Sample(
        each =>
        {
            Programme programme = new(each, each.Columns.Length);
            double least = programme.Least();
            double[] coefficients = new double[programme.Simplex.Columns];
            for (int column = 0; column < each.Columns.Length; column++) coefficients[programme.Own[column]] = each.Added[column];
            double now = programme.Own.Select((column, index) => each.Added[index] * programme.Simplex.AmountOf(column)).Sum();
            // Half a unit above or below what the solution has: every one of these rows is broken by it.
            (RowSense sense, double side) = each.AtLeast ? (RowSense.AtLeast, Math.Floor(now) + 1.5) : (RowSense.AtMost, Math.Ceiling(now) - 1.5);
            double whole = programme.Simplex.RiseBy(sense, side, coefficients, steps: 2_000), few = programme.Simplex.RiseBy(sense, side, coefficients, steps: 2);
            Near(least, programme.Simplex.Cost);
            Programme with = new(each, each.Columns.Length, (sense, side));
            double risen = with.Least();
            if (with.Simplex.MissesRows) return;
            Near(risen, least + whole);
            Assert.InRange(few, -Tolerance, whole + (Tolerance * (1 + Math.Abs(whole))));
        },
        iter: 300, threads: 1);

    [Fact]
    public void A_row_that_nothing_serves_is_missed_and_without_work_nothing_is_solved()
    {
        Simplex simplex = new([RowSense.AtLeast, RowSense.AtMost], [3, 2], Penalty, new WorkMeter(long.MaxValue, stopAsked: null));
        simplex.AddColumn([0, 1], [1, 1], 4);
        Assert.True(simplex.Solve());
        Assert.True(simplex.MissesRows);
        Near((2 * 4) + Penalty, simplex.Cost);
        simplex.SetRightSide([3, 3]);
        Assert.True(simplex.Solve());
        Assert.False(simplex.MissesRows);
        Near(12, simplex.Cost);
        Assert.False(new Simplex([RowSense.AtLeast], [1], Penalty, new WorkMeter(0, stopAsked: null)).Solve());
    }

    private static void Near(double expected, double actual) => Assert.InRange(actual, expected - (Tolerance * (1 + Math.Abs(expected))), expected + (Tolerance * (1 + Math.Abs(expected))));

    /// <summary>Rows of all kinds, and columns, where a number of nothing or less stands for none.</summary>
    private sealed record Case(RowSense[] Senses, int[][] Columns, int[] Costs, int[] Wanted, int[] Later, int[] Added, bool AtLeast);

    /// <summary>A case as a programme. A dear column serves each row that asks for something, so that any can be served.</summary>
    private sealed class Programme
    {
        private readonly Case _case;
        private readonly bool _isWithAdded;
        private readonly Dictionary<int, int> _dear = [];

        public Programme(Case of, int columns, (RowSense Sense, double RightSide)? added = null)
        {
            (_case, _isWithAdded) = (of, added is not null);
            RowSense[] senses = added is { } row ? [.. of.Senses, row.Sense] : of.Senses;
            double[] rightSide = [.. of.Wanted.Select(count => (double)count), .. added is { } one ? [one.RightSide] : Array.Empty<double>()];
            Simplex = new Simplex(senses, rightSide, Penalty, new WorkMeter(long.MaxValue, stopAsked: null));
            for (int asking = 0; asking < of.Senses.Length; asking++)
            {
                if (of.Senses[asking] != RowSense.AtMost) _dear[asking] = Simplex.AddColumn([asking], [1], Dear);
            }
            Add(columns);
        }

        public Simplex Simplex { get; }

        /// <summary>What the programme calls each column of the case.</summary>
        public List<int> Own { get; } = [];

        /// <summary>Adds the columns up to a number.</summary>
        public void Add(int to)
        {
            for (int column = Own.Count; column < to; column++)
            {
                int[] rows = [.. Enumerable.Range(0, _case.Senses.Length).Where(row => _case.Columns[column][row] > 0)];
                double[] coefficients = [.. rows.Select(row => (double)_case.Columns[column][row])];
                if (_isWithAdded && _case.Added[column] != 0) (rows, coefficients) = ([.. rows, _case.Senses.Length], [.. coefficients, _case.Added[column]]);
                Own.Add(Simplex.AddColumn(rows, coefficients, _case.Costs[column]));
            }
        }

        public double Least()
        {
            Assert.True(Simplex.Solve());
            return Simplex.Cost;
        }

        /// <summary>Amounts serve the rows, prices are of the right sign and undercut by no column, and the rows at their prices come to the cost.</summary>
        public void IsBest(int[] wanted)
        {
            double least = Least(), cost = 0, atPrices = 0;
            Assert.False(Simplex.MissesRows);
            double[] prices = Simplex.Duals.ToArray(), served = new double[wanted.Length];
            for (int column = 0; column < Own.Count; column++)
            {
                double amount = Simplex.AmountOf(Own[column]), left = _case.Costs[column];
                cost += amount * _case.Costs[column];
                for (int row = 0; row < wanted.Length; row++)
                {
                    int coefficient = Math.Max(0, _case.Columns[column][row]);
                    (served[row], left) = (served[row] + (amount * coefficient), left - (prices[row] * coefficient));
                }
                Assert.True(left > -Tolerance, $"column {column} is undercut by {left}");
            }
            for (int row = 0; row < wanted.Length; row++)
            {
                double amount = _dear.TryGetValue(row, out int dear) ? Simplex.AmountOf(dear) : 0;
                (served[row], cost, atPrices) = (served[row] + amount, cost + (Dear * amount), atPrices + (prices[row] * wanted[row]));
                Assert.True(prices[row] <= (_dear.ContainsKey(row) ? Dear : 0) + Tolerance);
                if (_case.Senses[row] != RowSense.AtMost) Assert.True(served[row] >= wanted[row] - Tolerance);
                if (_case.Senses[row] != RowSense.AtLeast) Assert.True(served[row] <= wanted[row] + Tolerance);
                if (_case.Senses[row] == RowSense.AtLeast) Assert.True(prices[row] >= -Tolerance);
            }
            Near(cost, least);
            Near(cost, atPrices);
        }
    }
}
