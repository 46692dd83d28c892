namespace TyingClass.Balance.Retrieving;

/// <summary>Six equations: Gaussian elimination with pivots, in place.</summary>
internal static class Linear6
{
    /// <param name="matrix">6×6 by rows; spoiled.</param>
    /// <param name="right">Becomes the solution.</param>
    public static void Solve(Span<double> matrix, Span<double> right)
    {
        for (int column = 0; column < 6; column++)
        {
            int best = column;
            for (int row = column + 1; row < 6; row++)
            {
                if (Math.Abs(matrix[6 * row + column]) > Math.Abs(matrix[6 * best + column])) best = row;
            }

            if (best != column)
            {
                for (int k = column; k < 6; k++) (matrix[6 * column + k], matrix[6 * best + k]) = (matrix[6 * best + k], matrix[6 * column + k]);
                (right[column], right[best]) = (right[best], right[column]);
            }

            double over = 1 / matrix[7 * column];
            for (int row = column + 1; row < 6; row++)
            {
                double share = matrix[6 * row + column] * over;
                if (share == 0) continue;
                for (int k = column + 1; k < 6; k++) matrix[6 * row + k] -= share * matrix[6 * column + k];
                right[row] -= share * right[column];
            }
        }

        for (int row = 5; row >= 0; row--)
        {
            double sum = right[row];
            for (int k = row + 1; k < 6; k++) sum -= matrix[6 * row + k] * right[k];
            right[row] = sum / matrix[7 * row];
        }
    }
}
