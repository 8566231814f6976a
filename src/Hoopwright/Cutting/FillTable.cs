using System.Numerics;
using System.Runtime.CompilerServices;

namespace Hoopwright.Cutting;

/// <summary>
/// The exact knapsack table: for every tail of the list of lengths and every room, the most value that pieces of those
/// lengths can make in that room. Whole numbers only, so its answers do not depend on the machine.
/// </summary>
internal sealed class FillTable
{
    private const long MostCells = 24_000_000;
    private readonly CutProblem _problem;
    private readonly WorkMeter _meter;
    private readonly int _size;
    private readonly long[][] _own;
    private readonly long[][] _best;
    private readonly int[] _most;
    private long[] _values = [];

    public FillTable(CutProblem problem, WorkMeter meter)
    {
        _problem = problem;
        _meter = meter;
        _size = (int)problem.Capacity + 1;
        _own = new long[problem.Types + 1][];
        _best = new long[problem.Types + 1][];
        _most = new int[problem.Types];
        _own[^1] = new long[_size];
    }

    /// <summary>True when the table of a job fits in memory.</summary>
    public static bool Fits(CutProblem problem) => (Int128)(problem.Types + 1) * (problem.Capacity + 1) <= MostCells;

    /// <summary>Works the table out for new values; a length of value 0 or less is left out of it.</summary>
    /// <param name="values">The value of a piece of each length.</param>
    /// <param name="demand">The most pieces of each length in one bar.</param>
    /// <param name="end">The value of ending with each room left; null when 0 for all.</param>
    public void Fill(long[] values, ReadOnlySpan<int> demand, long[]? end = null)
    {
        _values = values;
        _best[^1] = end ?? _own[^1];
        for (var type = _problem.Types - 1; type >= 0; type--)
        {
            var weight = _problem.Weight[type];
            _most[type] = (int)Math.Min(demand[type], (_size - 1) / weight);
            if (values[type] <= 0 || _most[type] == 0)
            {
                _best[type] = _best[type + 1];
                _most[type] = 0;
                continue;
            }

            var row = _own[type] ??= new long[_size];
            _best[type + 1].AsSpan(0, _size).CopyTo(row);
            Extend(row, (int)weight, values[type], _most[type]);
            _best[type] = row;
        }
    }

    /// <summary>The most value that lengths from <paramref name="type"/> on can add in a room.</summary>
    public long Best(int type, long room) => _best[type][room];

    /// <summary>The counts that make <see cref="Best"/>, fewest of the heavy lengths first.</summary>
    public void Trace(int type, long room, Span<int> counts)
    {
        for (; type < _problem.Types; type++)
        {
            counts[type] = 0;
            if (_most[type] == 0)
                continue;
            var wanted = _best[type][room];
            var weight = _problem.Weight[type];
            while (_best[type + 1][room - (counts[type] * weight)] + (counts[type] * _values[type]) != wanted)
                counts[type]++;
            room -= counts[type] * weight;
        }
    }

    private void Extend(long[] row, int weight, long value, int most)
    {
        if (most >= (row.Length - 1) / weight)
        {
            Unbounded(row, weight, value);
            return;
        }

        for (var part = 1; most > 0; part *= 2)
        {
            var taken = Math.Min(part, most);
            most -= taken;
            Once(row, weight * taken, value * taken);
        }
    }

    /// <summary>row[p] = max(row[p], row[p − weight] + value), upwards, so that a piece may be taken again and again.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Unbounded(long[] row, int weight, long value)
    {
        _meter.Spend(row.Length);
        var lanes = Vector<long>.Count;
        var p = weight;
        if (weight >= lanes)
        {
            var add = new Vector<long>(value);
            for (; p + lanes <= row.Length; p += lanes)
                Vector.Max(new Vector<long>(row, p), new Vector<long>(row, p - weight) + add).CopyTo(row, p);
        }

        for (; p < row.Length; p++)
            row[p] = Math.Max(row[p], row[p - weight] + value);
    }

    /// <summary>The same downwards, so that it is taken once at most.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Once(long[] row, int weight, long value)
    {
        _meter.Spend(row.Length);
        var lanes = Vector<long>.Count;
        var p = row.Length;
        if (weight >= lanes)
        {
            var add = new Vector<long>(value);
            for (; p - lanes >= weight; p -= lanes)
                Vector.Max(new Vector<long>(row, p - lanes), new Vector<long>(row, p - lanes - weight) + add).CopyTo(row, p - lanes);
        }

        for (p--; p >= weight; p--)
            row[p] = Math.Max(row[p], row[p - weight] + value);
    }
}
