namespace Hoopwright.Cutting;

/// <summary>The linear programme of one part of a search over a pool of patterns, with its whole-number bound.</summary>
internal sealed class SearchProgramme
{
    private const int ColumnsARound = 60;
    private const int TrialSteps = 60;
    private readonly CutProblem _problem;
    private readonly List<Pattern> _pool;
    private readonly long _scale;
    private readonly long _largest;
    private readonly WorkMeter _meter;
    private readonly SearchRow[] _rows;
    private readonly int _plainRows;
    private readonly int[] _limitRow;
    private readonly Simplex _simplex;
    private readonly Dictionary<int, int> _patternOf = [];
    private readonly int[] _columnOf;

    public SearchProgramme(
        CutProblem problem, List<Pattern> pool, IEnumerable<int> working, SearchNode node, double penalty, long scale, WorkMeter meter)
    {
        (_problem, _pool, _scale, _meter, _rows) = (problem, pool, scale, meter, node.Rows);
        var wanted = problem.CanEarn ? RowSense.Exactly : RowSense.AtLeast;
        var senses = Enumerable.Repeat(wanted, problem.Types).ToList();
        var rightSide = problem.Demand.Select(count => (double)count).ToList();
        _largest = SafePrices.Largest(problem);
        _limitRow = new int[problem.Bars.Length];
        for (var bar = 0; bar < problem.Bars.Length; bar++)
        {
            _limitRow[bar] = problem.Bars[bar].IsLimited ? senses.Count : -1;
            if (!problem.Bars[bar].IsLimited)
                continue;
            senses.Add(RowSense.AtMost);
            rightSide.Add(problem.Bars[bar].Limit);
        }

        _plainRows = senses.Count;
        senses.AddRange(_rows.Select(row => row.Sense));
        rightSide.AddRange(_rows.Select(row => (double)row.RightSide));
        _simplex = new Simplex([.. senses], [.. rightSide], penalty, meter);
        _columnOf = new int[pool.Count];
        Array.Fill(_columnOf, -1);
        foreach (var index in working)
            Add(index);
        foreach (var index in node.Basis)
        {
            if (index >= 0)
                Add(index);
        }

        _simplex.SetBasis([.. node.Basis.Select(key => key >= 0 ? _columnOf[key] : _simplex.SlackOf(-1 - key)).Where(column => column >= 0)]);
        Excess = new long[pool.Count];
    }

    /// <summary>What each pattern of the pool costs above the prices of <see cref="Bound"/>, in scaled units.</summary>
    public long[] Excess { get; }

    /// <summary>Whole numbers to one unit of money.</summary>
    public long Scale => _scale;

    /// <summary>The bound in scaled units.</summary>
    public Int128 ScaledBound { get; private set; } = Int128.MinValue;

    /// <summary>True when the solution leaves a row unserved, so that it is no plan even in parts.</summary>
    public bool MissesRows => _simplex.MissesRows;

    /// <summary>The bound in whole units of money.</summary>
    public long Bound => ScaledBound == Int128.MinValue ? long.MinValue : SafePrices.CeilingOf(ScaledBound, _scale);

    /// <summary>The columns in use, for later parts to start with.</summary>
    public IEnumerable<int> Working => _patternOf.Values;

    /// <summary>The basis as pool indexes and −1 − row for slacks; artificial columns are left out.</summary>
    public int[] Basis()
    {
        var slackRow = Enumerable.Range(0, _plainRows + _rows.Length)
            .Where(row => _simplex.SlackOf(row) >= 0).ToDictionary(_simplex.SlackOf, row => -1 - row);
        var keys = new List<int>();
        foreach (var column in _simplex.Basis)
        {
            if (_patternOf.TryGetValue(column, out var index))
                keys.Add(index);
            else if (slackRow.TryGetValue(column, out var key))
                keys.Add(key);
        }

        return [.. keys];
    }

    /// <summary>How much of each pattern the solution uses, by pool index.</summary>
    public List<(int Index, double Amount)> Solution() =>
    [
        .. _patternOf.Where(pair => _simplex.AmountOf(pair.Key) > 1e-6)
            .Select(pair => (pair.Value, _simplex.AmountOf(pair.Key))).OrderBy(pair => pair.Value),
    ];

