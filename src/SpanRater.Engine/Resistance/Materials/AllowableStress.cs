namespace SpanRater;

/// <summary>An allowable stress.</summary>
/// <param name="Basis">The stress as printed, or the strength that a part of is allowed [Pa].</param>
/// <param name="Factor">That part; null where the stress stands as printed.</param>
/// <param name="Clause">Where it is from.</param>
public sealed record AllowableStress(double Basis, StrengthFactor? Factor, Clause Clause)
{
    /// <summary>The stress [Pa].</summary>
    public double Value => Basis * (Factor?.Value ?? 1);

    /// <summary>What is multiplied with the basis.</summary>
    internal IReadOnlyList<StrengthFactor> Factors => Factor is null ? [] : [Factor];

    internal static AllowableStress Part(double strength, double part, Clause clause) =>
        new(strength, new StrengthFactor("part allowed", part, clause), clause);
}
