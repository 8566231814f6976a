using System.Numerics;
using System.Runtime.CompilerServices;

namespace Hoopwright.Cutting;

/// <summary>
/// A small linear programme, minimised by the simplex method with an explicit inverse, to which columns are added as it goes
/// on: the dual method where rows have changed since the last solution, then the primal one. Its answers only guide the
/// search: every bound is reckoned again from its prices in whole numbers. Sums run in a fixed order and no lane-wise sums are
/// used, so it takes the same path on every machine.
/// </summary>
internal sealed class Simplex
{
    private const double Small = 1e-9;
    private const int PivotsBetweenRebuilds = 150;
    private readonly int _rows;
    private readonly RowSense[] _senses;
    private readonly double[] _rightSide;
    private readonly double[] _shifted;
    private readonly double _penalty;
    private readonly WorkMeter _meter;
    private readonly List<int[]> _columnRows = [];
    private readonly List<double[]> _columnCoefficients = [];
    private readonly List<double> _costs = [];
    private readonly List<bool> _isArtificial = [];
    private readonly List<int> _placeInBasis = [];
    private readonly int[] _slack;
    private readonly int[] _basis;
    private readonly double[] _inverse;
    private readonly double[] _basic;
    private readonly double[] _duals;
    private readonly double[] _direction;
    private int _pivotsSinceRebuild;
    private double _largestCost = 1;

    /// <param name="senses">What each row asks of its sum.</param>
    /// <param name="rightSide">What each row's sum is compared with.</param>
    /// <param name="penalty">The cost of one unit by which a row is missed; above any price of a row.</param>
    /// <param name="meter">Counts the work.</param>
    public Simplex(RowSense[] senses, double[] rightSide, double penalty, WorkMeter meter)
    {
        _rows = senses.Length;
        (_senses, _rightSide, _penalty, _meter) = (senses, rightSide, penalty, meter);
        // A tiny shift of each row, different for each, keeps ties from going round in circles.
        _shifted = [.. rightSide.Select((value, row) => value + (1e-7 * (1 + (((row * 7919) + 13) % 1009 / 1009.0))))];
        _slack = new int[_rows];
        _basis = new int[_rows];
        Array.Fill(_basis, -1);
        _inverse = new double[_rows * _rows];
        _basic = new double[_rows];
        _duals = new double[_rows];
        _direction = new double[_rows];
        for (var row = 0; row < _rows; row++)
        {
            _slack[row] = senses[row] switch
            {
                RowSense.AtLeast => AddColumn([row], [-1], 0),
                RowSense.AtMost => AddColumn([row], [1], 0),
                RowSense.Exactly => -1,
            };
        }

        SetBasis([]);
    }

    /// <summary>A copy of a solved one with one further row, whose slack takes up what the solution misses it by.</summary>
    private Simplex(Simplex other, RowSense sense, double rightSide, ReadOnlySpan<double> coefficients)
    {
        _rows = other._rows + 1;
        (_penalty, _meter, _largestCost) = (other._penalty, other._meter, other._largestCost);
        _senses = [.. other._senses, sense];
        _rightSide = [.. other._rightSide, rightSide];
        _shifted = [.. other._shifted, rightSide];
        _columnRows = [.. other._columnRows];
        _columnCoefficients = [.. other._columnCoefficients];
        _costs = [.. other._costs];
        _isArtificial = [.. other._isArtificial];
        _placeInBasis = [.. other._placeInBasis];
        for (var column = 0; column < coefficients.Length; column++)
        {
            if (coefficients[column] == 0)
                continue;
            _columnRows[column] = [.. _columnRows[column], other._rows];
            _columnCoefficients[column] = [.. _columnCoefficients[column], coefficients[column]];
        }

        var sign = sense == RowSense.AtMost ? 1 : -1;
        var slack = AddColumn([other._rows], [sign], 0);
        _slack = [.. other._slack, slack];
        _basis = [.. other._basis, slack];
        _placeInBasis[slack] = other._rows;
        _duals = [.. other._duals, 0];
        _direction = new double[_rows];
        // The new row of the inverse is the negative of what the basis has in the new row, times the inverse.
        _inverse = new double[_rows * _rows];
        var inBasis = new double[other._rows];
        var missing = rightSide;
        for (var place = 0; place < inBasis.Length; place++)
        {
            inBasis[place] = other._basis[place] < coefficients.Length ? coefficients[other._basis[place]] : 0;
            missing -= inBasis[place] * other._basic[place];
        }

        _basic = [.. other._basic, sign * missing];
        for (var row = 0; row < other._rows; row++)
        {
            var from = other._inverse.AsSpan(row * other._rows, other._rows);
            from.CopyTo(_inverse.AsSpan(row * _rows));
            var sum = 0.0;
            for (var place = 0; place < inBasis.Length; place++)
                sum += inBasis[place] * from[place];
            _inverse[(row * _rows) + other._rows] = -sign * sum;
        }

        _inverse[^1] = sign;
        _pivotsSinceRebuild = 1;
        _meter.Spend(((long)_rows * _rows / 2) + (4 * _costs.Count));
    }

