using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace SpanRater.Tests;

/// <summary>The complementarity search against every choice of pairs, and on problems on which it could go round for ever.</summary>
public class ComplementarityTests
{
    [Fact]
    public void Lemke_RandomMatricesWithPositiveMinors_FindsTheOnlySolution() => SeededCases.Check(
        from n in Gen.Int[1, 7]
        from parts in Gen.Double[-1, 1].Array[n * n]
        from skew in Gen.Double[-1, 1].Array[n * n]
        from q in Gen.Double[-1, 1].Array[n]
        select (n, parts, skew, q),
        1_000,
        c =>
        {
            // BᵀB + a skew part + a little of the unit matrix: positive definite, so every minor is positive.
            Matrix<double> b = Matrix<double>.Build.Dense(c.n, c.n, c.parts), s = Matrix<double>.Build.Dense(c.n, c.n, c.skew);
            Matrix<double> m = (b.Transpose() * b) + (s - s.Transpose()) + (0.05 * Matrix<double>.Build.DenseIdentity(c.n));

            double[]? z = Complementarity.Lemke(m.ToArray(), c.q, out int pivots);

            Assert.NotNull(z);
            Assert.InRange(pivots, 0, Complementarity.MostPivots(c.n));
            double[] only = ByExamination(m, c.q);
            Assert.All(z.Zip(only), pair => Assert.Equal(pair.Second, pair.First, 1e-8 * (1 + only.Max(Math.Abs))));
        });

    // Whole numbers: ties between rows at every other pivot.
    [Fact]
    public void Lemke_WholeNumbers_FindsASolutionOfTheConditions() => SeededCases.Check(
        from n in Gen.Int[1, 7]
        from parts in Gen.Int[-1, 1].Array[n * n]
        from q in Gen.Int[-2, 1].Array[n]
        select (n, parts, q),
        1_000,
        c =>
        {
            Matrix<double> b = Matrix<double>.Build.Dense(c.n, c.n, (r, k) => c.parts[(r * c.n) + k]);
            Matrix<double> m = (b.Transpose() * b) + Matrix<double>.Build.DenseIdentity(c.n);
            AssertSolves(m, [.. c.q.Select(v => (double)v)]);
        });

    // K. G. Murty's matrices (from memory): the search makes many pivots, and still must end.
    [Theory]
    [InlineData(5)]
    [InlineData(8)]
    [InlineData(12)]
    public void Lemke_TheLowerTriangleOfTwos_Ends(int n)
    {
        Matrix<double> m = Matrix<double>.Build.Dense(n, n, (r, c) => r == c ? 1 : r > c ? 2 : 0);
        double[]? z = Complementarity.Lemke(m.ToArray(), [.. Enumerable.Repeat(-1.0, n)], out int pivots);

        Assert.InRange(pivots, 1, Complementarity.MostPivots(n) + 1);
        Assert.NotNull(z);
        AssertConditions(m, [.. Enumerable.Repeat(-1.0, n)], z);
    }

    [Fact]
    public void Lemke_AllRowsAlike_Ends()
    {
        Matrix<double> m = Matrix<double>.Build.DenseIdentity(30);
        AssertSolves(m, [.. Enumerable.Repeat(-1.0, 30)]);
    }

    [Fact]
    public void Lemke_NoSolution_SaysSo()
    {
        Assert.Null(Complementarity.Lemke(new double[,] { { -1, 0 }, { 0, -1 } }, [-1, -1], out int pivots));
        Assert.InRange(pivots, 1, Complementarity.MostPivots(2) + 1);
    }

    [Fact]
    public void Lemke_NothingViolated_MakesNoPivot()
    {
        Assert.Equal([0, 0], Complementarity.Lemke(new double[,] { { 1, 0 }, { 0, 1 } }, [0, 2], out int pivots)!);
        Assert.Equal(0, pivots);
    }

    private static void AssertSolves(Matrix<double> m, double[] q)
    {
        double[]? z = Complementarity.Lemke(m.ToArray(), q, out int pivots);
        Assert.InRange(pivots, 0, Complementarity.MostPivots(q.Length));
        Assert.NotNull(z);
        AssertConditions(m, q, z);
    }

    private static void AssertConditions(Matrix<double> m, double[] q, double[] z)
    {
        Vector<double> w = Vector<double>.Build.Dense(q) + (m * Vector<double>.Build.Dense(z));
        double size = 1e-9 * (1 + z.Max());
        Assert.All(z, value => Assert.True(value >= 0));
        Assert.All(w, value => Assert.True(value >= -size));
        Assert.All(w.Zip(z), pair => Assert.True(Math.Min(pair.First, pair.Second) <= size));
    }

    private static double[] ByExamination(Matrix<double> m, double[] q)
    {
        int n = q.Length;
        for (int set = 0; set < 1 << n; set++)
        {
            int[] on = [.. Enumerable.Range(0, n).Where(i => (set & (1 << i)) != 0)];
            var z = new double[n];
            if (on.Length > 0)
            {
                Vector<double> found = Matrix<double>.Build.Dense(on.Length, on.Length, (r, c) => m[on[r], on[c]]).Solve(Vector<double>.Build.Dense(on.Length, i => -q[on[i]]));
                for (int i = 0; i < on.Length; i++)
                {
                    z[on[i]] = found[i];
                }
            }

            Vector<double> w = Vector<double>.Build.Dense(q) + (m * Vector<double>.Build.Dense(z));
            if (z.All(v => v >= 0) && Enumerable.Range(0, n).All(i => on.Contains(i) || w[i] >= 0))
            {
                return z;
            }
        }

        throw new InvalidOperationException("No choice of pairs solves the problem.");
    }
}
