using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Hoopwright.Frames;

/// <summary>
/// Finds the lowest positive multiples λ of a solved state's forces at which K + λ·K_G loses its hold: the largest μ = 1/λ of
/// −K_G·φ = μ·K·φ, by the Lanczos method in the inner product of K with every vector kept orthogonal to all before it.
/// </summary>
internal sealed class BucklingSolver
{
    private const int MostVectors = 300;
    private const int LookEvery = 8;
    private const int MostRuns = 6;

    // Error allowed in μ as a share: factors are then good to about ten digits, far under what a mesh of chords leaves.
    private const double Tolerance = 1e-10;

    private readonly FrameWork _work;
    private readonly double[] _geometric;
    private readonly int _wanted;
    private readonly List<(double Mu, double[] Shape, double[] Stiff)> _modes = [];

    private BucklingSolver(FrameWork work, int wanted)
    {
        _work = work;
        _wanted = wanted;
        _geometric = work.Geometric();
    }

    /// <summary>The lowest modes.</summary>
    /// <param name="work">A frame that a linear solve left in balance, with its elastic factors.</param>
    /// <param name="wanted">How many.</param>
    internal static BucklingModes Solve(FrameWork work, int wanted) => new BucklingSolver(work, Math.Max(1, wanted)).Solve();

    private BucklingModes Solve()
    {
        for (int run = 0; run < MostRuns; run++)
        {
            int before = _modes.Count;
            Run(run);
            _modes.Sort((a, b) => b.Mu.CompareTo(a.Mu));
            if (_modes.Count == before || Complete())
                break;
        }
        var kept = _modes.Take(_wanted).ToArray();
        double residual = kept.Select(Residual).DefaultIfEmpty(0).Max();
        return new([.. kept.Select(mode => 1 / mode.Mu)], [.. kept.Select(mode => Scaled(mode.Shape))], residual);
    }

    /// <summary>Counts by inertia whether any mode below the last wanted one was missed: a double one shows only once in one run.</summary>
    private bool Complete()
    {
        int last = Math.Min(_wanted, _modes.Count);
        double factor = 1 / _modes[last - 1].Mu;
        int found = _modes.Count(mode => 1 / mode.Mu < factor * (1 + 1e-7));
        _work.FormShifted(_geometric, factor * (1 + 1e-7));
        int below = _work.Factor.Negative;
        _work.FormShifted(_geometric, 0);
        return below <= found && (found >= _wanted || _modes.Count < _wanted && below <= found && NoneAbove(factor));
    }

    // Fewer modes than wanted: the rest would lie very far up. Look ten thousand times higher before saying that there are none.
    private bool NoneAbove(double factor)
    {
        _work.FormShifted(_geometric, factor * 1e4);
        int below = _work.Factor.Negative;
        _work.FormShifted(_geometric, 0);
        return below <= _modes.Count;
    }

    private void Run(int run)
    {
        int size = 6 * _work.Mesh.Nodes;
        var vectors = new List<double[]>();
        var stiffs = new List<double[]>();
        var alphas = new List<double>();
        var betas = new List<double>();
        var next = Start(size, run);
        var stiff = new double[size];
        _work.ElasticTimes(next, stiff);
        int most = Math.Min(MostVectors, size);
        while (true)
        {
            Orthogonalise(next, stiff, vectors, stiffs);
            double norm = Math.Sqrt(Math.Max(0, Dot(next, stiff)));
            if (vectors.Count > 0)
                betas.Add(norm);
            bool spent = !(norm > 1e-12 * Math.Max(1e-300, alphas.Count == 0 ? norm : alphas.Max(Math.Abs)));
            if (!spent)
            {
                Divide(next, norm);
                Divide(stiff, norm);
            }
            bool last = spent || vectors.Count >= most;
            if (last && vectors.Count == 0)
                return;
            if ((last || (vectors.Count >= _wanted + LookEvery && vectors.Count % LookEvery == 0)) && (Harvest(alphas, betas, vectors, stiffs, last) || last))
                return;
            vectors.Add(next);
            stiffs.Add(stiff);
            var geometric = new double[size];
            _work.Times(_geometric, next, geometric);
            for (int at = 0; at < size; at++)
                geometric[at] = -geometric[at];
            alphas.Add(Dot(geometric, next));
            stiff = geometric;
            next = (double[])geometric.Clone();
            _work.Factor.Solve(next);
        }
    }