    /// <summary>The price of each row at the last solution.</summary>
    public ReadOnlySpan<double> Duals => _duals;

    /// <summary>How many columns, slacks and artificial ones included.</summary>
    public int Columns => _costs.Count;

    /// <summary>What the last solution costs, by the shifted rows.</summary>
    public double Cost
    {
        get
        {
            var sum = 0.0;
            for (var place = 0; place < _rows; place++)
                sum += _costs[_basis[place]] * _basic[place];
            return sum;
        }
    }

    /// <summary>The columns of the last basis.</summary>
    public ReadOnlySpan<int> Basis => _basis;

    /// <summary>The slack column of a row; −1 when it has none.</summary>
    public int SlackOf(int row) => _slack[row];

    /// <summary>Adds a column and returns its index.</summary>
    public int AddColumn(int[] rows, double[] coefficients, double cost) => Add(rows, coefficients, cost, artificial: false);

    /// <summary>How much of a column is in the last solution.</summary>
    public double AmountOf(int column) => _placeInBasis[column] is var place && place >= 0 ? Math.Max(0, _basic[place]) : 0;

    /// <summary>True when some row is missed by the last solution.</summary>
    public bool MissesRows
    {
        get
        {
            for (var place = 0; place < _rows; place++)
            {
                if (_isArtificial[_basis[place]] && _basic[place] > 1e-5)
                    return true;
            }

            return false;
        }
    }

    /// <summary>Changes what the rows are compared with; the basis stays, mended where it no longer fits.</summary>
    public void SetRightSide(ReadOnlySpan<double> rightSide)
    {
        for (var row = 0; row < _rows; row++)
        {
            _shifted[row] += rightSide[row] - _rightSide[row];
            _rightSide[row] = rightSide[row];
        }

        Rebuild(mend: false);
    }

    /// <summary>Starts from these columns, one a row; missing or dependent ones are replaced by slacks and artificial columns.</summary>
    public void SetBasis(ReadOnlySpan<int> columns)
    {
        for (var place = 0; place < _rows; place++)
        {
            if (_basis[place] >= 0)
                _placeInBasis[_basis[place]] = -1;
            _basis[place] = place < columns.Length ? columns[place] : -1;
        }

        Rebuild(mend: columns.Length == 0);
    }

    /// <summary>Lowers the cost to the least for the columns there are. False when the work allowed ran out first.</summary>
    public bool Solve()
    {
        if (!RaiseAmounts())
            return false;
        var sinceProgress = 0;
        var last = double.MaxValue;
        while (!_meter.IsOver)
        {
            if (_pivotsSinceRebuild >= PivotsBetweenRebuilds)
                Rebuild(mend: true);
            var careful = sinceProgress > 4 * (_rows + 20);
            var entering = Entering(firstFound: careful);
            if (entering < 0)
            {
                if (_pivotsSinceRebuild == 0)
                    return true;
                Rebuild(mend: true);
                if (Entering(firstFound: false) < 0)
                    return true;
                continue;
            }

            FindDirection(entering);
            var leaving = Leaving(careful);
            if (leaving < 0)
                return true; // Unbounded only by a slip of rounding: all costs are bounded below by the rows.
            Pivot(entering, leaving);
            var cost = Cost;
            if (cost < last - (1e-10 * Math.Abs(last)))
                sinceProgress = 0;
            else if (++sinceProgress > 40 * (_rows + 20))
                return true;
            last = Math.Min(last, cost);
        }

        return false;
    }

    /// <summary>Brings amounts below nothing up; what cannot be is mended. False when the work allowed ran out first.</summary>
    private bool RaiseAmounts()
    {
        if (Raise(20 * (_rows + 20)) != Raised.All && !_meter.IsOver)
            Rebuild(mend: true);
        return !_meter.IsOver;
    }

    /// <summary>
    /// Brings amounts below nothing up by the dual simplex method, from a basis that was best before its rows changed. The cost
    /// only rises on the way.
    /// </summary>
    private Raised Raise(int most)
    {
        var inverseRow = new double[_rows];
        for (var steps = 0; ; steps++)
        {
            if (_pivotsSinceRebuild >= PivotsBetweenRebuilds)
                Rebuild(mend: false);
            var leaving = MostMissing();
            if (leaving < 0)
                return Raised.All;
            if (steps == most || _meter.IsOver)
                return Raised.NotYet;
            for (var row = 0; row < _rows; row++)
                inverseRow[row] = _inverse[(row * _rows) + leaving];
            var entering = EnteringFor(inverseRow);
            if (entering < 0)
                return Raised.Stuck;
            FindDirection(entering);
            if (_direction[leaving] > -1e-9)
                return Raised.NotYet;
            Pivot(entering, leaving);
        }
    }

