namespace Hoopwright.Cutting;

/// <summary>
/// The best mixture of patterns when bars could be cut in parts: a linear programme whose patterns are made as its prices ask
/// for them (Gilmore and Gomory, Operations Research 9 (1961) 849-859). Its whole-number prices bound every plan.
/// </summary>
internal sealed class Relaxation
{
    private const int PatternsARound = 12;
    private const int PatternsARow = 4;
    private readonly CutProblem _problem;
    private readonly WorkMeter _meter;
    private readonly PatternSource _source;
    private readonly int[] _rowOfType;
    private readonly int[] _limitRow;
    private readonly int[] _wanted;
    private readonly int[] _limits;
    private readonly Simplex _programme;
    private readonly Dictionary<Pattern, int> _columnOf = new(Pattern.Same.Instance);
    private readonly Dictionary<int, Pattern> _patternOf = [];
    private readonly double[] _rightSide;
    private readonly long[] _most;
    private readonly long _largest;

    /// <param name="problem">The job.</param>
    /// <param name="source">Makes patterns of the same job.</param>
    /// <param name="ceiling">The cost of a known plan: only cheaper ones are of interest.</param>
    /// <param name="wanted">How many pieces of each length are wanted; the programme has rows for those above 0 only.</param>
    /// <param name="limits">How many bars of each kind there are.</param>
    /// <param name="meter">Counts the work.</param>
    public Relaxation(CutProblem problem, PatternSource source, long ceiling, int[] wanted, int[] limits, WorkMeter meter)
    {
        (_problem, _source, _meter) = (problem, source, meter);
        (_wanted, _limits) = ([.. wanted], [.. limits]);
        (_most, Scale) = ScaleFor(problem, ceiling);
        _largest = SafePrices.Largest(problem);
        _rowOfType = new int[problem.Types];
        _limitRow = new int[problem.Bars.Length];
        // A piece too many is never cheaper, so "at least" serves, unless cutting can bring money in.
        var sense = problem.CanEarn ? RowSense.Exactly : RowSense.AtLeast;
        var senses = new List<RowSense>();
        var rightSide = new List<double>();
        for (var type = 0; type < problem.Types; type++)
        {
            _rowOfType[type] = wanted[type] > 0 ? senses.Count : -1;
            if (wanted[type] == 0)
                continue;
            senses.Add(sense);
            rightSide.Add(wanted[type]);
        }

        for (var bar = 0; bar < problem.Bars.Length; bar++)
        {
            _limitRow[bar] = problem.Bars[bar].IsLimited ? senses.Count : -1;
            if (!problem.Bars[bar].IsLimited)
                continue;
            senses.Add(RowSense.AtMost);
            rightSide.Add(limits[bar]);
        }

        _rightSide = [.. rightSide];
        _programme = new Simplex([.. senses], [.. rightSide], 2.0 * (1 + problem.Bars.Max(bar => bar.Price)), meter);
    }

    /// <summary>Whole-number prices to one unit of money.</summary>
    public long Scale { get; }

    /// <summary>The prices with the highest bound on what is wanted so far; null before <see cref="Solve"/>.</summary>
    public SafePrices? Best { get; private set; }

    /// <summary>Every pattern made so far, in the order they were made.</summary>
    public IEnumerable<Pattern> Patterns => _columnOf.Keys;

    /// <summary>The most of each bar that a plan below the ceiling can use, and how finely money can be divided.</summary>
    public static (long[] Most, long Scale) ScaleFor(CutProblem problem, long ceiling)
    {
        var pieces = problem.PieceCount;
        var most = new long[problem.Bars.Length];
        var earns = problem.CanEarn;
        for (var bar = 0; bar < most.Length; bar++)
        {
            var least = problem.CostOf(bar, problem.Weight[^1]);
            most[bar] = Math.Min(pieces, problem.Bars[bar].Limit);
            if (!earns && least > 0)
                most[bar] = Math.Min(most[bar], Math.Max(0, ceiling) / least);
        }

        var size = (UInt128)(1 + Math.Max(Math.Abs(ceiling), 4 * problem.Bars.Max(bar => bar.Price)));
        long scale = 1;
        while (scale < 1L << 30 && size * (UInt128)(scale * 2) < (UInt128)1 << 50)
            scale *= 2;
        return (most, scale);
    }

    /// <summary>How many rows its programme has for lengths.</summary>
    public int Rows => _rowOfType.Count(row => row >= 0);

    /// <summary>
    /// A smaller one for what is left of the job: it starts with the patterns of the last solution, cut down to what is still
    /// wanted, and with those nearest to the last prices that fit as they are.
    /// </summary>
    public Relaxation Rest(int[] wanted, int[] limits, long ceiling)
    {
        var rest = new Relaxation(_problem, _source, ceiling, wanted, limits, _meter);
        var basis = new List<int>();
        foreach (var column in _programme.Basis)
        {
            if (!_patternOf.TryGetValue(column, out var pattern))
                continue;
            var fits = pattern.TimesWithin(wanted) > 0;
            if (!fits)
                pattern = pattern.CutDownTo(_problem, wanted);

            if (pattern.Types.Length > 0 && rest.Add(pattern) && fits)
                basis.Add(rest._columnOf[pattern]);
        }

        if (Best is { } prices)
        {
            foreach (var pattern in _columnOf.Keys.Where(pattern => pattern.TimesWithin(wanted) > 0).OrderBy(prices.Excess).Take(PatternsARow * rest.Rows))
                rest.Add(pattern);
        }

        rest._programme.SetBasis([.. basis]);
        return rest;
    }

