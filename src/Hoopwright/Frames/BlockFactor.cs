using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Hoopwright.Frames;

/// <summary>
/// A symmetric matrix of six-by-six blocks and its factors L·D·Lᵀ, in the room of one <see cref="BlockPattern"/>. No pivoting: the
/// signs of D count the negative eigenvalues (Sylvester's law of inertia), which is how buckling and limits are told.
/// </summary>
internal sealed class BlockFactor
{
    /// <summary>Numbers in a block.</summary>
    internal const int BlockSize = 36;

    /// <summary>
    /// Share of its own diagonal that a pivot must keep. Below it the last digits of the sum are gone and the freedom has no stiffness:
    /// double precision keeps 1e-16, a frame of some thousand members loses up to three digits more.
    /// </summary>
    internal const double LeastPivotShare = 1e-13;

    private readonly BlockPattern _pattern;
    private readonly double[] _values;
    private readonly double[] _diagonals;
    private readonly double[] _pivots;
    private readonly double[] _scaled;

    internal BlockFactor(BlockPattern pattern)
    {
        _pattern = pattern;
        _values = new double[pattern.Blocks * BlockSize];
        _diagonals = new double[pattern.Nodes * 6];
        _pivots = new double[pattern.Nodes * 6];
        int most = 0;
        for (int column = 0; column < pattern.Nodes; column++)
            most = Math.Max(most, pattern.Starts[column + 1] - pattern.Starts[column] - 1);
        _scaled = new double[Math.Max(1, most) * BlockSize];
    }

    /// <summary>
    /// The blocks, column by column. Diagonal blocks are full. An off-diagonal block (row, column) is kept turned: number 6·c + r is
    /// the entry of freedom r of the row's node and freedom c of the column's node.
    /// </summary>
    internal Span<double> Values => _values;

    /// <summary>Pivots of D below zero after <see cref="Factor"/>.</summary>
    internal int Negative { get; private set; }

    /// <summary>Least share of its diagonal that any pivot kept, 1 for the best.</summary>
    internal double LeastShare { get; private set; }

    /// <summary>Freedoms that lost their pivot: as 6·node + freedom, in the order of elimination. Their pivots were set to their diagonals.</summary>
    internal List<int> Lost { get; } = [];

    /// <summary>Sets all entries to zero.</summary>
    internal void Clear() => Array.Clear(_values);

    /// <summary>Factors the matrix in place.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Factor()
    {
        Lost.Clear();
        Negative = 0;
        LeastShare = 1;
        var pattern = _pattern;
        for (int column = 0; column < pattern.Nodes; column++)
        {
            int block = pattern.Starts[column] * BlockSize;
            for (int freedom = 0; freedom < 6; freedom++)
                _diagonals[(6 * column) + freedom] = Math.Abs(_values[block + (7 * freedom)]);
        }
        for (int column = 0; column < pattern.Nodes; column++)
        {
            FactorDiagonal(column);
            int below = pattern.Starts[column + 1] - pattern.Starts[column] - 1;
            if (below == 0)
                continue;
            Scale(column, below);
            Update(column, below);
        }
    }

    /// <summary>Solves for one right-hand side in place: six values for each node, in the model's order of nodes.</summary>
    internal void Solve(Span<double> values)
    {
        var pattern = _pattern;
        var turned = new double[values.Length];
        for (int node = 0; node < pattern.Nodes; node++)
            values.Slice(6 * node, 6).CopyTo(turned.AsSpan(6 * pattern.Place[node], 6));
        Forward(turned);
        for (int at = 0; at < turned.Length; at++)
            turned[at] /= _pivots[at];
        Backward(turned);
        for (int node = 0; node < pattern.Nodes; node++)
            turned.AsSpan(6 * pattern.Place[node], 6).CopyTo(values.Slice(6 * node, 6));
    }

