using MathNet.Numerics.Distributions;
using MathNet.Numerics.RootFinding;

namespace SpanRater;

/// <summary>
/// The Gumbel distribution of largest values, F(x) = exp(−exp(−(x − μ)/β)), fitted to block maxima by maximum likelihood.
/// </summary>
/// <remarks>
/// Sources, from memory: Johnson, Kotz and Balakrishnan, Continuous Univariate Distributions, vol. 2, 2nd ed. (1995), ch. 22 (equations of the estimates and their asymptotic covariance);
/// Coles, An Introduction to Statistical Modeling of Extreme Values (2001), ch. 3 (block maxima, return levels, delta method).
/// </remarks>
public sealed class GumbelFit
{
    /// <summary>Fewest blocks that are fitted: asymptotic standard errors want some tens; common practice, without a source.</summary>
    public const int FewestBlocks = 30;

    /// <summary>Euler's constant.</summary>
    private const double Euler = 0.57721566490153286;

    private GumbelFit(int blocks, double location, double scale) => (Blocks, Location, Scale) = (blocks, location, scale);

    /// <summary>Number of blocks.</summary>
    public int Blocks { get; }

    /// <summary>Location μ, in the unit of the maxima.</summary>
    public double Location { get; }

    /// <summary>Scale β, positive, in the unit of the maxima.</summary>
    public double Scale { get; }

    /// <summary>The fit; null where there are too few maxima, or all are the same.</summary>
    /// <param name="maxima">One of each block, finite.</param>
    /// <remarks>
    /// β solves β = x̄ − Σ x e^(−x/β) / Σ e^(−x/β), and μ = −β ln((1/n) Σ e^(−x/β)). The right side less β falls with β, so there is one solution: below the mean distance from the least maximum.
    /// </remarks>
    public static GumbelFit? Of(IReadOnlyList<double> maxima)
    {
        ArgumentNullException.ThrowIfNull(maxima);
        if (maxima.Count < FewestBlocks)
        {
            return null;
        }

        // Measured from the least, so that no exponential overflows.
        double least = maxima.Min(), span = maxima.Max() - least;
        if (!(span > 1e-12 * Math.Abs(least) && double.IsFinite(span)))
        {
            return null;
        }

        double[] x = [.. maxima.Select(m => m - least)];
        double mean = x.Average();
        double Excess(double scale)
        {
            double weights = 0, weighted = 0;
            foreach (double value in x)
            {
                double weight = Math.Exp(-value / scale);
                weights += weight;
                weighted += value * weight;
            }

            return mean - (weighted / weights) - scale;
        }

        double fitted = Brent.FindRoot(Excess, 1e-6 * span, mean + span, 1e-13 * span, 1000);
        double location = least - (fitted * Math.Log(x.Average(value => Math.Exp(-value / fitted))));
        return new GumbelFit(x.Length, location, fitted);
    }

    /// <summary>The value that one block in so many exceeds, in the unit of the maxima.</summary>
    /// <param name="blocks">Blocks in the return period, above 1 [-].</param>
    public double ReturnLevel(double blocks) => Location + (Scale * Reduced(blocks));

    /// <summary>
    /// Standard error of a return level by the asymptotic covariance of the estimates: (β/√n) √(1 + (6/π²)(1 − γ + y)²), from
    /// Var μ = (β²/n)(1 + (6/π²)(1 − γ)²), Var β = (β²/n) 6/π² and Cov = (β²/n)(6/π²)(1 − γ).
    /// </summary>
    /// <param name="blocks">Blocks in the return period, above 1 [-].</param>
    public double StandardError(double blocks)
    {
        double lever = 1 - Euler + Reduced(blocks);
        return Scale / Math.Sqrt(Blocks) * Math.Sqrt(1 + (6 / (Math.PI * Math.PI) * lever * lever));
    }

    /// <summary>The interval that holds the return level with a confidence, by the normal distribution of the estimate.</summary>
    /// <param name="blocks">Blocks in the return period, above 1 [-].</param>
    /// <param name="confidence">The confidence, such as 0.95 [-].</param>
    public (double Low, double High) Interval(double blocks, double confidence)
    {
        double half = Normal.InvCDF(0, 1, (1 + confidence) / 2) * StandardError(blocks), level = ReturnLevel(blocks);
        return (level - half, level + half);
    }

    // −ln(−ln(1 − 1/T)); ln(1 − 1/T) by a series near zero, since T may be a million blocks.
    private static double Reduced(double blocks)
    {
        if (!(blocks > 1 && double.IsFinite(blocks)))
        {
            throw new ArgumentOutOfRangeException(nameof(blocks), blocks, "A return period is more than one block.");
        }

        return -Math.Log(-double.LogP1(-1 / blocks));
    }
}
