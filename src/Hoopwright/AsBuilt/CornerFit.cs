using Hoopwright.Sources;

namespace Hoopwright.AsBuilt;

/// <summary>
/// Where the four corners of the string rectangle stand, from its four sides and two diagonals. Six lengths are one more than
/// four points need, so they are adjusted: the corners are those that make the squares of what is left over least.
/// </summary>
internal static class CornerFit
{
    internal static readonly Formula Adjusted = new("corners", "least Σ (measured − computed)² over four sides and two diagonals", "m",
        new("Least-squares adjustment of a braced quadrilateral, any handbook of surveying", "", Standing.Derived));

    private const int MostSteps = 50;

    /// <summary>Pairs of corners in the order of the lengths: front, back, left, right, diagonals from front left and front right.</summary>
    private static readonly (int From, int To)[] Lines = [(0, 1), (2, 3), (0, 2), (1, 3), (0, 3), (1, 2)];

    /// <summary>Corners front left, front right, back left, back right; front left at nought, front right on the x axis.</summary>
    /// <param name="lengthsM">Front, back, left, right, diagonal from front left, diagonal from front right, metres; above 0.</param>
    /// <returns>Coordinates x, y of each corner, metres; null when no four points are anywhere near.</returns>
    public static (double XM, double YM)[]? Corners(double[] lengthsM)
    {
        double acrossM = (lengthsM[0] + lengthsM[1]) / 2, alongM = (lengthsM[2] + lengthsM[3]) / 2;
        // Free: x of front right; x and y of back left and back right.
        double[] at = [acrossM, 0, alongM, acrossM, alongM];
        for (int step = 0; step < MostSteps; step++)
        {
            (double XM, double YM)[] corners = Placed(at);
            var normal = new double[5, 6];
            for (int line = 0; line < 6; line++)
            {
                (double XM, double YM) from = corners[Lines[line].From], to = corners[Lines[line].To];
                double lengthM = Math.Sqrt(((to.XM - from.XM) * (to.XM - from.XM)) + ((to.YM - from.YM) * (to.YM - from.YM)));
                if (lengthM < 1e-9) return null;
                double cos = (to.XM - from.XM) / lengthM, sin = (to.YM - from.YM) / lengthM, offM = lengthsM[line] - lengthM;
                var row = new double[5];
                Add(row, Lines[line].From, -cos, -sin);
                Add(row, Lines[line].To, cos, sin);
                for (int i = 0; i < 5; i++)
                {
                    for (int j = 0; j < 5; j++) normal[i, j] += row[i] * row[j];
                    normal[i, 5] += row[i] * offM;
                }
            }
            if (Solve(normal) is not { } moveM) return null;
            for (int i = 0; i < 5; i++) at[i] += moveM[i];
            if (!at.All(double.IsFinite)) return null;
            if (moveM.Max(Math.Abs) < 1e-12) break;
        }
        return Placed(at);
    }

    /// <summary>Measured less computed, in the order of the lengths, metres.</summary>
    public static double[] ResidualsM(double[] lengthsM, (double XM, double YM)[] corners) =>
        [.. Lines.Select((line, index) => lengthsM[index] - Math.Sqrt(Square(corners[line.To].XM - corners[line.From].XM) + Square(corners[line.To].YM - corners[line.From].YM)))];

    private static double Square(double value) => value * value;

    private static (double XM, double YM)[] Placed(double[] at) => [(0, 0), (at[0], 0), (at[1], at[2]), (at[3], at[4])];

    private static void Add(double[] row, int corner, double x, double y)
    {
        switch (corner)
        {
            case 1: row[0] += x; break;
            case 2: (row[1], row[2]) = (row[1] + x, row[2] + y); break;
            case 3: (row[3], row[4]) = (row[3] + x, row[4] + y); break;
        }
    }

    /// <summary>Elimination with the largest pivot; null when the equations do not hold a point.</summary>
    private static double[]? Solve(double[,] a)
    {
        const int n = 5;
        for (int column = 0; column < n; column++)
        {
            int pivot = column;
            for (int row = column + 1; row < n; row++)
            {
                if (Math.Abs(a[row, column]) > Math.Abs(a[pivot, column])) pivot = row;
            }
            if (Math.Abs(a[pivot, column]) < 1e-12) return null;
            for (int k = 0; k <= n; k++) (a[column, k], a[pivot, k]) = (a[pivot, k], a[column, k]);
            for (int row = 0; row < n; row++)
            {
                if (row == column) continue;
                double times = a[row, column] / a[column, column];
                for (int k = column; k <= n; k++) a[row, k] -= times * a[column, k];
            }
        }
        return [.. Enumerable.Range(0, n).Select(row => a[row, n] / a[row, row])];
    }
}