    /// <summary>Adds a pattern, if it is new.</summary>
    public bool Add(Pattern pattern)
    {
        if (_columnOf.ContainsKey(pattern))
            return false;
        var rows = new List<int>(pattern.Types.Length + 1);
        var coefficients = new List<double>(pattern.Types.Length + 1);
        for (var i = 0; i < pattern.Types.Length; i++)
        {
            if (_rowOfType[pattern.Types[i]] < 0)
                continue;
            rows.Add(_rowOfType[pattern.Types[i]]);
            coefficients.Add(pattern.Counts[i]);
        }

        if (_limitRow[pattern.Bar] is var limit and >= 0)
        {
            rows.Add(limit);
            coefficients.Add(1);
        }

        var column = _programme.AddColumn([.. rows], [.. coefficients], pattern.Cost);
        _columnOf[pattern] = column;
        _patternOf[column] = pattern;
        return true;
    }

    /// <summary>How much of each pattern the last solution uses, largest amount first.</summary>
    public List<(Pattern Pattern, double Amount)> Solution()
    {
        var solution = new List<(Pattern Pattern, double Amount)>();
        foreach (var column in _programme.Basis)
        {
            if (_patternOf.TryGetValue(column, out var pattern) && _programme.AmountOf(column) is var amount && amount > 1e-6)
                solution.Add((pattern, amount));
        }

        return [.. solution.OrderByDescending(part => part.Amount).ThenBy(part => _columnOf[part.Pattern])];
    }

    /// <summary>Changes what is wanted, none of it of a length without a row, and what limits are left; patterns and basis stay.</summary>
    public void Want(int[] wanted, int[] limits)
    {
        wanted.CopyTo(_wanted, 0);
        limits.CopyTo(_limits, 0);
        for (var type = 0; type < _problem.Types; type++)
        {
            if (_rowOfType[type] >= 0)
                _rightSide[_rowOfType[type]] = wanted[type];
        }

        for (var bar = 0; bar < limits.Length; bar++)
        {
            if (_limitRow[bar] >= 0)
                _rightSide[_limitRow[bar]] = limits[bar];
        }

        Best = null;

        _programme.SetRightSide(_rightSide);
    }

    /// <summary>Lowers the mixture's cost to the least.</summary>
    /// <param name="rounds">The most rounds of making patterns.</param>
    /// <param name="enough">A bound that suffices.</param>
    /// <returns>True when no further pattern can lower it.</returns>
    public bool Solve(int rounds, long enough)
    {
        for (var round = 0; round < rounds && _programme.Solve(); round++)
        {
            var (pieces, bars) = WholePrices();
            _source.Price(pieces, _wanted);
            var shortfall = new long[_problem.Bars.Length];
            var added = 0;
            var allowed = Scale * -1e-7;
            for (var bar = 0; bar < shortfall.Length; bar++)
            {
                var excess = _source.LeastExcess(bar, Scale) - bars[bar];
                shortfall[bar] = Math.Min(0, excess);
                if (excess < allowed)
                    added += AddFrom(bar, bars[bar]);
            }

            var prices = new SafePrices(_wanted, _limits, Scale, pieces, bars, shortfall, _most);
            if (Best is null || prices.Scaled > Best.Scaled)
                Best = prices;
            if (Best.Bound >= enough)
                return true;

            if (added == 0)
                return true;
        }

        return false;
    }

    private (long[] Pieces, long[] Bars) WholePrices()
    {
        var pieces = new long[_problem.Types];
        var bars = new long[_problem.Bars.Length];
        for (var type = 0; type < pieces.Length; type++)
        {
            if (_rowOfType[type] < 0)
                continue;
            var price = SafePrices.Whole(_programme.Duals[_rowOfType[type]], Scale, _largest);
            pieces[type] = _problem.CanEarn ? price : Math.Max(0, price);
        }

        for (var bar = 0; bar < bars.Length; bar++)
        {
            if (_limitRow[bar] >= 0)
                bars[bar] = Math.Min(0, SafePrices.Whole(_programme.Duals[_limitRow[bar]], Scale, _largest));
        }

        return (pieces, bars);
    }

    /// <summary>Adds the best patterns of a bar that are new.</summary>
    private int AddFrom(int bar, long barPrice)
    {
        var added = 0;
        foreach (var pattern in _source.Below(bar, Scale, barPrice))
        {
            if (pattern.Types.Length > 0 && Add(pattern) && ++added == PatternsARound)
                break;
        }

        return added;
    }
}