    /// <summary>The place whose amount is furthest below nothing; −1 when none is.</summary>
    private int MostMissing()
    {
        var most = -1;
        for (var place = 0; place < _rows; place++)
        {
            if (_basic[place] < -1e-9 && (most < 0 || _basic[place] < _basic[most]))
                most = place;
        }

        return most;
    }

    /// <summary>The column that raises an amount at the least rise of the cost; of those alike the one with the largest share.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int EnteringFor(double[] inverseRow)
    {
        var (entering, least, largest) = (-1, double.MaxValue, 0.0);
        long touched = 0;
        for (var column = 0; column < _costs.Count; column++)
        {
            if (_placeInBasis[column] >= 0 || _isArtificial[column])
                continue;
            var (reduced, share) = (_costs[column], 0.0);
            var rows = _columnRows[column];
            var coefficients = _columnCoefficients[column];
            for (var i = 0; i < rows.Length; i++)
            {
                reduced -= _duals[rows[i]] * coefficients[i];
                share -= inverseRow[rows[i]] * coefficients[i];
            }

            touched += (2 * rows.Length) + 2;
            if (share <= 1e-7)
                continue;
            var ratio = Math.Max(0, reduced) / share;
            if (ratio < least - 1e-12 || (ratio <= least + 1e-12 && share > largest))
                (entering, least, largest) = (column, Math.Min(least, ratio), share);
        }

        _meter.Spend(touched);
        return entering;
    }

    /// <summary>
    /// How much a further row raises the cost of the last solution over the columns there are, by a few steps of the dual
    /// simplex method: at least so much. Infinite where no column can serve the row.
    /// </summary>
    /// <param name="sense">At least or at most.</param>
    /// <param name="rightSide">What the row's sum is compared with.</param>
    /// <param name="coefficients">Its coefficient of each column, from the first on.</param>
    /// <param name="steps">The most steps.</param>
    public double RiseBy(RowSense sense, double rightSide, ReadOnlySpan<double> coefficients, int steps)
    {
        var trial = new Simplex(this, sense, rightSide, coefficients);
        return trial.Raise(steps) == Raised.Stuck ? double.PositiveInfinity : trial.Cost - Cost;
    }

    /// <summary>How raising amounts ended: with none below nothing, with one that no column can raise, or before either.</summary>
    private enum Raised
    {
        All,
        Stuck,
        NotYet,
    }