    /// <summary>Solves over the whole pool. False when the work allowed ran out.</summary>
    public bool Solve()
    {
        while (_simplex.Solve())
        {
            var worst = Price();
            if (worst.Count == 0)
                return true;
            foreach (var index in worst)
                Add(index);
        }

        return false;
    }

    /// <summary>What the last solution costs; a guide and no bound.</summary>
    public double Cost => _simplex.Cost;

    /// <summary>How much the cost rises at least on both sides of a branch, over the columns at hand; a guide and no bound.</summary>
    public (double Down, double Up) Rises(BranchChoice choice)
    {
        var coefficients = new double[_simplex.Columns];
        foreach (var (column, index) in _patternOf)
            coefficients[column] = choice.CoefficientOf(_pool[index]);
        _meter.Spend(4 * coefficients.Length);
        var whole = Math.Floor(choice.Value);
        return (_simplex.RiseBy(RowSense.AtMost, whole, coefficients, TrialSteps), _simplex.RiseBy(RowSense.AtLeast, whole + 1, coefficients, TrialSteps));
    }

    private void Add(int index)
    {
        if (_columnOf[index] >= 0)
            return;
        var pattern = _pool[index];
        var rows = new List<int>(pattern.Types);
        var coefficients = new List<double>(pattern.Counts.Select(count => (double)count));
        if (_limitRow[pattern.Bar] >= 0)
        {
            rows.Add(_limitRow[pattern.Bar]);
            coefficients.Add(1);
        }

        for (var row = 0; row < _rows.Length; row++)
        {
            if (_rows[row].Coefficients[index] == 0)
                continue;
            rows.Add(_plainRows + row);
            coefficients.Add(_rows[row].Coefficients[index]);
        }

        _columnOf[index] = _simplex.AddColumn([.. rows], [.. coefficients], pattern.Cost);
        _patternOf[_columnOf[index]] = index;
    }

    /// <summary>Reckons the bound from the prices in whole numbers; returns the columns outside that would lower the cost most.</summary>
    private List<int> Price()
    {
        var duals = _simplex.Duals;
        var pieces = new long[_problem.Types];
        var bars = new long[_problem.Bars.Length];
        var rows = new long[_rows.Length];
        var sum = Int128.Zero;
        for (var type = 0; type < pieces.Length; type++)
        {
            pieces[type] = SafePrices.Whole(duals[type], _scale, _largest);
            if (!_problem.CanEarn)
                pieces[type] = Math.Max(0, pieces[type]);
            sum += (Int128)pieces[type] * _problem.Demand[type];
        }

        for (var bar = 0; bar < bars.Length; bar++)
        {
            if (_limitRow[bar] < 0)
                continue;
            bars[bar] = Math.Min(0, SafePrices.Whole(duals[_limitRow[bar]], _scale, _largest));
            sum += (Int128)bars[bar] * _problem.Bars[bar].Limit;
        }

        for (var row = 0; row < rows.Length; row++)
        {
            var price = SafePrices.Whole(duals[_plainRows + row], _scale, _largest);
            rows[row] = _rows[row].Sense == RowSense.AtLeast ? Math.Max(0, price) : Math.Min(0, price);
            sum += (Int128)rows[row] * _rows[row].RightSide;
        }

        var below = new List<(long Excess, int Index)>();
        for (var index = 0; index < _pool.Count; index++)
        {
            var pattern = _pool[index];
            var excess = (pattern.Cost * _scale) - bars[pattern.Bar];
            for (var i = 0; i < pattern.Types.Length; i++)
                excess -= pieces[pattern.Types[i]] * pattern.Counts[i];
            Excess[index] = excess;
        }

        for (var row = 0; row < rows.Length; row++)
        {
            if (rows[row] == 0)
                continue;
            var coefficients = _rows[row].Coefficients;
            for (var index = 0; index < coefficients.Length; index++)
                Excess[index] -= rows[row] * coefficients[index];
        }

        var tolerance = Math.Max(1, _scale / 10_000_000);
        for (var index = 0; index < _pool.Count; index++)
        {
            if (Excess[index] >= 0)
                continue;
            sum += (Int128)Excess[index] * _problem.MostTimes(_pool[index]);
            if (Excess[index] < -tolerance && _columnOf[index] < 0)
                below.Add((Excess[index], index));
        }

        _meter.Spend((long)_pool.Count * (6 + rows.Length));
        ScaledBound = sum;
        return [.. below.Order().Take(ColumnsARound).Select(found => found.Index)];
    }
}
