namespace SpanRater;

/// <summary>
/// The linear complementarity problem: w = q + M z with w ≥ 0, z ≥ 0 and, of each pair, one of the two zero. Source: C. E. Lemke,
/// Bimatrix equilibrium points and mathematical programming, Management Science 11 (1965), from memory.
/// </summary>
internal static class Complementarity
{
    /// <summary>More pivots than this a problem of n pairs does not get: the search ends without a result instead of going round.</summary>
    public static int MostPivots(int pairs) => 50 + (20 * pairs * pairs);

    /// <summary>z, or null where the search ends on a ray or at the limit of pivots.</summary>
    /// <param name="m">[n × n].</param>
    /// <param name="q">[n].</param>
    /// <param name="pivots">Number of pivots made.</param>
    public static double[]? Lemke(double[,] m, double[] q, out int pivots)
    {
        int n = q.Length;
        pivots = 0;
        if (q.All(value => value >= 0))
        {
            return new double[n];
        }

        // Columns: w (n), z (n), the artificial z0, the right side. Rows: I w − M z − e z0 = q.
        var tableau = new double[n, (2 * n) + 2];
        var basis = new int[n];
        for (int r = 0; r < n; r++)
        {
            tableau[r, r] = 1;
            for (int c = 0; c < n; c++)
            {
                tableau[r, n + c] = -m[r, c];
            }

            tableau[r, 2 * n] = -1;
            tableau[r, (2 * n) + 1] = q[r];
            basis[r] = r;
        }

        int entering = 2 * n, row = Array.IndexOf(q, q.Min());
        while (pivots++ < MostPivots(n))
        {
            int leaving = basis[row];
            Pivot(tableau, row, entering);
            basis[row] = entering;
            if (leaving == 2 * n)
            {
                var z = new double[n];
                for (int r = 0; r < n; r++)
                {
                    if (basis[r] >= n)
                    {
                        z[basis[r] - n] = Math.Max(0, tableau[r, (2 * n) + 1]);
                    }
                }

                return z;
            }

            entering = leaving < n ? leaving + n : leaving - n;
            row = LeavingRow(tableau, basis, entering);
            if (row < 0)
            {
                return null;
            }
        }

        return null;
    }

    // The smallest ratio; of equal ones the artificial variable, which ends the search, then the least index.
    private static int LeavingRow(double[,] tableau, int[] basis, int entering)
    {
        int n = basis.Length, chosen = -1;
        double smallest = double.PositiveInfinity;
        for (int r = 0; r < n; r++)
        {
            if (tableau[r, entering] <= 1e-12)
            {
                continue;
            }

            double ratio = tableau[r, (2 * n) + 1] / tableau[r, entering];
            bool equal = chosen >= 0 && Math.Abs(ratio - smallest) <= 1e-12 * (1 + Math.Abs(smallest));
            if (equal ? basis[r] == 2 * n || (basis[chosen] != 2 * n && basis[r] < basis[chosen]) : ratio < smallest)
            {
                (chosen, smallest) = (r, ratio);
            }
        }

        return chosen;
    }

    private static void Pivot(double[,] tableau, int row, int column)
    {
        int rows = tableau.GetLength(0), columns = tableau.GetLength(1);
        double divisor = tableau[row, column];
        for (int c = 0; c < columns; c++)
        {
            tableau[row, c] /= divisor;
        }

        for (int r = 0; r < rows; r++)
        {
            double factor = tableau[r, column];
            if (r == row || factor == 0)
            {
                continue;
            }

            for (int c = 0; c < columns; c++)
            {
                tableau[r, c] -= factor * tableau[row, c];
            }
        }
    }
}
