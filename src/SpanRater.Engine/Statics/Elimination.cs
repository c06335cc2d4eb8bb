namespace SpanRater;

/// <summary>
/// A few equations solved by elimination, as by hand: of more equations than unknowns it takes those that tell the unknowns
/// apart best, and leaves the others over.
/// </summary>
internal sealed class Elimination
{
    /// <summary>A pivot below this part of its unknown's largest coefficient does not tell it apart from the others.</summary>
    private const double SmallestPivot = 1e-6;

    private readonly double[,] inverse;

    private Elimination(int[] rows, double[,] inverse)
    {
        Rows = rows;
        this.inverse = inverse;
    }

    /// <summary>The equations taken, one an unknown.</summary>
    public int[] Rows { get; }

    /// <summary>Takes the equations apart; null where they do not determine the unknowns.</summary>
    /// <param name="coefficients">[equations × unknowns], at least as many equations as unknowns.</param>
    public static Elimination? Of(double[,] coefficients)
    {
        int equations = coefficients.GetLength(0), unknowns = coefficients.GetLength(1);
        var work = (double[,])coefficients.Clone();
        int[] order = [.. Enumerable.Range(0, equations)];
        for (int c = 0; c < unknowns; c++)
        {
            double largest = 0;
            int pivot = c;
            for (int r = 0; r < equations; r++)
            {
                largest = Math.Max(largest, Math.Abs(coefficients[r, c]));
            }

            for (int r = c; r < equations; r++)
            {
                if (Math.Abs(work[order[r], c]) > Math.Abs(work[order[pivot], c]))
                {
                    pivot = r;
                }
            }

            if (Math.Abs(work[order[pivot], c]) <= SmallestPivot * largest)
            {
                return null;
            }

            (order[c], order[pivot]) = (order[pivot], order[c]);
            for (int r = c + 1; r < equations; r++)
            {
                double factor = work[order[r], c] / work[order[c], c];
                for (int k = c; k < unknowns; k++)
                {
                    work[order[r], k] -= factor * work[order[c], k];
                }
            }
        }

        int[] rows = order[..unknowns];
        return new Elimination(rows, Inverse(coefficients, rows));
    }

    /// <summary>The unknowns for the right sides of the equations taken, in their order.</summary>
    public double[] Solve(ReadOnlySpan<double> right)
    {
        var found = new double[right.Length];
        for (int u = 0; u < found.Length; u++)
        {
            for (int e = 0; e < right.Length; e++)
            {
                found[u] += inverse[u, e] * right[e];
            }
        }

        return found;
    }

    // Gauss-Jordan with the largest pivot of each column.
    private static double[,] Inverse(double[,] coefficients, int[] rows)
    {
        int n = rows.Length;
        var work = new double[n, 2 * n];
        for (int r = 0; r < n; r++)
        {
            for (int c = 0; c < n; c++)
            {
                work[r, c] = coefficients[rows[r], c];
            }

            work[r, n + r] = 1;
        }

        for (int c = 0; c < n; c++)
        {
            int pivot = Enumerable.Range(c, n - c).MaxBy(r => Math.Abs(work[r, c]));
            for (int k = 0; k < 2 * n; k++)
            {
                (work[c, k], work[pivot, k]) = (work[pivot, k], work[c, k]);
            }

            double divisor = work[c, c];
            for (int k = 0; k < 2 * n; k++)
            {
                work[c, k] /= divisor;
            }

            for (int r = 0; r < n; r++)
            {
                double factor = work[r, c];
                for (int k = 0; k < 2 * n && r != c && factor != 0; k++)
                {
                    work[r, k] -= factor * work[c, k];
                }
            }
        }

        var inverse = new double[n, n];
        for (int r = 0; r < n; r++)
        {
            for (int c = 0; c < n; c++)
            {
                inverse[r, c] = work[r, n + c];
            }
        }

        return inverse;
    }
}