    /// <summary>Takes converged modes out of a run; true when there are enough or no more can come.</summary>
    private bool Harvest(List<double> alphas, List<double> betas, List<double[]> vectors, List<double[]> stiffs, bool all)
    {
        int count = alphas.Count;
        double[] mus = [.. alphas];
        var shapes = TridiagonalEigen.Solve(mus, [.. betas.Take(count - 1)]);
        double beta = betas[count - 1];
        double greatest = mus.Max(Math.Abs);
        var order = Enumerable.Range(0, count).Where(at => mus[at] > 1e-12 * greatest).OrderByDescending(at => mus[at]).Take(_wanted).ToArray();
        bool[] settled = [.. order.Select(at => Math.Abs(beta * shapes[count - 1, at]) <= Tolerance * mus[at])];
        if (!all && !(settled.Length >= _wanted && settled.All(one => one)))
            return false;
        for (int rank = 0; rank < order.Length; rank++)
        {
            if (!settled[rank])
                continue;
            _modes.Add((mus[order[rank]], Mixed(vectors, shapes, order[rank]), Mixed(stiffs, shapes, order[rank])));
        }
        return true;
    }

    // Twice is enough (Parlett, The Symmetric Eigenvalue Problem, 6.9).
    private void Orthogonalise(double[] vector, double[] stiff, List<double[]> vectors, List<double[]> stiffs)
    {
        for (int pass = 0; pass < 2; pass++)
        {
            foreach (var (_, shape, shapeStiff) in _modes)
                TakeOff(vector, stiff, shape, shapeStiff);
            for (int at = vectors.Count - 1; at >= 0; at--)
                TakeOff(vector, stiff, vectors[at], stiffs[at]);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void TakeOff(double[] vector, double[] stiff, double[] other, double[] otherStiff)
    {
        double share = Dot(vector, otherStiff);
        for (int at = 0; at < vector.Length; at++)
        {
            vector[at] -= share * other[at];
            stiff[at] -= share * otherStiff[at];
        }
    }

    /// <summary>A fixed start without any symmetry of its own, made smooth by one solve.</summary>
    private double[] Start(int size, int run)
    {
        var start = new double[size];
        double step = 0.6180339887498949 + (0.1 * run), place = 0.37;
        for (int at = 0; at < size; at++)
        {
            place = (place + step) % 1;
            start[at] = _work.Mesh.Held[at] ? 0 : place - 0.31;
        }
        _work.Factor.Solve(start);
        return start;
    }

    private double Residual((double Mu, double[] Shape, double[] Stiff) mode)
    {
        var geometric = new double[mode.Shape.Length];
        _work.Times(_geometric, mode.Shape, geometric);
        double worst = 0, greatest = 0;
        for (int at = 0; at < geometric.Length; at++)
        {
            worst = Math.Max(worst, Math.Abs(mode.Stiff[at] + (geometric[at] / mode.Mu)));
            greatest = Math.Max(greatest, Math.Abs(mode.Stiff[at]));
        }
        return greatest == 0 ? 0 : worst / greatest;
    }

    private static double[] Mixed(List<double[]> vectors, double[,] shares, int column)
    {
        var sum = new double[vectors[0].Length];
        for (int vector = 0; vector < shares.GetLength(0); vector++)
        {
            double share = shares[vector, column];
            for (int at = 0; at < sum.Length; at++)
                sum[at] += share * vectors[vector][at];
        }
        return sum;
    }

    private static ImmutableArray<double> Scaled(double[] shape)
    {
        double greatest = 0;
        int leader = 0;
        for (int at = 0; at < shape.Length; at++)
        {
            // The first of the largest shifts sets the sign, with a margin so that the last digits do not choose it.
            if (at % 6 < 3 && Math.Abs(shape[at]) > greatest * (1 + 1e-9))
                (greatest, leader) = (Math.Abs(shape[at]), at);
        }
        double scale = greatest == 0 ? 1 : 1 / shape[leader];
        return [.. shape.Select(value => value * scale)];
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double Dot(double[] a, double[] b)
    {
        double sum = 0;
        for (int at = 0; at < a.Length; at++)
            sum += a[at] * b[at];
        return sum;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Divide(double[] vector, double by)
    {
        for (int at = 0; at < vector.Length; at++)
            vector[at] /= by;
    }
}
