namespace Hoopwright.Frames;

/// <summary>Eigenvalues and eigenvectors of a symmetric tridiagonal matrix.</summary>
internal static class TridiagonalEigen
{
    private const int MostTurns = 60;

    /// <summary>
    /// By QL with implicit shifts (Dubrulle, Martin and Wilkinson, Handbook for Automatic Computation II/4, as in EISPACK tql2).
    /// </summary>
    /// <param name="diagonal">The diagonal; becomes the eigenvalues, in no order.</param>
    /// <param name="beside">The n − 1 entries beside it.</param>
    /// <returns>Eigenvectors: entry [i, j] is component i of the vector to eigenvalue j.</returns>
    internal static double[,] Solve(double[] diagonal, ReadOnlySpan<double> beside)
    {
        int n = diagonal.Length;
        var vectors = new double[n, n];
        for (int at = 0; at < n; at++)
            vectors[at, at] = 1;
        var off = new double[n];
        beside[..Math.Max(0, n - 1)].CopyTo(off);
        for (int low = 0; low < n; low++)
        {
            for (int turn = 0; turn < MostTurns; turn++)
            {
                int end = SmallBeside(diagonal, off, low);
                if (end == low)
                    break;
                Turn(diagonal, off, vectors, low, end);
            }
        }
        return vectors;
    }

    private static int SmallBeside(double[] diagonal, double[] off, int from)
    {
        int at = from;
        while (at < diagonal.Length - 1 && Math.Abs(off[at]) > 1.1e-16 * (Math.Abs(diagonal[at]) + Math.Abs(diagonal[at + 1])))
            at++;
        return at;
    }

    private static void Turn(double[] diagonal, double[] off, double[,] vectors, int low, int end)
    {
        int n = diagonal.Length;
        double shift = (diagonal[low + 1] - diagonal[low]) / (2 * off[low]);
        double size = Hypotenuse(shift, 1);
        double g = diagonal[end] - diagonal[low] + (off[low] / (shift + Math.CopySign(size, shift)));
        double sin = 1, cos = 1, p = 0;
        for (int at = end - 1; at >= low; at--)
        {
            double f = sin * off[at], b = cos * off[at];
            size = Hypotenuse(f, g);
            off[at + 1] = size;
            if (size == 0)
            {
                diagonal[at + 1] -= p;
                off[end] = 0;
                return;
            }
            sin = f / size;
            cos = g / size;
            g = diagonal[at + 1] - p;
            double r = ((diagonal[at] - g) * sin) + (2 * cos * b);
            p = sin * r;
            diagonal[at + 1] = g + p;
            g = (cos * r) - b;
            for (int row = 0; row < n; row++)
            {
                double upper = vectors[row, at + 1], lower = vectors[row, at];
                vectors[row, at + 1] = (sin * lower) + (cos * upper);
                vectors[row, at] = (cos * lower) - (sin * upper);
            }
        }
        diagonal[low] -= p;
        off[low] = g;
        off[end] = 0;
    }

    private static double Hypotenuse(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
