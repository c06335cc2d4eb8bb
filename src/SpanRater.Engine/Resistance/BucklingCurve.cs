namespace SpanRater;

/// <summary>
/// A buckling curve for members in compression: χ = 1/(Φ + √(Φ² − λ̄²)) ≤ 1 with Φ = (1 + α (λ̄ − 0.2) + λ̄²)/2.
/// Source: EN 1993-1-1:2005, 6.3.1.2 and Table 6.1, from memory.
/// </summary>
public sealed class BucklingCurve
{
    /// <summary>Slenderness up to which nothing is lost to buckling [-]. Source: EN 1993-1-1:2005, 6.3.1.2(4), from memory.</summary>
    public const double Plateau = 0.2;

    private BucklingCurve(string name, double imperfection)
    {
        Name = name;
        Imperfection = imperfection;
    }

    /// <summary>The curves there are, from the most favourable to the least.</summary>
    public static IReadOnlyList<BucklingCurve> All { get; } =
        [new("a0", 0.13), new("a", 0.21), new("b", 0.34), new("c", 0.49), new("d", 0.76)];

    /// <summary>Name: a0, a, b, c or d.</summary>
    public string Name { get; }

    /// <summary>Imperfection factor α [-].</summary>
    public double Imperfection { get; }

    /// <summary>The curve of that name, or null.</summary>
    /// <param name="name">a0, a, b, c or d.</param>
    public static BucklingCurve? Find(string name) => All.FirstOrDefault(c => c.Name == name);

    /// <summary>Slenderness λ̄ = √(A fy/Ncr) [-].</summary>
    /// <param name="squashForce">A fy of the area that counts, positive [N].</param>
    /// <param name="criticalForce">Elastic critical force Ncr, positive [N].</param>
    public static double Slenderness(double squashForce, double criticalForce)
    {
        ThrowIfNotPositive(squashForce, nameof(squashForce));
        ThrowIfNotPositive(criticalForce, nameof(criticalForce));
        return Math.Sqrt(squashForce / criticalForce);
    }

    /// <summary>Reduction factor χ, above 0 and at most 1 [-].</summary>
    /// <param name="slenderness">Slenderness λ̄, not negative [-].</param>
    public double Reduction(double slenderness)
    {
        if (!(slenderness >= 0 && double.IsFinite(slenderness)))
        {
            throw new ArgumentOutOfRangeException(nameof(slenderness), slenderness, "A slenderness is not negative, and finite.");
        }

        if (slenderness <= Plateau)
        {
            return 1;
        }

        double phi = (1 + (Imperfection * (slenderness - Plateau)) + (slenderness * slenderness)) / 2;
        return Math.Min(1, 1 / (phi + Math.Sqrt((phi * phi) - (slenderness * slenderness))));
    }

    private static void ThrowIfNotPositive(double value, string name)
    {
        if (!(value > 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "A force is positive and finite [N].");
        }
    }
}