    private int Add(int[] rows, double[] coefficients, double cost, bool artificial)
    {
        _columnRows.Add(rows);
        _columnCoefficients.Add(coefficients);
        _costs.Add(cost);
        if (!artificial)
            _largestCost = Math.Max(_largestCost, Math.Abs(cost));
        _isArtificial.Add(artificial);
        _placeInBasis.Add(-1);
        return _costs.Count - 1;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int Entering(bool firstFound)
    {
        var best = -Small * _largestCost;
        var entering = -1;
        long touched = 0;
        for (var column = 0; column < _costs.Count; column++)
        {
            if (_placeInBasis[column] >= 0 || _isArtificial[column])
                continue;
            var reduced = _costs[column];
            var rows = _columnRows[column];
            var coefficients = _columnCoefficients[column];
            for (var i = 0; i < rows.Length; i++)
                reduced -= _duals[rows[i]] * coefficients[i];
            touched += rows.Length + 2;
            if (reduced >= best)
                continue;
            (best, entering) = (reduced, column);
            if (firstFound)
                break;
        }

        _meter.Spend(touched);
        return entering;
    }

    private void FindDirection(int column)
    {
        Array.Clear(_direction);
        var rows = _columnRows[column];
        for (var i = 0; i < rows.Length; i++)
            AddScaled(_direction, _inverse.AsSpan(rows[i] * _rows, _rows), _columnCoefficients[column][i]);
        _meter.Spend(rows.Length * _rows / 2);
    }

    private int Leaving(bool careful)
    {
        var leaving = -1;
        var least = double.MaxValue;
        for (var place = 0; place < _rows; place++)
        {
            if (_direction[place] <= 1e-8)
                continue;
            var ratio = Math.Max(0, _basic[place]) / _direction[place];
            var closer = ratio < least - 1e-12;
            var tie = !closer && ratio <= least + 1e-12;
            if (closer || (tie && (careful ? _basis[place] < _basis[leaving] : _direction[place] > _direction[leaving])))
                (leaving, least) = (place, Math.Min(least, ratio));
        }

        return leaving;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Pivot(int entering, int leaving)
    {
        var pivot = _direction[leaving];
        var step = _basic[leaving] / pivot;
        var reduced = _costs[entering];
        for (var i = 0; i < _columnRows[entering].Length; i++)
            reduced -= _duals[_columnRows[entering][i]] * _columnCoefficients[entering][i];
        AddScaled(_basic, _direction, -step);
        _basic[leaving] = step;
        for (var row = 0; row < _rows; row++)
        {
            var column = _inverse.AsSpan(row * _rows, _rows);
            if (column[leaving] == 0)
                continue;
            var share = column[leaving] / pivot;
            AddScaled(column, _direction, -share);
            column[leaving] = share;
            _duals[row] += reduced * share;
        }

        _meter.Spend((long)_rows * _rows / 3);
        _placeInBasis[_basis[leaving]] = -1;
        _basis[leaving] = entering;
        _placeInBasis[entering] = leaving;
        _pivotsSinceRebuild++;
    }

    /// <summary>Works out inverse, amounts and prices afresh from the basis; mends a basis that does not serve.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Rebuild(bool mend)
    {
        Invert(mend);
        for (var place = 0; mend && place < _rows; place++)
        {
            if (_basic[place] >= -1e-9)
                continue;
            // An amount below nothing is served by an artificial column that runs the other way.
            var wrong = _basis[place];
            var turned = Add(_columnRows[wrong], [.. _columnCoefficients[wrong].Select(value => -value)], _penalty, artificial: true);
            _placeInBasis[wrong] = -1;
            _placeInBasis[turned] = place;
            _basis[place] = turned;
            _basic[place] = -_basic[place];
            for (var row = 0; row < _rows; row++)
                _inverse[(row * _rows) + place] = -_inverse[(row * _rows) + place];
        }

        for (var row = 0; row < _rows; row++)
        {
            var price = 0.0;
            for (var place = 0; place < _rows; place++)
                price += _costs[_basis[place]] * _inverse[(row * _rows) + place];
            _duals[row] = price;
        }

        _pivotsSinceRebuild = 0;
    }

    private void Invert(bool mend)
    {
        var wanted = _basis.ToArray();
        foreach (var column in wanted)
        {
            if (column >= 0)
                _placeInBasis[column] = -1;
        }

        Array.Fill(_basis, -1);
        Array.Clear(_inverse);
        for (var row = 0; row < _rows; row++)
            _inverse[(row * _rows) + row] = 1;
        // Columns with few entries first keep the inverse thin. Each takes the free row where its pivot is largest.
        var order = wanted.Where(column => column >= 0)
            .OrderBy(column => _columnRows[column].Length).ThenBy(column => column).ToArray();
        foreach (var column in order)
            TryEnter(column);
        for (var row = 0; row < _rows; row++)
        {
            // A place still free has kept its unit column, so the row's own slack or artificial column fits it exactly.
            if (_basis[row] < 0 && !((_senses[row] == RowSense.AtMost || (!mend && _slack[row] >= 0)) && TryEnter(_slack[row])))
                TryEnter(Add([row], [1], _penalty, artificial: true));
        }

        Array.Clear(_basic);
        for (var row = 0; row < _rows; row++)
            AddScaled(_basic, _inverse.AsSpan(row * _rows, _rows), _shifted[row]);
        _meter.Spend((long)_rows * _rows * order.Length / 6);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool TryEnter(int column)
    {
        if (_placeInBasis[column] >= 0)
            return false;
        FindDirection(column);
        var best = -1;
        for (var place = 0; place < _rows; place++)
        {
            if (_basis[place] < 0 && Math.Abs(_direction[place]) > 1e-7
                && (best < 0 || Math.Abs(_direction[place]) > Math.Abs(_direction[best])))
                best = place;
        }

        if (best < 0)
            return false;
        var pivot = _direction[best];
        for (var row = 0; row < _rows; row++)
        {
            var inverse = _inverse.AsSpan(row * _rows, _rows);
            if (inverse[best] == 0)
                continue;
            var share = inverse[best] / pivot;
            AddScaled(inverse, _direction, -share);
            inverse[best] = share;
        }

        _basis[best] = column;
        _placeInBasis[column] = best;
        return true;
    }

    /// <summary>to += from × scale, element by element.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void AddScaled(Span<double> to, ReadOnlySpan<double> from, double scale)
    {
        var lanes = Vector<double>.Count;
        var scales = new Vector<double>(scale);
        var i = 0;
        for (; i + lanes <= to.Length; i += lanes)
            (new Vector<double>(to[i..]) + (new Vector<double>(from[i..]) * scales)).CopyTo(to[i..]);
        for (; i < to.Length; i++)
            to[i] += from[i] * scale;
    }
}
