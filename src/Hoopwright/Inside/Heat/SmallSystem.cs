namespace Hoopwright.Inside.Heat;

/// <summary>Solves a handful of linear equations in place.</summary>
internal static class SmallSystem
{
    /// <summary>Elimination with row exchange; the right-hand sides in the columns after the matrix become the solutions.</summary>
    internal static void Solve(double[,] matrix, int size, int rightHandSides)
    {
        int columns = size + rightHandSides;
        for (int pivot = 0; pivot < size; pivot++)
        {
            int best = pivot;
            for (int row = pivot + 1; row < size; row++)
            {
                if (Math.Abs(matrix[row, pivot]) > Math.Abs(matrix[best, pivot])) best = row;
            }
            if (best != pivot)
            {
                for (int column = pivot; column < columns; column++) (matrix[pivot, column], matrix[best, column]) = (matrix[best, column], matrix[pivot, column]);
            }
            double over = 1 / matrix[pivot, pivot];
            for (int column = pivot; column < columns; column++) matrix[pivot, column] *= over;
            for (int row = 0; row < size; row++)
            {
                double times = matrix[row, pivot];
                if (row == pivot || times == 0) continue;
                for (int column = pivot; column < columns; column++) matrix[row, column] -= times * matrix[pivot, column];
            }
        }
    }
}