    /// <summary>The movement that costs no force when a freedom lost its pivot.</summary>
    /// <param name="lost">One of <see cref="Lost"/>.</param>
    /// <returns>Six values for each node, in the model's order of nodes; 1 at the lost freedom.</returns>
    internal double[] NullShape(int lost)
    {
        var turned = new double[6 * _pattern.Nodes];
        turned[(6 * _pattern.Place[lost / 6]) + (lost % 6)] = 1;
        Backward(turned);
        var shape = new double[turned.Length];
        for (int node = 0; node < _pattern.Nodes; node++)
            turned.AsSpan(6 * _pattern.Place[node], 6).CopyTo(shape.AsSpan(6 * node, 6));
        return shape;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FactorDiagonal(int column)
    {
        var block = _values.AsSpan(_pattern.Starts[column] * BlockSize, BlockSize);
        Span<double> shares = stackalloc double[6];
        for (int k = 0; k < 6; k++)
        {
            double pivot = Pivot(column, k, block[7 * k]);
            for (int r = k + 1; r < 6; r++)
            {
                shares[r] = block[(6 * r) + k] / pivot;
                for (int c = k + 1; c <= r; c++)
                    block[(6 * r) + c] -= shares[r] * block[(6 * c) + k];
            }
            for (int r = k + 1; r < 6; r++)
                block[(6 * r) + k] = shares[r];
        }
    }

    private double Pivot(int column, int freedom, double pivot)
    {
        double diagonal = _diagonals[(6 * column) + freedom];
        double share = diagonal > 0 ? Math.Abs(pivot) / diagonal : 0;
        if (share > LeastPivotShare)
        {
            LeastShare = Math.Min(LeastShare, share);
        }
        else
        {
            Lost.Add((6 * _pattern.Order[column]) + freedom);
            pivot = diagonal > 0 ? diagonal : 1;
        }
        if (pivot < 0)
            Negative++;
        return _pivots[(6 * column) + freedom] = pivot;
    }

    /// <summary>Turns a column's off-diagonal blocks B into L = W·D⁻¹ with W = B·l⁻ᵀ, and keeps W.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Scale(int column, int below)
    {
        int diagonal = _pattern.Starts[column] * BlockSize;
        ref double values = ref MemoryMarshal.GetArrayDataReference(_values);
        ref double scaled = ref MemoryMarshal.GetArrayDataReference(_scaled);
        ref double pivots = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(_pivots), 6 * column);
        for (int at = 0; at < below; at++)
        {
            ref double block = ref Unsafe.Add(ref values, diagonal + ((at + 1) * BlockSize));
            ref double kept = ref Unsafe.Add(ref scaled, at * BlockSize);
            for (int k = 0; k < 6; k++)
            {
                ref double row = ref Unsafe.Add(ref block, 6 * k);
                var a = Vector128.LoadUnsafe(ref row);
                var b = Vector128.LoadUnsafe(ref row, 2);
                var c = Vector128.LoadUnsafe(ref row, 4);
                for (int j = 0; j < k; j++)
                {
                    var share = Vector128.Create(Unsafe.Add(ref values, diagonal + (6 * k) + j));
                    ref double earlier = ref Unsafe.Add(ref kept, 6 * j);
                    a -= share * Vector128.LoadUnsafe(ref earlier);
                    b -= share * Vector128.LoadUnsafe(ref earlier, 2);
                    c -= share * Vector128.LoadUnsafe(ref earlier, 4);
                }
                ref double into = ref Unsafe.Add(ref kept, 6 * k);
                a.StoreUnsafe(ref into);
                b.StoreUnsafe(ref into, 2);
                c.StoreUnsafe(ref into, 4);
                var inverse = Vector128.Create(1 / Unsafe.Add(ref pivots, k));
                (a * inverse).StoreUnsafe(ref row);
                (b * inverse).StoreUnsafe(ref row, 2);
                (c * inverse).StoreUnsafe(ref row, 4);
            }
        }
    }

    /// <summary>Takes W·Lᵀ of a column off the blocks to its right.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Update(int column, int below)
    {
        int first = _pattern.Starts[column] + 1, next = _pattern.UpdateStarts[column];
        ref double values = ref MemoryMarshal.GetArrayDataReference(_values);
        ref double scaled = ref MemoryMarshal.GetArrayDataReference(_scaled);
        for (int second = 0; second < below; second++)
        {
            ref double lower = ref Unsafe.Add(ref values, (first + second) * BlockSize);
            for (int at = second; at < below; at++)
                TakeOff(ref Unsafe.Add(ref values, _pattern.Targets[next++] * BlockSize), ref Unsafe.Add(ref scaled, at * BlockSize), ref lower);
        }
    }

    // The processor's fused multiply-add is left out on purpose: it rounds once instead of twice, and not every machine has it.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void TakeOff(ref double target, ref double scaled, ref double lower)
    {
        for (int c = 0; c < 6; c++)
        {
            ref double row = ref Unsafe.Add(ref target, 6 * c);
            var one = Vector128.LoadUnsafe(ref row);
            var two = Vector128.LoadUnsafe(ref row, 2);
            var three = Vector128.LoadUnsafe(ref row, 4);
            for (int k = 0; k < 6; k++)
            {
                var share = Vector128.Create(Unsafe.Add(ref lower, (6 * k) + c));
                ref double from = ref Unsafe.Add(ref scaled, 6 * k);
                one -= share * Vector128.LoadUnsafe(ref from);
                two -= share * Vector128.LoadUnsafe(ref from, 2);
                three -= share * Vector128.LoadUnsafe(ref from, 4);
            }
            one.StoreUnsafe(ref row);
            two.StoreUnsafe(ref row, 2);
            three.StoreUnsafe(ref row, 4);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Forward(double[] y)
    {
        for (int column = 0; column < _pattern.Nodes; column++)
        {
            int start = _pattern.Starts[column];
            var own = y.AsSpan(6 * column, 6);
            var diagonal = _values.AsSpan(start * BlockSize, BlockSize);
            for (int r = 1; r < 6; r++)
            {
                for (int c = 0; c < r; c++)
                    own[r] -= diagonal[(6 * r) + c] * own[c];
            }
            for (int at = start + 1; at < _pattern.Starts[column + 1]; at++)
            {
                var block = _values.AsSpan(at * BlockSize, BlockSize);
                var below = y.AsSpan(6 * _pattern.Rows[at], 6);
                for (int c = 0; c < 6; c++)
                {
                    for (int r = 0; r < 6; r++)
                        below[r] -= block[(6 * c) + r] * own[c];
                }
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Backward(double[] x)
    {
        for (int column = _pattern.Nodes - 1; column >= 0; column--)
        {
            int start = _pattern.Starts[column];
            var own = x.AsSpan(6 * column, 6);
            for (int at = start + 1; at < _pattern.Starts[column + 1]; at++)
            {
                var block = _values.AsSpan(at * BlockSize, BlockSize);
                var below = x.AsSpan(6 * _pattern.Rows[at], 6);
                for (int c = 0; c < 6; c++)
                {
                    double sum = 0;
                    for (int r = 0; r < 6; r++)
                        sum += block[(6 * c) + r] * below[r];
                    own[c] -= sum;
                }
            }
            var diagonal = _values.AsSpan(start * BlockSize, BlockSize);
            for (int r = 5; r > 0; r--)
            {
                for (int c = 0; c < r; c++)
                    own[c] -= diagonal[(6 * r) + c] * own[r];
            }
        }
    }
}
